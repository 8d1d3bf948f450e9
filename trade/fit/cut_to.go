package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// cutTo proposes to cut a face of a made thing to the lining that it stands into, where that is as much as one cuts off and it stands into nothing else.
func (w *worker) cutTo(i int, side solid.Side) []finding.Proposal {
	f, s := &w.in.Fittings[i], w.resting(i)
	if w.in.Nudge == nil || s == nil || side == solid.Floor || f.Make == "" || f.In || f.Gives > 0 || slices.Contains(s.Scribed, side) || w.overCut(s.Box, side) > 0 {
		return nil
	}
	for other, by := range w.excesses(s) {
		if solid.Side(other) != side && by > touching {
			return nil
		}
	}
	words := [6]string{"front", "rear", "left", "right", "floor", "roof"}
	faces := []string{words[side]}
	for _, cut := range s.Scribed {
		faces = append(faces, words[cut])
	}
	slices.Sort(faces)
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{f.ID: map[string]any{"scribe": faces}}})
	if err != nil {
		return nil
	}
	face := words[side] + " face"
	if side == solid.Roof {
		face = "top"
	}
	return []finding.Proposal{{Words: fmt.Sprintf("cut the %s of %s to the %s", face, w.name(i), sideWords[side]), Patch: patch}}
}
