package arrangement

import (
	"encoding/json"
	"math"

	"tumblehome/build"
	"tumblehome/quantity"
)

// Drag is where a fitting stands after it was dragged by so much [mm], in the builder's own words: a rule with a face keeps the
// face and changes what is added to it, a number stays a number, `mid` and `..` stay what they are. What stands against a surface
// is not dragged through it. box is where the fitting stands now; it is used on axes on which nothing is said. Results are in whole
// millimetres.
func Drag(f build.Fitting, box Box, dx, dy, dz float64) build.Place {
	return DragPoints(f, box, [3][2]float64{{dx, dx}, {dy, dy}, {dz, dz}})
}

// DragPoints is Drag with a way of its own for each end of `..`, as Together gives it.
func DragPoints(f build.Fitting, box Box, by [3][2]float64) build.Place {
	place := build.Place{}
	if f.At != nil {
		place = *f.At
	}
	place.Undecided = false
	for axis, d := range by {
		rule := [3]*build.AxisRule{&place.X, &place.Y, &place.Z}[axis]
		if d[0] == 0 && (d[1] == 0 || rule.Form != build.Between) {
			continue
		}
		if rule.Form == build.LeftOut {
			*rule = unsaid(f, box, axis)
		}
		rule.A.Plus = dragged(rule.A.Plus, d[0])
		if rule.Form == build.Between {
			rule.B.Plus = dragged(rule.B.Plus, d[1])
		}
		if rule.Form == build.Against && rule.A.Of == "" && f.Where != "outside" {
			rule.A.Plus = notThrough(rule.A)
		}
	}
	return place
}

func dragged(plus quantity.Length, d float64) quantity.Length {
	return quantity.Length(math.Round(plus.Float() + d))
}

// notThrough is what may be added to a face of the frame without passing it.
func notThrough(p build.Point) quantity.Length {
	if high(sideOf[p.Face]) {
		return min(0, p.Plus)
	}
	return max(0, p.Plus)
}

// unsaid puts into words where a fitting stands on an axis on which nothing was said.
func unsaid(f build.Fitting, box Box, axis int) build.AxisRule {
	if rule := unsaidSurface(f, axis); rule.Form != build.LeftOut {
		return rule
	}
	return build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length(faceOf(box, side(2*axis)))}}
}

// unsaidSurface is what a fitting stands on or hangs from when nothing is said of its height.
func unsaidSurface(f build.Fitting, axis int) build.AxisRule {
	if axis != 2 || f.For != "" {
		return build.AxisRule{}
	}
	face := "floor"
	if f.Where == "outside" || f.Where == "under" || hangsFromRoof(&Thing{Fitting: f}) {
		face = "roof"
	}
	return build.AxisRule{Form: build.Against, A: build.Point{Face: face}}
}

// SnapTo is the rule that lays a fitting against a face, as a kit names it (rear, galley.rear), flush with one (from galley.front, to
// galley.rear), or with its middle on a line (mid 0); false for what is no such rule.
func SnapTo(face string) (build.AxisRule, bool) {
	rule, err := build.ParseAxisRule(face)
	return rule, err == nil && rule.Form != build.Between && rule.Form != build.LowAt
}

// PlacePatch is the merge patch that gives a fitting its new place, with only the axes that changed.
func PlacePatch(id string, before *build.Place, after build.Place) json.RawMessage {
	was := build.Place{Undecided: true}
	if before != nil {
		was = *before
	}
	at := map[string]any{}
	for _, axis := range []struct {
		name     string
		was, now build.AxisRule
	}{{"x", was.X, after.X}, {"y", was.Y, after.Y}, {"z", was.Z, after.Z}} {
		switch {
		case axis.now == axis.was || axis.now.Form == build.LeftOut && was.Undecided:
		case axis.now.Form == build.LeftOut:
			at[axis.name] = nil
		case axis.now.Form == build.LowAt:
			at[axis.name] = axis.now.A.Plus.Float()
		default:
			at[axis.name] = axis.now.String()
		}
	}
	return fittingPatch(id, "at", at)
}

// Lengthen is the merge patch that makes a fitting longer along x (axis 0), y or z, and whether the document gives it a size or a
// far end there that can be changed.
func Lengthen(id string, f build.Fitting, axis int, by float64) (json.RawMessage, bool) {
	name := [3]string{"x", "y", "z"}[axis]
	if r, _ := rulesOf(f.At); r[axis].Form == build.Between {
		if f.Turn != nil && *f.Turn != 0 || r[axis].B.Face != "" && r[axis].B.Of == "" {
			return nil, false
		}
		r[axis].B.Plus = dragged(r[axis].B.Plus, by)
		return fittingPatch(id, "at", map[string]any{name: r[axis].String()}), true
	}
	if f.Turn != nil && *f.Turn != 0 || f.Size == nil || f.Make == "" {
		return nil, false
	}
	size := [3]*quantity.Length{f.Size.X, f.Size.Y, f.Size.Z}[axis]
	if size == nil {
		return nil, false
	}
	return fittingPatch(id, "size", map[string]any{name: dragged(*size, by).Float()}), true
}

// fittingPatch sets one key of a fitting. It cannot fail: texts, numbers and nothing are all it holds. Patches are made by the hundred while
// something is dragged, so only what varies is put through the encoder.
func fittingPatch(id, key string, value map[string]any) json.RawMessage {
	name, _ := json.Marshal(id)
	to, _ := json.Marshal(value)
	return json.RawMessage(`{"fittings":{` + string(name) + `:{"` + key + `":` + string(to) + `}}}`)
}
