package sheet

import (
	"cmp"
	"slices"

	"tumblehome/draw"
)

// Heights of capitals on the sheet [mm].
const (
	nameSize  = 2.8
	plainSize = 2.5
)

// captions letter the names of what is large enough, each where it covers no other lettering and, if that can be had, nothing that
// lies on the thing. They are groups of their own above all things, so that none is painted over. What the lettering takes up is
// added to taken; what goes without a name is listed.
func (d *drawing) captions(view string, all []drawn, taken *[]draw.Rect) (out []draw.Mark, nameless []drawn) {
	v := d.views[view]
	order := slices.Clone(all)
	slices.SortStableFunc(order, func(a, b drawn) int {
		if (a.depth == before) != (b.depth == before) {
			return int(a.depth - b.depth)
		}
		return cmp.Compare(breadth(b.box), breadth(a.box))
	})
	for _, w := range order {
		t := &d.things[w.thing]
		if t.hidden || d.covered(w, all) || d.lidOf(w.thing, all) {
			continue
		}
		c := d.captionOf(view, w, d.topped(w, all))
		fixed, soft := *taken, d.lyingOn(w, all, v)
		if view == Cross && c.quiet { // far things are named only where they can be seen
			fixed, soft = append(slices.Clone(fixed), d.before(w, all, v)...), nil
		}
		lines, ok := c.place(fixed, soft)
		if !ok {
			nameless = append(nameless, w)
			continue
		}
		s := sketch{view: v}
		for _, l := range lines {
			s.text(l)
			*taken = append(*taken, l.Bounds())
		}
		out = append(out, s.group(view+"-"+t.ID+"-name", "caption", "", map[string]string{"fitting": t.ID, "view": view}))
	}
	return out, nameless
}

// captionOf is what is to be lettered on a thing: quietly on what only its ghost or its far outline is drawn of. On what nothing else lies
// the lettering has the thing's own ground, so that no hidden line runs through it.
func (d *drawing) captionOf(view string, w drawn, topped bool) caption {
	t := &d.things[w.thing]
	c := caption{box: boundsOf(w.box, d.views[view]).Inset(0.6), name: t.name, quiet: w.depth == before || view == Cross && w.depth == beyond || view == Plan && t.Where == "under" || d.Show == Wiring}
	if d.Show == Wiring {
		c.ground = draw.FillPaper
	}
	if c.quiet {
		return c
	}
	if !topped {
		_, c.ground = d.looks(t, w.depth, view)
	}
	if t.root == w.thing {
		c.details = d.contents(w.thing)
	}
	return c
}

// peopleIn are the places of people in a view, which no lettering covers.
func (d *drawing) peopleIn(view string) []draw.Rect {
	var out []draw.Rect
	v := d.views[view]
	for i := range d.people {
		w := &d.people[i]
		if view == Cross && !w.meets(d.cut) {
			continue
		}
		out = append(out, boundsOf(around(w.parts(view)), v).Inset(0.6))
	}
	return out
}

// covered says whether something that lies over a thing hides nearly all of it.
func (d *drawing) covered(w drawn, all []drawn) bool {
	over := false
	for _, o := range all {
		if o.thing == w.thing {
			over = true
			continue
		}
		if over && o.depth != before && !d.things[o.thing].hidden && shared(o.box, w.box) > 0.8*breadth(w.box) && !d.lidOf(o.thing, all) {
			return true
		}
	}
	return false
}

// topped says whether something lies over a large part of a thing.
func (d *drawing) topped(w drawn, all []drawn) bool {
	over := false
	for _, o := range all {
		if over && o.depth != before && !d.things[o.thing].hidden && shared(o.box, w.box) > 0.3*breadth(w.box) {
			return true
		}
		over = over || o.thing == w.thing
	}
	return false
}

// lidOf says whether a thing lies on what carries it like a lid, so that the name below is enough: a worktop, cushions.
func (d *drawing) lidOf(i int, all []drawn) bool {
	t := &d.things[i]
	if t.carrier < 0 || t.Moved {
		return false
	}
	var own, root [4]float64
	for _, w := range all {
		if w.thing == i {
			own = w.box
		}
		if w.thing == t.root {
			root = w.box
		}
	}
	return shared(own, root) > 0.75*breadth(root) && breadth(own) < 1.3*breadth(root)
}

func shared(a, b [4]float64) float64 {
	return max(0, min(a[1], b[1])-max(a[0], b[0])) * max(0, min(a[3], b[3])-max(a[2], b[2]))
}

// lyingOn are the boxes of the smaller things that lie over a thing.
func (d *drawing) lyingOn(w drawn, all []drawn, v draw.View) []draw.Rect {
	var out []draw.Rect
	over := false
	for _, o := range all {
		if o.thing == w.thing {
			over = true
			continue
		}
		if over && o.depth != before && !d.things[o.thing].hidden && shared(o.box, w.box) > 0 && breadth(o.box) < 0.7*breadth(w.box) {
			out = append(out, boundsOf(o.box, v))
		}
	}
	return out
}

// before are the boxes of all things that lie over a thing.
func (d *drawing) before(w drawn, all []drawn, v draw.View) []draw.Rect {
	var out []draw.Rect
	over := false
	for _, o := range all {
		if over && !d.things[o.thing].hidden && shared(o.box, w.box) > 0 {
			out = append(out, boundsOf(o.box, v))
		}
		over = over || o.thing == w.thing
	}
	return out
}
