package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// besides are the parts of the floor on which one comes to stand beside a fitting, with no wall between.
func (w *worker) besides(mode *Mode, on *crossing, at int, today bool) []int32 {
	var parts []int32
	more := func(c int32) bool { return on.part[c] != 0 && !slices.Contains(parts, on.part[c]) }
	w.eachBeside(mode, at, today, more, func(c int32) { parts = append(parts, on.part[c]) })
	return parts
}

// eachBeside calls do for every wanted cell of the room from which one reaches a bed or a seat, or which it covers. Whether a wall stands between is
// asked last: that takes longest.
func (w *worker) eachBeside(mode *Mode, at int, today bool, wanted func(c int32) bool, do func(c int32)) {
	g, b := w.ground(), mode.Standings[at].Box
	walls := w.wallsAbout(mode, at, today)
	x0, x1 := g.rows(b.MinX-beside, b.MaxX+beside)
	y0, y1 := g.across(b.MinY-beside, b.MaxY+beside)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			if c := int32(i*g.ny + j); g.within(i, j) && wanted(c) && !walled(walls, b, g.atX(i), g.atY(j)) {
				do(c)
			}
		}
	}
}

// wallsAbout are what stands about a bed or a seat so high that nobody gets over it from there.
func (w *worker) wallsAbout(mode *Mode, at int, today bool) []solid.Bounds {
	b := mode.Standings[at].Box
	near := b.Grown(beside)
	near.MinZ, near.MaxZ = b.MaxZ+touching, b.MaxZ+crawlUnder
	var walls []solid.Bounds
	for i := range mode.Standings {
		s := mode.Standings[i].passed()
		if i == at || len(s.Solid) == 0 || today && !w.in.Fittings[i].Today || !w.hard(i) || w.bears(i, s) || w.carries(at, i) || w.carries(i, at) || !s.Box.Meets(near) {
			continue
		}
		for _, p := range s.Solid {
			if q := p.Bounds(); q.Meets(near) && q.MaxZ >= near.MaxZ {
				walls = append(walls, q)
			}
		}
	}
	return walls
}

// walled says whether a wall stands in the straight way from a place to the nearest of a box.
func walled(walls []solid.Bounds, b solid.Bounds, x, y float64) bool {
	u, v := min(max(x, b.MinX), b.MaxX)-x, min(max(y, b.MinY), b.MaxY)-y
	if u == 0 && v == 0 {
		return false
	}
	for _, q := range walls {
		from, to := 0.0, 1.0
		for _, s := range [2][4]float64{{x, u, q.MinX, q.MaxX}, {y, v, q.MinY, q.MaxY}} {
			switch at, step, low, high := s[0], s[1], s[2], s[3]; {
			case step == 0 && (at <= low || at >= high):
				to = -1
			case step != 0:
				a, b := (low-at)/step, (high-at)/step
				from, to = math.Max(from, math.Min(a, b)), math.Min(to, math.Max(a, b))
			}
		}
		if from < to {
			return true
		}
	}
	return false
}
