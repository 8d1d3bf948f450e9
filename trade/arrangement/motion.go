package arrangement

import (
	"math"

	"tumblehome/solve/solid"
)

// motion is one rigid step of a thing: a shift, a turn about an upright pin, or a tilt about a level edge.
type motion struct {
	kind  motionKind
	shift [3]float64
	pin   solid.Point // of a turn
	edge  edge        // of a tilt
	angle float64     // radians: a turn counter-clockwise seen from above; a tilt from away to towards
}

type motionKind uint8

const (
	shifts motionKind = iota
	turns
	tilts
)

// edge is a level line along x or y that a thing tilts about, in the plane across it: h is the other level axis.
type edge struct {
	along  int     // 0 if the edge runs along x, 1 along y
	h, z   float64 // where it lies
	away   float64 // +1 or -1: the way along h from the edge into the thing
	upward float64 // +1 or -1: the way along z that the far end goes first
}

func (m motion) apply(s solid.Solid) solid.Solid {
	switch m.kind {
	case turns:
		return s.Turned(m.pin, m.angle)
	case tilts:
		return m.edge.tilt(s.Bounds(), m.angle)
	}
	return s.Moved(m.shift[0], m.shift[1], m.shift[2])
}

// box is the box about a box that takes the step.
func (m motion) box(b Box) Box {
	if b.Empty() {
		return b.Moved(m.shift[0], m.shift[1], m.shift[2])
	}
	return m.apply(solid.Solid{solid.Box(b)}).Bounds()
}

// tilt turns a box about the edge. Tilted by anything but quarter turns it is cut into upright slices, each as high as the tilted
// box is in the slice's middle, so that it is nowhere more than half the tolerance off.
func (e edge) tilt(b Box, angle float64) solid.Solid {
	h0, h1, l0, l1 := b.MinY, b.MaxY, b.MinX, b.MaxX
	if e.along == 1 {
		h0, h1, l0, l1 = b.MinX, b.MaxX, b.MinY, b.MaxY
	}
	var quad [4]solid.Point
	for i, c := range [4][2]float64{{h0, b.MinZ}, {h1, b.MinZ}, {h1, b.MaxZ}, {h0, b.MaxZ}} {
		quad[i] = e.turned(c[0], c[1], angle)
	}
	section := solid.Prism{Outline: quad[:]}
	about := section.Bounds()
	n := e.slices(about, angle)
	cuts := make(solid.Solid, 0, n)
	for i := range n {
		from := about.MinX + (about.MaxX-about.MinX)*float64(i)/float64(n)
		till := about.MinX + (about.MaxX-about.MinX)*float64(i+1)/float64(n)
		low, high := section.Across((from + till) / 2)
		piece := Box{MinX: l0, MaxX: l1, MinY: from, MaxY: till, MinZ: low, MaxZ: high}
		if e.along == 1 {
			piece.MinX, piece.MaxX, piece.MinY, piece.MaxY = from, till, l0, l1
		}
		if !piece.Empty() {
			cuts = append(cuts, solid.Box(piece))
		}
	}
	return cuts
}

// slices is how many upright slices a tilted box needs.
func (e edge) slices(about Box, angle float64) int {
	if quarters := angle / (math.Pi / 2); math.Abs(quarters-math.Round(quarters)) < 1e-9 {
		return 1
	}
	return min(48, max(1, int(math.Ceil((about.MaxY-about.MinY)/tolerance))))
}

// turned is a point of the plane across the edge, turned about it.
func (e edge) turned(h, z, angle float64) solid.Point {
	sin, cos := math.Sincos(angle)
	if quarters := math.Round(angle / (math.Pi / 2)); math.Abs(angle-quarters*math.Pi/2) < 1e-9 {
		sin, cos = math.Round(sin), math.Round(cos)
	}
	u, v := (h-e.h)*e.away, (z-e.z)*e.upward
	return solid.Point{X: e.h + e.away*(u*cos-v*sin), Y: e.z + e.upward*(u*sin+v*cos)}
}
