package arrangement

import "tumblehome/solve/solid"

// motion is one rigid step of a thing: a shift, a turn about an upright pin, or a tilt about a level edge.
type motion struct {
	kind  motionKind
	shift [3]float64
	pin   solid.Point // of a turn
	edge  solid.Edge  // of a tilt
	angle float64     // radians: a turn counter-clockwise seen from above; a tilt from away to towards

	askew float64 // the step is that of a thing turned by so much [radians] about a place
	about solid.Point
}

type motionKind uint8

const (
	shifts motionKind = iota
	turns
	tilts
)

func (m motion) apply(s solid.Solid) solid.Solid { return m.own(s, motion.applyOwn) }

// own does a step in the frame of the thing before it was turned askew.
func (m motion) own(s solid.Solid, do func(motion, solid.Solid) solid.Solid) solid.Solid {
	if m.askew == 0 {
		return do(m, s)
	}
	return do(m, s.Turned(m.about, -m.askew)).Turned(m.about, m.askew)
}

func (m motion) applyOwn(s solid.Solid) solid.Solid {
	switch m.kind {
	case turns:
		return s.Turned(m.pin, m.angle)
	case tilts:
		return each(s, func(b Box) solid.Solid { return b.Tilted(m.edge, m.angle, tolerance) })
	}
	return s.Moved(m.shift[0], m.shift[1], m.shift[2])
}

// mostPieces is of how many prisms a thing may be for each to be tilted on its own; the bounds of one of more are tilted.
const mostPieces = 8

// each tilts the boxes about the prisms of a solid.
func each(s solid.Solid, tilt func(Box) solid.Solid) solid.Solid {
	if len(s) == 1 || len(s) > mostPieces {
		return tilt(s.Bounds())
	}
	var all solid.Solid
	for _, p := range s {
		all = append(all, tilt(p.Bounds())...)
	}
	return all
}

// sweepTolerance is how much too large what a turning thing passes through may be taken [mm].
const sweepTolerance = 5

// swept is what a solid passes through while it takes the step.
func (m motion) swept(s solid.Solid) solid.Solid { return m.own(s, motion.sweptOwn) }

func (m motion) sweptOwn(s solid.Solid) solid.Solid {
	switch m.kind {
	case turns:
		return s.Swung(m.pin, m.angle, sweepTolerance)
	case tilts:
		return each(s, func(b Box) solid.Solid { return b.Tipped(m.edge, m.angle, sweepTolerance) })
	}
	return s.Slid(m.shift[0], m.shift[1], m.shift[2])
}

// box is the box about a thing that takes the step.
func (m motion) box(s *Standing) Box {
	if m.askew != 0 && len(s.Solid) > 0 {
		return m.apply(s.Solid).Bounds()
	}
	return m.boxOf(s.Box)
}

// boxOf is the box about a box that takes the step.
func (m motion) boxOf(b Box) Box {
	if b.Empty() {
		return b.Moved(m.shift[0], m.shift[1], m.shift[2])
	}
	return m.applyOwn(solid.Solid{solid.Box(b)}).Bounds()
}
