package reckon

import (
	"encoding/json"
	"math"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// Move says that a fitting is dragged and turned by so much, or laid against faces.
type Move struct {
	Fitting string  `json:"fitting"`
	DX      float64 `json:"dx"`   // rearwards [mm]
	DY      float64 `json:"dy"`   // to the right [mm]
	DZ      float64 `json:"dz"`   // up [mm]
	Turn    float64 `json:"turn"` // clockwise seen from above [°]
	Snap    Snap    `json:"snap"`
}

// Snap names, for each axis, the face a fitting is laid against, as the drag kit names it: "rear", "galley.rear"; "" for none.
type Snap struct {
	X string `json:"x,omitempty"`
	Y string `json:"y,omitempty"`
	Z string `json:"z,omitempty"`
}

// MovePatch is the merge patch of one or several moves, in the builder's own words; false when a fitting does not exist or has no
// place yet.
func (r *Reckoning) MovePatch(moves ...Move) (tree.Patch, bool) {
	node := r.Written()
	after := node
	for _, m := range moves {
		f, ok := r.Document.Fittings[m.Fitting]
		standing := r.Places.Find(m.Fitting)
		if !ok || standing == nil || !standing.Placed() {
			return tree.Patch{}, false
		}
		place := arrangement.Drag(f, standing.Box, m.DX, m.DY, m.DZ)
		for _, s := range []struct {
			rule *build.AxisRule
			face string
		}{{&place.X, m.Snap.X}, {&place.Y, m.Snap.Y}, {&place.Z, m.Snap.Z}} {
			if s.face != "" && s.rule.Form != build.Between {
				*s.rule = arrangement.SnapTo(s.face)
			}
		}
		for _, raw := range []json.RawMessage{arrangement.PlacePatch(m.Fitting, f.At, place), turnPatch(m.Fitting, f, m.Turn)} {
			patch, err := tree.ParsePatch(raw)
			if err != nil {
				return tree.Patch{}, false
			}
			after = tree.Merge(after, patch)
		}
	}
	return tree.Difference(node, after), true
}

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
