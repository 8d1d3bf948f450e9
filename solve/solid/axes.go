package solid

import "math"

// Way is a straight way out: a unit direction and how far to go along it.
type Way struct{ X, Y, Z, Depth float64 }

// Overlap says whether two prisms share space, and the shortest way for a to leave b.
func Overlap(a, b Prism) (Way, bool) {
	up, down := b.High-a.Low, a.High-b.Low
	if !(up > 0 && down > 0) || !(a.High > a.Low && b.High > b.Low) || len(a.Outline) < 3 || len(b.Outline) < 3 {
		return Way{}, false
	}
	out := Way{Z: 1, Depth: up}
	if down < up {
		out = Way{Z: -1, Depth: down}
	}
	if !tryEdges(a.Outline, b.Outline, -1, &out) || !tryEdges(b.Outline, a.Outline, 1, &out) {
		return Way{}, false
	}
	return out, true
}

// tryEdges lowers out to the least overlap along the outward normals of p's edges. It is false when a normal separates p and q.
// sign says which way the first body leaves: with the normal if p is the second body, against it if p is the first.
func tryEdges(p, q []Point, sign float64, out *Way) bool {
	v := p[len(p)-1]
	for _, w := range p {
		nx, ny := w.Y-v.Y, v.X-w.X
		length := math.Sqrt(nx*nx + ny*ny)
		if length == 0 {
			v = w
			continue
		}
		nx, ny = nx/length, ny/length
		overlap := nx*v.X + ny*v.Y - least(q, nx, ny)
		if !(overlap > 0) {
			return false
		}
		if overlap < out.Depth {
			*out = Way{sign * nx, sign * ny, 0, overlap}
		}
		v = w
	}
	return true
}

// least is the least coordinate of q along a direction.
func least(q []Point, nx, ny float64) float64 {
	low := math.Inf(1)
	for _, v := range q {
		low = min(low, nx*v.X+ny*v.Y)
	}
	return low
}

// Exit is how far a must go along a unit direction until it no longer overlaps b; 0 if it does not overlap b now. It is
// infinite when the direction never leads out, which happens only for a direction of no length.
func Exit(a, b Prism, dx, dy, dz float64) float64 {
	if _, overlaps := Overlap(a, b); !overlaps {
		return 0
	}
	far := math.Inf(1)
	if dz > 0 {
		far = (b.High - a.Low) / dz
	} else if dz < 0 {
		far = (a.High - b.Low) / -dz
	}
	far = min(far, exitEdges(a.Outline, b.Outline, -dx, -dy))
	return min(far, exitEdges(b.Outline, a.Outline, dx, dy))
}

// exitEdges is how far q goes along (dx, dy) until an edge of p has it wholly outside.
func exitEdges(p, q []Point, dx, dy float64) float64 {
	far := math.Inf(1)
	v := p[len(p)-1]
	for _, w := range p {
		nx, ny := w.Y-v.Y, v.X-w.X
		if speed := nx*dx + ny*dy; speed > 0 {
			far = min(far, (nx*v.X+ny*v.Y-least(q, nx, ny))/speed)
		}
		v = w
	}
	return far
}
