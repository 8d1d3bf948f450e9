package sheet

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// place is a point of a view in millimetres of the van: across to the right of the paper, and along.
type place = [2]float64

// strip is a piece of an outline between two places across, with straight lower and upper edges.
type strip struct{ from, to, low0, low1, high0, high1 float64 }

// at is where the edges of the strip lie.
func (s *strip) at(u float64) (low, high float64) {
	t := (u - s.from) / (s.to - s.from)
	return s.low0 + (s.low1-s.low0)*t, s.high0 + (s.high1-s.high0)*t
}

// fromAbove cuts a solid's outlines as seen from above into strips along x.
func fromAbove(s solid.Solid) []strip {
	var out []strip
	for _, p := range s {
		if len(p.Outline) == 4 && square(p.Outline) {
			b := p.Bounds()
			out = append(out, strip{b.MinX, b.MaxX, b.MinY, b.MinY, b.MaxY, b.MaxY})
			continue
		}
		xs := make([]float64, len(p.Outline))
		for i, v := range p.Outline {
			xs[i] = v.X
		}
		slices.Sort(xs)
		xs = slices.Compact(xs)
		for i := 1; i < len(xs); i++ {
			l0, h0 := p.Across(xs[i-1])
			l1, h1 := p.Across(xs[i])
			out = append(out, strip{xs[i-1], xs[i], l0, l1, h0, h1})
		}
	}
	return out
}

// square says whether an outline of four corners lies along the axes.
func square(o []solid.Point) bool {
	return (o[0].X == o[1].X || o[0].Y == o[1].Y) && (o[1].X == o[2].X || o[1].Y == o[2].Y) && (o[2].X == o[3].X || o[2].Y == o[3].Y)
}

// fromSide are the strips of a solid seen across the van: x to the right, z up.
func fromSide(s solid.Solid) []strip {
	out := make([]strip, len(s))
	for i, p := range s {
		b := p.Bounds()
		out[i] = strip{b.MinX, b.MaxX, p.Low, p.Low, p.High, p.High}
	}
	return out
}

// fromBehind are the strips of a solid seen along the van, z first, since what is cut to a side is cut into slices of height.
func fromBehind(s solid.Solid) []strip {
	out := make([]strip, len(s))
	for i, p := range s {
		b := p.Bounds()
		out[i] = strip{p.Low, p.High, b.MinY, b.MinY, b.MaxY, b.MaxY}
	}
	return out
}

// cutAcross are the strips of a solid where it is cut at x, z first.
func cutAcross(s solid.Solid, x float64) []strip {
	var out []strip
	for _, p := range s {
		b := p.Bounds()
		if x < b.MinX || x > b.MaxX {
			continue
		}
		if low, high := p.Across(x); high > low {
			out = append(out, strip{p.Low, p.High, low, low, high, high})
		}
	}
	return out
}

// straight is how far [mm] a corner may lie off the line past it to be left out: less than a hair on the paper.
const straight = 0.6

// silhouette is the outline of all strips together, one closed run for each part that hangs together. What lies above one place
// across is taken to be one piece: gaps between two strips there are closed. The runs go rearwards along the lower edge and back
// along the upper.
func silhouette(strips []strip) [][]place {
	cuts := make([]float64, 0, 2*len(strips))
	for i := range strips {
		if strips[i].to > strips[i].from {
			cuts = append(cuts, strips[i].from, strips[i].to)
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	var out [][]place
	var low, high []place
	shut := func() {
		if len(low) > 0 {
			slices.Reverse(high)
			out = append(out, open(thinned(append(low, high...))))
			low, high = nil, nil
		}
	}
	for i := 1; i < len(cuts); i++ {
		a, b := cuts[i-1], cuts[i]
		l0, h0, l1, h1 := extent(strips, a, b)
		if l0 > h0 || l1 > h1 {
			shut()
			continue
		}
		low, high = append(low, place{a, l0}, place{b, l1}), append(high, place{a, h0}, place{b, h1})
	}
	shut()
	return out
}

// extent is the least and greatest of all strips that reach from a to b, at both.
func extent(strips []strip, a, b float64) (l0, h0, l1, h1 float64) {
	l0, h0, l1, h1 = math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	for i := range strips {
		s := &strips[i]
		if s.from > a || s.to < b || s.to <= s.from {
			continue
		}
		low, high := s.at(a)
		l0, h0 = min(l0, low), max(h0, high)
		low, high = s.at(b)
		l1, h1 = min(l1, low), max(h1, high)
	}
	return l0, h0, l1, h1
}

// thinned leaves out corners that lie on the line between their neighbours.
func thinned(run []place) []place {
	out := make([]place, 0, len(run))
	for _, p := range run {
		for len(out) >= 2 && near(out[len(out)-2], out[len(out)-1], p) {
			out = out[:len(out)-1]
		}
		if len(out) == 0 || math.Abs(out[len(out)-1][0]-p[0])+math.Abs(out[len(out)-1][1]-p[1]) > 1e-6 {
			out = append(out, p)
		}
	}
	return out
}

// open leaves out a last corner that is the first again.
func open(run []place) []place {
	if last := len(run) - 1; last > 0 && math.Hypot(run[last][0]-run[0][0], run[last][1]-run[0][1]) < straight {
		return run[:last]
	}
	return run
}

// near says whether b lies on the line from a to c.
func near(a, b, c place) bool {
	dx, dy := c[0]-a[0], c[1]-a[1]
	length := math.Hypot(dx, dy)
	if length < 1e-9 {
		return math.Hypot(b[0]-a[0], b[1]-a[1]) < straight
	}
	t := ((b[0]-a[0])*dx + (b[1]-a[1])*dy) / length
	return t >= 0 && t <= length && math.Abs((b[0]-a[0])*dy-(b[1]-a[1])*dx)/length < straight
}

// swapped exchanges the two axes of every run: of outlines that were gathered z first.
func swapped(runs [][]place) [][]place {
	for _, run := range runs {
		for i := range run {
			run[i][0], run[i][1] = run[i][1], run[i][0]
		}
	}
	return runs
}
