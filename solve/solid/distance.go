package solid

import "math"

// Distance between two prisms; 0 if they touch or overlap.
func Distance(a, b Prism) float64 {
	gap := max(0, b.Low-a.High, a.Low-b.High)
	return math.Hypot(gap, outlineDistance(a.Outline, b.Outline))
}

// outlineDistance between two convex outlines; 0 if they touch or overlap. Of two convex polygons apart, the nearest
// points are a corner of one and a point of an edge of the other.
func outlineDistance(p, q []Point) float64 {
	if len(p) == 0 || len(q) == 0 {
		return math.Inf(1)
	}
	if outlinesMeet(p, q) {
		return 0
	}
	return math.Sqrt(min(cornersToEdges(p, q), cornersToEdges(q, p)))
}

func outlinesMeet(p, q []Point) bool { return !separates(p, q) && !separates(q, p) }

// separates says whether an edge of p has q wholly outside.
func separates(p, q []Point) bool {
	v := p[len(p)-1]
	for _, w := range p {
		nx, ny := w.Y-v.Y, v.X-w.X
		if nx*v.X+ny*v.Y < least(q, nx, ny) {
			return true
		}
		v = w
	}
	return false
}

// cornersToEdges is the least squared distance of p's corners from q's edges.
func cornersToEdges(p, q []Point) float64 {
	least := math.Inf(1)
	for _, c := range p {
		v := q[len(q)-1]
		for _, w := range q {
			least = min(least, squaredToEdge(c, v, w))
			v = w
		}
	}
	return least
}

func squaredToEdge(c, v, w Point) float64 {
	ex, ey := w.X-v.X, w.Y-v.Y
	t := 0.0
	if length := ex*ex + ey*ey; length > 0 {
		t = min(1, max(0, ((c.X-v.X)*ex+(c.Y-v.Y)*ey)/length))
	}
	dx, dy := c.X-v.X-t*ex, c.Y-v.Y-t*ey
	return dx*dx + dy*dy
}
