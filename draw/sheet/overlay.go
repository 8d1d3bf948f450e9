package sheet

import (
	"math"
	"slices"

	"tumblehome/draw"
	"tumblehome/solve/solid"
)

// Overlay names what is laid over the things of a drawing.
type Overlay string

// The overlays.
const (
	NoOverlay Overlay = ""
	Moves     Overlay = "moves"    // the space that folding things, lids, doors and drawers pass through
	Way       Overlay = "way"      // the floor on which one can walk, where it is narrowest, and the ways out
	Upright   Overlay = "headroom" // where one can stand upright
	Wiring    Overlay = "wiring"   // where the cables run, from the batteries to what they feed
)

// Overlays are all of them.
var Overlays = []Overlay{Moves, Way, Upright, Wiring}

// underPlan is what an overlay lays on the floor, under all that stands there.
func (d *drawing) underPlan() []draw.Mark {
	f := d.floorOf()
	if f == nil {
		return nil
	}
	s := sketch{view: d.views[Plan]}
	switch d.Show {
	case Way:
		s.area(draw.NoPen, draw.FillGoodWash, d.walked(f)...)
	case Upright:
		tall, short := d.statures()
		s.area(draw.NoPen, draw.FillTone, cellRuns(f, d.stands(f, short))...)
		s.area(draw.NoPen, draw.FillGoodWash, cellRuns(f, d.stands(f, tall))...)
	default:
		return nil
	}
	return []draw.Mark{s.group("plan-floor", "overlay", "the floor", nil)}
}

// overPlan is the overlay as seen from above. What its lettering takes up is added to taken.
func (d *drawing) overPlan(taken *[]draw.Rect) []draw.Mark {
	switch d.Show {
	case Moves:
		return d.sweeps("plan-moves", Plan, func(s solid.Solid) [][]place { return silhouette(fromAbove(s)) })
	case Way:
		return d.wayOver(taken)
	case Upright:
		return d.uprightOver(taken)
	case Wiring:
		return d.wiringOver(Plan, taken)
	}
	return nil
}

// overSide is the overlay as seen from the side. What its lettering takes up is added to taken.
func (d *drawing) overSide(taken *[]draw.Rect) []draw.Mark {
	switch d.Show {
	case Moves:
		return d.sweeps("side-moves", Side, func(s solid.Solid) [][]place { return silhouette(fromSide(s)) })
	case Wiring:
		return d.wiringOver(Side, taken)
	}
	return nil
}

// sweeps are the outlines of the space that everything passes through in the mode: what it folds out, and by day what opens.
func (d *drawing) sweeps(id, view string, outline func(solid.Solid) [][]place) []draw.Mark {
	s := sketch{view: d.views[view]}
	mode := d.standings()
	if mode == nil {
		return nil
	}
	for _, m := range mode.Movers {
		if d.seen(m.Fitting) && len(m.Path) > 0 {
			s.area(draw.PenSweep, draw.NoFill, outline(m.Path)...)
		}
	}
	if d.Mode != "drive" && d.Mode != Today {
		for _, o := range d.r.Fit.Opens {
			p := &d.r.Places.Parts[o.Part]
			if at := &mode.All[p.Fitting]; !at.Moved && d.seen(p.Fitting) {
				s.area(draw.PenSweep, draw.NoFill, outline(p.Swept(o.Way, o.Share))...)
			}
		}
	}
	if len(s.marks) == 0 {
		return nil
	}
	return []draw.Mark{s.group(id, "overlay", "what moves", nil)}
}

// seen says whether a fitting is drawn at all.
func (d *drawing) seen(fitting int) bool {
	_, drawn := d.index[d.r.Places.Rest[fitting].ID]
	return drawn
}

// over is lettering that stands on top of everything, at a place or beside it where no other stands.
func over(text string, at draw.Point, taken *[]draw.Rect) draw.Lettering {
	l := draw.Lettering{Text: text, At: at, Anchor: draw.Middle, Level: draw.Midline, Strong: true, Ground: draw.FillPaper}
	half, high := l.Width()/2, 2*draw.SizeSmall
	for _, aside := range []draw.Point{{}, {X: -half}, {Y: -high}, {Y: high}, {X: -half, Y: -high}, {X: -half, Y: high}, {X: -2 * half}, {X: -3 * half}} {
		l.At = at.Add(aside)
		if b := l.Bounds(); !slices.ContainsFunc(*taken, b.Overlaps) {
			break
		}
	}
	*taken = append(*taken, l.Bounds())
	return l
}

// fives is a length rounded to what a van is.
func fives(v float64) string { return whole(math.Round(v/5) * 5) }

// ring is a circle as a run of places.
func ring(x, y, radius float64) []place {
	const corners = 48
	out := make([]place, corners)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		out[i] = place{x + radius*cos, y + radius*sin}
	}
	return out
}
