package sheet

import (
	"slices"
	"strings"

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
		return compare(breadth(b.box), breadth(a.box))
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
	c := caption{box: boundsOf(w.box, d.views[view]).Inset(0.6), name: t.name, quiet: w.depth == before || view == Cross && w.depth == beyond || view == Plan && t.Where == "under"}
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

// caption is a name to be lettered inside a box, with what the thing holds below if there is room.
type caption struct {
	box     draw.Rect
	name    string
	details []string
	quiet   bool
	ground  draw.Fill
}

// way is lettering that may be tried, with its size once turned.
type way struct {
	lines      []draw.Lettering
	bounds     []draw.Rect // of each line about a middle at 0, 0
	wide, high float64
}

// place finds room: name and contents, the name alone, the name in two lines, the name turned; first beside what lies on the thing,
// then over it.
func (c caption) place(taken, soft []draw.Rect) ([]draw.Lettering, bool) {
	ways := c.ways()
	if len(ways) == 0 {
		return nil, false
	}
	all := append(slices.Clone(taken), soft...)
	for _, avoid := range [][]draw.Rect{all, taken} {
		for _, w := range ways {
			if set, ok := c.fit(w, avoid); ok {
				return set, true
			}
		}
		if len(soft) == 0 {
			break
		}
	}
	return nil, false
}

// ways are the lettering that the box could hold, best first.
func (c caption) ways() []way {
	name := draw.Lettering{Text: c.name, Size: nameSize, Strong: !c.quiet, Anchor: draw.Middle, Level: draw.Midline, Ground: c.ground}
	if c.quiet {
		name.Size, name.Ink = plainSize, draw.InkQuiet
	}
	detail := draw.Lettering{Size: plainSize, Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkQuiet, Ground: c.ground}
	var out []way
	try := func(turn float64, lines ...draw.Lettering) {
		w := way{}
		for i, l := range lines {
			l.Turn = turn
			l.At = draw.Pt(0, (float64(i)-float64(len(lines)-1)/2)*leading)
			b := l.Bounds()
			w.lines, w.bounds = append(w.lines, l), append(w.bounds, b)
			w.wide, w.high = max(w.wide, b.Width()), b.Max.Y-w.bounds[0].Min.Y
		}
		if w.wide <= c.box.Width() && w.high <= c.box.Height() {
			out = append(out, w)
		}
	}
	if min(c.box.Width(), c.box.Height()) < plainSize {
		return nil
	}
	if text := fitting(c.details, c.box.Width()); text != "" {
		detail.Text = text
		try(0, name, detail)
	}
	try(0, name)
	if first, second, ok := halved(c.name); ok {
		upper, lower := name, name
		upper.Text, lower.Text = first, second
		try(0, upper, lower)
	}
	try(-90, name)
	return out
}

// fitting joins as many names as a width holds.
func fitting(names []string, width float64) string {
	text := ""
	for _, n := range names {
		next := n
		if text != "" {
			next = text + " · " + n
		}
		if draw.Measure(next, plainSize, false)*draw.Allowance+1 > width {
			break
		}
		text = next
	}
	return text
}

// halved breaks a name into two lines of nearly equal length.
func halved(name string) (string, string, bool) {
	best := -1
	for i, c := range name {
		if c == ' ' && (best < 0 || abs(2*i-len(name)) < abs(2*best-len(name))) {
			best = i
		}
	}
	if best < 0 {
		return "", "", false
	}
	return strings.TrimSpace(name[:best]), strings.TrimSpace(name[best+1:]), true
}

func abs(i int) int {
	if i < 0 {
		return -i
	}
	return i
}

const leading = 4.3 // from one line to the next [mm]

// fit tries a few places in the box, the middle first.
func (c caption) fit(w way, avoid []draw.Rect) ([]draw.Lettering, bool) {
	for _, across := range [...]float64{0.5, 0.25, 0.75, 0, 1} {
		for _, along := range [...]float64{0.5, 0.2, 0.8, 0, 1} {
			middle := draw.Pt(c.box.Min.X+w.wide/2+(c.box.Width()-w.wide)*across, c.box.Min.Y+w.high/2+(c.box.Height()-w.high)*along)
			if !w.meets(middle, avoid) {
				return w.at(middle), true
			}
		}
	}
	return nil, false
}

func (w way) meets(middle draw.Point, avoid []draw.Rect) bool {
	for _, b := range w.bounds {
		b = b.Move(middle)
		for i := range avoid {
			if b.Overlaps(avoid[i]) {
				return true
			}
		}
	}
	return false
}

func (w way) at(middle draw.Point) []draw.Lettering {
	for i := range w.lines {
		w.lines[i].At = w.lines[i].At.Add(middle)
	}
	return w.lines
}
