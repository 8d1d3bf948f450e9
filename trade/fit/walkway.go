package fit

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const (
	escapeWidth = 450  // mm
	sidling     = 370  // mm
	bodyFrom    = 100  // above the floor [mm]: lower things are stepped over
	bodyTo      = 1400 // shoulders; in a low van three quarters of its height
	across      = 50   // mm between the places measured
)

var walkSource = finding.Source{
	Text: "450 mm is the escape width that a caravan maker quotes from EN 1645-1; 370 mm is a large man's depth in clothes (US Army survey of 2012)", Sure: finding.Read,
}

// gap is free floor from y to y.
type gap struct{ from, to float64 }

// narrow is the narrowest place of the way to a fitting.
type narrow struct {
	width, x float64
	to       int
}

// walkway judges the way from the side door to wherever somebody lies, sits or cooks, as the van stands by day.
func (w *worker) walkway() {
	mode, door, ok := w.mode("day"), Opening{}, false
	for _, o := range w.in.Openings {
		if o.Door && (o.Through == "left" || o.Through == "right") && !ok {
			door, ok = o, true
		}
	}
	goals := w.goals()
	if mode == nil || !ok || len(goals) == 0 {
		return
	}
	// Of two equally hard to reach the lower is named: the bench, not the bed upon it.
	slices.SortStableFunc(goals, func(i, j int) int {
		a, b := mode.Standings[i].Box, mode.Standings[j].Box
		return cmp.Or(cmp.Compare(a.MinZ, b.MinZ), cmp.Compare(a.MinX, b.MinX))
	})
	worst := narrow{width: math.Inf(1)}
	for _, i := range goals {
		if len(mode.Standings[i].Solid) == 0 {
			continue
		}
		if n := w.way(mode, door, mode.Standings[i].Box); n.width < worst.width {
			worst = narrow{n.width, n.x, i}
		}
	}
	if !math.IsInf(worst.width, 1) {
		w.reportWalkway(mode, door, worst)
	}
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

// way is the narrowest place between a door and a fitting: across the gap between them, or where they overlap along the van.
func (w *worker) way(mode *Mode, door Opening, goal solid.Bounds) narrow {
	from, to := door.X[1], goal.MinX // the fitting lies behind the door
	if goal.MaxX < door.X[0] {
		from, to = goal.MaxX, door.X[0]
	}
	if from >= to { // beside it: one place in the middle of what they share
		m := (max(door.X[0], goal.MinX) + min(door.X[1], goal.MaxX)) / 2
		from, to = m, m
	}
	worst := narrow{width: math.Inf(1)}
	for _, x := range spread(from, to, across) {
		widest := 0.0
		for _, g := range w.gaps(mode, x) {
			widest = max(widest, g.to-g.from)
		}
		if widest < worst.width {
			worst = narrow{width: widest, x: x}
		}
	}
	return worst
}

// gaps are the free places across the van at x, for a body between knee and shoulder.
func (w *worker) gaps(mode *Mode, x float64) []gap {
	r := w.in.Room
	low, high := math.Inf(-1), math.Inf(1)
	top := w.shoulders(x)
	for _, z := range [3]float64{bodyFrom, (bodyFrom + top) / 2, top} {
		low, high = max(low, r.Left(x, r.Floor()+z)), min(high, r.Right(x, r.Floor()+z))
	}
	var taken []gap
	for i := range mode.Standings {
		if g, ok := w.takes(mode, i, x, top); ok {
			taken = append(taken, g)
		}
	}
	slices.SortFunc(taken, func(a, b gap) int { return cmp.Compare(a.from, b.from) })
	var free []gap
	for _, t := range taken {
		if t.from > low {
			free = append(free, gap{low, min(t.from, high)})
		}
		low = max(low, t.to)
	}
	if low < high {
		free = append(free, gap{low, high})
	}
	return slices.DeleteFunc(free, func(g gap) bool { return g.to <= g.from })
}

// shoulders is how high above the floor a body is wide at x.
func (w *worker) shoulders(x float64) float64 {
	return min(bodyTo, 0.75*(w.in.Room.Roof(x, 0)-w.in.Room.Floor()))
}

// takes is what a fitting takes of the floor at x, up to the height of shoulders.
func (w *worker) takes(mode *Mode, i int, x, top float64) (gap, bool) {
	s, f, floor := &mode.Standings[i], w.in.Fittings[i], w.in.Room.Floor()
	if f.Where != "" || f.Gives > 0 || f.Aside || f.In || s.Box.MinX >= x || s.Box.MaxX <= x ||
		s.Box.MinZ >= floor+top || s.Box.MaxZ <= floor+bodyFrom {
		return gap{}, false
	}
	g := gap{math.Inf(1), math.Inf(-1)}
	for _, p := range s.Solid {
		if p.Low < floor+top && p.High > floor+bodyFrom {
			low, high := p.Across(x)
			g.from, g.to = min(g.from, low), max(g.to, high)
		}
	}
	return g, g.from < g.to
}

func (w *worker) reportWalkway(mode *Mode, door Opening, n narrow) {
	least := float64(escapeWidth)
	w.show(working.Figure{
		Code: "fit.walkway", Value: n.width, Unit: "mm", Label: "Narrowest place on the way in", Limit: &least, Least: true,
		Words: "to " + w.name(n.to) + ", " + mode.Name,
	}, working.Working{
		Formula: "the widest gap across the van, at the narrowest place", Source: walkSource,
		Notes: []string{"Between 100 and 1400 mm above the floor; that a way swerves is not seen.", "Tables and steps are put aside in passing."},
		Lines: []working.Line{
			{Symbol: "x", Label: "where", Value: n.x, Unit: "mm", Sum: "from " + door.ID + " to " + w.name(n.to), From: working.Origin{Here: true}},
			{Symbol: "w", Label: "clear width", Value: n.width, Unit: "mm", From: working.Origin{Here: true}},
		},
	})
	if n.width >= escapeWidth {
		return
	}
	out := finding.Finding{
		Code: "fit.walkway", Severity: finding.Close, About: []string{pointer("fittings", w.in.Fittings[n.to].ID), pointer("shell/openings", door.ID)}, Mode: mode.Name,
		Title:    fmt.Sprintf("The way from the %s door to %s is %s wide", door.ID, w.name(n.to), about(n.width)),
		Words:    fmt.Sprintf("At %s behind the front it is narrower than the %d mm wanted for getting out in a hurry.", about(n.x), escapeWidth),
		Measured: mm(n.width), Limit: mm(escapeWidth), Source: walkSource,
	}
	if n.width < sidling {
		out.Severity = finding.Fault
		out.Words += fmt.Sprintf(" Below %d mm not even sideways.", sidling)
	}
	w.find(out)
}
