package arrangement

import (
	"math"

	"tumblehome/build"
	"tumblehome/solve/solid"
)

// standing works out where one thing stands in its frame.
type standing struct {
	size    [3]float64
	turn    float64 // radians, counter-clockwise
	rules   rules
	scribed [6]bool
	frame   *frame
	others  func(id string) (Box, bool) // boxes of fittings at rest
	box     Box                         // of the turned outline, filled in axis by axis
}

// place fills in the box: x first, since its faces are all flat, then across and up in the order in which one needs the other.
func (s *standing) place() {
	s.settle(0)
	switch acrossNeedsUp, upNeedsAcross := s.curvedRule(1), s.curvedRule(2); {
	case acrossNeedsUp && upNeedsAcross:
		s.corner()
	case upNeedsAcross:
		s.settle(1)
		s.settle(2)
	default:
		s.settle(2)
		s.settle(1)
	}
}

// corner places what stands against a curved side and a curved roof: first under the middle of the roof, from there to the
// side, then under the roof at that place, then once more to the side.
func (s *standing) corner() {
	s.set(1, s.frame.origin[1]-s.outlineSize(1)/2, s.outlineSize(1))
	s.settle(2)
	s.settle(1)
	s.settle(2)
	s.settle(1)
}

// curvedRule says whether the rule of an axis asks for a curved face.
func (s *standing) curvedRule(axis int) bool {
	r := s.rules[axis]
	curved := func(p build.Point) bool { return p.Of == "" && p.Face != "" && s.frame.curved[sideOf[p.Face]] }
	if r.Form == build.LeftOut {
		return s.frame.curved[s.restsOn(axis)]
	}
	return curved(r.A) || r.Form == build.Between && curved(r.B)
}

// settle fills in one axis of the box by its rule.
func (s *standing) settle(axis int) {
	size, r := s.outlineSize(axis), s.rules[axis]
	s.set(axis, s.low(axis), size) // some place, to be looked at from
	switch r.Form {
	case build.LeftOut:
		s.leftOut(axis, size)
	case build.LowAt:
		s.set(axis, s.frame.origin[axis]+r.A.Plus.Float(), size)
	case build.Against:
		s.against(axis, r.A, size)
	case build.From:
		s.set(axis, s.coordinate(axis, r.A), size)
	case build.To:
		s.set(axis, s.coordinate(axis, r.A)-size, size)
	case build.Mid:
		s.set(axis, s.coordinate(axis, r.A)-size/2, size)
	case build.Between:
		low, high := s.coordinate(axis, r.A), s.coordinate(axis, r.B)
		s.set(axis, min(low, high), math.Abs(high-low))
	}
}

// restsOn is the face that a fitting stands on, lies on or hangs from when nothing is said of an axis.
func (s *standing) restsOn(axis int) side {
	if axis == 2 && (s.frame.hang || s.frame.outward) {
		return roof
	}
	return side(2 * axis)
}

// leftOut stands it on the floor, on the roof or under it; along and across it fills the frame.
func (s *standing) leftOut(axis int, size float64) {
	if axis == 2 {
		s.stand(s.restsOn(axis), 0, size)
		return
	}
	low, high := s.face(side(2*axis)), s.face(side(2*axis+1))
	s.set(axis, low, max(0, high-low))
}

// against stands it inside a face of its frame, or outside a face of another fitting.
func (s *standing) against(axis int, p build.Point, size float64) {
	face := sideOf[p.Face]
	if p.Of == "" {
		s.stand(face, p.Plus.Float(), size)
		return
	}
	low := s.coordinate(axis, p)
	if !high(face) {
		low -= size
	}
	s.set(axis, low, size)
}

// stand moves it against a face of the frame: inside it, or outside where the frame is an outer skin.
func (s *standing) stand(face side, plus, size float64) {
	axis := axisOf(face)
	if s.frame.outward {
		low := s.faceOutward(face) + plus
		if !high(face) {
			low -= size
		}
		s.set(axis, low, size)
		return
	}
	by := plus + s.reach(face)
	s.set(axis, s.low(axis)+by, size)
}

// reach is how far the thing is from touching a face. Where a side is scribed, only what is left of it meets the roof.
func (s *standing) reach(face side) float64 {
	p := s.prism()
	if face == roof && !s.scribed[roof] && s.frame.curved[roof] {
		p = s.trimmed(p)
	}
	return reach(p, s.frame, face, s.scribed[face])
}

// trimmed is the prism without what scribed sides will cut off its upper edge.
func (s *standing) trimmed(p solid.Prism) solid.Prism {
	b := p.Bounds()
	x := (b.MinX + b.MaxX) / 2
	if s.scribed[right] && s.frame.curved[right] {
		b.MaxY = max(b.MinY, min(b.MaxY, s.frame.Right(x, b.MaxZ)))
	}
	if s.scribed[left] && s.frame.curved[left] {
		b.MinY = min(b.MaxY, max(b.MinY, s.frame.Left(x, b.MaxZ)))
	}
	if b == p.Bounds() || b.MinY == b.MaxY {
		return p
	}
	return solid.Box(b)
}

// faceOutward is an outer face where the thing touches it from outside first: the farthest out of it.
func (s *standing) faceOutward(face side) float64 { return faceAt(s.prism(), s.frame, face, true) }

// coordinate is where a point lies on an axis of the document.
func (s *standing) coordinate(axis int, p build.Point) float64 {
	face := sideOf[p.Face]
	switch {
	case p.Of != "":
		b, _ := s.others(p.Of)
		return faceOf(b, face) + p.Plus.Float()
	case p.Face != "":
		return s.face(face) + p.Plus.Float()
	}
	return s.frame.origin[axis] + p.Plus.Float()
}

// face is where a face of the frame lies for this thing.
func (s *standing) face(face side) float64 {
	return faceAt(s.prism(), s.frame, face, s.scribed[face])
}

// outlineSize is the size on an axis of the turned outline; a size that the rule gives is kept once known.
func (s *standing) outlineSize(axis int) float64 {
	if axis == 2 {
		return s.size[2]
	}
	sin, cos := math.Abs(math.Sin(s.turn)), math.Abs(math.Cos(s.turn))
	if axis == 0 {
		return s.size[0]*cos + s.size[1]*sin
	}
	return s.size[0]*sin + s.size[1]*cos
}

func (s *standing) low(axis int) float64 { return faceOf(s.box, side(2*axis)) }

// set writes one axis of the box.
func (s *standing) set(axis int, low, size float64) {
	switch axis {
	case 0:
		s.box.MinX, s.box.MaxX = low, low+size
	case 1:
		s.box.MinY, s.box.MaxY = low, low+size
	case 2:
		s.box.MinZ, s.box.MaxZ = low, low+size
	}
}

// prism is the thing at its box: the box itself, or the turned outline in its middle.
func (s *standing) prism() solid.Prism {
	if s.turn == 0 {
		return solid.Box(s.box)
	}
	b := s.box
	x, y := (b.MinX+b.MaxX)/2, (b.MinY+b.MaxY)/2
	own := solid.Box(Box{
		MinX: x - s.size[0]/2, MaxX: x + s.size[0]/2, MinY: y - s.size[1]/2, MaxY: y + s.size[1]/2, MinZ: b.MinZ, MaxZ: b.MaxZ,
	})
	return own.Turned(solid.Point{X: x, Y: y}, s.turn)
}

// faceOf is a face of a box.
func faceOf(b Box, s side) float64 {
	return [6]float64{b.MinX, b.MaxX, b.MinY, b.MaxY, b.MinZ, b.MaxZ}[s]
}
