package reckon

import (
	"encoding/json"

	"tumblehome/build/tree"
	"tumblehome/trade/arrangement"
)

// stretch is the patch that moves two opposite faces of a fitting outwards, in the builder's own words.
func (w *stages) stretch(id string, axis int, low, high float64) (json.RawMessage, bool) {
	before := placeable(map[string]thing{id: w.things[id]})[id]
	faces, box, after := [2][2]string{{"front", "rear"}, {"left", "right"}}[axis], w.places.Find(id).Box, before
	for end, by := range [2]float64{-low, high} {
		if by == 0 {
			continue
		}
		if arrangement.Fixed(after, faces[end]) != "" || arrangement.HoldOf(after, axis) == arrangement.HoldsMiddle {
			return nil, false
		}
		after = arrangement.Stretch(after, box, faces[end], by, "")
	}
	out := &tree.Node{Kind: tree.Map}
	patches := []json.RawMessage{arrangement.SizePatch(id, before.Fitting.Size, after.Fitting.Size)}
	if *after.At != *before.At {
		patches = append(patches, arrangement.PlacePatch(id, before.At, *after.At))
	}
	for _, raw := range patches {
		patch, err := tree.ParsePatch(raw)
		if err != nil {
			return nil, false
		}
		out = tree.Merge(out, patch)
	}
	return tree.JSON(out), len(out.Entries) > 0
}
