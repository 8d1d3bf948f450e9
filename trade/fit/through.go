package fit

import (
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// through judges what a mode has reach out of an open door: does it go through the opening, or only past its edge?
func (w *worker) through() {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, mover := range mode.Movers {
			if f := w.in.Fittings[mover.Fitting]; f.Where == "" && !mover.ByHand {
				w.throughOpenings(mode, mover.Fitting)
			}
		}
	}
}

func (w *worker) throughOpenings(mode *Mode, i int) {
	for _, id := range mode.Open {
		for _, o := range w.in.Openings {
			if o.ID != id || !o.meets(mode.Standings[i].Box) {
				continue
			}
			if by, edge := w.pastEdge(mode.Standings[i].Solid, o); by > touching {
				w.reportEdge(mode, i, o, by, edge)
			}
		}
	}
}

// goesThrough says whether what slides out through an open door, moved with what it rests on, still reaches no farther past its edges.
func (w *worker) goesThrough(a attempt) bool {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, mover := range mode.Movers {
			i := mover.Fitting
			if mover.ByHand || w.in.Fittings[i].Where != "" || i != a.thing && !w.carries(a.thing, i) {
				continue
			}
			for _, o := range w.in.Openings {
				s := mode.Standings[i].Solid
				if !slices.Contains(mode.Open, o.ID) || !o.meets(mode.Standings[i].Box) {
					continue
				}
				was, _ := w.pastEdge(s, o)
				if is, _ := w.pastEdge(s.Moved(a.by[0], a.by[1], a.by[2]), o); is > max(was, touching) {
					return false
				}
			}
		}
	}
	return true
}

// pastEdge is how far what is outside an opening reaches past one of its edges, and which.
func (w *worker) pastEdge(s solid.Solid, o Opening) (by float64, edge string) {
	for _, p := range s {
		b := p.Bounds()
		if !w.isOut(b, o) {
			continue
		}
		past := func(over float64, word string) {
			if over > by {
				by, edge = over, word
			}
		}
		if o.Through != "front" && o.Through != "rear" {
			past(o.X[0]-b.MinX, "front edge")
			past(b.MaxX-o.X[1], "rear edge")
		}
		if o.Through != "left" && o.Through != "right" {
			past(o.Y[0]-b.MinY, "left edge")
			past(b.MaxY-o.Y[1], "right edge")
		}
		if o.Through != "floor" && o.Through != "roof" {
			past(o.Z[0]-b.MinZ, "sill")
			past(b.MaxZ-o.Z[1], "upper edge")
		}
	}
	return by, edge
}

// isOut says whether a box reaches out of the room on the side of an opening.
func (w *worker) isOut(b solid.Bounds, o Opening) bool {
	for side, word := range [6]string{"front", "rear", "left", "right", "floor", "roof"} {
		if o.Through == word {
			return w.cornerExcess(b, solid.Side(side)) > grazing
		}
	}
	return false
}

func (w *worker) reportEdge(mode *Mode, i int, o Opening, by float64, edge string) {
	out := finding.Finding{
		Code: "fit.through", Severity: finding.Fault, Mode: mode.Name,
		About: []string{pointer("fittings", w.in.Fittings[i].ID), o.pointer()},
		Title: fmt.Sprintf("%s does not go out through %s", w.name(i), o.called()),
		Words: fmt.Sprintf("It reaches %s past the %s of the opening. Move it, or make it smaller.", about(by), edge), Measured: mm(by), Limit: mm(0),
		Source: finding.Source{Text: "the opening and the places of this build", Sure: finding.Computed},
	}
	if by <= w.in.Error {
		out.Severity = finding.Close
	}
	to := map[string]solid.Side{"front edge": solid.Rear, "rear edge": solid.Front, "left edge": solid.Right, "right edge": solid.Left, "sill": solid.Roof, "upper edge": solid.Floor}[edge]
	d := solid.Directions[to]
	if w.hasRoom(moves(i, to, by)) {
		out.Proposals = w.nudge(i, d[0]*by, d[1]*by, d[2]*by, "")
	}
	w.find(out)
}
