package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// An attempt is one thing moved, or made smaller by drawing one of its faces in, that might clear a finding.
type attempt struct {
	thing   int
	by      [3]float64 // moved by so much; or
	axis    int        // narrowed along an axis
	less    float64    // by so much; 0 is moved
	drawsIn solid.Side // the face that comes in
}

// moves is an attempt to move a thing towards a side, at least so far, in whole mm.
func moves(i int, to solid.Side, far float64) attempt {
	d, far := solid.Directions[to], math.Ceil(far-1e-6)
	return attempt{thing: i, by: [3]float64{d[0] * far, d[1] * far, d[2] * far}}
}

// sameAct is by how little one act must differ from another to be the same to a builder [mm].
const sameAct = 10

// repeats says whether an attempt is another one over again, a few millimetres farther.
func (a attempt) repeats(other attempt) bool {
	same := func(v, u float64) bool {
		return (v < 0) == (u < 0) && (v > 0) == (u > 0) && math.Abs(v-u) < sameAct
	}
	return a.thing == other.thing && a.axis == other.axis && a.drawsIn == other.drawsIn && same(a.less, other.less) &&
		same(a.by[0], other.by[0]) && same(a.by[1], other.by[1]) && same(a.by[2], other.by[2])
}

func (a attempt) far() float64 {
	return max(math.Abs(a.by[0]), math.Abs(a.by[1]), math.Abs(a.by[2]), a.less)
}

// standing is a standing after the attempt.
func (a attempt) standing(s Standing) Standing {
	if a.less == 0 {
		s.Solid, s.Box = s.Solid.Moved(a.by[0], a.by[1], a.by[2]), s.Box.Moved(a.by[0], a.by[1], a.by[2])
		if s.Aside != nil {
			aside := a.standing(*s.Aside)
			s.Aside = &aside
		}
		return s
	}
	less := math.Ceil(a.less/5-1e-9) * 5
	ends := [6]*float64{&s.Box.MinX, &s.Box.MaxX, &s.Box.MinY, &s.Box.MaxY, &s.Box.MinZ, &s.Box.MaxZ}
	*ends[a.drawsIn] -= less * (solid.Directions[a.drawsIn][0] + solid.Directions[a.drawsIn][1] + solid.Directions[a.drawsIn][2])
	s.Solid = solid.Solid{solid.Box(s.Box)}
	return s
}
