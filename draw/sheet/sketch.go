package sheet

import (
	"math"
	"strconv"

	"tumblehome/draw"
)

// sketch gathers the marks of one thing and a digest of what they show, so that a page can tell whether it must be drawn again.
type sketch struct {
	view  draw.View
	marks []draw.Mark
	sum   uint64
}

// area lays down a closed outline.
func (s *sketch) area(pen draw.Pen, fill draw.Fill, runs ...[]place) {
	s.put(pen, fill, s.path(runs))
}

// line draws open runs.
func (s *sketch) line(pen draw.Pen, runs ...[]place) {
	var p draw.Path
	for _, run := range runs {
		p = p.And(draw.Polyline(s.view.Points(run...)...))
		s.take(run)
	}
	s.put(pen, draw.NoFill, p)
}

// box lays down a rectangle between two places.
func (s *sketch) box(pen draw.Pen, fill draw.Fill, a, b place) {
	s.area(pen, fill, []place{a, {b[0], a[1]}, b, {a[0], b[1]}})
}

// hatch hatches an outline; spacing in millimetres of the paper.
func (s *sketch) hatch(h draw.Hatching, spacing float64, runs ...[]place) {
	s.marks = append(s.marks, draw.Hatch(s.path(runs), h, spacing))
	s.mix(uint64(h) + 77)
}

// text letters.
func (s *sketch) text(l draw.Lettering) {
	s.marks = append(s.marks, l)
	s.word(l.Text)
	s.number(l.At.X)
	s.number(l.At.Y)
	s.number(l.Turn)
}

func (s *sketch) path(runs [][]place) draw.Path {
	var p draw.Path
	for _, run := range runs {
		p = p.And(draw.Polygon(s.view.Points(run...)...))
		s.take(run)
	}
	return p
}

func (s *sketch) put(pen draw.Pen, fill draw.Fill, p draw.Path) {
	s.marks = append(s.marks, draw.Shape{Path: p, Pen: pen, Fill: fill})
	s.word(string(pen))
	s.word(string(fill))
}

func (s *sketch) take(run []place) {
	for _, p := range run {
		at := s.view.At(p[0], p[1])
		s.number(at.X)
		s.number(at.Y)
	}
}

// The digest is FNV-1a over whole numbers, with lengths in hundredths of a millimetre on the paper, the finest that is written.
const (
	fnvStart = 14695981039346656037
	fnvPrime = 1099511628211
)

func (s *sketch) mix(v uint64) {
	if s.sum == 0 {
		s.sum = fnvStart
	}
	s.sum = (s.sum ^ v) * fnvPrime
}

func (s *sketch) number(v float64) { s.mix(uint64(int64(math.Round(v * 100)))) }

func (s *sketch) word(text string) {
	for i := range len(text) {
		s.mix(uint64(text[i]))
	}
}

func (s *sketch) digest() string { return strconv.FormatUint(s.sum, 36) }

// group closes the sketch.
func (s *sketch) group(id, class, title string, data map[string]string) draw.Group {
	s.word(class)
	s.word(title)
	return draw.Group{ID: id, Class: class, Title: title, Digest: s.digest(), Data: data, Marks: s.marks}
}
