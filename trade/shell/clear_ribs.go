package shell

import (
	"encoding/json"
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// frame is how far from a rib or bow a hole is proposed [mm]: 25 for the frame that is glued about it and 5 for the saw; common practice, no source.
const frame = 30

// clear says where an opening is clear of ribs, if it fits between any two, and proposes the nearest places there are forwards and rearwards.
func (b *Body) clear(o Opening, along, across [2]float64) (words string, proposals []finding.Proposal) {
	need := along[1] - along[0]
	for _, off := range [2]float64{frame, 0} {
		places := b.betweenRibs(o, along, across, off)
		for _, at := range places {
			proposals = append(proposals, moved(o, along[0], at, need))
		}
		if len(places) > 0 {
			return fmt.Sprintf("Moved to x %.0f..%.0f it is clear.", places[0], places[0]+need), proposals
		}
	}
	return fmt.Sprintf("Nowhere between the ribs is there room for %s.", mm(need)), nil
}

// betweenRibs are where an opening may begin so far off every rib and clear of the other openings: the nearest place forwards and the nearest
// rearwards, the nearer first.
func (b *Body) betweenRibs(o Opening, along, across [2]float64, off float64) []float64 {
	need := along[1] - along[0]
	edges := []float64{b.Start()}
	for _, r := range b.Ribs(o.Through) {
		edges = append(edges, float64(r.X)-r.face()/2, float64(r.X)+r.face()/2)
	}
	edges = append(edges, b.End())
	forwards, rearwards := math.Inf(-1), math.Inf(1)
	for i := 0; i+1 < len(edges); i += 2 {
		from, to := math.Ceil(edges[i]+off), math.Floor(edges[i+1]-off-need)
		at := min(max(along[0], from), to)
		place := [2]float64{at, at + need}
		if to < from || b.outside(o, place, across) > 1 || b.overOther(o, place, across) {
			continue
		}
		if at < along[0] {
			forwards = max(forwards, at)
		} else {
			rearwards = min(rearwards, at)
		}
	}
	var out []float64
	for _, at := range [2]float64{forwards, rearwards} {
		if !math.IsInf(at, 0) {
			out = append(out, at)
		}
	}
	if len(out) == 2 && rearwards-along[0] < along[0]-forwards {
		out[0], out[1] = out[1], out[0]
	}
	return out
}

// overOther says whether an opening at a place would lie over another one.
func (b *Body) overOther(o Opening, along, across [2]float64) bool {
	for _, p := range b.openings {
		a, c, sized := p.window()
		if p.ID != o.ID && p.Through == o.Through && p.In != o.ID && sized && overlap(along, a) > 1 && overlap(across, c) > 1 {
			return true
		}
	}
	return false
}

// moved proposes to have an opening begin elsewhere.
func moved(o Opening, from, to, long float64) finding.Proposal {
	way := "rearwards"
	if to < from {
		way = "forwards"
	}
	patch, _ := json.Marshal(map[string]any{"shell": map[string]any{"openings": map[string]any{o.ID: map[string]any{"x": fmt.Sprintf("%g..%g", to, to+long)}}}})
	return finding.Proposal{Words: fmt.Sprintf("move the hole %s %.0f mm %s, between two ribs", o.ID, math.Abs(to-from), way), Patch: patch}
}
