package solid

// room for the corners of two outlines of 24 points clipped against each other
const corners = 50

// SharedVolume is the volume that two prisms have in common.
func SharedVolume(a, b Prism) float64 {
	height := min(a.High, b.High) - max(a.Low, b.Low)
	if !(height > 0) {
		return 0
	}
	return height * SharedArea(a.Outline, b.Outline)
}

// SharedArea is the area that two convex outlines have in common.
func SharedArea(p, q []Point) float64 {
	if len(p) < 3 || len(q) < 3 {
		return 0
	}
	var first, second [corners]Point
	have, next := append(first[:0], p...), second[:0]
	v := q[len(q)-1]
	for _, w := range q {
		next = clip(have, next[:0], v, w)
		have, next = next, have
		if len(have) < 3 {
			return 0
		}
		v = w
	}
	return max(0, area(have))
}

// Clip is the convex outline that p and q have in common, with fewer than three points if there is none.
func Clip(p, q []Point) []Point {
	have := append([]Point(nil), p...)
	if len(q) < 3 {
		return nil
	}
	v := q[len(q)-1]
	for _, w := range q {
		have = clip(have, nil, v, w)
		v = w
	}
	return have
}

// clip appends to kept the part of p left of the line from v to w.
func clip(p, kept []Point, v, w Point) []Point {
	if len(p) == 0 {
		return kept
	}
	ex, ey := w.X-v.X, w.Y-v.Y
	last := p[len(p)-1]
	lastSide := ex*(last.Y-v.Y) - ey*(last.X-v.X)
	for _, here := range p {
		side := ex*(here.Y-v.Y) - ey*(here.X-v.X)
		if (side > 0 && lastSide < 0) || (side < 0 && lastSide > 0) {
			t := lastSide / (lastSide - side)
			kept = append(kept, Point{last.X + t*(here.X-last.X), last.Y + t*(here.Y-last.Y)})
		}
		if side >= 0 {
			kept = append(kept, here)
		}
		last, lastSide = here, side
	}
	return kept
}
