package shell

import (
	"math"
	"slices"

	"tumblehome/solve/offsets"
)

// far is beyond any van.
const far = 1e6

// Areas of one surface in m2.
type Areas struct{ Gross, Openings, Arches, Net float64 }

// Areas returns the areas of a surface of the bare body.
func (b *Body) Areas(surface string) Areas {
	var a Areas
	a.Gross = b.piece(surface, -far, far, -far, far).Area / 1e6
	for _, o := range b.counted(surface) {
		a.Openings += b.opening(o, -far, far, -far, far).Area / 1e6
	}
	for _, arch := range b.arches {
		a.Arches += b.covered(surface, arch, -far, far, -far, far).Area / 1e6
	}
	a.Net = max(0, a.Gross-a.Openings-a.Arches)
	return a
}

// Net returns the area in m2, and its centre, of the part of a surface between
// x0 and x1 (front and rear: all) and between lo and hi (heights on sides, front and
// rear, else y), less the openings and the wheel arches.
func (b *Body) Net(surface string, x0, x1, lo, hi float64) (m2 float64, centre [3]float64) {
	net := b.piece(surface, x0, x1, lo, hi)
	for _, o := range b.counted(surface) {
		net = less(net, b.opening(o, x0, x1, lo, hi))
	}
	for _, arch := range b.arches {
		net = less(net, b.covered(surface, arch, x0, x1, lo, hi))
	}
	if math.Abs(net.Y) < 1e-6 { // what both sides of the roof leave of one another
		net.Y = 0
	}
	return net.Area / 1e6, [3]float64{net.X, net.Y, net.Z}
}

// piece is the part of a surface with nothing taken off.
func (b *Body) piece(surface string, x0, x1, lo, hi float64) offsets.Piece {
	switch surface {
	case Left, Right:
		p := b.surface.Side(x0, x1, lo, hi)
		if surface == Left {
			p.Y = -p.Y
		}
		return p
	case Roof:
		return b.surface.Roof(x0, x1, lo, hi)
	case Floor:
		return b.surface.Level(x0, x1, lo, hi, b.Floor())
	case Front:
		return b.surface.Across(b.Start(), -far, far, lo, hi)
	case Rear:
		return b.surface.Across(b.End(), -far, far, lo, hi)
	}
	return offsets.Piece{}
}

// counted are the openings whose area comes off a surface: those that do not
// lie in another one through the same surface.
func (b *Body) counted(surface string) []Opening {
	through := b.Openings(surface)
	return slices.DeleteFunc(slices.Clone(through), func(o Opening) bool {
		return o.In != "" && slices.ContainsFunc(through, func(p Opening) bool { return p.ID == o.In && p.ID != o.ID })
	})
}

// opening is the part of an opening that lies in the given part of its surface.
func (b *Body) opening(o Opening, x0, x1, lo, hi float64) offsets.Piece {
	along, across, ok := o.window()
	if !ok {
		return offsets.Piece{}
	}
	if o.Through == Front || o.Through == Rear { // y then z
		x := b.Start()
		if o.Through == Rear {
			x = b.End()
		}
		return b.surface.Across(x, along[0], along[1], max(lo, across[0]), min(hi, across[1]))
	}
	return b.piece(o.Through, max(x0, along[0]), min(x1, along[1]), max(lo, across[0]), min(hi, across[1]))
}

// window is the rectangle of an opening in its surface: x and z on the sides,
// x and y on floor and roof, y and z in front and rear.
func (o Opening) window() (along, across [2]float64, ok bool) {
	first, second := o.X, o.Z
	switch o.Through {
	case Floor, Roof:
		second = o.Y
	case Front, Rear:
		first = o.Y
	}
	if first == nil || second == nil {
		return along, across, false
	}
	return [2]float64{float64(first.From), float64(first.To)}, [2]float64{float64(second.From), float64(second.To)}, true
}

// covered is what a wheel arch covers of a surface: the foot of the box on the floor,
// its back on the skin.
func (b *Body) covered(surface string, a Box, x0, x1, lo, hi float64) offsets.Piece {
	x0, x1 = max(x0, a.From), min(x1, a.To)
	switch {
	case surface == Floor && a.Side == Left:
		return b.surface.Level(x0, x1, lo, min(hi, -a.Face), b.Floor())
	case surface == Floor:
		return b.surface.Level(x0, x1, max(lo, a.Face), hi, b.Floor())
	case surface == a.Side:
		return b.piece(surface, x0, x1, lo, min(hi, a.Up))
	}
	return offsets.Piece{}
}

// less takes one piece off another and moves its centre.
func less(p, off offsets.Piece) offsets.Piece {
	rest := p.Area - off.Area
	if off.Area <= 0 || rest <= 1 { // a square millimetre is nothing
		if off.Area > 0 {
			return offsets.Piece{}
		}
		return p
	}
	move := func(c, d float64) float64 { return (c*p.Area - d*off.Area) / rest }
	return offsets.Piece{Area: rest, X: move(p.X, off.X), Y: move(p.Y, off.Y), Z: move(p.Z, off.Z)}
}

// ArchArea is the surface of a wheel arch that shows inside the van in m2, and
// its centre: inner face, top and both ends.
func (b *Body) ArchArea(a Box) (m2 float64, centre [3]float64) {
	long := a.To - a.From
	mid := (a.From + a.To) / 2
	deep := max(0, b.Half(mid, a.Up/2)-a.Face)
	face, top, ends := long*a.Up, long*deep, 2*deep*a.Up
	sum := face + top + ends
	if !(sum > 0) {
		return 0, [3]float64{mid, a.Face, 0}
	}
	y := (face*a.Face + (top+ends)*(a.Face+deep/2)) / sum
	z := (face*a.Up/2 + top*a.Up + ends*a.Up/2) / sum
	if a.Side == Left {
		y = -y
	}
	return sum / 1e6, [3]float64{mid, y, z}
}

// Volume is the volume of the bare body in m3, less the wheel arches.
func (b *Body) Volume() float64 {
	v := b.surface.Volume(b.Start(), b.End())
	for _, a := range b.arches {
		v -= b.archVolume(a)
	}
	return v / 1e9
}

// archVolume is the volume in mm3 between the skin and the planes of an arch.
func (b *Body) archVolume(a Box) float64 {
	const steps = 16 // heights at which the depth of the arch is taken
	v := 0.0
	for k := range steps {
		z := b.Floor() + (float64(k)+0.5)/steps*(a.Up-b.Floor())
		v += b.surface.Level(a.From, a.To, a.Face, far, z).Area * (a.Up - b.Floor()) / steps
	}
	return v
}
