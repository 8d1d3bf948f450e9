package draw

import "math"

// Quilt draws insulation between two faces as one zigzag from the first to the second and
// back: how a section shows wool or foam between skin and lining. Pitch is the length of one
// zig and zag along the first face, in millimetres. The faces are open runs in the same
// direction.
func Quilt(outer, inner []Point, pitch float64) Shape {
	total := runLength(outer)
	if !(pitch > 0) || !(total > 0) || len(inner) == 0 {
		return Shape{}
	}
	n := int(math.Min(2*math.Round(total/pitch), 4000))
	var points []Point
	for i := 0; i <= n; i++ {
		face := outer
		if i%2 == 1 {
			face = inner
		}
		points = append(points, alongRun(face, float64(i)/float64(n)))
	}
	return Shape{Path: Polyline(points...), Pen: PenHatch}
}

func runLength(run []Point) float64 {
	sum := 0.0
	for i := 1; i < len(run); i++ {
		sum += run[i].Distance(run[i-1])
	}
	return sum
}

// alongRun is the point at the share t of the run's length.
func alongRun(run []Point, t float64) Point {
	left := t * runLength(run)
	for i := 1; i < len(run); i++ {
		d := run[i].Distance(run[i-1])
		if left <= d && d > 0 {
			return run[i-1].Toward(run[i], left/d)
		}
		left -= d
	}
	return run[len(run)-1]
}
