package fit

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/trade/finding"
)

// cutClear is how far a cut must stay from a rib or bow [mm]: 25 for the frame that is glued about the hole and 5 for the saw; common
// practice, no source.
const cutClear = 30

// cuts finds openings still to be cut so near a rib or bow that the frame about the hole has no place. That a hole cuts a rib is the shell's
// matter.
func (w *worker) cuts() {
	for _, o := range w.in.Openings {
		if o.Made || o.Door || o.In != "" || o.X[0] >= o.X[1] {
			continue
		}
		for _, r := range w.in.Ribs {
			gap := max(r.Face[0]-o.X[1], o.X[0]-r.Face[1])
			if r.On == o.Through && gap >= 0 && gap < cutClear {
				w.reportCut(o, r, gap)
			}
		}
	}
}

func (w *worker) reportCut(o Opening, r Rib, gap float64) {
	way, by := "rearwards", cutClear-gap
	if o.X[0] < r.Face[0] {
		way = "forwards"
	}
	kind := "rib"
	if r.On == "roof" {
		kind = "bow"
	}
	shift := by
	if way == "forwards" {
		shift = -by
	}
	out := finding.Finding{
		Code: "fit.cut", Severity: finding.Close, About: []string{o.pointer(), pointer("shell/ribs", r.ID)},
		Title: fmt.Sprintf("The hole %s is marked only %.0f mm from %s %s", o.ID, gap, kind, r.ID),
		Words: fmt.Sprintf("About a hole there must be %d mm of flat sheet for its frame and the saw. Before cutting, move it %s %s.",
			cutClear, about(by), way),
		Measured: mm(gap), Limit: mm(cutClear),
		Source: finding.Source{Text: "25 mm for the frame and 5 for the saw: common practice, no source", Sure: finding.Practice},
	}
	if w.crowded(o, shift) {
		out.Words += " Then it comes too near the next one on that side: a smaller one is wanted."
		w.find(out)
		return
	}
	x := fmt.Sprintf("%g..%g", math.Round(o.X[0]+shift), math.Round(o.X[1]+shift))
	if patch, err := json.Marshal(map[string]any{"shell": map[string]any{"openings": map[string]any{o.ID: map[string]string{"x": x}}}}); err == nil {
		out.Proposals = []finding.Proposal{{Words: "move the hole " + o.ID + " " + about(by) + " " + way, Patch: patch}}
	}
	w.find(out)
}

// crowded says that an opening moved along so far would come too near another rib.
func (w *worker) crowded(o Opening, by float64) bool {
	return slices.ContainsFunc(w.in.Ribs, func(r Rib) bool {
		return r.On == o.Through && max(r.Face[0]-o.X[1]-by, o.X[0]+by-r.Face[1]) < cutClear-touching
	})
}
