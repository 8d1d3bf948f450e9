package runs

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// stretch is a part of a leg, as shares of it.
type stretch struct{ from, to float64 }

func (s stretch) empty() bool { return !(s.to > s.from) }

func (s stretch) middle() float64 { return (s.from + s.to) / 2 }

// slab keeps what of a stretch lies between two values of a coordinate that goes from a to b along the leg.
func (s stretch) slab(a, b, low, high float64) stretch {
	return s.under(b-a, high-a).under(a-b, a-low)
}

// under keeps what of a stretch satisfies slope·t ≤ limit.
func (s stretch) under(slope, limit float64) stretch {
	switch {
	case slope > 0:
		s.to = min(s.to, limit/slope)
	case slope < 0:
		s.from = max(s.from, limit/slope)
	case limit < 0:
		s.to = s.from
	}
	return s
}

// inBox is the stretch of a leg inside a box (Cyrus and Beck's way: each face keeps what lies on its inner side).
func inBox(a, b Point, box solid.Bounds) stretch {
	return stretch{0, 1}.slab(a[0], b[0], box.MinX, box.MaxX).slab(a[1], b[1], box.MinY, box.MaxY).slab(a[2], b[2], box.MinZ, box.MaxZ)
}

// inPrism is the stretch of a leg inside an upright prism whose outline is convex and counter-clockwise.
func inPrism(a, b Point, p solid.Prism) stretch {
	s := stretch{0, 1}.slab(a[2], b[2], p.Low, p.High)
	for i, v := range p.Outline {
		w := p.Outline[(i+1)%len(p.Outline)]
		nx, ny := w.Y-v.Y, v.X-w.X // outwards
		s = s.under(nx*(b[0]-a[0])+ny*(b[1]-a[1]), nx*(v.X-a[0])+ny*(v.Y-a[1]))
	}
	return s
}

// inSolid are the stretches of a leg inside a solid, joined where its pieces meet.
func inSolid(a, b Point, s solid.Solid) []stretch {
	var out []stretch
	for _, p := range s {
		if piece := inPrism(a, b, p); !piece.empty() {
			out = append(out, piece)
		}
	}
	return joined(out, 1/math.Max(1, distance(a, b)))
}

// joined puts stretches together that touch to within a gap.
func joined(all []stretch, gap float64) []stretch {
	slices.SortFunc(all, func(p, q stretch) int { return cmp.Compare(p.from, q.from) })
	var out []stretch
	for _, s := range all {
		if n := len(out); n > 0 && s.from <= out[n-1].to+gap {
			out[n-1].to = max(out[n-1].to, s.to)
			continue
		}
		out = append(out, s)
	}
	return out
}
