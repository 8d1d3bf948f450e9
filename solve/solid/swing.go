package solid

import "math"

// finest is the least tolerance of a sweep, as a share of its reach: below it a turn would be cut into steps without number.
const finest = 1e-4

// Swung is the space that the solid passes through while it turns about an upright axis, by an angle in radians, counter-clockwise
// seen from +z if positive and at most a full turn. It covers the true space, and none of it is further than the tolerance from
// that; a tolerance below 1/10000 of the reach is taken as that. The prisms of a sweep may overlap.
//
// A convex outline turned by a small step s stays in the hull of its corners before, after, and where the tangents of their paths
// meet, at radius/cos(s/2). Of an outline cut as in square.go that hull is too large by R(1/cos(s/2) - 1) at the far corner and
// by at most r(1 - cos s) at the near one; both are kept within three quarters of the tolerance, the last is for square.go.
func (s Solid) Swung(about Point, angle, tolerance float64) Solid {
	angle = atMostATurn(angle)
	if angle == 0 {
		return s
	}
	var swung Solid
	for _, p := range s {
		if len(p.Outline) < 3 {
			continue
		}
		for _, outline := range swing(p.Outline, about, angle, tolerance) {
			swung = append(swung, Prism{outline, p.Low, p.High})
		}
	}
	return swung
}

// atMostATurn limits an angle to a full turn either way; what is no number is no turn.
func atMostATurn(angle float64) float64 {
	if math.IsNaN(angle) {
		return 0
	}
	return max(-2*math.Pi, min(2*math.Pi, angle))
}

// swing is the cover of a turning outline.
func swing(outline []Point, about Point, angle, tolerance float64) [][]Point {
	near, far := outlineDistance([]Point{about}, outline), reach(outline, about)
	if !(tolerance > finest*far) {
		tolerance = finest * far
	}
	if near == 0 && math.Abs(angle) == 2*math.Pi {
		return [][]Point{Circle(about, far, tolerance, Outside)}
	}
	parts := squared(outline, about, near, tolerance/4)
	n := steps(angle, widest(near, far, tolerance*3/4))
	covers := make([][]Point, 0, len(parts)*n)
	step := angle / float64(n)
	for i := range n {
		for _, part := range parts {
			points := make([]Point, 0, 3*len(part))
			points = turned(points, part, about, float64(i)*step, 1)
			points = turned(points, part, about, (float64(i)+0.5)*step, 1/math.Cos(step/2))
			points = turned(points, part, about, float64(i+1)*step, 1)
			covers = append(covers, hull(points))
		}
	}
	return covers
}

// widest is the widest step that keeps both errors of the hull within a tolerance, and no more than a sixth of a turn.
func widest(near, far, tolerance float64) float64 {
	step := arcStep(far, tolerance, Outside)
	if near > tolerance {
		step = min(step, math.Acos(1-tolerance/near))
	}
	return step
}

// turned appends points turned about one, their distance from it stretched.
func turned(to, points []Point, about Point, angle, stretch float64) []Point {
	sin, cos := sinCos(angle)
	for _, v := range points {
		dx, dy := stretch*(v.X-about.X), stretch*(v.Y-about.Y)
		to = append(to, Point{about.X + cos*dx - sin*dy, about.Y + sin*dx + cos*dy})
	}
	return to
}

// reach is the greatest distance of an outline from a point.
func reach(outline []Point, from Point) float64 {
	far := 0.0
	for _, v := range outline {
		far = max(far, math.Hypot(v.X-from.X, v.Y-from.Y))
	}
	return far
}
