package fit

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// searchStep is how far apart places for what is brought back to the van are looked at [mm].
const searchStep = 50

// saidInside proposes to say of a thing that lies in the room that it is not outside.
func (w *worker) saidInside(i int) []finding.Proposal {
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{w.in.Fittings[i].ID: map[string]any{"where": nil}}})
	if err != nil {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("say that %s stands inside the van", w.name(i)), Patch: patch}}
}

// bringIn proposes to bring what is astray to the nearest free place on the roof or under the floor, tried.
func (w *worker) bringIn(i int, s *Standing) []finding.Proposal {
	if w.in.Nudge == nil {
		return nil
	}
	by, ok := w.nearestFree(i, s.Box)
	if !ok {
		return nil
	}
	sub := w.after(attempt{thing: i, by: by})
	sub.outdoors()
	self := pointer("fittings", w.in.Fittings[i].ID)
	if slices.ContainsFunc(sub.result.Findings, func(g finding.Finding) bool { return slices.Contains(g.About, self) }) {
		return nil
	}
	patch, ok := w.in.Nudge(w.in.Fittings[i].ID, by[0], by[1], by[2])
	if !ok {
		return nil
	}
	words := fmt.Sprintf("lay %s on the roof, where it is free", w.name(i))
	if w.in.Fittings[i].Where == "under" {
		words = fmt.Sprintf("hang %s under the floor, where it is free", w.name(i))
	}
	return []finding.Proposal{{Words: words, Patch: patch}}
}

// nearestFree is the shortest way along and across for a box to a free place on the roof or under the floor, in whole millimetres.
func (w *worker) nearestFree(i int, b solid.Bounds) (by [3]float64, ok bool) {
	up := w.ontoVan(i, b)
	b = b.Moved(0, 0, up)
	half := w.in.Van.MaxY - nearlyAtTop - (b.MaxY-b.MinY)/2
	best := math.Inf(1)
	for _, x := range spread(w.in.Room.Front(), w.in.Room.Rear()-(b.MaxX-b.MinX), searchStep) {
		for _, y := range spread(-half, half, searchStep) {
			dx, dy := math.Round(x-b.MinX), math.Round(y-(b.MinY+b.MaxY)/2)
			if half >= math.Abs((b.MinY+b.MaxY)/2) && math.Abs(dy) < searchStep {
				dy = 0 // across it is where it may be
			}
			if far := math.Abs(dx) + math.Abs(dy); far < best && w.freeOutside(i, b.Moved(dx, dy, 0)) {
				best, by, ok = far, [3]float64{dx, dy, up}, true
			}
		}
	}
	return by, ok
}

// ontoVan is how far up or down a box must go to lie on the roof or hang under the floor; nought if it is at that height.
func (w *worker) ontoVan(i int, b solid.Bounds) float64 {
	if w.in.Fittings[i].Where == "under" {
		if below := w.in.Underside - b.MaxZ; below < 0 || below > hungBelow {
			return math.Floor(below)
		}
		return 0
	}
	if above := b.MinZ - w.in.OuterRoof; above < -nearlyAtTop || above > racked {
		return math.Ceil(-above)
	}
	return 0
}

// freeOutside says whether nothing else is on the van or under it where a box would be: no fitting, no wheel, no opening of the roof or the floor.
func (w *worker) freeOutside(i int, b solid.Bounds) bool {
	through := map[string]string{"outside": "roof", "under": "floor"}[w.in.Fittings[i].Where]
	if slices.ContainsFunc(w.in.Openings, func(o Opening) bool { return o.Through == through && o.meets(b) }) {
		return false
	}
	if slices.ContainsFunc(w.in.Wheels, func(wheel Wheel) bool { return wheel.Box.Meets(b) }) {
		return false
	}
	for j := range w.in.Fittings {
		if s := w.resting(j); j != i && s != nil && w.in.Fittings[j].Where == w.in.Fittings[i].Where && s.Box.Meets(b) {
			return false
		}
	}
	return true
}
