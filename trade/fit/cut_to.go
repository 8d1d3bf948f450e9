package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// cutTo proposes to cut faces of a made thing to the lining that they stand into, where that is as much as one cuts off and it stands into nothing else.
func (w *worker) cutTo(i int, sides ...solid.Side) []finding.Proposal {
	f, s := &w.in.Fittings[i], w.resting(i)
	if w.in.Nudge == nil || s == nil || f.Make == "" || f.In || f.Gives > 0 || slices.ContainsFunc(sides, func(side solid.Side) bool {
		return side == solid.Floor || slices.Contains(s.Scribed, side) || w.overCut(s.Box, side) > 0
	}) {
		return nil
	}
	for other, by := range w.excesses(s) {
		if !slices.Contains(sides, solid.Side(other)) && by > touching {
			return nil
		}
	}
	words := [6]string{"front", "rear", "left", "right", "floor", "roof"}
	var faces []string
	for _, cut := range slices.Concat(sides, s.Scribed) {
		faces = append(faces, words[cut])
	}
	slices.Sort(faces)
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{f.ID: map[string]any{"scribe": faces}}})
	if err != nil {
		return nil
	}
	face, to := words[sides[0]]+" face", sideWords[sides[0]]
	switch {
	case len(sides) > 1:
		face, to = "left and right faces", "sides"
	case sides[0] == solid.Roof:
		face = "top"
	}
	return []finding.Proposal{{Words: fmt.Sprintf("cut the %s of %s to the %s", face, w.name(i), to), Patch: patch}}
}
