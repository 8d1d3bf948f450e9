package paper

import (
	"codeberg.org/go-pdf/fpdf"

	"tumblehome/draw"
)

// brush paints marks onto a page.
type brush struct {
	pdf    *fpdf.Fpdf
	at     draw.Point
	factor float64
}

const pointsPerMillimetre = 72 / 25.4

func (b *brush) place(p draw.Point) draw.Point { return b.at.Add(p.Mul(b.factor)) }

func (b *brush) Open(draw.Group) {}
func (b *brush) Shut(draw.Group) {}

func (b *brush) Shape(s draw.Shape) {
	how := ""
	if s.Fill != draw.NoFill {
		c := draw.Print.Colour(s.Fill.Token())
		b.pdf.SetFillColor(int(c.R), int(c.G), int(c.B))
		how = "F"
	}
	if s.Pen != draw.NoPen {
		b.take(s.Pen.Nib())
		how += "D"
	}
	if how == "" {
		return
	}
	s.Path.Follow(b)
	if s.Fill != draw.NoFill {
		how += "*" // even-odd, as everywhere
	}
	b.pdf.DrawPath(how)
}

// take sets the pen's width, dashes and colour.
func (b *brush) take(n draw.Nib) {
	c := draw.Print.Colour(n.Colour)
	b.pdf.SetDrawColor(int(c.R), int(c.G), int(c.B))
	b.pdf.SetLineWidth(n.Width * b.factor)
	b.pdf.SetLineJoinStyle("round")
	ends := "round"
	if len(n.Dashes) > 0 {
		ends = "butt"
	}
	b.pdf.SetLineCapStyle(ends)
	dashes := make([]float64, len(n.Dashes))
	for i, d := range n.Dashes {
		dashes[i] = d * b.factor
	}
	b.pdf.SetDashPattern(dashes, 0)
}

func (b *brush) MoveTo(p draw.Point) {
	p = b.place(p)
	b.pdf.MoveTo(p.X, p.Y)
}

func (b *brush) LineTo(p draw.Point) {
	p = b.place(p)
	b.pdf.LineTo(p.X, p.Y)
}

func (b *brush) CurveTo(c1, c2, to draw.Point) {
	c1, c2, to = b.place(c1), b.place(c2), b.place(to)
	b.pdf.CurveBezierCubicTo(c1.X, c1.Y, c2.X, c2.Y, to.X, to.Y)
}

func (b *brush) Close() { b.pdf.ClosePath() }

func (b *brush) Letter(l draw.Lettering) {
	c := draw.Print.Colour(l.Ink.Token())
	b.pdf.SetTextColor(int(c.R), int(c.G), int(c.B))
	if l.Turn != 0 {
		centre := b.place(l.At)
		b.pdf.TransformBegin()
		b.pdf.TransformRotate(-l.Turn, centre.X, centre.Y)
		defer b.pdf.TransformEnd()
	}
	for _, r := range l.Runs() {
		b.pdf.SetFont(Family(r.Face), style(r.Face), l.Em()*b.factor*pointsPerMillimetre)
		p := b.place(r.Start)
		b.pdf.Text(p.X, p.Y, bmp(r.Text))
	}
}

// bmp replaces letters outside the Basic Multilingual Plane, which the PDF library cannot
// address; no face has them anyway.
func bmp(s string) string {
	out := []rune(s)
	for i, r := range out {
		if r > 0xffff {
			out[i] = '\ufffd'
		}
	}
	return string(out)
}
