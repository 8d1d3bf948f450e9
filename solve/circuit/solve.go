package circuit

// Solve gives the stable state of a network. The error is a *[Fault] when the network is not well said, and a *[Collapse]
// when it cannot carry its loads.
func Solve(n Network) (Result, error) {
	if err := n.check(); err != nil {
		return Result{}, err
	}
	p, err := n.plan()
	if err != nil {
		return Result{}, err
	}
	e := newEquations(n, p)
	if err := e.checkFed(n); err != nil {
		return Result{}, err
	}
	v, share := e.raise()
	if share < 1 {
		return Result{}, e.collapse(n, v, share)
	}
	return newResult(n, p, v), nil
}

// checkFed finds a load that has no voltage even while nothing is drawn.
func (e equations) checkFed(n Network) error {
	v := e.unloaded()
	for _, d := range e.draws {
		if (d.power != 0 || d.current > 0) && !(d.voltage(v) > smallStep*greatest(v)) {
			return &Fault{named("loads", d.load, n.Loads[d.load].Name), "no voltage in its direction even while nothing is drawn: is it the wrong way round, or without a source?"}
		}
	}
	return nil
}

const (
	leastRise = 1e-10 // of the share that can be carried: how finely it is found
	mostRises = 300   // about a hundred are tried where the network tips
)

// raise raises the share of what is drawn from nought to one, at once if it can, or as far as it goes, by steps that double
// when they succeed and halve when they fail. It gives the voltages there, or none when not even the beginning is stable.
func (e equations) raise() (v []float64, share float64) {
	begin := e.unloaded()
	if v, ok := e.newton(begin, 1); ok {
		return v, 1
	}
	v, ok := e.newton(begin, 0)
	if !ok {
		return nil, 0
	}
	rise := 0.5
	for tried := 0; share < 1 && rise > leastRise*(share+leastRise) && tried < mostRises; tried++ {
		next := min(share+rise, 1)
		if further, ok := e.newton(v, next); ok {
			v, share, rise = further, next, 2*rise
		} else {
			rise /= 2
		}
	}
	return v, share
}
