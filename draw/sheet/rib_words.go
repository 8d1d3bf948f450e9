package sheet

import (
	"fmt"
	"regexp"
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/label"
)

// ribLayer is one material beside the rib, from the steel inwards.
type ribLayer struct {
	name string
	at   draw.Point
}

// layers are what one meets at the far end of the bay.
func (b *ribbed) layers() []ribLayer {
	var out []ribLayer
	for i, r := range b.d.Section.Regions {
		if r.X1 < b.long-1e-9 {
			continue
		}
		at := b.view.At(b.long, (r.Y0+r.Y1)/2)
		out = append(out, ribLayer{b.layerName(b.d.Materials[i], 1000*(r.Y1-r.Y0)), at.Add(draw.Pt(-2, 0))})
	}
	return out
}

func (b *ribbed) layerName(id string, thick float64) string {
	name := id
	if m, ok := b.rows.Material(id); ok && m.Title != "" {
		name = brief(m.Title)
	}
	name, _, _ = strings.Cut(name, " with ")
	return ownSize.ReplaceAllString(name, "") + ", " + tenth(thick) + " mm"
}

// ownSize is a size at the end of a material's title; how thick it lies there is said instead.
var ownSize = regexp.MustCompile(` \d[\d.]*( x [\d.]+)+( mm)?( finished)?$`)

// names letter the layers beside the section, or their numbers where there is no room.
func (b *ribbed) names(all []ribLayer, bottom float64) []draw.Mark {
	labels := make([]label.Label, len(all))
	room := b.width - b.view.At(b.long, 0).X
	for i, l := range all {
		labels[i] = label.Label{Place: l.at, Width: room - 8, Height: 1.7 * b.letters}
	}
	var out []draw.Mark
	edge := b.view.At(b.long, 0).X
	for i, at := range label.Column(labels, edge+7+(room-8)/2, ribTop-5, bottom, 0.4) {
		from := draw.Pt(edge+6, at.Box.Centre().Y)
		text := all[i].name
		if !b.wide {
			text = fmt.Sprint(i + 1)
		}
		out = append(out, draw.Stroke(draw.PenLeader, draw.Polyline(from, draw.Pt(edge+2, from.Y), all[i].at)),
			draw.Shape{Path: draw.Circle(all[i].at, 0.45), Fill: draw.FillInk},
			draw.Lettering{Text: text, At: draw.Pt(edge+7, from.Y), Level: draw.Midline, Size: b.letters})
	}
	return out
}

// hasRib says whether there is more steel than the skin.
func (b *ribbed) hasRib() bool {
	sheets := 0
	for _, id := range b.d.Materials {
		if id == "steel" {
			sheets++
		}
	}
	return sheets > 1
}

// list says what the numbers stand for.
func (b *ribbed) list(all []ribLayer, y float64) []draw.Mark {
	var out []draw.Mark
	for i, l := range all {
		at := draw.Pt(4, y+float64(i+1)*(b.letters+2)-2)
		out = append(out, draw.Lettering{Text: fmt.Sprintf("%d  %s", i+1, l.name), At: at, Size: b.letters})
	}
	return out
}

// sides say what is outside and what inside.
func (b *ribbed) sides(foot float64) []draw.Mark {
	right := b.view.At(b.long, 0).X
	left := "half a rib"
	if !b.hasRib() {
		left = "a bay"
	}
	return []draw.Mark{
		draw.Lettering{Text: "outside, 0 °C", At: draw.Pt(right, ribTop-2), Anchor: draw.End, Size: b.letters, Ink: draw.InkQuiet},
		draw.Lettering{Text: left, At: draw.Pt(ribLeft, ribTop-2), Size: b.letters, Ink: draw.InkQuiet},
		draw.Lettering{Text: "inside, 20 °C", At: draw.Pt((ribLeft+right)/2, foot+2), Anchor: draw.Middle, Level: draw.Topline, Size: b.letters, Ink: draw.InkQuiet},
	}
}

// coldest marks the coldest place inside.
func (b *ribbed) coldest(foot float64) []draw.Mark {
	c := b.d.Coldest
	at := b.view.At(c.X, c.Y)
	words, aside, anchor := draw.Pt(at.X+2, foot+b.letters+4), -0.6, draw.Start
	if c.X > b.long/2 { // its words have room on the other side only
		words.X, aside, anchor = at.X-2, 0.6, draw.End
	}
	return []draw.Mark{
		draw.Stroke(draw.PenLeader, draw.Polyline(at, draw.Pt(at.X, words.Y+b.letters/2), draw.Pt(words.X+aside, words.Y+b.letters/2))),
		draw.Shape{Path: draw.Circle(at, 1.1), Pen: draw.PenOutline, Fill: draw.FillLead},
		draw.Lettering{Text: degrees(c.Temperature) + ": the coldest place inside", At: words, Anchor: anchor, Level: draw.Topline, Size: b.letters, Strong: true},
	}
}

// key says what the lines are.
func (b *ribbed) key(y float64) []draw.Mark {
	var out []draw.Mark
	row := func(pen draw.Pen, text string) {
		y += b.letters + 2
		if pen != draw.NoPen {
			out = append(out, draw.Stroke(pen, draw.Line(draw.Pt(4, y-b.letters/2-1), draw.Pt(14, y-b.letters/2-1))))
		}
		out = append(out, draw.Lettering{Text: text, At: draw.Pt(17, y-1), Size: b.letters})
	}
	row(draw.PenIsotherm, fmt.Sprintf("as warm all along; a line every %d °C", everyKelvin))
	row(draw.PenHeat, fmt.Sprintf("ways of the heat, each a %s part of it", heatWays))
	return out
}

// words are the drawing's text equivalent.
func (b *ribbed) words() string {
	names := []string{}
	for _, l := range b.layers() {
		names = append(names, l.name)
	}
	what := "Half a rib and the bay beside it"
	if !b.hasRib() {
		what = "A bay without ribs"
	}
	text := what + ", from outside inwards: " + strings.Join(names, "; ") + ". "
	return text + fmt.Sprintf("With 0 °C outside and 20 °C inside the coldest place inside has %s.", degrees(b.d.Coldest.Temperature))
}
