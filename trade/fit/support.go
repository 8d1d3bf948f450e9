package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// supportShare is how much of what lies on a thing without being carried by it may lose its support by a proposal: common practice, no source.
const supportShare = 0.1

// takesSupport says whether an attempt draws a thing away from under something that lies on it and does not come with it, as a flap from under the
// head of a mattress.
func (w *worker) takesSupport(a attempt) bool {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		s := &mode.Standings[a.thing]
		if s.Moved || len(s.Solid) == 0 {
			continue
		}
		now := a.standing(*s)
		for j := range mode.Standings {
			o := &mode.Standings[j]
			if j == a.thing || len(o.Solid) == 0 || w.carries(a.thing, j) || w.carries(j, a.thing) || math.Abs(o.Box.MinZ-s.Box.MaxZ) > touching {
				continue
			}
			whole := solid.Box(o.Box).Outline
			left := 0.0
			if math.Abs(now.Box.MaxZ-s.Box.MaxZ) <= touching {
				left = solid.SharedArea(whole, solid.Box(now.Box).Outline)
			}
			if lost := solid.SharedArea(whole, solid.Box(s.Box).Outline) - left; lost > supportShare*(o.Box.MaxX-o.Box.MinX)*(o.Box.MaxY-o.Box.MinY) {
				return true
			}
		}
	}
	return false
}
