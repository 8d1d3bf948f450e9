package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// uponIt tells of what is said to stand upon another and at rest hangs in the air beside it, or with its middle beyond the edge. What is hung higher
// than the top stands on it only by name.
func (w *worker) uponIt() {
	for i := range w.in.Fittings {
		f, host := &w.in.Fittings[i], w.carriers[i]
		if f.In || host < 0 || f.Where != "" || f.Gives >= 1 {
			continue
		}
		a, b := w.resting(i), w.resting(host)
		if a == nil || b == nil || math.Abs(a.Box.MinZ-b.Box.MaxZ) > touching {
			continue
		}
		beyond, side := beyondEdge(a.Box, b.Box)
		if beyond > touching && !w.heldUp(i, host, a) {
			w.reportUpon(i, host, a, b, beyond, side)
		} else if beyond <= touching {
			w.hangsOver(i, host, a, b)
		}
	}
}

// beyondEdge is how far the middle of a box lies beyond an edge of another, and which edge.
func beyondEdge(a, b solid.Bounds) (by float64, edge solid.Side) {
	x, y := (a.MinX+a.MaxX)/2, (a.MinY+a.MaxY)/2
	for side, over := range [4]float64{b.MinX - x, x - b.MaxX, b.MinY - y, y - b.MaxY} {
		if over > by {
			by, edge = over, solid.Side(side)
		}
	}
	return by, edge
}

// heldUp says whether something else stands under the middle of a thing, as high as what it is said to stand on.
func (w *worker) heldUp(i, host int, s *Standing) bool {
	x, y := (s.Box.MinX+s.Box.MaxX)/2, (s.Box.MinY+s.Box.MaxY)/2
	for j := range w.in.Fittings {
		o := w.resting(j)
		if j == i || j == host || o == nil {
			continue
		}
		if b := o.Box; math.Abs(b.MaxZ-s.Box.MinZ) <= touching && b.MinX <= x && x <= b.MaxX && b.MinY <= y && y <= b.MaxY {
			return true
		}
	}
	return false
}

func (w *worker) reportUpon(i, host int, a, b *Standing, beyond float64, edge solid.Side) {
	d := solid.Directions[edge^1]
	out := finding.Finding{
		Code: "fit.upon", Severity: finding.Close, About: []string{pointer("fittings", w.in.Fittings[i].ID), pointer("fittings", w.in.Fittings[host].ID)},
		Title:    fmt.Sprintf("%s would tip off %s", w.name(i), w.name(host)),
		Words:    fmt.Sprintf("Its middle is %s beyond the edge of what it stands on. Move it, or screw it on.", about(beyond)),
		Measured: mm(beyond), Limit: mm(0), Source: finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed},
		Proposals: w.nudge(i, d[0]*beyond, d[1]*beyond, 0, ""),
	}
	if solid.SharedArea(solid.Box(a.Box).Outline, solid.Box(b.Box).Outline) <= 0 {
		out.Severity, out.Title = finding.Fault, fmt.Sprintf("%s is said to stand on %s and is not over it", w.name(i), w.name(host))
		out.Words = fmt.Sprintf("It hangs in the air: its middle is %s beyond the edge. Move it, or say what it really stands on.", about(beyond))
	}
	w.find(out)
}
