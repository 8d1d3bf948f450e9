package power

import "math"

// tally is what was counted on the way through the years.
type tally struct {
	nights, flat [12]int
	cuts         [24]int                     // of flat nights, by the hour of the day in which the battery was first empty
	engine       [12]float64                 // Wh
	warmth       [12]float64                 // of the battery, °C, summed over nights
	cold         int                         // hours in which lithium was charged below 0 °C
	states       *[12][24][states + 1]uint32 // of charge, by month and hour; nil where nobody asks
}

// states is into how many parts a state of charge is told apart.
const states = 50

func (t *tally) all() (nights, flat int) {
	for m := range t.nights {
		nights, flat = nights+t.nights[m], flat+t.flat[m]
	}
	return nights, flat
}

// share of nights that are flat.
func (t *tally) share() float64 {
	nights, flat := t.all()
	return chance(flat, nights).Share
}

// chance is a share with its binomial standard error, √(p(1−p)/n); where it never happened or always, that of one time more or less.
func chance(of, in int) Chance {
	c := Chance{Of: of, In: in}
	if in == 0 {
		return c
	}
	n := float64(in)
	c.Share = float64(of) / n
	p := min(max(c.Share, 1/(n+2)), 1-1/(n+2))
	c.Error = math.Sqrt(p * (1 - p) / n)
	return c
}

// below is the state of charge that a share of the nights falls below, in an hour of a month.
func (t *tally) below(month, hour int, share float64) float64 {
	all := uint32(0)
	for _, n := range t.states[month][hour] {
		all += n
	}
	sum := uint32(0)
	for i, n := range t.states[month][hour] {
		if sum += n; float64(sum) > share*float64(all) {
			return float64(i) / states
		}
	}
	return 1
}
