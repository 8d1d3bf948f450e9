package arrangement

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/quantity"
)

// LeastSize is how small dragging makes a thing along any axis [mm]: less is typed, not dragged.
const LeastSize = 50

// Hold says which of its faces a thing keeps where they are when its size on an axis changes.
type Hold string

const (
	HoldsLow    Hold = "low"    // the forward, left or lower face: a number, `from`, or a face before it
	HoldsHigh   Hold = "high"   // the other one: `to`, or a face behind it
	HoldsMiddle Hold = "middle" // `mid`
	HoldsEnds   Hold = "ends"   // `..`, or what fills its space: each face has a place of its own
)

// HoldOf is what the rule of a thing on an axis holds on to.
func HoldOf(t Thing, axis int) Hold {
	r, _ := rulesOf(t.At)
	rule := r[axis]
	switch rule.Form {
	case build.LeftOut:
		switch {
		case axis != 2:
			return HoldsEnds
		case t.Where == "under" || hangsFromRoof(&t) && t.In+t.Upon == "":
			return HoldsHigh
		}
		return HoldsLow
	case build.Against:
		inside := rule.A.Of == "" && t.Where != "outside"
		if high(sideOf[rule.A.Face]) == inside {
			return HoldsHigh
		}
		return HoldsLow
	case build.To:
		return HoldsHigh
	case build.Mid:
		return HoldsMiddle
	case build.Between:
		return HoldsEnds
	}
	return HoldsLow
}

// Fixed says in words why a face of a thing (front, rear, left, right, bottom, top) cannot be stretched, or "" where it can.
func Fixed(t Thing, face string) string {
	axis := axisOf(sideOf[face])
	own, square := ownAxis(t, axis)
	switch {
	case t.Buy != "":
		return "it is bought and comes in one size"
	case t.For != "":
		return "the opening it belongs to gives its size"
	case t.At == nil || t.At.Undecided:
		return "it has no place yet"
	case !square:
		return fmt.Sprintf("it stands turned by %s: turn it straight first, or type its size", t.Turn)
	case slices.ContainsFunc(t.Scribe, func(s string) bool { return sideOf[s] == sideOf[face] }):
		return "its " + face + " face is cut to the lining and ends where that is"
	case t.Board > 0 && math.Abs(t.Size[own]-t.Board) < 0.5 && HoldOf(t, axis) != HoldsEnds:
		return "it is as thick as its board"
	}
	return ""
}

// FixedTurn says in words why a thing cannot be turned, or "" where it can. What runs from face to face is turned with its length of now, as Sized
// writes it down.
func FixedTurn(t Thing) string {
	switch {
	case t.For != "":
		return "the opening it belongs to gives the way it stands"
	case t.At == nil || t.At.Undecided:
		return "it has no place yet"
	case (t.Buy != "" || t.Turn != nil && math.Mod(t.Turn.Float(), 90) != 0) && (HoldOf(t, 0) == HoldsEnds || HoldOf(t, 1) == HoldsEnds):
		return "it runs from face to face: say one face it stands against, and how long it is, first"
	}
	return ""
}

// ownAxis is the axis of the thing itself that lies along an axis of the document, and whether it stands square to it.
func ownAxis(t Thing, axis int) (own int, square bool) {
	if t.Turn == nil || axis == 2 {
		return axis, true
	}
	quarters := t.Turn.Float() / 90
	if math.Abs(quarters-math.Round(quarters)) > 1e-9 {
		return axis, false
	}
	if int64(math.Round(quarters))%2 != 0 {
		return 1 - axis, true
	}
	return axis, true
}

// Stretch is a thing with one face moved by so much [mm, plus rearwards, to the right, up], in the builder's own words: the face that
// its rule holds stays, `mid` keeps its middle, an end of `..` moves alone. Moving the face it stands against changes how far from it
// that is. to names a face that the moved one is laid against, where the rule can say so: only the ends of `..` can. box is where it
// stands now. It gets no smaller than LeastSize, and nothing is stretched through a surface. Results are in whole millimetres.
func Stretch(t Thing, box Box, face string, by float64, to string) Thing {
	which, axis := sideOf[face], axisOf(sideOf[face])
	place := *t.At
	rule := [3]*build.AxisRule{&place.X, &place.Y, &place.Z}[axis]
	outwards := 1.0
	if !high(which) {
		outwards = -1
	}
	long := faceOf(box, side(2*axis+1)) - faceOf(box, side(2*axis))
	by = outwards * max(by*outwards, min(0, LeastSize-long))
	grow := by * outwards
	switch hold := HoldOf(t, axis); {
	case hold == HoldsEnds:
		stretchEnd(t, rule, which, by, to)
		t.At = &place
		return t
	case hold == HoldsMiddle:
		grow = max(2*grow, min(0, LeastSize-long))
	case (hold == HoldsHigh) == high(which): // the face it holds
		if rule.Form == build.LeftOut {
			*rule = unsaid(t.Fitting, box, axis)
		}
		before := rule.A.Plus
		rule.A.Plus = dragged(before, by)
		if rule.Form == build.Against && rule.A.Of == "" && t.Where != "outside" {
			rule.A.Plus = notThrough(rule.A)
		}
		grow = (rule.A.Plus - before).Float() * outwards
	}
	own, _ := ownAxis(t, axis)
	t.At = &place
	t.Size[own] = math.Round(t.Size[own] + grow)
	t.Fitting.Size = withSize(t.Fitting.Size, own, t.Size[own])
	return t
}

// stretchEnd moves one end of `..`; what fills its space gets ends to be moved.
func stretchEnd(t Thing, rule *build.AxisRule, which side, by float64, to string) {
	if rule.Form == build.LeftOut {
		faces := [2][2]string{{"front", "rear"}, {"left", "right"}}[axisOf(which)]
		*rule = build.AxisRule{Form: build.Between, A: build.Point{Face: faces[0]}, B: build.Point{Face: faces[1]}}
	}
	end := &rule.A
	if high(which) {
		end = &rule.B
	}
	if against, ok := SnapTo(to); ok && to != "" {
		*end = against.A
		return
	}
	end.Plus = dragged(end.Plus, by)
	if end.Of == "" && end.Face != "" && high(sideOf[end.Face]) == high(which) && t.Where != "outside" {
		end.Plus = notThrough(*end)
	}
}

// withSize is a size with one axis said anew.
func withSize(before *build.Size, axis int, v float64) *build.Size {
	size := build.Size{}
	if before != nil {
		size = *before
	}
	length := quantity.Length(v)
	*[3]**quantity.Length{&size.X, &size.Y, &size.Z}[axis] = &length
	return &size
}

// SizePatch is the merge patch that gives a fitting its new size, with only the axes that changed.
func SizePatch(id string, before, after *build.Size) json.RawMessage {
	axes := func(s *build.Size) [3]*quantity.Length {
		if s == nil {
			return [3]*quantity.Length{}
		}
		return [3]*quantity.Length{s.X, s.Y, s.Z}
	}
	was, size := axes(before), map[string]any{}
	for axis, now := range axes(after) {
		if now != nil && (was[axis] == nil || *was[axis] != *now) {
			size[[3]string{"x", "y", "z"}[axis]] = now.Float()
		}
	}
	if len(size) == 0 {
		return json.RawMessage("{}")
	}
	return fittingPatch(id, "size", size)
}
