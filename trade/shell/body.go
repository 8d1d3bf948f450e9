package shell

import (
	"slices"

	"tumblehome/solve/offsets"
	"tumblehome/trade/working"
)

// Body is the bare van as read. Lengths and places are in mm. It does not
// change and may be used by several goroutines.
type Body struct {
	surface  *offsets.Surface
	ribs     []Rib
	arches   []Box
	openings []Opening
	shown    []working.Figure
	Assumed  bool // it rests on a typical body
}

// Box is a wheel arch on one side.
type Box struct {
	ID       string
	Side     string
	From, To float64 // along x
	Face     float64 // |y| of its inner face
	Up       float64 // z of its top
}

// Start and End are the x of the front and the rear of the bare load space.
func (b *Body) Start() float64 { return b.surface.Start() }
func (b *Body) End() float64   { return b.surface.End() }

// Length is the inside length.
func (b *Body) Length() float64 { return b.End() - b.Start() }

// Floor is the height of the crests of the load floor.
func (b *Body) Floor() float64 { return b.surface.Base() }

// Eaves is the height where the sides end and the roof begins.
func (b *Body) Eaves() float64 { return b.surface.TopRow() }

// Readings are the places along x, and the heights, at which it was read.
func (b *Body) Readings() (along, up []float64) { return b.surface.Readings() }

// Half is the half-breadth at (x, z), from the middle to the skin between the ribs.
func (b *Body) Half(x, z float64) float64 { return b.surface.Half(x, z) }

// HalfInside is the half-breadth to a lining depth thick, measured square to the skin.
func (b *Body) HalfInside(x, z, depth float64) float64 { return b.surface.HalfInside(x, z, depth) }

// Spread is how far Half may be off, about 95 times in 100.
func (b *Body) Spread(x, z float64) float64 { return b.surface.Spread(x, z) }

// Roof is the height of the skin above (x, y): of the roof, or further out of
// the side that leans in.
func (b *Body) Roof(x, y float64) float64 { return b.surface.Top(x, y) }

// RoofInside is the height of a lining depth thick under the roof.
func (b *Body) RoofInside(x, y, depth float64) float64 { return b.surface.TopInside(x, y, depth) }

// Section is the right half of the skin cut across at x, as (y, z) from the floor up to the crown.
func (b *Body) Section(x float64) [][2]float64 { return pairs(b.surface.Section(x, 8)) }

// Plan is the right half of the skin cut level at z, as (x, y) from the front to the rear.
func (b *Body) Plan(z float64) [][2]float64 { return pairs(b.surface.Plan(z, 8)) }

// Girth is the length of the skin at x from floor to floor over the roof.
func (b *Body) Girth(x float64) float64 { return b.surface.Girth(x) }

func pairs(line []offsets.Point) [][2]float64 {
	out := make([][2]float64, len(line))
	for i, p := range line {
		out[i] = [2]float64{p.A, p.B}
	}
	return out
}

// Arches are the wheel arches, those on the left first, from the front.
func (b *Body) Arches() []Box { return slices.Clone(b.arches) }

// Ribs are the ribs and bows on a surface, from the front.
func (b *Body) Ribs(surface string) []Rib {
	var on []Rib
	for _, r := range b.ribs {
		if slices.Contains(r.On, surface) {
			on = append(on, r)
		}
	}
	return on
}

// Openings are the openings through a surface, by their ids.
func (b *Body) Openings(surface string) []Opening {
	var through []Opening
	for _, o := range b.openings {
		if o.Through == surface {
			through = append(through, o)
		}
	}
	return through
}
