package solid

import "math"

// Solid is a union of prisms that do not overlap one another.
type Solid []Prism

// Bounds is the box about the whole.
func (s Solid) Bounds() Bounds {
	b := Nothing
	for _, p := range s {
		b = b.Join(p.Bounds())
	}
	return b
}

// Moved is the solid elsewhere.
func (s Solid) Moved(dx, dy, dz float64) Solid {
	if dx == 0 && dy == 0 && dz == 0 {
		return s
	}
	n := 0
	for _, p := range s {
		n += len(p.Outline)
	}
	points, moved := make([]Point, 0, n), make(Solid, len(s))
	for i, p := range s {
		from := len(points)
		for _, v := range p.Outline {
			points = append(points, Point{v.X + dx, v.Y + dy})
		}
		moved[i] = Prism{points[from:len(points):len(points)], p.Low + dz, p.High + dz}
	}
	return moved
}

// Turned is the solid turned counter-clockwise seen from +z, by an angle in radians about an upright axis.
func (s Solid) Turned(about Point, angle float64) Solid {
	turned := make(Solid, len(s))
	for i, p := range s {
		turned[i] = p.Turned(about, angle)
	}
	return turned
}

// Volume of the whole.
func (s Solid) Volume() float64 {
	sum := 0.0
	for _, p := range s {
		sum += p.Volume()
	}
	return sum
}

// Middle is the centre of volume; of a solid without volume it is the middle of its bounds.
func (s Solid) Middle() (x, y, z float64) {
	sum := 0.0
	for _, p := range s {
		px, py, pz := p.Middle()
		v := p.Volume()
		x, y, z, sum = x+v*px, y+v*py, z+v*pz, sum+v
	}
	if sum > 0 {
		return x / sum, y / sum, z / sum
	}
	b := s.Bounds()
	return (b.MinX + b.MaxX) / 2, (b.MinY + b.MaxY) / 2, (b.MinZ + b.MaxZ) / 2
}

// SharedVolume is the volume that two solids have in common.
func (s Solid) SharedVolume(o Solid) float64 {
	sum := 0.0
	for _, p := range s {
		for _, q := range o {
			sum += SharedVolume(p, q)
		}
	}
	return sum
}

// Distance between two solids; 0 if they touch or overlap.
func (s Solid) Distance(o Solid) float64 {
	least := math.Inf(1)
	for _, p := range s {
		for _, q := range o {
			if least = min(least, Distance(p, q)); least == 0 {
				return 0
			}
		}
	}
	return least
}

// Deepest is the deepest overlap of any prism of s with any of o: how far the two are in one another.
func (s Solid) Deepest(o Solid) (Way, bool) {
	var deepest Way
	found := false
	for _, p := range s {
		b := p.Bounds()
		for _, q := range o {
			if q.High <= b.MinZ || q.Low >= b.MaxZ {
				continue
			}
			if w, overlaps := Overlap(p, q); overlaps && w.Depth > deepest.Depth {
				deepest, found = w, true
			}
		}
	}
	return deepest, found
}

// Exit is how far s must go along a unit direction until it overlaps o nowhere. It goes on past pieces of o that it meets on
// the way, so what it answers is a free place, not only the end of the first overlap.
func (s Solid) Exit(o Solid, dx, dy, dz float64) float64 {
	far := 0.0
	for range len(s)*len(o) + 1 {
		step := 0.0
		for _, p := range s {
			for _, q := range o {
				step = max(step, exitFrom(p, q, dx, dy, dz, far))
			}
		}
		if step <= 1e-9 {
			return far
		}
		far += step
	}
	return far
}

// exitFrom is Exit for p already moved far along the direction: q moved back instead keeps the outlines as they are.
func exitFrom(p, q Prism, dx, dy, dz, far float64) float64 {
	if far == 0 {
		return Exit(p, q, dx, dy, dz)
	}
	return Exit(p.Moved(far*dx, far*dy, far*dz), q, dx, dy, dz)
}

// Directions are the six ways along the axes.
var Directions = [6][3]float64{{-1, 0, 0}, {1, 0, 0}, {0, -1, 0}, {0, 1, 0}, {0, 0, -1}, {0, 0, 1}}

// WayOut is the shortest way along an axis by which s leaves o altogether; the depth is 0 when they do not overlap.
func (s Solid) WayOut(o Solid) Way {
	best := Way{Depth: math.Inf(1)}
	for _, d := range Directions {
		if far := s.Exit(o, d[0], d[1], d[2]); far < best.Depth {
			best = Way{d[0], d[1], d[2], far}
		}
	}
	return best
}
