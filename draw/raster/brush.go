package raster

import (
	"github.com/tdewolff/canvas"
	"github.com/tdewolff/canvas/renderers/rasterizer"

	"tumblehome/draw"
)

// brush paints marks onto a picture. The canvas library measures y upwards from the bottom.
type brush struct {
	r      *rasterizer.Rasterizer
	theme  draw.Theme
	origin draw.Point
	height float64
}

func (b *brush) Open(draw.Group) {}
func (b *brush) Shut(draw.Group) {}

func (b *brush) Shape(s draw.Shape) {
	if s.Fill != draw.NoFill {
		b.fill(b.fillPath(s.Path), s.Fill.Token())
	}
	if s.Pen != draw.NoPen {
		t := tracer{brush: b, path: &canvas.Path{}}
		s.Path.Follow(&t)
		b.stroke(t.path, s.Pen.Nib())
	}
}

func (b *brush) fill(p *canvas.Path, token draw.Token) {
	b.r.RenderPath(p, canvas.Style{Fill: canvas.Paint{Color: b.theme.Colour(token)}}, canvas.Identity)
}

func (b *brush) stroke(p *canvas.Path, n draw.Nib) {
	style := canvas.Style{
		Stroke:       canvas.Paint{Color: b.theme.Colour(n.Colour)},
		StrokeWidth:  n.Width,
		StrokeCapper: canvas.RoundCap,
		StrokeJoiner: canvas.RoundJoin,
	}
	if len(n.Dashes) > 0 {
		style.StrokeCapper = canvas.ButtCap
		p = p.Dash(0, n.Dashes...) // here, since the library's style scales dashes by the width
	}
	b.r.RenderPath(p, style, canvas.Identity)
}

// place carries a point of the sheet to the picture.
func (b *brush) place(p draw.Point) (x, y float64) {
	return p.X - b.origin.X, b.height - (p.Y - b.origin.Y)
}

// tracer follows a path into one of the library's.
type tracer struct {
	*brush
	path *canvas.Path
}

func (t *tracer) MoveTo(p draw.Point) { t.path.MoveTo(t.place(p)) }
func (t *tracer) LineTo(p draw.Point) { t.path.LineTo(t.place(p)) }
func (t *tracer) Close()              { t.path.Close() }

func (t *tracer) CurveTo(c1, c2, to draw.Point) {
	x1, y1 := t.place(c1)
	x2, y2 := t.place(c2)
	x, y := t.place(to)
	t.path.CubeTo(x1, y1, x2, y2, x, y)
}
