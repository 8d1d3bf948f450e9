package fit

import (
	"encoding/json"
	"fmt"

	"tumblehome/trade/finding"
)

// askMounting tells of a seat with belts of which nobody says how it is held: what holds it holds who sits there in a crash.
func (w *worker) askMounting(i int) {
	patch, _ := json.Marshal(map[string]any{"fittings": map[string]any{w.in.Fittings[i].ID: map[string]string{"held": "bolted"}}})
	w.find(finding.Finding{
		Code: "fit.seat.mounting", Severity: finding.Close, Mode: "drive", About: []string{pointer("fittings", w.in.Fittings[i].ID)},
		Title:     fmt.Sprintf("Nobody has said how %s, a seat with belts, is held", w.name(i)),
		Words:     "In a crash its mounting holds the seat and everybody belted to it. It is bolted through the floor to a tested frame, never screwed to wood.",
		Source:    finding.Source{Text: "seats and belt anchorages are type-approved with their mounting (UN Regulations 14 and 17, from memory)", Sure: finding.Memory},
		Caution:   "Have it mounted by a workshop with a tested mounting, and have that certified, before anybody rides on it.",
		Proposals: []finding.Proposal{{Words: "plan it bolted: a workshop mounts it with a tested mounting and certifies that", Patch: patch}},
	})
}
