package arrangement

import "tumblehome/solve/solid"

// motion is one rigid step of a thing: a shift, a turn about an upright pin, or a tilt about a level edge.
type motion struct {
	kind  motionKind
	shift [3]float64
	pin   solid.Point // of a turn
	edge  solid.Edge  // of a tilt
	angle float64     // radians: a turn counter-clockwise seen from above; a tilt from away to towards
}

type motionKind uint8

const (
	shifts motionKind = iota
	turns
	tilts
)

func (m motion) apply(s solid.Solid) solid.Solid {
	switch m.kind {
	case turns:
		return s.Turned(m.pin, m.angle)
	case tilts:
		return s.Bounds().Tilted(m.edge, m.angle, tolerance)
	}
	return s.Moved(m.shift[0], m.shift[1], m.shift[2])
}

// sweepTolerance is how much too large what a turning thing passes through may be taken [mm].
const sweepTolerance = 5

// swept is what a solid passes through while it takes the step.
func (m motion) swept(s solid.Solid) solid.Solid {
	switch m.kind {
	case turns:
		return s.Swung(m.pin, m.angle, sweepTolerance)
	case tilts:
		return s.Bounds().Tipped(m.edge, m.angle, sweepTolerance)
	}
	return s.Slid(m.shift[0], m.shift[1], m.shift[2])
}

// box is the box about a box that takes the step.
func (m motion) box(b Box) Box {
	if b.Empty() {
		return b.Moved(m.shift[0], m.shift[1], m.shift[2])
	}
	return m.apply(solid.Solid{solid.Box(b)}).Bounds()
}
