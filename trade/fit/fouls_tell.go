package fit

import (
	"fmt"
	"slices"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func (w *worker) reportFoul(f foul, modeName string, with map[[2]int][]int) {
	severity, how := finding.Fault, ""
	if f.way.Depth <= w.in.Error {
		severity, how = finding.Close, " That is within what the body was read to: try it with a piece of cardboard."
	}
	when := ""
	if modeName != "" {
		when = fmt.Sprintf(" in the mode %q", modeName)
	}
	a, b := w.in.Fittings[f.a], w.in.Fittings[f.b]
	out := finding.Finding{
		Code: "fit.foul", Severity: severity, About: []string{pointer("fittings", a.ID), pointer("fittings", b.ID)}, Mode: modeName,
		Title:    fmt.Sprintf("%s and %s overlap by %s%s", w.name(f.a), w.name(f.b), about(f.way.Depth), when),
		Words:    "Both cannot be there. Neither gets clear of the other within the van by going straight along, across or up: one must be smaller, or elsewhere." + how,
		Measured: mm(f.way.Depth), Limit: mm(touching),
		Source: finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed},
	}
	out.Words, out.About = out.Words+w.inItAsWell(f, with), append(out.About, w.pointersTo(with[[2]int{f.a, f.b}])...)
	ways := w.freeWays(f, modeName)
	if len(ways) > 0 {
		v := ways[0].way
		out.Words = fmt.Sprintf("Both cannot be there. The shortest way clear is to move %s %s.%s%s",
			w.name(ways[0].thing), wayWords(away(v.X*v.Depth), away(v.Y*v.Depth), away(v.Z*v.Depth)), how, w.inItAsWell(f, with))
	}
	for _, free := range ways {
		v := free.way
		out.Proposals = append(out.Proposals, w.nudge(free.thing, v.X*v.Depth, v.Y*v.Depth, v.Z*v.Depth, modeName)...)
	}
	w.find(out)
}

// showFouls is the figure of a mode: how many pairs foul.
func (w *worker) showFouls(mode *Mode, found []foul, more bool) {
	none := 0.0
	how := working.Working{
		Formula: "number of pairs deeper in one another than 1 mm",
		Source:  finding.Source{Text: "separating axes of convex prisms (Ericson, Real-Time Collision Detection, 2005)", Sure: finding.Memory},
		Notes:   []string{"What stands in or upon a fitting does not foul it.", "Soft things may be pressed."},
	}
	words := ""
	if more {
		words = fmt.Sprintf("%d or more", len(found))
		how.Notes = append(how.Notes, fmt.Sprintf("After %d no more are looked for; those that only repeat another are not counted.", mostFouls))
	}
	how.Lines = slices.Grow(how.Lines, len(found)+1)
	for _, f := range found {
		how.Lines = append(how.Lines, working.Line{
			Label: w.name(f.a) + " in " + w.name(f.b), Value: f.way.Depth, Unit: "mm", From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[f.a].ID)},
		})
	}
	how.Lines = append(how.Lines, working.Line{Symbol: "n", Label: "pairs", Value: float64(len(found)), Unit: "1", From: working.Origin{Here: true}})
	w.show(working.Figure{
		Code: "fit.fouls." + mode.Name, Value: float64(len(found)), Unit: "1", Label: "Things in each other's way, " + mode.Name, Limit: &none, Words: words,
	}, how)
}
