package sheet

import (
	"math"
	"strings"

	"tumblehome/draw"
)

// border is the edge of the sheet and what is written along it.
type border struct {
	cells []draw.Cell
	sheet draw.Frame // of a sheet of its own
	field draw.Rect
	page  bool
}

// frame draws the edge: that of the drawing office on a sheet of its own, a slim one inside a page.
func (d *drawing) frame() *border {
	b := &border{page: d.size == draw.Size{}}
	b.cells = []draw.Cell{
		{Label: "build", Value: d.r.Document.Build.Title, Strong: true},
		{Label: "scale", Value: "1 : 20"},
		{Label: "cut across at", Value: "x " + whole(d.cut)},
	}
	if d.Revision != "" {
		b.cells = append(b.cells, draw.Cell{Label: "revision", Value: d.Revision})
	} else if !d.r.Today.IsZero() {
		b.cells = append(b.cells, draw.Cell{Label: "day", Value: dateWords(d.r.Today)})
	}
	if b.page {
		d.size = Page
		b.field = d.size.Rect().Inset(3.5)
		b.field.Max.Y -= slimRow
		return b
	}
	heading := "What are we building?"
	if d.Show == Wiring {
		heading = "Where does it run?"
	}
	b.sheet = draw.Frame{Size: d.size, Heading: heading, Subheading: d.r.Document.Build.Title + ", " + d.title(), Cells: b.cells}
	b.field = b.sheet.Field()
	return b
}

const slimRow = 7.0 // height of the slim title block [mm]

func (b *border) marks(d *drawing) []draw.Mark {
	if !b.page {
		b.sheet.Cells = b.cells
		return []draw.Mark{b.sheet.Group()}
	}
	edge := d.size.Rect().Inset(0.4)
	inner := d.size.Rect().Inset(1.6)
	g := draw.Group{ID: "frame", Class: "frame", Marks: []draw.Mark{
		draw.Area(draw.PenEdge, draw.FillSheet, draw.Rectangle(edge)),
		draw.Stroke(draw.PenBorder, draw.Rectangle(inner)),
	}}
	return []draw.Mark{g.With(b.slim(inner)...)}
}

// slim is a title block one line high.
func (b *border) slim(inner draw.Rect) []draw.Mark {
	const air = 2.5
	x := inner.Max.X
	y := inner.Max.Y - slimRow
	var out []draw.Mark
	for i := len(b.cells) - 1; i >= 0; i-- {
		c := b.cells[i]
		value := draw.Lettering{Text: c.Value, Size: nameSize, Strong: c.Strong, Level: draw.Midline}
		tag := draw.Lettering{Text: c.Label, Size: plainSize, Ink: draw.InkQuiet, Level: draw.Midline}
		wide := (value.Width()+tag.Width())*draw.Allowance + 3*air
		x -= wide
		tag.At, value.At = draw.Pt(x+air, y+slimRow/2), draw.Pt(x+2*air+tag.Width()*draw.Allowance, y+slimRow/2)
		out = append(out, tag, value, draw.Stroke(draw.PenEdge, draw.Line(draw.Pt(x, y), draw.Pt(x, inner.Max.Y))))
	}
	top := draw.Stroke(draw.PenEdge, draw.Line(draw.Pt(x, y), draw.Pt(inner.Max.X, y)))
	return append([]draw.Mark{top}, out...)
}

// viewTitles say under or over each view what it is.
func (d *drawing) viewTitles() []draw.Mark {
	letter := func(text string, x, y float64) draw.Mark {
		return draw.Lettering{Text: text, At: draw.Pt(x, y), Ink: draw.InkQuiet}
	}
	cross, side := d.views[Cross], d.views[Side]
	under := side.At(0, math.Min(d.space.MinZ, -wheelShown)).Y + 4
	out := draw.ScaleBar{At: draw.Pt(d.field.Min.X+5, d.size.Height-d.field.Min.X), Scale: d.scale, Metres: 1}.Marks()
	if text := d.unplaced(); text != "" {
		out = append(out, letter(text, d.field.Min.X+5+1000/d.scale+22, d.size.Height-d.field.Min.X-1))
	}
	return append(out,
		letter("cut across at x "+whole(d.cut)+", looking forwards", cross.At(d.space.MinY, 0).X, cross.At(0, d.space.MaxZ).Y-4),
		letter("cut along the middle, looking to the right", side.At(d.r.Body.Start(), 0).X, under),
	)
}

// unplaced names what has no place yet, as far as there is room to say so.
func (d *drawing) unplaced() string {
	mode := d.standings()
	if mode == nil || d.Mode == Today {
		return ""
	}
	var names []string
	for i := range mode.All {
		if s := &mode.All[i]; s.Undecided != "" {
			names = append(names, nameOf(s.ID, d.r.Document.Fittings[s.ID]))
		}
	}
	const said = 3
	switch {
	case len(names) == 0:
		return ""
	case len(names) > said:
		return "no place yet: " + strings.Join(names[:said], ", ") + " and " + whole(float64(len(names)-said)) + " more"
	}
	return "no place yet: " + strings.Join(names, ", ")
}
