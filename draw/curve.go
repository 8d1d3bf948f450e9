package draw

import "math"

// bend is a cubic curve ready for a painter.
type bend struct{ c1, c2, to Point }

// bends turns an arc step that begins at from into cubic curves of at most a quarter turn
// each; the error in radius is below 0.03 % (the well-known 4/3 tan(θ/4) rule). A radius too
// small to reach the end is enlarged until it does, as SVG 2 asks (appendix B.2.5).
func (s step) bends(from Point) []bend {
	centre, radius, start, sweep := s.circle(from)
	n := int(math.Ceil(math.Abs(sweep)/(math.Pi/2) - 1e-9))
	if n < 1 {
		return []bend{{from, s.to, s.to}}
	}
	d := sweep / float64(n)
	k := radius * 4 / 3 * math.Tan(d/4)
	out := make([]bend, n)
	for i := range out {
		s0, c0 := math.Sincos(start + d*float64(i))
		s1, c1 := math.Sincos(start + d*float64(i+1))
		out[i] = bend{
			Pt(centre.X+radius*c0-k*s0, centre.Y+radius*s0+k*c0),
			Pt(centre.X+radius*c1+k*s1, centre.Y+radius*s1-k*c1),
			Pt(centre.X+radius*c1, centre.Y+radius*s1),
		}
	}
	out[n-1].to = s.to
	return out
}

// circle finds centre, radius, starting angle and signed sweep (radians, clockwise on the
// paper) of an arc step.
func (s step) circle(from Point) (centre Point, radius, start, sweep float64) {
	chord := s.to.Sub(from)
	half := chord.Length() / 2
	radius = math.Max(s.radius, half)
	rise := math.Sqrt(math.Max(0, radius*radius-half*half))
	if s.large == s.rightabout {
		rise = -rise
	}
	// With y down, walking from→to, the centre of a small clockwise arc is on the right.
	centre = from.Toward(s.to, 0.5).Add(chord.Unit().Left().Mul(-rise))
	start = math.Atan2(from.Y-centre.Y, from.X-centre.X)
	sweep = math.Atan2(s.to.Y-centre.Y, s.to.X-centre.X) - start
	if s.rightabout && sweep < 0 {
		sweep += 2 * math.Pi
	}
	if !s.rightabout && sweep > 0 {
		sweep -= 2 * math.Pi
	}
	return centre, radius, start, sweep
}

// Flatten turns the path into runs of straight lines that stay within the tolerance (mm) of
// it. A closed run ends with its first point.
func (p Path) Flatten(tolerance float64) [][]Point {
	if !(tolerance > 0) {
		tolerance = 0.05
	}
	var runs [][]Point
	var at Point
	add := func(q Point) {
		if len(runs) == 0 {
			runs = append(runs, []Point{at})
		}
		runs[len(runs)-1] = append(runs[len(runs)-1], q)
		at = q
	}
	for _, s := range p.steps {
		switch s.kind {
		case moveTo:
			runs, at = append(runs, []Point{s.to}), s.to
		case lineTo, closeUp:
			add(s.to)
		case arcTo:
			for _, b := range s.bends(at) {
				b.flatten(at, tolerance, add)
			}
		case curveTo:
			bend{s.c1, s.c2, s.to}.flatten(at, tolerance, add)
		}
	}
	return runs
}

// flatten cuts the curve into equal steps of its parameter. With n steps the error is at most
// d/(8 n²), d the largest second difference times 6 (de Boor's bound for polynomial curves).
func (b bend) flatten(from Point, tolerance float64, add func(Point)) {
	d1 := from.Add(b.c2).Sub(b.c1.Mul(2)).Length()
	d2 := b.c1.Add(b.to).Sub(b.c2.Mul(2)).Length()
	n := math.Ceil(math.Sqrt(6 * math.Max(d1, d2) / (8 * tolerance)))
	n = math.Min(math.Max(n, 1), 200)
	for i := 1.0; i < n; i++ {
		add(b.at(from, i/n))
	}
	add(b.to)
}

func (b bend) at(from Point, t float64) Point {
	u := 1 - t
	return from.Mul(u * u * u).Add(b.c1.Mul(3 * u * u * t)).Add(b.c2.Mul(3 * u * t * t)).Add(b.to.Mul(t * t * t))
}

// Bounds is the smallest rectangle that holds the path, to within 0.05 mm on curves.
func (p Path) Bounds() Rect {
	var r Rect
	for i, run := range p.Flatten(0.05) {
		if i == 0 {
			r = around(run)
			continue
		}
		r = r.Union(around(run))
	}
	return r
}
