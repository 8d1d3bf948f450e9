package fit

import (
	"cmp"
	"fmt"
	"slices"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const (
	escapeWidth = 450  // mm
	sidling     = 370  // mm
	bodyFrom    = 100  // above the floor [mm]: lower things are stepped over
	bodyTo      = 1400 // shoulders; in a low van three quarters of its height
)

var walkSource = finding.Source{
	Text: "450 mm is the escape width that a caravan maker quotes from EN 1645-1; 370 mm is a large man's depth in clothes (US Army survey of 2012)", Sure: finding.Read,
}

// walkway judges the way from the main door to wherever somebody lies, sits or cooks, as the van stands by day; the ways by night are
// kept as well, and those from other doors as the grid has them.
func (w *worker) walkway() {
	goals := w.goals()
	door, ok := w.mainDoor()
	day := w.mode("day")
	if day == nil || !ok || len(goals) == 0 {
		return
	}
	w.waysFrom(door, day, goals, true)
	for _, o := range w.in.Openings {
		if o.Door && o.Through != "front" && o.ID != door.ID {
			w.waysFrom(o, day, goals, false)
		}
	}
	if night := w.named("night"); night != nil {
		w.waysFrom(door, night, goals, true)
	}
	if worst, found := w.worstWay(); found {
		w.reportWalkway(day, door, worst)
	}
}

// named is the mode of this name or nil.
func (w *worker) named(name string) *Mode {
	if m := w.mode(name); m != nil && m.Name == name {
		return m
	}
	return nil
}

// waysFrom are the widest ways from a door to every goal in a mode, measured exactly if so asked. Of goals equally hard to reach the lower
// comes first: the bench, not the bed upon it.
func (w *worker) waysFrom(door Opening, mode *Mode, goals []int, exactly bool) {
	goals = slices.Clone(goals)
	slices.SortStableFunc(goals, func(i, j int) int {
		a, b := mode.Standings[i].Box, mode.Standings[j].Box
		return cmp.Or(cmp.Compare(a.MinZ, b.MinZ), cmp.Compare(a.MinX, b.MinX))
	})
	ways := w.waysOver(w.floor(mode), door)
	for _, i := range goals {
		if len(mode.Standings[i].Solid) > 0 {
			way := Way{Mode: mode.Name, Door: door.ID, To: w.in.Fittings[i].ID}
			way.Width, way.X, way.Y = w.way(mode, door, ways, mode.Standings[i].Box, exactly)
			way.Width = max(0, way.Width)
			w.result.Ways = append(w.result.Ways, way)
		}
	}
}

// mainDoor is the widest door in a side; a van without one is entered from behind.
func (w *worker) mainDoor() (Opening, bool) {
	best, found := Opening{}, false
	rank := func(o Opening) float64 {
		if o.Through == "rear" {
			return 0
		}
		return o.X[1] - o.X[0]
	}
	for _, o := range w.in.Openings {
		if o.Door && (o.Through == "left" || o.Through == "right" || o.Through == "rear") && (!found || rank(o) > rank(best)) {
			best, found = o, true
		}
	}
	return best, found
}

// goals are the fittings at which somebody lies, sits or cooks in any mode, each once.
func (w *worker) goals() []int {
	var goals []int
	for _, mode := range w.in.Modes {
		for _, pose := range mode.Poses {
			if i, ok := w.index[pose.At]; ok && !w.in.Fittings[i].isOutside() && !slices.Contains(goals, i) {
				goals = append(goals, i)
			}
		}
	}
	slices.Sort(goals)
	return goals
}

// isOutside says whether a fitting is outside the van or under it.
func (f Fitting) isOutside() bool { return f.Where == "outside" || f.Where == "under" }

func (w *worker) reportWalkway(mode *Mode, door Opening, way Way) {
	least, to := float64(escapeWidth), w.index[way.To]
	w.show(working.Figure{
		Code: "fit.walkway", Value: way.Width, Unit: "mm", Label: "Narrowest place on the way in", Limit: &least, Least: true,
		Words: "to " + w.name(to) + ", " + mode.Name,
	}, working.Working{
		Formula: "the width of the widest body that gets from the door to the fitting: twice its least clearance on the widest way", Source: walkSource,
		Notes: []string{"Between 100 and 1400 mm above the floor, in a low van three quarters of its height; on a grid of 25 mm, the narrow places then measured exactly.",
			"A table that folds or drops is put away first, a light step put aside; a body turns and swerves as it likes."},
		Lines: []working.Line{
			{Symbol: "x", Label: "where", Value: way.X, Unit: "mm", Sum: fmt.Sprintf("at y %.0f, from %s to %s", way.Y, door.called(), w.name(to)), From: working.Origin{Here: true}},
			{Symbol: "c", Label: "clearance there", Value: way.Width / 2, Unit: "mm", From: working.Origin{Here: true}},
			{Symbol: "w", Label: "clear width", Value: way.Width, Unit: "mm", Sum: "2 c", From: working.Origin{Here: true}},
		},
	})
	if way.Width >= escapeWidth-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.walkway", Severity: finding.Close, About: []string{pointer("fittings", way.To), door.pointer()}, Mode: mode.Name,
		Title:    fmt.Sprintf("The way from %s to %s is %s wide", door.called(), w.name(to), about(way.Width)),
		Words:    fmt.Sprintf("%s it is narrower than the %d mm wanted for getting out in a hurry.", w.alongWords(way.X), escapeWidth),
		Measured: mm(way.Width), Limit: mm(escapeWidth), Source: walkSource,
	}
	if way.Width < sidling {
		out.Severity = finding.Fault
		out.Words += fmt.Sprintf(" Below %d mm not even sideways.", sidling)
	}
	if way.Width < cell {
		out.Title = fmt.Sprintf("There is no way from %s to %s", door.called(), w.name(to))
		out.Words = "Something stands between them wherever one tries. Take out one thing after another, and bring each back with undo, to see which it is."
		w.barsWay(&out, mode, door, way)
		w.find(out)
		return
	}
	if out.Proposals = w.tried(out, (*worker).walkway, w.wider(mode, way)...); len(out.Proposals) == 0 && out.Severity >= finding.Fault {
		words := out.Words
		w.barsWay(&out, mode, door, way)
		if out.Words != words {
			out.Words = words + " " + out.Words
		}
	}
	w.find(out)
}
