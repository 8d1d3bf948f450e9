package raster

import (
	"sync"

	"github.com/tdewolff/canvas"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"tumblehome/draw"
	"tumblehome/draw/fonts"
)

// outlines are the embedded fonts, read once.
var outlines = sync.OnceValue(func() [fonts.Faces]*sfnt.Font {
	var out [fonts.Faces]*sfnt.Font
	for f := range fonts.Face(fonts.Faces) {
		parsed, err := sfnt.Parse(f.File())
		if err != nil {
			panic("raster: embedded font: " + err.Error()) // a broken build, not a user's doing
		}
		out[f] = parsed
	}
	return out
})

// fine is the size at which glyphs are read, in units to the em.
const fine = 4096

// Letter paints the outlines of the letters at the places the other painters put them.
func (b *brush) Letter(l draw.Lettering) {
	out := &canvas.Path{}
	em := l.Em()
	var buf sfnt.Buffer
	for _, run := range l.Runs() {
		at := run.Start
		for _, r := range run.Text {
			b.glyph(out, &buf, run.Face, r, l, at)
			_, w := fonts.For(r, l.Strong)
			at.X += w * em
		}
	}
	b.fill(out, l.Ink.Token())
}

func (b *brush) glyph(out *canvas.Path, buf *sfnt.Buffer, face fonts.Face, r rune, l draw.Lettering, at draw.Point) {
	f := outlines()[face]
	id, err := f.GlyphIndex(buf, r)
	if err != nil {
		return
	}
	segments, err := f.LoadGlyph(buf, id, fixed.I(fine), nil)
	if err != nil {
		return
	}
	scale := l.Em() / fine / 64
	place := func(p fixed.Point26_6) (x, y float64) {
		q := draw.Pt(at.X+float64(p.X)*scale, at.Y+float64(p.Y)*scale)
		return b.place(q.Turn(l.At, l.Turn))
	}
	for i, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			if i > 0 {
				out.Close()
			}
			out.MoveTo(place(s.Args[0]))
		case sfnt.SegmentOpLineTo:
			out.LineTo(place(s.Args[0]))
		case sfnt.SegmentOpQuadTo:
			x1, y1 := place(s.Args[0])
			x, y := place(s.Args[1])
			out.QuadTo(x1, y1, x, y)
		case sfnt.SegmentOpCubeTo:
			x1, y1 := place(s.Args[0])
			x2, y2 := place(s.Args[1])
			x, y := place(s.Args[2])
			out.CubeTo(x1, y1, x2, y2, x, y)
		}
	}
	if len(segments) > 0 {
		out.Close()
	}
}
