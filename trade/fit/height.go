package fit

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// height is how high the van is as it is driven, with all that stands on its roof then. Of what only its place is kept it is not known when it comes.
func (w *worker) height() {
	drive := w.mode("drive")
	if !(w.in.Height > 0) || drive == nil {
		return
	}
	top, highest := w.in.OuterRoof, -1
	for i := range drive.Standings {
		s := &drive.Standings[i]
		if f := w.in.Fittings[i]; len(s.Solid) > 0 && !f.Later && (f.Where == "outside" || f.For != "") && s.Box.MaxZ > top {
			top, highest = s.Box.MaxZ, i
		}
	}
	value, words := w.in.Height+(top-w.in.OuterRoof), "nothing on the roof"
	lines := []working.Line{{Symbol: "H", Label: "bare vehicle", Value: w.in.Height, Unit: "mm", From: working.Origin{Pointer: "/vehicle/height"}}}
	if highest >= 0 {
		words = "over " + w.name(highest)
		lines = append(lines, working.Line{
			Symbol: "r", Label: w.name(highest) + " above the roof", Value: top - w.in.OuterRoof, Unit: "mm",
			From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[highest].ID)},
		})
	}
	words += passes(value)
	lines = append(lines, working.Line{Symbol: "h", Label: "overall height", Value: value, Unit: "mm", Sum: "H + r", From: working.Origin{Here: true}})
	w.show(working.Figure{Code: "fit.overall-height", Value: value, Unit: "mm", Label: "Overall height", Words: words}, working.Working{
		Formula: "h = H + r", Lines: lines,
		Source: finding.Source{Text: "the vehicle's own height and the fittings on its roof", Sure: finding.Computed},
		Notes: []string{"The figure for barriers and ferries, as the van is driven: measure it once everything is on. Empty it stands higher on its springs.",
			"Barriers of car parks stand at 1.9 to 3 m in steps of 100 mm; ferries often change their price at 1.85, 2.1, 2.4 and 3 m: from memory, ask there."},
	})
}

// passes says under which barrier a van of this height goes, and which stops it: barriers stand in steps of 100 mm, from memory.
func passes(height float64) string {
	low := math.Floor(height/100) / 10
	if height <= low*1000 {
		low -= 0.1
	}
	return fmt.Sprintf("; passes %.1f m with %.0f mm to spare, not %.1f", low+0.1, (low+0.1)*1000-height, low)
}
