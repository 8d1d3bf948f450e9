package conduction

import (
	"fmt"
	"math"
)

// A Transient follows a wall through time in steps of one length.
//
// Control volumes about points that stand closer towards the faces of each layer; in time the diagonally implicit
// Runge-Kutta rule of two stages (Alexander 1977): second order like Crank-Nicolson, but a sudden change dies away at
// any length of step instead of ringing.
type Transient struct {
	x           []float64 // points from the outer surface, m
	store       []float64 // heat capacity about each point, J/(m²·K)
	link        []float64 // conductance to the next point, W/(m²·K)
	surface     [2]film   // outer, inner
	step        float64   // s
	factor      tridiagonal
	temperature []float64
	drive       [2]Drive
	entered     [2]float64
	first       moment // the two stages of a step
	second      moment
	between     []float64
}

// A moment is the state at a stage: temperatures, °C, and their rates, K/s.
type moment struct{ temperature, rate []float64 }

func newMoment(n int) moment { return moment{make([]float64, n), make([]float64, n)} }

// A Drive is what acts on a surface: the temperature of the surroundings, °C, and heat that it gains besides, such as
// absorbed sunshine, W/m² (not used where the surface resistance is 0).
type Drive struct{ Temperature, Heat float64 }

// film is the conductance between the surroundings and the point at, or a hold on that point.
type film struct {
	at          int
	conductance float64 // W/(m²·K)
	held        bool
}

// stage is γ = 1 − 1/√2, which makes the rule damp the fastest modes at once.
var stage = 1 - math.Sqrt2/2

// Follow begins at one temperature throughout, °C, with the drives of time nought, and steps of some seconds. Each
// layer is cut into cells parts, at least 2. With 12 cells and steps of a fiftieth of L²/α (half thickness squared over
// diffusivity) temperatures after a sudden change are good to 0.003 of that change from ten steps on; the error falls
// with the square of both. The error is a *Fault.
func (w Wall) Follow(temperature float64, outer, inner Drive, step float64, cells int) (*Transient, error) {
	if err := w.check(); err != nil {
		return nil, err
	}
	if outside(step, 1e-3, 1e9) || cells < 2 || cells > 1000 {
		return nil, &Fault{"wall", fmt.Sprintf("a step of %g s and %d cells a layer: steps are 0.001 to 1e9 s, cells 2 to 1000", step, cells)}
	}
	t := &Transient{step: step, drive: [2]Drive{outer, inner}, x: []float64{0}, store: []float64{0}}
	for _, l := range w.Layers {
		t.lay(l, cells)
	}
	last := len(t.x) - 1
	t.surface = [2]film{{0, 1 / w.Outer, w.Outer == 0}, {last, 1 / w.Inner, w.Inner == 0}}
	t.temperature = make([]float64, len(t.x))
	for k := range t.temperature {
		t.temperature[k] = temperature
	}
	t.factor = t.matrix()
	t.first, t.second, t.between = newMoment(len(t.x)), newMoment(len(t.x)), make([]float64, len(t.x))
	return t, nil
}

// lay adds the points of one layer, spaced by the cosine.
func (t *Transient) lay(l Layer, cells int) {
	begin := t.x[len(t.x)-1]
	for k := 1; k <= cells; k++ {
		x := begin + l.Thickness*(1-math.Cos(math.Pi*float64(k)/float64(cells)))/2
		d := x - t.x[len(t.x)-1]
		half := l.Density * l.HeatCapacity * d / 2
		t.store[len(t.store)-1] += half
		t.x, t.store, t.link = append(t.x, x), append(t.store, half), append(t.link, l.Conductivity/d)
	}
}

// matrix is M + γ·Δt·K.
func (t *Transient) matrix() tridiagonal {
	m := newTridiagonal(len(t.x))
	h := stage * t.step
	copy(m.diagonal, t.store)
	for k, g := range t.link {
		m.diagonal[k] += h * g
		m.diagonal[k+1] += h * g
		m.above[k], m.below[k+1] = -h*g, -h*g
	}
	for _, f := range t.surface {
		if f.held {
			m.diagonal[f.at], m.above[f.at], m.below[f.at] = 1, 0, 0
		} else {
			m.diagonal[f.at] += h * f.conductance
		}
	}
	m.factorise()
	return m
}

// Step goes on by one step, at whose end the drives are those given; in between they change evenly.
func (t *Transient) Step(outer, inner Drive) {
	end := [2]Drive{outer, inner}
	var middle [2]Drive
	for k, d := range t.drive {
		middle[k] = Drive{d.Temperature + stage*(end[k].Temperature-d.Temperature), d.Heat + stage*(end[k].Heat-d.Heat)}
	}
	t.solve(t.first, t.temperature, middle)
	for k, r := range t.first.rate {
		t.between[k] = t.temperature[k] + (1-stage)*t.step*r
	}
	t.solve(t.second, t.between, end)
	for k := range t.entered {
		t.entered[k] = (1-stage)*t.gain(k, t.first) + stage*t.gain(k, t.second)
	}
	copy(t.temperature, t.second.temperature)
	t.drive = end
}

// solve gives one stage: the temperatures y with M·(y − from) = γ·Δt·(drive − K·y), and their rate (y − from)/(γ·Δt).
func (t *Transient) solve(m moment, from []float64, drive [2]Drive) {
	h, y := stage*t.step, m.temperature
	for k, v := range from {
		y[k] = t.store[k] * v
	}
	for k, f := range t.surface {
		if f.held {
			y[f.at] = drive[k].Temperature
		} else {
			y[f.at] += h * (f.conductance*drive[k].Temperature + drive[k].Heat)
		}
	}
	t.factor.solve(y)
	for k := range y {
		m.rate[k] = (y[k] - from[k]) / h
	}
}

// gain is the heat that enters at a surface, W/m²: what its point stores and passes on.
func (t *Transient) gain(k int, m moment) float64 {
	at, y, rate := t.surface[k].at, m.temperature, m.rate
	if at == 0 {
		return t.store[0]*rate[0] + t.link[0]*(y[0]-y[1])
	}
	return t.store[at]*rate[at] + t.link[at-1]*(y[at]-y[at-1])
}

// Surfaces gives the temperatures of the two surfaces, °C.
func (t *Transient) Surfaces() (outer, inner float64) {
	return t.temperature[0], t.temperature[len(t.x)-1]
}

// Entered gives the heat that entered at the two surfaces over the last step, mean in W/m², from surroundings and Heat together.
func (t *Transient) Entered() (outer, inner float64) { return t.entered[0], t.entered[1] }

// At gives the temperature at a depth, m, below the outer surface, °C; beyond a surface that of the surface.
func (t *Transient) At(depth float64) float64 {
	depth = min(max(depth, 0), t.x[len(t.x)-1])
	i, share, _ := within(t.x, depth)
	return t.temperature[i]*(1-share) + t.temperature[i+1]*share
}

// Stored is the heat in the wall above 0 °C, J/m².
func (t *Transient) Stored() float64 {
	var sum float64
	for k, c := range t.store {
		sum += c * t.temperature[k]
	}
	return sum
}
