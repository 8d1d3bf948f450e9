package draw

import (
	"strings"

	"tumblehome/draw/fonts"
)

// Measure gives the width of a line of text in millimetres, for a height of capitals in
// millimetres. There is no kerning, in any output.
func Measure(text string, size float64, strong bool) float64 {
	ems := 0.0
	for _, r := range text {
		_, w := fonts.For(r, strong)
		ems += w
	}
	return ems * emOf(size)
}

// emOf is the font size in millimetres for a height of capitals.
func emOf(size float64) float64 { return size / fonts.Capitals }

// Run is a stretch of a line in one face, ready for a painter.
type Run struct {
	Face  fonts.Face
	Text  string
	Start Point   // where its first letter begins on the baseline, before turning
	Width float64 // mm
}

// Em is the font size in millimetres.
func (l Lettering) Em() float64 { return emOf(l.height()) }

// Runs splits the line where the face changes and places each piece. A painter turns them
// about l.At by l.Turn degrees clockwise.
func (l Lettering) Runs() []Run {
	var out []Run
	at, em := l.start(), l.Em()
	for _, r := range l.line() {
		f, w := fonts.For(r, l.Strong)
		if n := len(out); n == 0 || out[n-1].Face != f {
			out = append(out, Run{Face: f, Start: at})
		}
		last := &out[len(out)-1]
		last.Text += string(r)
		last.Width += w * em
		at.X += w * em
	}
	return out
}

// Unknown tells whether a text has letters that no face has: they would be set as empty boxes.
func Unknown(text string) bool { return strings.ContainsFunc(cleanText(text), unknown) }

func unknown(r rune) bool { return !fonts.Has(r) }

// Known is a text with an ellipsis in place of each stretch of letters that no face has.
func Known(text string) string {
	var b strings.Builder
	inside := false
	for _, r := range cleanText(text) {
		if !unknown(r) {
			b.WriteRune(r)
		} else if !inside {
			b.WriteRune('…')
		}
		inside = unknown(r)
	}
	return b.String()
}
