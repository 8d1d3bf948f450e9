package sheet

import (
	"slices"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/runs"
)

// WiringPlan is the van with its ways and cables on a sheet of its own, with the list of cables.
func WiringPlan(r *reckon.Reckoning, mode, revision string) draw.Scene {
	return Arrangement(r, View{Mode: mode, Size: draw.A3, Show: Wiring, Revision: revision})
}

// wiringOver are the ways, drawn out, what is taken to lead from them to the fuse board and the loads, dashed, and what they lead to.
func (d *drawing) wiringOver(view string, taken *[]draw.Rect) []draw.Mark {
	s := sketch{view: d.views[view]}
	at := func(p runs.Point) place {
		if view == Side {
			return place{clamp(p[0], d.space.MinX, d.space.MaxX), p[2]}
		}
		return place{clamp(p[0], d.space.MinX, d.space.MaxX), p[1]}
	}
	seen := func(points []runs.Point) []place {
		out := make([]place, len(points))
		for i, p := range points {
			out[i] = at(p)
		}
		return out
	}
	r := &d.r.Runs
	for i := range r.Routes {
		for _, leg := range r.Routes[i].Assumed {
			s.line(draw.PenFollowed, seen(leg))
		}
	}
	for i := range r.Ways {
		if len(r.Ways[i].At) > 1 {
			s.line(draw.PenLaid, seen(r.Ways[i].At))
		}
	}
	for _, p := range d.wiringEnds() {
		c := s.view.At(at(p)[0], at(p)[1])
		s.put(draw.PenLaid, draw.FillPaper, draw.Circle(c, endSize))
		*taken = append(*taken, draw.Rect{Min: c, Max: c}.Inset(-endSize))
	}
	d.wiringLetters(&s, view, at, taken)
	if len(s.marks) == 0 {
		return nil
	}
	return []draw.Mark{s.group(view+"-wiring", "overlay", "the wiring", nil)}
}

// endSize is the radius of the mark where a cable ends [mm of the paper].
const endSize = 0.9

// wiringEnds are the places that cables lead from and to, each once.
func (d *drawing) wiringEnds() []runs.Point {
	var out []runs.Point
	known := map[runs.Point]bool{}
	add := func(e runs.End) {
		if e.Fitting != "" && !known[e.At] {
			known[e.At] = true
			out = append(out, e.At)
		}
	}
	for i := range d.r.Runs.Routes {
		c := d.r.Runs.Routes[i].Circuit
		if c.Start != nil {
			add(*c.Start)
		}
		for _, e := range c.Ends {
			add(e)
		}
	}
	return out
}

// wired says whether a cable leads from or to a fitting.
func (d *drawing) wired(id string) bool {
	for i := range d.r.Runs.Routes {
		c := d.r.Runs.Routes[i].Circuit
		if c.Start != nil && c.Start.Fitting == id || slices.ContainsFunc(c.Ends, func(e runs.End) bool { return e.Fitting == id }) {
			return true
		}
	}
	return false
}
