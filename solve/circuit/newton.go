package circuit

import (
	"math"
	"slices"
)

const (
	mostSteps = 100   // halving steps at the point of collapse need about 30
	smallStep = 1e-10 // of the greatest voltage; the next step would be about its square
)

// newton gives the stable voltages of all nodes for a share of what is drawn, begun at v, and whether they were found.
// Voltages that leave the stable side on the way are given up: in the case that the package doc calls convex and monotone
// there is then no solution.
func (e equations) newton(v []float64, share float64) ([]float64, bool) {
	v = slices.Clone(v)
	enough := smallStep * greatest(v)
	step, slope := make([]float64, e.size), newSymmetric(e.size)
	for range mostSteps {
		if !e.powered(v) {
			return nil, false
		}
		e.surplus(v, share, step)
		e.slope(v, share, slope)
		if !slope.factorise() {
			return nil, false
		}
		slope.solve(step)
		if e.move(v, step) <= enough {
			return v, e.upright(v)
		}
	}
	return nil, false
}

func greatest(v []float64) float64 { return max(slices.Max(v), -slices.Min(v)) }

// powered says whether each constant power has a voltage to draw from or to put into.
func (e equations) powered(v []float64) bool {
	for _, d := range e.draws {
		if d.power != 0 && !(d.voltage(v) > 0) {
			return false
		}
	}
	return true
}

// upright says whether each load that draws still has a voltage in its direction: it is not one if it has to be fed.
func (e equations) upright(v []float64) bool {
	for _, d := range e.draws {
		if (d.power > 0 || d.current > 0) && !(d.voltage(v) > 0) {
			return false
		}
	}
	return true
}

// move goes along the step and gives the greatest change, V.
func (e equations) move(v, step []float64) (size float64) {
	for k := range v {
		change := e.along(k, step)
		v[k] += change
		size = max(size, math.Abs(change))
	}
	return size
}

// along is what the step changes at a node.
func (e equations) along(node int, step []float64) float64 {
	if r := e.rows[node]; r >= 0 {
		return step[r]
	}
	return 0
}

// unloaded gives the voltages without constant powers and without what is scaled.
func (e equations) unloaded() []float64 {
	linear := e
	linear.draws = slices.Clone(e.draws)
	for k := range linear.draws {
		linear.draws[k].power = 0
	}
	v, step, slope := make([]float64, len(e.rows)), make([]float64, e.size), newSymmetric(e.size)
	linear.surplus(v, 0, step)
	linear.slope(v, 0, slope)
	if slope.factorise() { // always: each live node is joined to the reference
		slope.solve(step)
	}
	linear.move(v, step)
	return v
}
