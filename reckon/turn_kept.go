package reckon

import (
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/trade/arrangement"
)

// Kept is a fitting that ran from face to face and has its length written down, since it is turned itself or something that it ran to is.
type Kept struct {
	Fitting string
	Axis    int
	Length  float64 // [mm]
}

// LengthsKept are those of some moves, by id: what a turn would else stretch or have nothing to turn by.
func (r *Reckoning) LengthsKept(moves ...Move) []Kept {
	_, kept := r.lengthsKept(moves)
	return kept
}

func (r *Reckoning) lengthsKept(moves []Move) (map[string]arrangement.Thing, []Kept) {
	things, all := map[string]arrangement.Thing{}, []Kept(nil)
	turned, along := map[string]bool{}, map[string]bool{} // along: whose faces go elsewhere
	for _, m := range moves {
		if m.Turn == 0 {
			continue
		}
		turned[m.Fitting] = true
		for _, id := range r.carriedBy(m.Fitting) {
			along[id] = along[id] || math.Mod(m.Turn, 180) != 0
		}
	}
	if len(turned) == 0 {
		return nil, nil
	}
	stays := func(p build.Point) bool { return !along[p.Of] }
	for _, id := range build.SortedKeys(r.Document.Fittings) {
		standing := r.Places.Find(id)
		if _, carried := along[id]; standing == nil || !standing.Placed() || carried && !turned[id] {
			continue
		}
		t, written := r.Thing(id), false
		for axis := range 2 {
			if !turned[id] && !runsTo(t, axis, along) {
				continue
			}
			if sized, ok := arrangement.Sized(t, standing.Box, axis, stays); ok {
				b := standing.Box
				t, written = sized, true
				all = append(all, Kept{id, axis, math.Round([2]float64{b.MaxX - b.MinX, b.MaxY - b.MinY}[axis])})
			}
		}
		if written {
			things[id] = t
		}
	}
	return things, all
}

// runsTo says whether a thing runs from or to a face of one of some others.
func runsTo(t arrangement.Thing, axis int, others map[string]bool) bool {
	if t.At == nil {
		return false
	}
	rule := [2]build.AxisRule{t.At.X, t.At.Y}[axis]
	return rule.Form == build.Between && slices.ContainsFunc(rule.Points(), func(p build.Point) bool { return others[p.Of] })
}

// carriedBy are a fitting and all that stands in it or upon it, and in or upon those.
func (r *Reckoning) carriedBy(id string) []string {
	group := []string{id}
	for i := 0; i < len(group); i++ {
		for _, other := range build.SortedKeys(r.Document.Fittings) {
			if f := r.Document.Fittings[other]; (f.In == group[i] || f.Upon == group[i]) && !slices.Contains(group, other) {
				group = append(group, other)
			}
		}
	}
	return group
}
