package sheet

import (
	"slices"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// wiringLetters are the numbers of the cables: on each way those that it carries, at each load its own. In the long section, where left
// and right lie on one another, only the ways are lettered.
func (d *drawing) wiringLetters(s *sketch, view string, at func(runs.Point) place, taken *[]draw.Rect) {
	numbers, bounds := d.cableNumbers(), d.paperOf(view)
	letter := func(p runs.Point, text string) {
		if l, ok := tag(text, s.view.At(at(p)[0], at(p)[1]), bounds, taken); ok && text != "" {
			s.text(l)
		}
	}
	for i := range d.r.Runs.Ways {
		w := &d.r.Runs.Ways[i]
		if len(w.At) < 2 {
			continue
		}
		var all []string
		for _, c := range w.Carries {
			all = append(all, numbers[cableKey{c.ID, c.Source, false}])
		}
		letter(longest(w.At), strings.Join(all, " "))
	}
	if view == Side {
		return
	}
	for _, e := range d.wiringStarts() {
		letter(e.At, e.Name)
	}
	for i := range d.r.Runs.Routes {
		c := d.r.Runs.Routes[i].Circuit
		for _, e := range c.Ends {
			if c.Lead && c.Start != nil { // many begin at the board, where they end
				e = *c.Start
			}
			letter(e.At, numbers[cableKey{c.ID, c.Source, c.Lead}])
		}
	}
}

// wiringStarts are the batteries, fuse boards and controllers where cables begin, each once.
func (d *drawing) wiringStarts() []runs.End {
	var out []runs.End
	for i := range d.r.Runs.Routes {
		e := d.r.Runs.Routes[i].Circuit.Start
		if e != nil && e.Fitting != "" && !slices.ContainsFunc(out, func(o runs.End) bool { return o.Fitting == e.Fitting }) {
			out = append(out, *e)
		}
	}
	return out
}

// paperOf is what a view takes of the paper.
func (d *drawing) paperOf(view string) draw.Rect {
	b, v := d.space, d.views[view]
	if view == Side {
		return v.Box(b.MinX, b.MinZ, b.MaxX-b.MinX, b.MaxZ-b.MinZ)
	}
	return v.Box(b.MinX, b.MinY, b.MaxX-b.MinX, b.MaxY-b.MinY)
}

// tag is lettering that belongs to a place, on it or as near as no other lettering stands; none where there is no room at all.
func tag(text string, at draw.Point, bounds draw.Rect, taken *[]draw.Rect) (draw.Lettering, bool) {
	l := draw.Lettering{Text: text, At: at, Anchor: draw.Middle, Level: draw.Midline, Strong: true, Ink: draw.InkGood, Ground: draw.FillPaper}
	b := l.Bounds()
	x, y := b.Width()/2+1.2, b.Height()+0.4
	for _, out := range []float64{0, 1, 2, 3, 4} {
		for _, way := range []draw.Point{{X: 1}, {X: -1}, {Y: -1}, {Y: 1}, {X: 1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: -1}, {X: -1, Y: 1}} {
			l.At = at.Add(draw.Pt(way.X*x*out, way.Y*y*out))
			if b := l.Bounds(); b.Within(bounds) && !slices.ContainsFunc(*taken, b.Overlaps) {
				*taken = append(*taken, b)
				return l, true
			}
		}
	}
	return l, false
}

// cableKey is that of a circuit, a source or its lead.
type cableKey struct {
	id           string
	source, lead bool
}

// routeOf is how a cable goes, or nil.
func routeOf(r *reckon.Reckoning, c *cables.Cable) *runs.Route {
	if c.Role == cables.Lead {
		return r.Runs.Lead(c.ID)
	}
	return r.Runs.Route(c.ID, c.Role == cables.Charge)
}

// cableNumbers are the numbers of cables by circuit and source.
func (d *drawing) cableNumbers() map[cableKey]string {
	out := map[cableKey]string{}
	for i := range d.r.Cables.Cables {
		if c := &d.r.Cables.Cables[i]; c.ID != "" {
			out[cableKey{c.ID, c.Role == cables.Charge || c.Role == cables.Lead, c.Role == cables.Lead}] = c.Number
		}
	}
	return out
}

// longest is the middle of the longest leg of a way.
func longest(line []runs.Point) runs.Point {
	best, far := line[0], -1.0
	for i := 0; i+1 < len(line); i++ {
		a, b, sum := line[i], line[i+1], 0.0
		for k := range a {
			sum += (b[k] - a[k]) * (b[k] - a[k])
		}
		if sum > far {
			far = sum
			for k := range a {
				best[k] = (a[k] + b[k]) / 2
			}
		}
	}
	return best
}

// wiringKey lists the cables: where each leads, how thick it is and how long, and the ways it takes.
func (d *drawing) wiringKey() []entry {
	if d.Show != Wiring {
		return nil
	}
	var out []entry
	for i := range d.r.Cables.Cables {
		c := &d.r.Cables.Cables[i]
		words := c.Title + ", " + sectionWords(c) + ", " + lengthWords(c)
		if r := routeOf(d.r, c); r != nil && len(r.Circuit.Along) > 0 {
			words += ", along " + strings.Join(r.Circuit.Along, " and ")
		}
		out = append(out, entry{c.Number, words})
	}
	if len(out) == 0 {
		return nil
	}
	return append(out, entry{"", ""}, entry{"", "Drawn out: ways. Dashed: assumed, along the surfaces."}, entry{"", ""})
}
