package solid

import (
	"cmp"
	"slices"
)

// Slid is the space that the solid passes through while it slides straight. It is exact for a slide along z and for one in the
// x,y plane (the hull of an outline and the shifted outline). A slanting slide is covered by the whole of both, hull times
// heights, which is too large by the corners above and below the path. The prisms of a sweep may overlap.
func (s Solid) Slid(dx, dy, dz float64) Solid {
	slid := make(Solid, len(s))
	for i, p := range s {
		outline := make([]Point, 0, 2*len(p.Outline)+1)
		outline = append(outline, p.Outline...)
		if dx != 0 || dy != 0 {
			for _, v := range p.Outline {
				outline = append(outline, Point{v.X + dx, v.Y + dy})
			}
			outline = hull(outline)
		}
		slid[i] = Prism{outline, p.Low + min(0, dz), p.High + max(0, dz)}
	}
	return slid
}

// hull is the convex hull of some points, counter-clockwise, without points in a row or as good as the same; it sorts the points it is given. It
// is Andrew's monotone chain (Information Processing Letters 9 (1979) 216-219).
func hull(points []Point) []Point {
	if len(points) < 3 {
		return points
	}
	slices.SortFunc(points, func(a, b Point) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
	around := make([]Point, 0, len(points)+1)
	for _, p := range points {
		around = turnLeft(around, p, 1)
	}
	from := len(around)
	for i := len(points) - 2; i >= 0; i-- {
		around = turnLeft(around, points[i], from)
	}
	around = slices.CompactFunc(around, func(a, b Point) bool { return apart(a, b) < hair })
	return around[:len(around)-1]
}

// turnLeft adds a point to a chain and drops what then would not turn left; the first keep points stay.
func turnLeft(chain []Point, p Point, keep int) []Point {
	for len(chain) > keep && !(turn(chain[len(chain)-2], chain[len(chain)-1], p) > 0) {
		chain = chain[:len(chain)-1]
	}
	return append(chain, p)
}

// turn is twice the area of a triangle, positive if it goes round counter-clockwise.
func turn(a, b, c Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }
