package reckon

import (
	"cmp"
	"encoding/json"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
)

// Move says that a fitting is dragged and turned by so much, laid against faces, or stretched at its own.
type Move struct {
	Fitting string    `json:"fitting"`
	DX      float64   `json:"dx"`   // rearwards [mm]
	DY      float64   `json:"dy"`   // to the right [mm]
	DZ      float64   `json:"dz"`   // up [mm]
	Turn    float64   `json:"turn"` // clockwise seen from above [°]
	Snap    Snap      `json:"snap"`
	Stretch []Stretch `json:"stretch,omitempty"`
}

// Snap names, for each axis, the face a fitting is laid against, as the drag kit names it: "rear", "galley.rear", flush "from
// galley.front"; "" for none.
type Snap struct {
	X string `json:"x,omitempty"`
	Y string `json:"y,omitempty"`
	Z string `json:"z,omitempty"`
}

// Stretch moves one face of a fitting.
type Stretch struct {
	Face string  `json:"face"` // front, rear, left, right, bottom, top
	By   float64 `json:"by"`   // rearwards, to the right, up [mm]
	To   string  `json:"to,omitempty"`
}

// MovePatch is the merge patch of one or several moves, in the builder's own words; false when a fitting does not exist or has no
// place yet. What stands on another of them is not moved twice, what is carried turns along, and what runs from face to face keeps its length where
// it or what it runs to is turned.
func (r *Reckoning) MovePatch(moves ...Move) (tree.Patch, bool) {
	node := r.Written()
	after := node
	wanted := make(map[string][3]float64, len(moves))
	for _, m := range moves {
		wanted[m.Fitting] = [3]float64{m.DX, m.DY, m.DZ}
	}
	own := arrangement.Together(r.Document.Fittings, wanted)
	kept, _ := r.lengthsKept(moves)
	for _, id := range build.SortedKeys(kept) {
		t, was := kept[id], r.Document.Fittings[id]
		for _, raw := range []json.RawMessage{arrangement.PlacePatch(id, was.At, *t.At), arrangement.SizePatch(id, was.Size, t.Fitting.Size)} {
			patch, err := tree.ParsePatch(raw)
			if err != nil {
				return tree.Patch{}, false
			}
			after = tree.Merge(after, patch)
		}
	}
	for _, m := range moves {
		f, ok := r.Document.Fittings[m.Fitting]
		standing := r.Places.Find(m.Fitting)
		if !ok || standing == nil || !standing.Placed() {
			return tree.Patch{}, false
		}
		before, written := kept[m.Fitting]
		if !written {
			before = r.Thing(m.Fitting)
		}
		place := arrangement.DragPoints(before.Fitting, standing.Box, own[m.Fitting])
		r.snapped(&place, m)
		patches := []json.RawMessage{arrangement.PlacePatch(m.Fitting, before.At, place), turnPatch(m.Fitting, f, m.Turn)}
		if len(m.Stretch) > 0 {
			patches = append(patches, r.stretchPatches(m, before, place)...)
		}
		for _, raw := range patches {
			patch, err := tree.ParsePatch(raw)
			if err != nil {
				return tree.Patch{}, false
			}
			after = tree.Merge(after, patch)
		}
		after = tree.Merge(after, r.turnsAlong(m, moves))
	}
	return tree.Difference(node, after), true
}

// snapped writes the faces a fitting was laid against into its rules. A face that would make it stand on itself is not written: then the
// length that was dragged stands.
func (r *Reckoning) snapped(place *build.Place, m Move) {
	for _, s := range []struct {
		rule *build.AxisRule
		face string
	}{{&place.X, m.Snap.X}, {&place.Y, m.Snap.Y}, {&place.Z, m.Snap.Z}} {
		rule, ok := arrangement.SnapTo(s.face)
		if ok && s.rule.Form != build.Between && !arrangement.StandsOn(r.Document.Fittings, rule.A.Of, m.Fitting) {
			*s.rule = rule
		}
	}
}

// stretchPatches are the patches of the faces moved, one face after the other.
func (r *Reckoning) stretchPatches(m Move, before arrangement.Thing, place build.Place) []json.RawMessage {
	box := r.Places.Find(m.Fitting).Box
	after := before
	after.At = &place
	for _, s := range m.Stretch {
		to := s.To
		if rule, ok := arrangement.SnapTo(to); !ok || arrangement.StandsOn(r.Document.Fittings, rule.A.Of, m.Fitting) {
			to = ""
		}
		if arrangement.Fixed(after, s.Face) == "" {
			after = arrangement.Stretch(after, box, s.Face, s.By, to)
		}
	}
	return []json.RawMessage{
		arrangement.PlacePatch(m.Fitting, before.At, *after.At), arrangement.SizePatch(m.Fitting, before.Fitting.Size, after.Fitting.Size),
	}
}

// WhyNot says in words why a move cannot be made, or "".
func (r *Reckoning) WhyNot(m Move) string {
	t := r.Thing(m.Fitting)
	if arrangement.IsLocked(t.Fitting) {
		return "it is locked"
	}
	if m.Turn != 0 {
		if why := arrangement.FixedTurn(t); why != "" {
			return why
		}
	}
	for _, s := range m.Stretch {
		if why := arrangement.Fixed(t, s.Face); why != "" {
			return why
		}
	}
	return ""
}

// Thing is a fitting with the size and the board that the catalogue or its kind give it.
func (r *Reckoning) Thing(id string) arrangement.Thing {
	f, ok := r.Document.Fittings[id]
	if !ok {
		return arrangement.Thing{}
	}
	one := &build.Document{Fittings: map[string]build.Fitting{id: f}}
	return placeable(completed(one, catalogue.Builtin().Overlay(r.Document.Catalogue)))[id]
}

// usualFlange is the width of a rib's face where nobody measured it [mm]: common practice, no source.
const usualFlange = 50.0

// DragKit is what a page needs to predict a drag in a mode; false where there is no such mode or no room.
func (r *Reckoning) DragKit(mode string) (arrangement.Kit, bool) {
	places := r.Places.Mode(mode)
	if places == nil || r.Lining.Room == nil || r.Body == nil {
		return arrangement.Kit{}, false
	}
	ribs := []arrangement.KitRib{}
	for _, surface := range []string{"left", "right", "roof"} {
		for _, one := range r.Body.Ribs(surface) {
			face := cmp.Or(one.Flange.Float(), usualFlange)
			ribs = append(ribs, arrangement.KitRib{ID: one.ID, X: one.X.Float(), Half: face / 2, On: surface})
		}
	}
	things := completed(r.Document, catalogue.Builtin().Overlay(r.Document.Catalogue))
	kit := arrangement.NewKit(places, r.Lining.Room, placeable(things), ribs)
	kit.Closed = len(r.Document.Lining.Front) > 0
	kit.Limits = arrangement.KitLimits(fit.LimitsOf(r.Lining.Room))
	for i := range kit.Fittings {
		kit.Fittings[i].Gives = things[kit.Fittings[i].ID].softness()
	}
	return kit, true
}
