package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const (
	exitSquare = 450 // side of the free square a person leaves by [mm]
	exitDepth  = 300 // how far into the van an opening must be clear [mm]
	exitCell   = 50  // of the grid it is looked for on [mm]
	waysWanted = 2
)

var exitSource = finding.Source{
	Text: "an emergency exit of about 450 × 450 mm that opens without tools, two ways out from every bed (from memory of EN 1646-1; check locally)", Sure: finding.Memory,
}

// ways judges the ways out in every mode in which somebody lies; the figure is of the mode with fewest.
func (w *worker) ways() {
	var fewest *Mode
	free, blocked := math.MaxInt, []Opening(nil)
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		if !mode.sleeps() {
			continue
		}
		var shut []Opening
		open := 0
		for _, o := range w.in.Openings {
			if !o.WayOut {
				continue
			}
			if by, ok := w.blocked(mode, o); ok {
				shut = append(shut, o)
				w.reportBlocked(mode, o, by)
			} else {
				open++
			}
		}
		if open+len(shut) > 0 && open < free {
			fewest, free, blocked = mode, open, shut
		}
	}
	if fewest != nil {
		w.reportWays(fewest, free, blocked)
	}
}

func (m *Mode) sleeps() bool {
	for _, p := range m.Poses {
		if p.Does == "lies" {
			return true
		}
	}
	return false
}

// blocked says whether no square large enough is left free in front of an opening, and which fitting takes most of it.
func (w *worker) blocked(mode *Mode, o Opening) (by int, blocked bool) {
	zone, along, up := w.zone(o)
	n, m := int((along[1]-along[0])/exitCell), int((up[1]-up[0])/exitCell)
	if n < exitSquare/exitCell || m < exitSquare/exitCell {
		return -1, false // smaller than a way out anyhow: nothing stands in it that matters
	}
	taken := make([]bool, n*m)
	by, most := -1, 0
	for i := range mode.Standings {
		s, f := &mode.Standings[i], w.in.Fittings[i]
		if len(s.Solid) == 0 || f.Gives > 0 || f.Aside || f.For != "" || f.isOutside() || !s.Box.Meets(zone) {
			continue
		}
		if cells := o.shadow(s.Solid, zone, along, up, n, taken); cells > most {
			by, most = i, cells
		}
	}
	return by, greatestSquare(taken, n) < exitSquare/exitCell
}

// zone is the space in front of an opening, and the extents of the opening in its own plane.
func (w *worker) zone(o Opening) (zone solid.Bounds, along, up [2]float64) {
	r := w.in.Room
	zone = solid.Bounds{MinX: o.X[0], MaxX: o.X[1], MinY: o.Y[0], MaxY: o.Y[1], MinZ: o.Z[0], MaxZ: o.Z[1]}
	x := (o.X[0] + o.X[1]) / 2
	switch o.Through {
	case "left":
		zone.MinY = r.Left(x, o.Z[0])
		zone.MaxY = zone.MinY + exitDepth
		return zone, o.X, o.Z
	case "right":
		zone.MaxY = r.Right(x, o.Z[0])
		zone.MinY = zone.MaxY - exitDepth
		return zone, o.X, o.Z
	case "front":
		zone.MinX, zone.MaxX = r.Front(), r.Front()+exitDepth
		return zone, o.Y, o.Z
	case "rear":
		zone.MinX, zone.MaxX = r.Rear()-exitDepth, r.Rear()
		return zone, o.Y, o.Z
	case "floor":
		zone.MinZ, zone.MaxZ = r.Floor(), r.Floor()+exitDepth
		return zone, o.X, o.Y
	}
	zone.MaxZ = r.Roof(x, (o.Y[0]+o.Y[1])/2)
	zone.MinZ = zone.MaxZ - exitDepth
	return zone, o.X, o.Y
}

// shadow marks the cells of the opening that a solid covers and counts them.
func (o Opening) shadow(s solid.Solid, zone solid.Bounds, along, up [2]float64, n int, taken []bool) (cells int) {
	for _, p := range s {
		b := p.Bounds()
		if !b.Meets(zone) {
			continue
		}
		u0, u1, v0, v1 := b.MinX, b.MaxX, b.MinZ, b.MaxZ
		switch o.Through {
		case "front", "rear":
			u0, u1 = b.MinY, b.MaxY
		case "floor", "roof":
			v0, v1 = b.MinY, b.MaxY
		}
		for c := range taken {
			u, v := along[0]+(float64(c%n)+0.5)*exitCell, up[0]+(float64(c/n)+0.5)*exitCell
			if u > u0 && u < u1 && v > v0 && v < v1 {
				taken[c] = true
				cells++
			}
		}
	}
	return cells
}

// greatestSquare is the side, in cells, of the greatest square of a grid n wide that has no cell taken: each cell's square is one
// more than the least of its three neighbours before it.
func greatestSquare(taken []bool, n int) int {
	side, best := make([]int, len(taken)), 0
	for c := range taken {
		if taken[c] {
			continue
		}
		side[c] = 1
		if c%n > 0 && c >= n {
			side[c] = 1 + min(side[c-1], side[c-n], side[c-n-1])
		}
		best = max(best, side[c])
	}
	return best
}

func (w *worker) reportBlocked(mode *Mode, o Opening, by int) {
	out := finding.Finding{
		Code: "fit.way-out.blocked", Severity: finding.Note, About: []string{pointer("shell/openings", o.ID)}, Mode: mode.Name,
		Title: fmt.Sprintf("The way out %s is blocked in the mode %q", o.ID, mode.Name),
		Words: fmt.Sprintf("No square of %d mm is left free in front of it.", exitSquare), Source: exitSource,
	}
	if by >= 0 {
		out.About = append([]string{pointer("fittings", w.in.Fittings[by].ID)}, out.About...)
		out.Title = fmt.Sprintf("%s blocks the way out %s in the mode %q", w.name(by), o.ID, mode.Name)
	}
	w.find(out)
}

func (w *worker) reportWays(mode *Mode, free int, blocked []Opening) {
	wanted := float64(waysWanted)
	how := working.Working{
		Formula: "number of ways out with a free square of 450 mm before them", Source: exitSource,
		Notes: []string{"Openings marked way-out, looked at 300 mm deep; soft things, tables and steps do not block."},
	}
	for _, o := range blocked {
		how.Lines = append(how.Lines, working.Line{Label: o.ID + " is blocked", Unit: "1", From: working.Origin{Pointer: pointer("shell/openings", o.ID)}})
	}
	how.Lines = append(how.Lines, working.Line{Symbol: "n", Label: "free", Value: float64(free), Unit: "1", From: working.Origin{Here: true}})
	w.show(working.Figure{Code: "fit.ways-out", Value: float64(free), Unit: "1", Label: "Ways out at night", Limit: &wanted, Least: true, Words: mode.Name}, how)
	if free >= waysWanted {
		return
	}
	out := finding.Finding{
		Code: "fit.way-out", Severity: finding.Fault, About: []string{pointer("modes", mode.Name)}, Mode: mode.Name,
		Title:    "There is only one way out from the bed",
		Words:    "If it is barred by fire or by another car nobody gets out. Two different ways are wanted.",
		Measured: &finding.Measure{Value: float64(free), Unit: "1"}, Limit: &finding.Measure{Value: waysWanted, Unit: "1"}, Source: exitSource,
		Caution: "Keep two ways out of every bed, each to be opened from inside without tools.",
	}
	if free == 0 {
		out.Severity, out.Title = finding.Danger, "There is no way out from the bed"
	}
	w.find(out)
}
