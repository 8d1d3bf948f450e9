package fit

import (
	"encoding/json"
	"fmt"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// overSeam is how far a thing on one leaf of a double door may reach over the other [mm]: common practice, no source.
const overSeam = 30

var onDoorSource = finding.Source{Text: "a leaf swings about its own edge, and what hangs on it swings with it: common practice, no source", Sure: finding.Practice}

// onDoors tells of what is said to hang on a door and swing with it, but cannot: it hangs on no door, on both leaves at once, or is not before it.
func (w *worker) onDoors() {
	for i := range w.in.Fittings {
		f, s := &w.in.Fittings[i], w.resting(i)
		if f.OnDoor == "" || s == nil {
			continue
		}
		for _, o := range w.in.Openings {
			switch {
			case o.ID != f.OnDoor:
			case !o.Door:
				w.tellOnDoor(i, o, finding.Fault, fmt.Sprintf("%s is said to hang on %s, which is no door", w.name(i), o.called()),
					"Only a door swings with what hangs on it. Name the door it hangs on, or take on-door: away.")
			case !o.before(s.Box, w.outsideOf(o)):
				w.tellOnDoor(i, o, finding.Close, fmt.Sprintf("%s is said to hang on %s, but is not before it", w.name(i), o.called()),
					"Move it before that door, name the door it does hang on, or take on-door: away.")
			case f.Gives < 1 && o.seamIn(s.Box) > overSeam:
				w.tellOverLeaves(i, o, s)
			}
		}
	}
}

// swings says whether a thing outside hangs on a door as is said, so that it is no bar to it.
func (w *worker) swings(i int, b solid.Bounds, o Opening) bool {
	f := &w.in.Fittings[i]
	return f.OnDoors || f.OnDoor == o.ID && o.Door && (f.Gives >= 1 || o.seamIn(b) <= overSeam)
}

// before says whether a box outside stands before an opening, of which outside is the space that it opens into.
func (o Opening) before(b, outside solid.Bounds) bool {
	x, y, z := shared(b.MinX, b.MaxX, o.X), shared(b.MinY, b.MaxY, o.Y), shared(b.MinZ, b.MaxZ, o.Z)
	switch o.Through {
	case "left", "right":
		return b.Meets(outside) && min(x, z) >= coversShort
	case "rear":
		return b.Meets(outside) && min(y, z) >= coversShort
	}
	return b.Meets(outside)
}

// seamIn is how far a box reaches over the middle of a double door, from the leaf that has less of it; nought or less where it is on one leaf.
func (o Opening) seamIn(b solid.Bounds) float64 {
	if !o.TwoLeaves {
		return 0
	}
	if o.Through == "rear" {
		middle := (o.Y[0] + o.Y[1]) / 2
		return min(middle-b.MinY, b.MaxY-middle)
	}
	middle := (o.X[0] + o.X[1]) / 2
	return min(middle-b.MinX, b.MaxX-middle)
}

func (w *worker) tellOnDoor(i int, o Opening, severity finding.Severity, title, words string) {
	f := &w.in.Fittings[i]
	out := finding.Finding{Code: "fit.on-door", Severity: severity, About: []string{pointer("fittings", f.ID) + "/on-door", o.pointer()}, Title: title, Words: words, Source: onDoorSource}
	s := w.resting(i)
	for _, other := range w.in.Openings {
		if other.ID != o.ID && other.Door && other.before(s.Box, w.outsideOf(other)) && other.seamIn(s.Box) <= overSeam {
			out.Proposals = append(out.Proposals, w.onDoor(i, other)...)
		}
	}
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{f.ID: map[string]any{"on-door": nil}}})
	if err == nil {
		out.Proposals = append(out.Proposals, finding.Proposal{Words: fmt.Sprintf("do not say that %s hangs on %s", w.name(i), o.called()), Patch: patch})
	}
	w.find(out)
}

func (w *worker) tellOverLeaves(i int, o Opening, s *Standing) {
	over := o.seamIn(s.Box)
	out := finding.Finding{
		Code: "fit.on-door", Severity: finding.Fault, About: []string{pointer("fittings", w.in.Fittings[i].ID) + "/on-door", o.pointer()},
		Title:    fmt.Sprintf("%s hangs over both leaves of %s", w.name(i), o.called()),
		Words:    fmt.Sprintf("It reaches %s over the leaf that has less of it and holds the two together, so that neither opens. Hang it on one leaf, or make it of two pieces, one for each leaf.", about(over)),
		Caution:  "A door that does not open is no way out of a fire.",
		Measured: mm(over), Limit: mm(overSeam), Source: onDoorSource,
	}
	one, other := solid.Left, solid.Right
	low, high, middle := s.Box.MinY, s.Box.MaxY, (o.Y[0]+o.Y[1])/2
	if o.Through != "rear" {
		one, other = solid.Front, solid.Rear
		low, high, middle = s.Box.MinX, s.Box.MaxX, (o.X[0]+o.X[1])/2
	}
	out.Proposals = w.triedBeside(out, (*worker).onDoors, w.worseBy((*worker).outdoors), moves(i, one, high-middle), moves(i, other, middle-low))
	w.find(out)
}
