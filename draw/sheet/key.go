package sheet

import (
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/label"
)

// letters mark what is too small for its name with a letter beside it; the key says what it is.
func (d *drawing) letters(nameless []drawn, taken []draw.Rect) []draw.Mark {
	if d.Only != "" {
		return nil // there is no room for a key
	}
	v, s := d.views[Plan], d.space
	sortBy2(nameless, func(w drawn) float64 { return w.box[0]*10 + w.box[2]/100 })
	p := label.Problem{Bounds: v.Box(s.MinX, s.MinY, s.MaxX-s.MinX, s.MaxY-s.MinY).Inset(0.5), Obstacles: taken, Gap: 0.2}
	widest := draw.Lettering{Text: "m"}.Bounds()
	var which []int
	for _, w := range nameless {
		if t := &d.things[w.thing]; t.carrier >= 0 && !t.Moved || len(which) == len(alphabet) {
			continue
		}
		which = append(which, w.thing)
		p.Labels = append(p.Labels, label.Label{Place: boundsOf(w.box, v).Centre(), Width: widest.Width(), Height: widest.Height(), Reach: 0.8})
	}
	var out []draw.Mark
	for i, at := range label.Place(p) {
		if !at.Fits {
			continue
		}
		t := &d.things[which[i]]
		d.key = append(d.key, entry{alphabet[len(d.key) : len(d.key)+1], t.name})
		l := draw.Lettering{Text: d.key[len(d.key)-1].sign, At: at.Box.Centre(), Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkQuiet}
		sk := sketch{view: v}
		if len(at.Leader) == 2 && at.Leader[0].Distance(at.Leader[1]) > 2.5 {
			sk.marks = append(sk.marks, draw.Stroke(draw.PenLeader, draw.Line(at.Leader[0], at.Leader[1])))
		}
		sk.text(l)
		out = append(out, sk.group("plan-"+t.ID+"-letter", "caption", t.name, map[string]string{"fitting": t.ID, "view": Plan}))
	}
	return out
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
	const row, indent = 4.1, 5.0
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

// wrapped breaks a text into lines of at most a width, between words.
func wrapped(text string, width float64) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(text) {
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
