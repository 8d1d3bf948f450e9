package draw

import "math"

// Point is a place on the paper: millimetres from the top left corner of the sheet, x to the
// right, y down.
type Point struct{ X, Y float64 }

// Pt is short for Point{x, y}.
func Pt(x, y float64) Point { return Point{x, y} }

// Add moves p by q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub is the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Mul stretches p from the corner of the sheet.
func (p Point) Mul(f float64) Point { return Point{p.X * f, p.Y * f} }

// Dot is the scalar product.
func (p Point) Dot(q Point) float64 { return p.X*q.X + p.Y*q.Y }

// Cross is the third component of the vector product.
func (p Point) Cross(q Point) float64 { return p.X*q.Y - p.Y*q.X }

// Length is the distance of p from the corner of the sheet, in millimetres.
func (p Point) Length() float64 { return math.Hypot(p.X, p.Y) }

// Distance is the way between two places, in millimetres.
func (p Point) Distance(q Point) float64 { return p.Sub(q).Length() }

// Unit is p with length 1; nowhere stays nowhere.
func (p Point) Unit() Point {
	l := p.Length()
	if l == 0 {
		return p
	}
	return p.Mul(1 / l)
}

// Left is p turned by a quarter towards the left hand of someone walking along it on the
// paper (y points down).
func (p Point) Left() Point { return Point{p.Y, -p.X} }

// Toward is the point at fraction t of the way from p to q.
func (p Point) Toward(q Point, t float64) Point {
	return Point{p.X + (q.X-p.X)*t, p.Y + (q.Y-p.Y)*t}
}

// Turn rotates p about the given centre by degrees, clockwise as seen on the paper.
func (p Point) Turn(about Point, degrees float64) Point {
	s, c := math.Sincos(degrees * math.Pi / 180)
	d := p.Sub(about)
	return Point{about.X + d.X*c - d.Y*s, about.Y + d.X*s + d.Y*c}
}
