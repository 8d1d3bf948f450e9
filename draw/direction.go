package draw

import "math"

// Direction says which way something is measured on the paper.
type Direction int

// The directions.
const (
	Horizontal Direction = iota // along x, read from below
	Vertical                    // along y, read from the right
	Aligned                     // from the first point to the last, read from below or the right
)

// axes is the frame of a dimension: s runs along it in the direction of reading, t towards the
// side on which its text stands.
type axes struct{ along, above Point }

// axes finds the frame for a dimension between two points.
func (d Direction) axes(from, to Point) axes {
	u := Pt(1, 0)
	switch d {
	case Vertical:
		u = Pt(0, -1)
	case Aligned:
		u = to.Sub(from).Unit()
		if u.X < -1e-9 || math.Abs(u.X) <= 1e-9 && u.Y > 0 {
			u = u.Mul(-1) // no text stands on its head
		}
		if u == (Point{}) {
			u = Pt(1, 0)
		}
	}
	return axes{u, u.Left()}
}

func (a axes) paper(s, t float64) Point { return a.along.Mul(s).Add(a.above.Mul(t)) }

func (a axes) local(p Point) (s, t float64) { return p.Dot(a.along), p.Dot(a.above) }

// turn is the rotation of text along the frame, in degrees clockwise.
func (a axes) turn() float64 { return math.Atan2(a.along.Y, a.along.X) * 180 / math.Pi }
