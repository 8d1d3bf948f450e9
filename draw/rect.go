package draw

import "math"

// Rect is an upright rectangle on the paper, in millimetres. Min is its top left corner.
type Rect struct{ Min, Max Point }

// Box makes a rectangle from its top left corner, width and height.
func Box(x, y, width, height float64) Rect {
	return Rect{Point{x, y}, Point{x + width, y + height}}
}

// Width is the extent along x.
func (r Rect) Width() float64 { return r.Max.X - r.Min.X }

// Height is the extent along y.
func (r Rect) Height() float64 { return r.Max.Y - r.Min.Y }

// Centre is the middle of the rectangle.
func (r Rect) Centre() Point { return r.Min.Toward(r.Max, 0.5) }

// Empty reports whether the rectangle holds no area.
func (r Rect) Empty() bool { return !(r.Max.X > r.Min.X && r.Max.Y > r.Min.Y) }

// Inset moves all four edges inwards by d; a negative d moves them outwards.
func (r Rect) Inset(d float64) Rect {
	return Rect{Point{r.Min.X + d, r.Min.Y + d}, Point{r.Max.X - d, r.Max.Y - d}}
}

// Move shifts the rectangle.
func (r Rect) Move(by Point) Rect { return Rect{r.Min.Add(by), r.Max.Add(by)} }

// Overlaps reports whether two rectangles share area; touching edges share none.
func (r Rect) Overlaps(s Rect) bool {
	return r.Min.X < s.Max.X && s.Min.X < r.Max.X && r.Min.Y < s.Max.Y && s.Min.Y < r.Max.Y
}

// Within reports whether r lies inside s, edges included.
func (r Rect) Within(s Rect) bool {
	return r.Min.X >= s.Min.X && r.Min.Y >= s.Min.Y && r.Max.X <= s.Max.X && r.Max.Y <= s.Max.Y
}

// Holds reports whether the point lies inside or on the edge.
func (r Rect) Holds(p Point) bool {
	return p.X >= r.Min.X && p.X <= r.Max.X && p.Y >= r.Min.Y && p.Y <= r.Max.Y
}

// Union is the smallest rectangle that holds both. An empty rectangle adds nothing.
func (r Rect) Union(s Rect) Rect {
	switch {
	case r == Rect{}:
		return s
	case s == Rect{}:
		return r
	}
	return Rect{
		Point{math.Min(r.Min.X, s.Min.X), math.Min(r.Min.Y, s.Min.Y)},
		Point{math.Max(r.Max.X, s.Max.X), math.Max(r.Max.Y, s.Max.Y)},
	}
}

// Corners gives the four corners clockwise from the top left.
func (r Rect) Corners() []Point {
	return []Point{r.Min, {r.Max.X, r.Min.Y}, r.Max, {r.Min.X, r.Max.Y}}
}

// around is the smallest rectangle that holds all points.
func around(points []Point) Rect {
	if len(points) == 0 {
		return Rect{}
	}
	r := Rect{points[0], points[0]}
	for _, p := range points[1:] {
		r.Min.X, r.Min.Y = math.Min(r.Min.X, p.X), math.Min(r.Min.Y, p.Y)
		r.Max.X, r.Max.Y = math.Max(r.Max.X, p.X), math.Max(r.Max.Y, p.Y)
	}
	return r
}
