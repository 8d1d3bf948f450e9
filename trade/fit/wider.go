package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// wider are the attempts to widen the narrowest place of a way: what stands on either side is moved off, or made narrower.
func (w *worker) wider(mode *Mode, way Way) []attempt {
	p, more := solid.Point{X: way.X, Y: way.Y}, escapeWidth-way.Width+touching
	g := straddled(w.beside(mode, p, way.Width/2+4*cell), p, way.Width/2, 1)
	var out []attempt
	for k, i := range g.of {
		if i < 0 || len(g.of) < 2 {
			continue
		}
		near, far := g.at[k], g.at[1-k]
		u, v := near.X-far.X, near.Y-far.Y
		side := solid.Rear
		switch {
		case math.Abs(u) < math.Abs(v) && v > 0:
			side = solid.Right
		case math.Abs(u) < math.Abs(v):
			side = solid.Left
		case u < 0:
			side = solid.Front
		}
		along, across := max(math.Abs(u), math.Abs(v)), min(math.Abs(u), math.Abs(v))
		off := math.Sqrt(max(0, escapeWidth*escapeWidth-across*across)) - along + touching // square to the other axis
		for _, by := range []float64{off, more} {
			out = append(out, moves(i, side, by))
			if s := w.resting(i); s != nil && w.leans(s.Box, side) {
				out = append(out, attempt{thing: i, axis: int(side) / 2, less: by, drawsIn: side ^ 1})
			}
			if by >= more {
				break
			}
		}
	}
	return out
}

// beside are the edges near a place of what one walks around, and of the van.
func (w *worker) beside(mode *Mode, p solid.Point, within float64) []bound {
	near, floor, up := around(p.X, p.Y, within), w.in.Room.Floor(), w.ground().up[w.row(p.X)]
	var out []bound
	for i := range mode.Standings {
		s := mode.Standings[i].passed()
		if !w.inTheWay(i) || len(s.Solid) == 0 || !s.Box.Meets(near) {
			continue
		}
		for _, q := range s.Solid {
			if q.High > floor+bodyFrom && q.Low < floor+up && q.Bounds().Meets(near) {
				out = append(out, boundsOf(q, i)...)
			}
		}
	}
	for _, e := range w.walls(nil, p.X-within, p.X+within) {
		out = append(out, bound{e, -1})
	}
	return out
}
