package circuit

import (
	"fmt"
	"slices"
)

// A Collapse is a network that cannot carry its loads: raised from nothing they reach a point beyond which no voltage is
// stable.
type Collapse struct {
	Share float64 // of all constant power and current drawn, the most that is carried, all raised together
	Load  int     // the place in Network.Loads of the load that tips it: the one that gives way most at that point
	Name  string  // of that load
	Asked float64 // W, or A when it draws no constant power: what that load asks for
	Alone float64 // the same, the most it can have while the others draw all they ask for; 0 when they alone are too much
	Unit  string  // of Asked and Alone
}

func (c *Collapse) Error() string {
	rest := fmt.Sprintf("beside the others it can have %.6g of %.6g %s", c.Alone, c.Asked, c.Unit)
	if c.Alone == 0 {
		rest = "but the others alone are too much already"
	}
	return fmt.Sprintf("voltage collapses: %.4g %% of what is drawn can be carried; %s tips it, %s", 100*c.Share, named("loads", c.Load, c.Name), rest)
}

// collapse describes the collapse just beyond the voltages v, reached at a share of what is drawn.
func (e equations) collapse(n Network, v []float64, share float64) error {
	if v == nil {
		return &Fault{"loads", "what they put in leaves no stable state even while nothing is drawn"}
	}
	load := e.draws[e.tipping(v, share)].load
	l := n.Loads[load]
	c := &Collapse{Share: share, Load: load, Name: l.Name, Asked: l.Power, Unit: "W"}
	if l.Power <= 0 {
		c.Asked, c.Unit = l.Current, "A"
	}
	if alone, most := e.only(load).raise(); alone != nil {
		c.Alone = most * c.Asked
	}
	return c
}

// only is the same equations with the share touching one load.
func (e equations) only(load int) equations {
	e.draws = slices.Clone(e.draws)
	for k := range e.draws {
		e.draws[k].fixed = e.draws[k].fixed || e.draws[k].load != load
	}
	return e
}

// tipping gives the draw that tips the network at its last stable voltages: a current that has no voltage left, or else
// the power that gives most to the slope along the way on which it is no longer definite.
func (e equations) tipping(v []float64, share float64) (worst int) {
	way := e.weakest(v, share)
	most := -1.0
	for k, d := range e.draws {
		if d.fixed {
			continue
		}
		u := d.voltage(v)
		if d.current > 0 && u < 1e-6*greatest(v) {
			return k
		}
		change := (e.along(d.a, way) - e.along(d.b, way)) / u
		if weight := d.power * change * change; weight > most {
			worst, most = k, weight
		}
	}
	return worst
}

// weakest is the way in which voltages give way first: the slope's eigenvector of least value, by inverse iteration.
func (e equations) weakest(v []float64, share float64) []float64 {
	way, slope := make([]float64, e.size), newSymmetric(e.size)
	for k := range way {
		way[k] = 1
	}
	e.slope(v, share, slope)
	if !slope.factorise() {
		return way
	}
	for range 4 {
		slope.solve(way)
		size := slices.Max(way) - min(slices.Min(way), 0)
		for k := range way {
			way[k] /= size
		}
	}
	return way
}
