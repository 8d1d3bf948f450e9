package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// hangsOut is how far a cushion may hang over the edge of what it lies on [mm]: common practice, no source.
const hangsOut = 50

// hangsOver notes a cushion that hangs over the edge of what carries it where nothing else is under it.
func (w *worker) hangsOver(i, host int, a, b *Standing) {
	f := &w.in.Fittings[i]
	if !f.Rests || f.Gives == 0 {
		return
	}
	by, edge := 0.0, solid.Front
	for side, out := range [4]float64{b.Box.MinX - a.Box.MinX, a.Box.MaxX - b.Box.MaxX, b.Box.MinY - a.Box.MinY, a.Box.MaxY - b.Box.MaxY} {
		if out > by {
			by, edge = out, solid.Side(side)
		}
	}
	if by <= hangsOut || w.heldAt(i, host, a, edge, by) {
		return
	}
	out := finding.Finding{
		Code: "fit.upon", Severity: finding.Note, About: []string{pointer("fittings", f.ID), pointer("fittings", w.in.Fittings[host].ID)},
		Title:    fmt.Sprintf("%s hangs %s over %s at the %s", w.name(i), about(by), w.name(host), [4]string{"front", "rear", "left", "right"}[edge]),
		Words:    "Nothing is under it there: it gives way under who sits or lies on that edge. Lay it back, or make it as large as what it lies on.",
		Measured: mm(by), Limit: mm(hangsOut), Source: finding.Source{Text: "the places and sizes of this build; how far a cushion may hang over is common practice, no source", Sure: finding.Practice},
	}
	out.Proposals = w.tried(out, (*worker).uponIt, moves(i, edge^1, by))
	w.find(out)
}

// heldAt says whether something else is under the middle of the part of a cushion that hangs over an edge.
func (w *worker) heldAt(i, host int, s *Standing, edge solid.Side, by float64) bool {
	b, d := s.Box, solid.Directions[edge]
	x, y := (b.MinX+b.MaxX)/2+d[0]*(b.MaxX-b.MinX-by)/2, (b.MinY+b.MaxY)/2+d[1]*(b.MaxY-b.MinY-by)/2
	for j := range w.in.Fittings {
		o := w.resting(j)
		if j == i || j == host || o == nil || w.carries(i, j) {
			continue
		}
		if math.Abs(o.Box.MaxZ-b.MinZ) <= cushionOn && within(o.Box, solid.Point{X: x, Y: y}) {
			return true
		}
	}
	return false
}
