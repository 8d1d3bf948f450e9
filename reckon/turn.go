package reckon

import (
	"encoding/json"
	"maps"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// turnPatch turns a fitting further; a full turn back to straight deletes the word.
func turnPatch(id string, f build.Fitting, by float64) json.RawMessage {
	if by == 0 {
		return json.RawMessage("{}")
	}
	angle := math.Mod(valueOf(f.Turn).Float()+by, 360)
	var value any
	if angle != 0 {
		value = quantity.Angle(angle).String()
	}
	patch, _ := json.Marshal(map[string]any{"fittings": map[string]any{id: map[string]any{"turn": value}}})
	return patch
}

// turnsAlong is what else turns with a fitting that is turned by whole quarters: what it carries, with its size and place, its own moves, and the
// heads of those who lie on any of them. What is itself among the moves goes as those say.
func (r *Reckoning) turnsAlong(m Move, moves []Move) tree.Patch {
	quarters := int(math.Round(math.Mod(m.Turn+360, 360) / 90))
	if quarters == 0 || math.Mod(m.Turn, 90) != 0 {
		return tree.Patch{}
	}
	doc := *r.Document
	doc.Fittings, doc.Modes = maps.Clone(doc.Fittings), maps.Clone(doc.Modes)
	doc.Fittings[m.Fitting] = arrangement.OwnMovesTurned(doc.Fittings[m.Fitting], quarters)
	group := []string{m.Fitting}
	for i := 0; i < len(group); i++ {
		for _, id := range build.SortedKeys(r.Document.Fittings) {
			f := r.Document.Fittings[id]
			own := slices.ContainsFunc(moves, func(o Move) bool { return o.Fitting == id && o.Turn != 0 })
			if (f.In == group[i] || f.Upon == group[i]) && !own && !slices.Contains(group, id) {
				group = append(group, id)
			}
		}
	}
	for _, id := range group[1:] {
		if standing := r.Places.Find(id); standing != nil && standing.Placed() {
			doc.Fittings[id] = r.turnedAlong(id, group, quarters)
		}
	}
	for name, mode := range doc.Modes {
		mode.People = maps.Clone(mode.People)
		for who, pose := range mode.People {
			if slices.Contains(group, pose.Lies) {
				pose.Head = arrangement.FaceTurned(pose.Head, quarters)
				mode.People[who] = pose
			}
		}
		doc.Modes[name] = mode
	}
	return tree.Difference(r.Written(), build.Encode(&doc))
}

// turnedAlong is a fitting after what carries it was turned by so many quarters.
func (r *Reckoning) turnedAlong(id string, group []string, quarters int) build.Fitting {
	t := r.Thing(id)
	host, box := r.Places.Find(t.In+t.Upon).Box, r.Places.Find(id).Box
	inset := 0.0
	if t.In != "" {
		inset = r.Thing(t.In).Board
	}
	wide, long := host.MaxY-host.MinY-2*inset, host.MaxX-host.MinX-2*inset
	q := arrangement.Quarter{
		Wide: wide, Front: host.MinX + inset, Mid: (host.MinY + host.MaxY) / 2, Turns: func(id string) bool { return slices.Contains(group, id) },
	}
	for range quarters {
		t.Fitting = q.Carried(t, box)
		if t.Buy == "" {
			t.Size[0], t.Size[1] = t.Size[1], t.Size[0]
		}
		wide, long = long, wide
		q.Wide = wide
	}
	return t.Fitting
}
