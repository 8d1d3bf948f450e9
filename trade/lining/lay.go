package lining

import (
	"math"
	"slices"
)

// far is beyond any van.
const far = 1e6

// laid is everything stacked: the fields of each surface, doors by their ids.
type laid struct {
	in     Inputs
	fields map[string][]*field // by surface
	arch   []float64           // thickness over each arch
}

func lay(in Inputs) *laid {
	l := &laid{in: in, fields: map[string][]*field{}}
	lo, hi := in.Body.Floor(), in.Body.Eaves()
	for _, surface := range surfaces {
		layers, hollow := in.Layers[surface], 0.0
		if surface == Floor {
			hollow = float64(in.Pressings)
		}
		for _, bay := range l.bays(surface) {
			level := surface == Floor || surface == Roof
			l.fields[surface] = append(l.fields[surface], newField(bay, layers, lo, hi, hollow, level))
		}
	}
	for _, a := range in.Arches {
		t := 0.0
		for _, layer := range l.overArch(a) {
			t += layer.thick()
		}
		l.arch = append(l.arch, t)
	}
	return l
}

// bays are the bays of a surface; each door is one, floor and front are one.
func (l *laid) bays(surface string) []Bay {
	var bays []Bay
	if surface == Doors {
		for _, d := range l.in.Doors {
			bays = append(bays, Bay{ID: d.ID, Surface: d.Surface, From: d.From, To: d.To, Depth: l.besides(d)})
		}
		return bays
	}
	for _, b := range l.in.Bays {
		if b.Surface == surface {
			bays = append(bays, b)
		}
	}
	if len(bays) == 0 {
		bays = []Bay{{ID: surface, Surface: surface, From: l.in.Body.Start(), To: l.in.Body.End()}}
	}
	return bays
}

// besides is the depth of the ribs beside a side door, which the door's own
// inner frame is taken to have.
func (l *laid) besides(d Door) float64 {
	depth := math.Inf(1)
	for _, b := range l.in.Bays {
		if b.Surface == d.Surface && b.To > d.From && b.From < d.To {
			depth = math.Min(depth, b.Depth)
		}
	}
	if math.IsInf(depth, 1) {
		return 0
	}
	return depth
}

// overArch are the layers of a side that go over a wheel arch.
func (l *laid) overArch(a Arch) []*Layer {
	var over []*Layer
	layers := l.in.Layers[a.Side]
	for i := range layers {
		y := &layers[i]
		thin := y.Of.Kind == Cover || y.Of.Kind == Fill && y.thick() <= overArches
		if thin && y.Between == nil && (y.From == nil || float64(*y.From) < a.Up) {
			over = append(over, y)
		}
	}
	return over
}

// room stands the finished surfaces.
func (l *laid) room() *Room {
	b := l.in.Body
	r := &Room{body: b, front: b.Start(), rear: b.End(), floor: b.Floor()}
	r.floor += thickest(l.fields[Floor])
	r.front += thickest(l.fields[Front])
	for i, d := range l.in.Doors {
		t := l.fields[Doors][i].thickest()
		switch {
		case d.Surface == "rear":
			r.rear = math.Min(r.rear, b.End()-t)
		case d.Surface == Front && len(l.in.Layers[Front]) == 0:
			r.front = math.Max(r.front, b.Start()+t)
		}
	}
	r.left, r.right = l.wall(Left), l.wall(Right)
	r.roof = l.fields[Roof]
	r.roofTo = ends(r.roof)
	r.bound(math.Max(thickest(l.fields[Left]), thickest(l.fields[Right])))
	r.heights, r.lengths = r.cuts()
	r.along, r.up = r.steps()
	return r
}

// bound finds how low the roof comes and how near to the middle the sides come
// beside it, to spare questions that need neither. thick is the thickest of the side linings.
func (r *Room) bound(thick float64) {
	const every, margin = 50, 5
	b := r.body
	xs := []float64{b.End()}
	for x := b.Start(); x < b.End(); x += every {
		xs = append(xs, x)
	}
	r.lowRoof, r.narrow = far, far
	for _, x := range xs {
		r.lowRoof = math.Min(r.lowRoof, r.ceiling(x, b.Half(x, b.Eaves()))-margin)
	}
	r.lowRoof = math.Max(r.lowRoof, b.Floor()-1)
	for _, x := range xs {
		for z := b.Eaves(); z > r.lowRoof-every; z -= every {
			r.narrow = math.Min(r.narrow, b.HalfInside(x, z, thick)-margin)
		}
	}
	for _, a := range slices.Concat(r.left.hatches, r.right.hatches, r.left.arches, r.right.arches) {
		if a.up > r.lowRoof { // a door or an arch up to the roof has a thickness of its own
			r.narrow = 0
		}
	}
}

func thickest(fields []*field) float64 {
	t := 0.0
	for _, f := range fields {
		t = math.Max(t, f.thickest())
	}
	return t
}

func ends(fields []*field) []float64 {
	to := make([]float64, len(fields))
	for i, f := range fields {
		to[i] = f.bay.To
	}
	return to
}

func (l *laid) wall(side string) wall {
	w := wall{fields: l.fields[side], to: ends(l.fields[side])}
	for i, d := range l.in.Doors {
		if d.Surface == side {
			w.hatches = append(w.hatches, hatch{d.From, d.To, d.Low, d.Up, l.fields[Doors][i].thickest()})
		}
	}
	for i, a := range l.in.Arches {
		if t := l.arch[i]; a.Side == side {
			w.arches = append(w.arches, hatch{a.From - t, a.To + t, math.Inf(-1), a.Up + t, math.Max(0, a.Face-t)})
		}
	}
	return w
}

// steps are the places where finished surfaces may step or bend, along the van and in height: bays, bands, doors, arches, and the stations and
// heights that the body was read at.
func (r *Room) steps() (along, up []float64) {
	along = append(along, r.roofTo...)
	for _, w := range []*wall{&r.left, &r.right} {
		along = append(along, w.to...)
		for _, f := range w.fields {
			for _, b := range f.bands {
				up = append(up, b.to)
			}
		}
		for _, h := range slices.Concat(w.hatches, w.arches) {
			along, up = append(along, h.from, h.to), append(up, h.low, h.up)
		}
	}
	x, z := r.body.Readings()
	along, up = append(along, x...), append(up, z...)
	slices.Sort(along)
	slices.Sort(up)
	return slices.Compact(along), slices.Compact(up)
}

// cuts are the places where finished surfaces may jump, in height and along
// the van, with more between so that sums over them are close.
func (r *Room) cuts() (heights, lengths []float64) {
	ridge := 0.0
	for x := r.body.Start(); x <= r.body.End(); x += 100 {
		ridge = math.Max(ridge, r.ceiling(x, 0))
	}
	for z := r.body.Floor(); z < ridge; {
		heights = append(heights, z)
		z += 100
		if z > r.lowRoof { // where the roof meets the sides
			z -= 80
		}
	}
	lengths = append(lengths, r.roofTo...)
	for _, w := range []*wall{&r.left, &r.right} {
		lengths = append(lengths, w.to...)
		for _, f := range w.fields {
			for _, b := range f.bands {
				heights = append(heights, b.to)
			}
		}
		for _, h := range slices.Concat(w.hatches, w.arches) {
			heights = append(heights, h.low, h.up)
			lengths = append(lengths, h.from, h.to)
		}
	}
	slices.Sort(heights)
	slices.Sort(lengths)
	return slices.Compact(heights), slices.Compact(lengths)
}
