package draw

import "math"

// Cell is one entry of the title block.
type Cell struct {
	Label, Value string
	Strong       bool
}

// Frame is the drawing sheet: a double border, a heading at the top left, the title block at
// the bottom right.
type Frame struct {
	Size                Size
	Heading, Subheading string
	Cells               []Cell
}

// Sizes of the frame in millimetres.
const (
	frameMargin = 8.0 // more than the 5 mm that printers leave white
	frameGap    = 1.6 // between the two borders
	cellHeight  = 12.5
	cellAir     = 3.0
)

// Inner is the inner border.
func (f Frame) Inner() Rect { return f.Size.Rect().Inset(frameMargin + frameGap) }

// Field is the room for views: inside the border, below the heading, above the title block.
func (f Frame) Field() Rect {
	r := f.Inner().Inset(6)
	if f.Heading != "" {
		r.Min.Y += 9
	}
	if len(f.Cells) > 0 {
		r.Max.Y -= cellHeight
	}
	return r
}

// Block is the title block.
func (f Frame) Block() Rect {
	r := f.Inner()
	width := 0.0
	for _, c := range f.Cells {
		width += c.width()
	}
	r.Min.X = math.Max(r.Min.X, r.Max.X-width)
	r.Min.Y = r.Max.Y - cellHeight
	if len(f.Cells) == 0 {
		r.Min = r.Max
	}
	return r
}

func (c Cell) width() float64 {
	w := math.Max(Measure(c.Label, SizeSmall, false), Measure(c.Value, SizePlain, c.Strong))
	return math.Max(math.Ceil(w*Allowance)+2*cellAir, 20)
}

// Group draws the frame.
func (f Frame) Group() Group {
	outer := f.Size.Rect().Inset(frameMargin)
	g := Group{ID: "frame", Class: "frame", Marks: []Mark{
		Area(PenEdge, FillSheet, Rectangle(outer)),
		Stroke(PenBorder, Rectangle(f.Inner())),
	}}
	return g.With(f.heading()...).With(f.block()...)
}

func (f Frame) heading() []Mark {
	if f.Heading == "" {
		return nil
	}
	at := f.Inner().Min.Add(Pt(6, 6+SizeHead))
	head := Lettering{Text: f.Heading, At: at, Size: SizeHead, Strong: true}
	out := []Mark{head}
	if f.Subheading != "" {
		at.X += head.Width()*Allowance + 4
		out = append(out, Lettering{Text: f.Subheading, At: at, Size: SizePlain, Ink: InkQuiet})
	}
	return out
}

func (f Frame) block() []Mark {
	if len(f.Cells) == 0 {
		return nil
	}
	b := f.Block()
	out := []Mark{Area(PenBorder, FillSheet, Rectangle(b))}
	x := b.Min.X
	for i, c := range f.Cells {
		if i > 0 {
			out = append(out, Stroke(PenEdge, Line(Pt(x, b.Min.Y), Pt(x, b.Max.Y))))
		}
		out = append(out,
			Lettering{Text: c.Label, At: Pt(x+cellAir, b.Min.Y+2+SizeSmall), Size: SizeSmall, Ink: InkQuiet},
			Lettering{Text: c.Value, At: Pt(x+cellAir, b.Max.Y-2.4), Size: SizePlain, Strong: c.Strong})
		x += c.width()
	}
	return out
}
