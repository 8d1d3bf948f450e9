package solid

import "math"

// Lies says on which side of a curve the straight edges lie that stand for it.
type Lies bool

const (
	Within  Lies = false // chords: the corners are on the curve
	Outside Lies = true  // tangents: the edges touch the curve
)

// mostEdges stand for one full turn, however small the tolerance.
const mostEdges = 720

// Circle is the outline that stands for a circle, counter-clockwise, nowhere further from it than the tolerance.
func Circle(middle Point, radius, tolerance float64, lies Lies) []Point {
	chain := Arc(middle, radius, 0, 2*math.Pi, tolerance, lies)
	if lies == Outside {
		return chain[1 : len(chain)-1]
	}
	return chain[:len(chain)-1]
}

// Arc is the chain of points that stands for an arc, from an angle (radians, counter-clockwise from +x) through a turn by, which is
// negative for clockwise. Both ends are on the arc. With n steps of angle s a chord is radius·(1 - cos(s/2)) inside of it, the sagitta,
// and the corner of two tangents radius·(1/cos(s/2) - 1) outside; n is the least for which that is within the tolerance, with at
// least six and at most 720 to a full turn.
func Arc(middle Point, radius, from, by, tolerance float64, lies Lies) []Point {
	n := steps(by, arcStep(radius, tolerance, lies))
	step := by / float64(n)
	at := func(r, angle float64) Point {
		sin, cos := sinCos(angle)
		return Point{middle.X + r*cos, middle.Y + r*sin}
	}
	chain := make([]Point, 0, n+2)
	chain = append(chain, at(radius, from))
	if lies == Outside {
		for i := range n {
			chain = append(chain, at(radius/math.Cos(step/2), from+(float64(i)+0.5)*step))
		}
	} else {
		for i := 1; i < n; i++ {
			chain = append(chain, at(radius, from+float64(i)*step))
		}
	}
	return append(chain, at(radius, from+by))
}

// arcStep is the widest angle of one edge.
func arcStep(radius, tolerance float64, lies Lies) float64 {
	if !(radius > 0) {
		return math.Pi / 3
	}
	cos := 1 - tolerance/radius
	if lies == Outside {
		cos = 1 / (1 + tolerance/radius)
	}
	if !(cos < 1) {
		return 0
	}
	return min(math.Pi/3, 2*math.Acos(max(0, cos)))
}

// steps is how many steps of at most a width make up a turn.
func steps(turn, widest float64) int {
	widest = max(widest, 2*math.Pi/mostEdges)
	return max(1, int(math.Ceil(math.Abs(turn)/widest-1e-9)))
}
