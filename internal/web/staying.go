package web

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// staying is the rule by which a fitting stays where it stands on one axis (x, y or z) in a document that has lost what it stood against;
// false where it stands nowhere.
func (s *state) staying(rest *tree.Node, id, axis string) (build.AxisRule, bool) {
	f, n := s.Doc.Fittings[id], slices.Index([]string{"x", "y", "z"}, axis)
	standing := s.Places.Find(id)
	if n < 0 || f.At == nil || standing == nil || !standing.Placed() {
		return build.AxisRule{}, false
	}
	b, from := standing.Box, s.countsFrom(f)[n]
	low := build.Point{Plus: wholeLength([3]float64{b.MinX, b.MinY, b.MinZ}[n] - from)}
	high := build.Point{Plus: wholeLength([3]float64{b.MaxX, b.MaxY, b.MaxZ}[n] - from)}
	rule := [3]build.AxisRule{f.At.X, f.At.Y, f.At.Z}[n]
	if rule.Form != build.Between {
		return build.AxisRule{Form: build.LowAt, A: low}, true
	}
	lost := func(p build.Point) bool { return p.Of != "" && rest.At(tree.PointerTo("fittings", p.Of)) == nil }
	if lost(rule.A) {
		rule.A = low
	}
	if lost(rule.B) {
		rule.B = high
	}
	return rule, true
}

func wholeLength(mm float64) quantity.Length { return quantity.Length(math.Round(mm)) }

// countsFrom is where the lengths of a fitting's place are counted from: in what carries it from its front, its middle and its floor or top.
func (s *state) countsFrom(f build.Fitting) [3]float64 {
	host := s.Places.Find(cmp.Or(f.In, f.Upon))
	if host == nil {
		return [3]float64{}
	}
	b := host.Box
	if f.Upon != "" {
		return [3]float64{b.MinX, (b.MinY + b.MaxY) / 2, b.MaxZ}
	}
	board := s.Thing(f.In).Board
	return [3]float64{b.MinX + board, (b.MinY + b.MaxY) / 2, b.MinZ + board}
}

// stay writes where a fitting stands as a length, on an axis on which it stood against what is taken out.
func (s *state) stay(doc *tree.Node, steps []string) *tree.Node {
	rule, ok := s.staying(doc, steps[1], steps[3])
	if !ok {
		return set(tree.Remove(doc, tree.PointerTo(steps[:3]...)), steps[:3], undecidedPlace)
	}
	return set(doc, steps[:4], rule.String())
}
