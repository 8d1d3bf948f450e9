package fit

import (
	"fmt"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// outOfHost reports what stands in a host and reaches out of it, at rest.
func (w *worker) outOfHost(i int) {
	f := w.in.Fittings[i]
	j := w.carriers[i]
	if !f.In || j < 0 || len(w.in.Modes) == 0 {
		return
	}
	a, b := w.resting(i), w.resting(j)
	if a == nil || b == nil {
		return
	}
	over := [6]float64{
		b.Box.MinX - a.Box.MinX, a.Box.MaxX - b.Box.MaxX, b.Box.MinY - a.Box.MinY,
		a.Box.MaxY - b.Box.MaxY, b.Box.MinZ - a.Box.MinZ, a.Box.MaxZ - b.Box.MaxZ,
	}
	worst := solid.Front
	for side := range over {
		if over[side] > over[worst] {
			worst = solid.Side(side)
		}
	}
	by := over[worst]
	if by <= touching || by <= w.give(i, a) {
		return
	}
	sides := [6]string{"front", "rear", "left", "right", "bottom", "top"}
	d := solid.Directions[worst^1]
	w.find(finding.Finding{
		Code: "fit.out-of-host", Severity: finding.Fault, About: []string{pointer("fittings", f.ID), pointer("fittings", w.in.Fittings[j].ID)},
		Title:    fmt.Sprintf("%s reaches %s out of the %s of %s", w.name(i), about(by), sides[worst], w.name(j)),
		Words:    "It is said to stand inside, but it does not go in there. Move it, or make what holds it larger.",
		Measured: mm(by), Limit: mm(0),
		Source:    finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed},
		Proposals: w.nudge(i, d[0]*by, d[1]*by, d[2]*by, ""),
	})
}
