package solid

import "math"

// Directions are the six ways along the axes.
var Directions = [6][3]float64{{-1, 0, 0}, {1, 0, 0}, {0, -1, 0}, {0, 1, 0}, {0, 0, -1}, {0, 0, 1}}

// Deepest is the deepest overlap of any prism of s with any of o: how far the two are in one another.
func (s Solid) Deepest(o Solid) (Way, bool) {
	var room [boxes]Bounds
	return s.deepest(o, o.boxes(room[:0]))
}

func (s Solid) deepest(o Solid, theirs []Bounds) (deepest Way, found bool) {
	for _, p := range s {
		b := p.Bounds()
		for j, q := range o {
			if !b.Meets(theirs[j]) {
				continue
			}
			if w, overlaps := Overlap(p, q); overlaps && w.Depth > deepest.Depth {
				deepest, found = w, true
			}
		}
	}
	return deepest, found
}

// Boxed is a solid with the bounds of each of its prisms, for one that is met with many others.
type Boxed struct {
	Solid
	boxes []Bounds
}

// Boxed is the solid with the bounds of its prisms.
func (s Solid) Boxed() Boxed { return Boxed{s, s.boxes(make([]Bounds, 0, len(s)))} }

// DeepestIn is Deepest.
func (s Solid) DeepestIn(o Boxed) (Way, bool) { return s.deepest(o.Solid, o.boxes) }

// Bounds is the box about the whole.
func (s Boxed) Bounds() Bounds { return about(s.boxes) }

// Exit is how far s must go along a unit direction until it overlaps o nowhere. It goes on past pieces of o that it meets on
// the way, so what it answers is a free place, not only the end of the first overlap. Overlaps along it of 1e-9 or less are none.
// It is infinite only for a direction of no length.
func (s Solid) Exit(o Solid, dx, dy, dz float64) float64 {
	var room, more [boxes]Bounds
	return s.exit(o, s.boxes(room[:0]), o.boxes(more[:0]), [3]float64{dx, dy, dz}, math.Inf(1))
}

// Exits are Exit along each of the Directions.
func (s Solid) Exits(o Solid) (far [6]float64) {
	var room, more [boxes]Bounds
	mine, theirs := s.boxes(room[:0]), o.boxes(more[:0])
	for i, d := range Directions {
		far[i] = s.exit(o, mine, theirs, d, math.Inf(1))
	}
	return far
}

// WayOut is the shortest way along an axis by which s leaves o altogether; the depth is 0 when they do not overlap.
func (s Solid) WayOut(o Solid) Way {
	var room, more [boxes]Bounds
	return s.alongAxes(o, s.boxes(room[:0]), o.boxes(more[:0]))
}

// alongAxes begins with the way that takes the box about s out of the box about o: no other need be followed further.
func (s Solid) alongAxes(o Solid, mine, theirs []Bounds) Way {
	best := about(mine).wayOut(about(theirs))
	for _, d := range Directions {
		best = s.better(o, mine, theirs, d, best)
	}
	return best
}

// wayOut is the shortest way along an axis out of another box, and endless if they do not meet.
func (b Bounds) wayOut(c Bounds) Way {
	best := Way{Depth: math.Inf(1)}
	if !b.Meets(c) {
		return best
	}
	for i, far := range [6]float64{b.MaxX - c.MinX, c.MaxX - b.MinX, b.MaxY - c.MinY, c.MaxY - b.MinY, b.MaxZ - c.MinZ, c.MaxZ - b.MinZ} {
		if d := Directions[i]; far < best.Depth {
			best = Way{d[0], d[1], d[2], far}
		}
	}
	return best
}

// about is the box about some.
func about(all []Bounds) Bounds {
	b := Nothing
	for _, one := range all {
		b = b.Join(one)
	}
	return b
}

// better is the way along a direction if it is shorter than the best by more than rounding.
func (s Solid) better(o Solid, mine, theirs []Bounds, d [3]float64, best Way) Way {
	if far := s.exit(o, mine, theirs, d, best.Depth); far < best.Depth-hair || far == 0 && best.Depth > 0 {
		return Way{d[0], d[1], d[2], far}
	}
	return best
}
