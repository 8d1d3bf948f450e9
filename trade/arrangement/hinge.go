package arrangement

import (
	"math"

	"tumblehome/solve/solid"
)

// hinge turns about the edge where two faces meet, ordered by orderFaces. Of a hollow thing the panel in the second face turns, out
// of the thing; a whole thing turns from lying along the second face to standing along the first, and its pin lies so that it does not go through it.
func (m move) hinge(share float64, b Box, body body, board float64) change {
	angle := share * m.by * math.Pi / 180
	at, along := m.faces[0], m.faces[1]
	if axisOf(at) == axisOf(along) {
		return change{}
	}
	if body == hollowed {
		panel := panelIn(b, along, max(board, 1))
		step := hingeStep(b, at, along, angle, outward(along))
		shut := solid.Solid{solid.Box(panel)}
		return change{adds: step.apply(shut), through: step.swept(shut)}
	}
	step := hingeStep(b, at, along, angle, -outward(along))
	turned := step.boxOf(b)
	steps := []motion{step}
	if past := outward(at) * (faceOf(turned, at) - faceOf(b, at)); past > 0 && math.Abs(m.by) <= 90 {
		back := motion{kind: shifts}
		back.shift[axisOf(at)] = -outward(at) * past
		steps = append(steps, back)
	}
	return change{steps: steps}
}

// outward is the sign of a face's outward direction.
func outward(s side) float64 {
	if high(s) {
		return 1
	}
	return -1
}

// panelIn is the slab of a box that lies in one of its faces.
func panelIn(b Box, face side, thick float64) Box {
	switch face {
	case front:
		b.MaxX = min(b.MaxX, b.MinX+thick)
	case rear:
		b.MinX = max(b.MinX, b.MaxX-thick)
	case left:
		b.MaxY = min(b.MaxY, b.MinY+thick)
	case right:
		b.MinY = max(b.MinY, b.MaxY-thick)
	case floor:
		b.MaxZ = min(b.MaxZ, b.MinZ+thick)
	case roof:
		b.MinZ = max(b.MinZ, b.MaxZ-thick)
	}
	return b
}

// hingeStep is the turn about the edge of two faces that takes the far end, which lies away from the first face, towards the way
// (+1 or -1) along the second face's axis.
func hingeStep(b Box, at, along side, angle, way float64) motion {
	away := -outward(at)
	if axisOf(at) != 2 && axisOf(along) != 2 { // an upright edge
		pin := solid.Point{X: faceOf(b, at), Y: faceOf(b, along)}
		spin := away * way // from +x to +y is counter-clockwise
		if axisOf(at) == 1 {
			pin, spin = solid.Point{X: faceOf(b, along), Y: faceOf(b, at)}, -spin
		}
		return motion{kind: turns, pin: pin, angle: spin * angle}
	}
	e := solid.Edge{Along: 1 - axisOf(at), H: faceOf(b, at), Z: faceOf(b, along), Away: away, Upward: way}
	if axisOf(at) == 2 { // the far end lies up or down, and goes along the other face's axis
		e = solid.Edge{Along: 1 - axisOf(along), H: faceOf(b, along), Z: faceOf(b, at), Away: way, Upward: away}
		angle = -angle // from upward to away instead of from away to upward
	}
	return motion{kind: tilts, edge: e, angle: angle}
}
