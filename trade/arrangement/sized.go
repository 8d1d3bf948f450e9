package arrangement

import (
	"math"

	"tumblehome/build"
)

// Sized is a thing that runs from face to face on an axis, with the length it has now written down [whole mm]: it stands from then on at the first
// of its two ends that stays, or at the first of both. box is where it stands now. False for what does not run so, or whose size is not its own to
// say: bought things, and those that stand askew.
func Sized(t Thing, box Box, axis int, stays func(build.Point) bool) (Thing, bool) {
	own, square := ownAxis(t, axis)
	if t.At == nil || t.At.Undecided || t.Buy != "" || t.For != "" || !square || axis == 2 || HoldOf(t, axis) != HoldsEnds {
		return t, false
	}
	place := *t.At
	rule := [2]*build.AxisRule{&place.X, &place.Y}[axis]
	t.At = &place
	switch before := *rule; {
	case before.Form == build.LeftOut:
		*rule = build.AxisRule{Form: build.Against, A: build.Point{Face: [2]string{"front", "left"}[axis]}}
	case stays(before.A) || !stays(before.B):
		*rule = endAt(t, rule, before.A, axis, HoldsLow)
	default:
		*rule = endAt(t, rule, before.B, axis, HoldsHigh)
	}
	t.Size[own] = math.Round(faceOf(box, side(2*axis+1)) - faceOf(box, side(2*axis)))
	t.Fitting.Size = withSize(t.Fitting.Size, own, t.Size[own])
	return t, true
}

// endAt is the shortest rule by which one end of a thing stands at a point; rule is where the rule of that axis is said.
func endAt(t Thing, rule *build.AxisRule, p build.Point, axis int, end Hold) build.AxisRule {
	form := map[Hold]build.AxisForm{HoldsLow: build.From, HoldsHigh: build.To}[end]
	if p.Face == "" && end == HoldsLow {
		form = build.LowAt
	}
	if *rule = (build.AxisRule{Form: build.Against, A: p}); p.Face != "" && HoldOf(t, axis) == end {
		form = build.Against
	}
	return build.AxisRule{Form: form, A: p}
}
