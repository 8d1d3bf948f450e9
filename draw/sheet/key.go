package sheet

import (
	"strings"

	"tumblehome/draw"
)

// letters mark what is too small for its name with a letter beside it; the key says what it is.
func (d *drawing) letters(nameless []drawn, taken []draw.Rect) []draw.Mark {
	if d.Only != "" {
		return nil // there is no room for a key
	}
	v := d.views[Plan]
	bounds := v.Box(d.space.MinX, d.space.MinY, d.space.MaxX-d.space.MinX, d.space.MaxY-d.space.MinY)
	inOrder(nameless, func(w drawn) float64 { return w.box[0]*10 + w.box[2]/100 })
	var out []draw.Mark
	for _, w := range nameless {
		t := &d.things[w.thing]
		if t.carrier >= 0 && !t.Moved || len(d.key) == len(alphabet) || d.onlyWiring() && !d.wired(t.ID) {
			continue
		}
		l := draw.Lettering{Text: alphabet[len(d.key) : len(d.key)+1], Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkQuiet, Ground: draw.FillPaper}
		box := boundsOf(w.box, v)
		at, ok := beside(box, l.Bounds(), taken, bounds)
		if !ok {
			continue
		}
		s := sketch{view: v}
		if foot := nearest(box, at); foot.Distance(at) > 3.5 {
			s.put(draw.PenLeader, draw.NoFill, draw.Line(at.Toward(foot, 2/foot.Distance(at)), foot))
		}
		l.At = at
		s.text(l)
		taken = append(taken, l.Bounds())
		d.key = append(d.key, entry{l.Text, t.name})
		out = append(out, s.group("plan-"+t.ID+"-letter", "caption", t.name, map[string]string{"fitting": t.ID, "view": Plan}))
	}
	return out
}

// beside finds the nearest free place by a box for something small: at its middle, else all round it, farther and farther out.
func beside(box, small draw.Rect, taken []draw.Rect, bounds draw.Rect) (draw.Point, bool) {
	middle := box.Centre()
	free := func(at draw.Point) bool {
		b := small.Move(at)
		if !b.Within(bounds) {
			return false
		}
		for i := range taken {
			if b.Overlaps(taken[i]) {
				return false
			}
		}
		return true
	}
	if box.Width() > small.Width() && box.Height() > small.Height() && free(middle) {
		return middle, true
	}
	for _, out := range [...]float64{0.4, 1.6, 3.2, 5, 7, 9} {
		x, y := (box.Width()+small.Width())/2+out, (box.Height()+small.Height())/2+out
		for _, way := range [...]draw.Point{{X: 1}, {X: -1}, {Y: 1}, {Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}} {
			if at := middle.Add(draw.Pt(way.X*x, way.Y*y)); free(at) {
				return at, true
			}
		}
	}
	return draw.Point{}, false
}

// nearest is the point of a box nearest to a place.
func nearest(box draw.Rect, p draw.Point) draw.Point {
	return draw.Pt(clamp(p.X, box.Min.X, box.Max.X), clamp(p.Y, box.Min.Y, box.Max.Y))
}

const alphabet = "abcdefghijklmnopqrstuvwxyz"

// entry is a line of the key: a letter or a heading, and what it stands for.
type entry struct{ sign, words string }

// keyed is the key in the free quarter of the sheet: what the letters mean, what stands inside what.
func (d *drawing) keyed() []draw.Mark {
	plan, cross := d.views[Plan], d.views[Cross]
	box := draw.Rect{Min: draw.Pt(plan.At(d.space.MaxX, 0).X+besideFlags+6, d.field.Min.Y+3), Max: draw.Pt(d.field.Max.X-3, cross.At(0, d.space.MaxZ).Y-9)}
	if box.Width() < 40 || box.Height() < 15 {
		return nil
	}
	const row = 4.1
	if d.Show == Wiring {
		return []draw.Mark{draw.Group{ID: "key", Class: "key", Marks: d.wiringKey(box, row)}}
	}
	const indent = 5.0
	var out []draw.Mark
	y := box.Min.Y + plainSize
	line := func(sign, words string, strong bool) bool {
		if y > box.Max.Y {
			return false
		}
		if sign != "" {
			out = append(out, draw.Lettering{Text: sign, At: draw.Pt(box.Min.X, y), Strong: strong, Ink: draw.InkQuiet})
		}
		if words != "" {
			out = append(out, draw.Lettering{Text: words, At: draw.Pt(box.Min.X+indent, y), Ink: draw.InkQuiet})
		}
		y += row
		return true
	}
	for _, e := range d.key {
		line(e.sign, e.words, true)
	}
	if len(d.key) > 0 {
		y += row / 2
	}
	for i := range d.things {
		inside := d.contents(i)
		if t := &d.things[i]; t.root != i || len(inside) == 0 {
			continue
		}
		lines := wrapped(strings.Join(inside, ", "), box.Width()-indent)
		if y+float64(len(lines))*row > box.Max.Y {
			continue
		}
		line(d.things[i].name+" holds", "", true)
		for _, text := range lines {
			line("", text, false)
		}
	}
	return []draw.Mark{draw.Group{ID: "key", Class: "key", Marks: out}}
}

// keyColumns are the letters and what they mean, in as many columns as they need.
func (d *drawing) keyColumns(box draw.Rect, row float64) []draw.Mark {
	deep := max(1, int(box.Height()/row)+1)
	columns := (len(d.key) + deep - 1) / deep
	wide := box.Width() / float64(max(columns, 1))
	var out []draw.Mark
	for i, e := range d.key {
		at := draw.Pt(box.Min.X+wide*float64(i/deep), box.Min.Y+row*float64(i%deep))
		out = append(out, draw.Lettering{Text: e.sign, At: at, Strong: true, Ink: draw.InkQuiet},
			draw.Lettering{Text: cutShort(e.words, wide-7, false), At: at.Add(draw.Pt(5, 0)), Ink: draw.InkQuiet})
	}
	return out
}

// wrapped breaks a text into lines of at most a width, between words; unbreakable blanks hold words together.
func wrapped(text string, width float64) []string {
	var out []string
	line := ""
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == '\n' }) {
		next := word
		if line != "" {
			next = line + " " + word
		}
		if line != "" && draw.Measure(next, plainSize, false)*draw.Allowance > width {
			out = append(out, line)
			next = word
		}
		line = next
	}
	return append(out, line)
}
