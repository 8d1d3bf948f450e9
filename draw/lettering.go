package draw

import (
	"strings"

	"tumblehome/draw/fonts"
)

// Heights of capitals in millimetres, the series of ISO 3098-1 (from memory). Nothing on an
// A3 sheet is lettered smaller than SizeSmall.
const (
	SizeSmall = 2.5
	SizePlain = 3.5
	SizeHead  = 5.0
)

// Anchor says which end of the text stands on the point.
type Anchor int

// Where a text stands with respect to its point.
const (
	Start Anchor = iota
	Middle
	End
)

// Level says which height of the letters the point is at.
type Level int

// The heights of a letter.
const (
	Baseline Level = iota
	Midline        // half the height of the capitals
	Topline        // the top of the capitals
)

// Lettering is one line of plain text.
type Lettering struct {
	Text   string
	At     Point
	Size   float64 // height of the capitals in mm, as ISO 3098 measures; 0 means SizeSmall
	Anchor Anchor
	Level  Level
	Turn   float64 // degrees clockwise about At; -90 reads from the right-hand edge
	Strong bool
	Ink    Ink
	Ground Fill // laid under the text first, so that lines do not run through it
}

// Text is plain lettering that starts at a point on its baseline.
func Text(text string, at Point, size float64) Lettering {
	return Lettering{Text: text, At: at, Size: size}
}

// height is the height of the capitals.
func (l Lettering) height() float64 {
	if l.Size == 0 {
		return SizeSmall
	}
	return l.Size
}

// line is the text as it is set: one line, no control characters, valid UTF-8.
func (l Lettering) line() string { return cleanText(l.Text) }

// Width is the length of the text in millimetres, without margin.
func (l Lettering) Width() float64 { return Measure(l.line(), l.height(), l.Strong) }

// start is the point on the baseline where the first letter begins, before turning.
func (l Lettering) start() Point {
	return Point{l.At.X - l.Width()*l.Anchor.share(), l.baseline()}
}

func (a Anchor) share() float64 { return float64(a) / 2 }

// baseline is the y of the baseline before turning.
func (l Lettering) baseline() float64 { return l.At.Y + l.height()*float64(l.Level)/2 }

// Allowance is added to measured widths wherever room is kept for text: a browser that shows
// another face than ours must not make labels collide.
const Allowance = 1.08

// Outline is the box kept free for the text, as the four corners of a rectangle turned with
// it: the measured width with its allowance, capitals and descenders, and a little air.
func (l Lettering) Outline() []Point {
	h, w := l.height(), l.Width()*Allowance
	x, y := l.At.X-w*l.Anchor.share(), l.baseline()
	air := h * 0.12
	r := Rect{Point{x - air, y - h - air}, Point{x + w + air, y + h*fonts.Descent/fonts.Capitals + air}}
	corners := r.Corners()
	if l.Turn != 0 {
		for i, c := range corners {
			corners[i] = c.Turn(l.At, l.Turn)
		}
	}
	return corners
}

// Bounds is the upright rectangle around Outline.
func (l Lettering) Bounds() Rect { return around(l.Outline()) }

// cleanText makes one line of valid text: control characters and line ends become blanks.
func cleanText(s string) string {
	plain := func(r rune) rune {
		switch {
		case r == '\n' || r == '\r' || r == '\t':
			return ' '
		case r < 0x20 || r == 0x7f || (r >= 0x80 && r < 0xa0) || r == 0xfffe || r == 0xffff:
			return -1
		}
		return r
	}
	return strings.Map(plain, strings.ToValidUTF8(s, "\ufffd"))
}
