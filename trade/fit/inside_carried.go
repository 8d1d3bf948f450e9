package fit

import "tumblehome/solve/solid"

// goesOutWith says whether a thing stands out of a side only because what carries it does, by as much or more: that one is told of.
func (w *worker) goesOutWith(i int, side solid.Side, by float64, mode *Mode) bool {
	for c := w.carriers[i]; c >= 0; c = w.carriers[c] {
		s, f := &mode.Standings[c], &w.in.Fittings[c]
		if f.isOutside() || f.For != "" || f.Gives >= 1 || len(s.Solid) == 0 {
			continue
		}
		if out := w.excesses(s)[side]; out > touching && out > w.give(c, s) && out >= by-touching {
			return true
		}
	}
	return false
}

// takesOut are the names of what a thing carries and takes with it out of a side.
func (w *worker) takesOut(i int, side solid.Side, mode *Mode) (names []string) {
	for j := range mode.Standings {
		s := &mode.Standings[j]
		if len(s.Solid) == 0 || !w.carries(i, j) {
			continue
		}
		if by := w.excesses(s)[side]; by > touching && by > w.give(j, s) && w.goesOutWith(j, side, by, mode) {
			names = append(names, w.name(j))
		}
	}
	return names
}
