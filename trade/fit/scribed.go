package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// How much of a thing one cuts off to lay it to the lining: up to half its size across that face, and up to 250 mm in any case, for a
// locker under a curved roof or a ledge over a wheel arch. What stands out farther was put there by mistake. Common practice, no source.
const (
	cutShare = 0.5
	cutLeast = 250
)

// overCut is how far a box stands out of a side that it is scribed to; nought as long as that is what one cuts off.
func (w *worker) overCut(b solid.Bounds, side solid.Side) float64 {
	by := w.boxExcess(b, side)
	size := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}[side/2]
	if by <= max(cutLeast, cutShare*size) {
		return 0
	}
	return by
}

// cutAway says whether a thing at rest has a place, but nothing of it is left inside what it is scribed to.
func (s *Standing) cutAway() bool {
	return !s.Moved && len(s.Scribed) > 0 && len(s.Solid) == 0 && !s.Box.Empty()
}

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
