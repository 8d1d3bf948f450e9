package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// tooWide tells once of a thing at rest that stands out of both sides of the van, such as a bed across it that is too long.
func (w *worker) tooWide(i int, s *Standing, left, right float64, mode *Mode) {
	over, wide := left+right, s.Box.MaxY-s.Box.MinY
	out := finding.Finding{
		Code: "fit.sticks-out", Severity: finding.Fault, About: []string{pointer("fittings", w.in.Fittings[i].ID)},
		Title:    fmt.Sprintf("%s is %s too wide for the van", w.name(i), about(over)),
		Words:    fmt.Sprintf("It is %s from left to right; between the linings there are %s at its height.", about(wide), about(wide-over)),
		Measured: mm(wide), Limit: mm(wide - over), Source: finding.Source{Text: "the finished surfaces of this build", Sure: finding.Computed},
	}
	if over <= w.in.Error {
		out.Severity = finding.Close
		out.Words += fmt.Sprintf(" The body was read to ± %g mm, so this may be nothing: measure there again.", w.in.Error)
	}
	if with := w.takesOut(i, solid.Left, mode); len(with) > 0 {
		out.Words += fmt.Sprintf(" What it carries is out with it: %s.", listed(with))
	}
	if who, needs, short := w.tooShortFor(i, 1, wide-over); short {
		out.Words += fmt.Sprintf(" That is too short for %s to lie across: lying down takes %s. Lay the bed along the van.", who, about(needs))
	} else {
		out.Proposals = append(w.drawnInBoth(i, left, right), w.cutTo(i, solid.Left, solid.Right)...)
	}
	w.find(out)
}

// drawnInBoth proposes to make a thing as wide as there is room for at its height.
func (w *worker) drawnInBoth(i int, left, right float64) []finding.Proposal {
	if w.in.Stretch == nil {
		return nil
	}
	up := func(by float64) float64 { return math.Ceil(by/5-1e-9) * 5 }
	less := up(left) + up(right)
	patch, ok := w.in.Stretch(w.in.Fittings[i].ID, 1, -up(left), -up(right))
	if !ok { // it keeps its middle, so that both ends come in by as much
		less = 2 * up(max(left, right))
		if w.in.Lengthen == nil {
			return nil
		}
		if patch, ok = w.in.Lengthen(w.in.Fittings[i].ID, 1, -less); !ok {
			return nil
		}
	}
	return []finding.Proposal{{Words: fmt.Sprintf("make %s %s mm shorter across the van, as wide as there is room", w.name(i), quantity.Parted(less)), Patch: patch}}
}

// tooShortFor is the tallest who lies along an axis on a thing, or on what it carries, and for whom it is too short if it is so long.
func (w *worker) tooShortFor(i, axis int, long float64) (who string, needs float64, short bool) {
	for m := range w.in.Modes {
		for _, pose := range w.in.Modes[m].Poses {
			b, lies := w.berth(&w.in.Modes[m], pose)
			if !lies || b.axis != axis || b.bed != i && !w.carries(i, b.bed) {
				continue
			}
			if least := b.person.Stature + people.Lying; least > long && least > needs {
				who, needs, short = b.person.name(), least, true
			}
		}
	}
	return who, needs, short
}

// shorter proposes to draw in the face of a thing that stands into a side, the front or the rear, where moving does not help and more than half of it
// is left, enough for who lies there.
func (w *worker) shorter(i int, side solid.Side, by float64) []finding.Proposal {
	s := w.resting(i)
	if s == nil || side > solid.Right || slices.Contains(s.Scribed, side) || w.in.Fittings[i].In || w.in.Fittings[i].Gives > 0 || w.in.Fittings[i].Make == "" {
		return nil
	}
	axis := int(side) / 2
	long := [2]float64{s.Box.MaxX - s.Box.MinX, s.Box.MaxY - s.Box.MinY}[axis]
	if _, _, short := w.tooShortFor(i, axis, long-by); short || by > long/2 {
		return nil
	}
	return w.drawnIn(i, side, by, [2]string{"shorter", "narrower"}[axis]+", so that it ends at the lining")
}
