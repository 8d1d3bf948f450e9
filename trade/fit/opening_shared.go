package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// overlaps is how far two blinds of one opening may lie over one another [mm]: common practice, no source.
const overlaps = 20

// shareOpening tells of two things for one opening that cannot both be there and are not told of as in one another: two vents in one hole, or two soft
// things over one another at one window or door. One for each leaf, and a blind before a window or a fan, are right.
func (w *worker) shareOpening() {
	for _, o := range w.in.Openings {
		var those []int
		as := o.pointerFor()
		for i := range w.in.Fittings {
			if w.in.Fittings[i].For == as && w.resting(i) != nil {
				those = append(those, i)
			}
		}
		for n, i := range those {
			for _, j := range those[n+1:] {
				if w.sameHole(o, i, j) && !w.toldOfBoth("fit.foul", i, j) {
					w.reportShared(o, i, j)
				}
			}
		}
	}
}

// pointerFor is how a fitting names the opening that it belongs to.
func (o Opening) pointerFor() string { return "shell.openings." + o.ID }

// sameHole says whether two things for one opening want the same place in it.
func (w *worker) sameHole(o Opening, i, j int) bool {
	f, g := &w.in.Fittings[i], &w.in.Fittings[j]
	if f.Lid && g.Lid {
		return true
	}
	return f.Gives > 0 && g.Gives > 0 && o.over(w.resting(i).Box, w.resting(j).Box) > overlaps
}

// over is how far two boxes lie over one another in the plane of an opening, the shorter way.
func (o Opening) over(a, b solid.Bounds) float64 {
	x, y, z := min(a.MaxX, b.MaxX)-max(a.MinX, b.MinX), min(a.MaxY, b.MaxY)-max(a.MinY, b.MinY), min(a.MaxZ, b.MaxZ)-max(a.MinZ, b.MinZ)
	switch o.Through {
	case "left", "right":
		return min(x, z)
	case "front", "rear":
		return min(y, z)
	}
	return min(x, y)
}

// toldOfBoth says whether a finding with some code tells of two things together.
func (w *worker) toldOfBoth(code string, i, j int) bool {
	a, b := pointer("fittings", w.in.Fittings[i].ID), pointer("fittings", w.in.Fittings[j].ID)
	return slices.ContainsFunc(w.result.Findings, func(f finding.Finding) bool {
		return f.Code == code && slices.Contains(f.About, a) && slices.Contains(f.About, b)
	})
}

func (w *worker) reportShared(o Opening, i, j int) {
	out := finding.Finding{
		Code: "fit.opening.shared", Severity: finding.Close, About: []string{pointer("fittings", w.in.Fittings[j].ID), pointer("fittings", w.in.Fittings[i].ID), o.pointer()},
		Title:  fmt.Sprintf("%s and %s are both for %s", w.name(i), w.name(j), o.called()),
		Words:  "One opening takes one of them. Name the opening that the other belongs to, or take one out.",
		Source: finding.Source{Text: "the words and places of this build", Sure: finding.Computed},
	}
	if patch, err := json.Marshal(map[string]any{"fittings": map[string]any{w.in.Fittings[j].ID: nil}}); err == nil && w.namedNowhere(j) {
		out.Proposals = []finding.Proposal{{Words: "take " + w.name(j) + " out of the build", Patch: patch}}
	}
	w.find(out)
}

// namedNowhere says whether nothing stands in or upon a soft thing and no mode moves it, so that it may be taken out without a trace.
func (w *worker) namedNowhere(i int) bool {
	return w.in.Fittings[i].Gives > 0 && !slices.Contains(w.carriers, i) && !slices.ContainsFunc(w.in.Modes, func(m Mode) bool {
		return slices.ContainsFunc(m.Movers, func(v Mover) bool { return v.Fitting == i })
	})
}
