package fit

import (
	"fmt"
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// worktop judges how high one works at what one cooks at, where one can nearly stand.
func (w *worker) worktop(mode *Mode, at int, p Person) {
	top, floor := mode.Standings[at].Box.MaxZ, w.in.Room.Floor()
	for i := range mode.Standings {
		if s := &mode.Standings[i]; w.in.Fittings[i].Make == "worktop" && w.carries(at, i) && len(s.Solid) > 0 {
			top = max(top, s.Box.MaxZ)
		}
	}
	high, need := top-floor, float64(people.Of(quantity.Length(p.Stature)).WorktopHeight())
	if p.sitsOnly(w.before(mode, at).under - floor) {
		return
	}
	source := finding.Source{Text: "elbow at 63 % of stature and 25 of shoes, less 125 (from memory; common practice)", Sure: finding.Memory}
	w.show(working.Figure{
		Code: "fit.worktop." + p.ID, Value: high, Unit: "mm", Label: "Height of the worktop, " + p.name(), Words: fmt.Sprintf("%s; about %.0f suits best", w.name(at), need),
	}, working.Working{
		Formula: "top of the worktop above the finished floor", Source: source,
		Lines: []working.Line{{Symbol: "h", Label: "height", Value: high, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f", top, floor), From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[at].ID)}}},
	})
	if math.Abs(high-need) <= worktopOff {
		return
	}
	word := "low"
	if high > need {
		word = "high"
	}
	w.find(finding.Finding{
		Code: "fit.worktop", Severity: finding.Note, Mode: mode.Name, About: []string{pointer("fittings", w.in.Fittings[at].ID), pointer("people", p.ID)},
		Title:    fmt.Sprintf("%s is %s for %s to work at", w.name(at), word, p.name()),
		Words:    fmt.Sprintf("It is %s above the floor; about %s suits best.", about(high), about(need)),
		Measured: mm(high), Limit: mm(need), Source: source, Proposals: w.higher(at, need-high),
	})
}
