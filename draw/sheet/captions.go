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
// lies on the thing. They are groups of their own above all things, so that none is painted over.
func (d *drawing) captions(view string, all []drawn) []draw.Mark {
	v := d.views[view]
	taken := d.headsAndDoors(view)
	order := slices.Clone(all)
	slices.SortStableFunc(order, func(a, b drawn) int { return compare(breadth(b.box), breadth(a.box)) })
	var out []draw.Mark
	for _, w := range order {
		t := &d.things[w.thing]
		if t.hidden || d.covered(w, all) || d.lidOf(w.thing, all) {
			continue
		}
		c := caption{box: boundsOf(w.box, v).Inset(0.9), name: t.name, quiet: w.depth == before}
		if t.root == w.thing && !c.quiet {
			c.details = d.contents(w.thing)
		}
		marks, ok := c.place(taken, d.lyingOn(w, all, v))
		if !ok {
			continue
		}
		s := sketch{view: v}
		for _, l := range marks {
			s.text(l)
			taken = append(taken, l.Bounds())
		}
		out = append(out, s.group(view+"-"+t.ID+"-name", "caption", "", map[string]string{"fitting": t.ID, "view": view}))
	}
	return out
}

// headsAndDoors are the places of people, which no lettering covers.
func (d *drawing) headsAndDoors(view string) []draw.Rect {
	var out []draw.Rect
	v := d.views[view]
	for i := range d.people {
		w := &d.people[i]
		if view == Cross && !w.meets(d.cut) {
			continue
		}
		body, head := w.form(view)
		out = append(out, boundsOf(around([][]place{body}), v).Inset(0.6), boundsOf(around([][]place{head}), v))
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
		if over && !d.things[o.thing].hidden && shared(o.box, w.box) > 0 && breadth(o.box) < 0.7*breadth(w.box) {
			out = append(out, boundsOf(o.box, v))
		}
	}
	return out
}

// caption is a name to be lettered inside a box, with what the thing holds below if there is room.
type caption struct {
	box     draw.Rect
	name    string
	details []string
	quiet   bool
}

// place finds room: name and contents, the name alone, the name in two lines, the name turned; first beside what lies on the thing,
// then over it.
func (c caption) place(taken, soft []draw.Rect) ([]draw.Lettering, bool) {
	for _, avoid := range [][]draw.Rect{append(slices.Clone(taken), soft...), taken} {
		for _, lines := range c.ways() {
			for _, turn := range []float64{0, -90} {
				if turn != 0 && len(lines) > 1 {
					continue
				}
				if set, ok := c.fit(lines, turn, avoid); ok {
					return set, true
				}
			}
		}
		if len(soft) == 0 {
			break
		}
	}
	return nil, false
}

// ways are the lettering that may be tried, best first.
func (c caption) ways() [][]draw.Lettering {
	ink := draw.InkPlain
	if c.quiet {
		ink = draw.InkQuiet
	}
	name := draw.Lettering{Text: c.name, Size: nameSize, Strong: !c.quiet, Ink: ink}
	if c.quiet {
		name.Size = plainSize
	}
	var out [][]draw.Lettering
	if text := fitting(c.details, c.box.Width()); text != "" {
		out = append(out, []draw.Lettering{name, {Text: text, Size: plainSize, Ink: draw.InkQuiet}})
	}
	out = append(out, []draw.Lettering{name})
	if a, b, ok := halved(c.name); ok {
		first, second := name, name
		first.Text, second.Text = a, b
		out = append(out, []draw.Lettering{first, second})
	}
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

// fit tries a few places in the box for the lines, the middle first.
func (c caption) fit(lines []draw.Lettering, turn float64, avoid []draw.Rect) ([]draw.Lettering, bool) {
	for _, across := range [...]float64{0.5, 0.25, 0.75, 0, 1} {
		for _, along := range [...]float64{0.5, 0.2, 0.8, 0, 1} {
			if set, ok := c.at(lines, turn, across, along, avoid); ok {
				return set, true
			}
		}
	}
	return nil, false
}

func (c caption) at(lines []draw.Lettering, turn, across, along float64, avoid []draw.Rect) ([]draw.Lettering, bool) {
	wide, high := 0.0, float64(len(lines)-1)*leading
	for i := range lines {
		b := lines[i].Bounds()
		wide = max(wide, b.Width())
		if i == 0 {
			high += b.Height()
		}
	}
	if turn != 0 {
		wide, high = high, wide
	}
	if wide > c.box.Width() || high > c.box.Height() {
		return nil, false
	}
	middle := draw.Pt(c.box.Min.X+wide/2+(c.box.Width()-wide)*across, c.box.Min.Y+high/2+(c.box.Height()-high)*along)
	out := make([]draw.Lettering, len(lines))
	for i, l := range lines {
		l.At, l.Anchor, l.Level, l.Turn = middle, draw.Middle, draw.Midline, turn
		l.At.Y += (float64(i) - float64(len(lines)-1)/2) * leading
		b := l.Bounds()
		if !b.Within(c.box.Inset(-0.3)) {
			return nil, false
		}
		for _, a := range avoid {
			if b.Overlaps(a) {
				return nil, false
			}
		}
		out[i] = l
	}
	return out, true
}
