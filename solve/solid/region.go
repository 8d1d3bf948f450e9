package solid

import "math"

// Region is the inside of six surfaces: left(x, z) <= y <= right(x, z), z <= roof(x, y), and three flat ones.
type Region interface {
	Left(x, z float64) float64
	Right(x, z float64) float64
	Roof(x, y float64) float64
	Floor() float64
	Front() float64
	Rear() float64
}

// Stepped is a region that knows where its curved surfaces step or bend: places along x and heights, each in rising order.
type Stepped interface{ Steps() (along, up []float64) }

// Steps are those of a region; none if it does not know.
func Steps(r Region) (along, up []float64) {
	if s, ok := r.(Stepped); ok {
		return s.Steps()
	}
	return nil, nil
}

// Side names one of a region's six surfaces.
type Side int

const (
	Front Side = iota
	Rear
	Left
	Right
	Floor
	Roof
)

// Excess is how far the prism stands out of the region through each surface, measured along y for left and right, along z for
// floor and roof, along x for front and rear. A negative excess is the room that is left. Curved surfaces are searched with
// Greatest, nodes at most step apart and wherever the region is known to step or bend: against a surface that curves outward, as a hull does,
// the answer is exact, since the first to stand out is a corner; a bump narrower than step that no corner meets and the region does not tell of can
// be missed.
func (p Prism) Excess(r Region, step float64) [6]float64 {
	var e [6]float64
	for side := range e {
		e[side] = p.ExcessAt(r, Side(side), step)
	}
	return e
}

// lookedAt is at how many places of a length there is room to look without allocation.
const lookedAt = 48

// ExcessAt is Excess through one surface.
func (p Prism) ExcessAt(r Region, side Side, step float64) float64 {
	b := p.Bounds()
	switch side {
	case Front:
		return r.Front() - b.MinX
	case Rear:
		return b.MaxX - r.Rear()
	case Floor:
		return r.Floor() - b.MinZ
	}
	var room [2][lookedAt]float64
	along, up := Steps(r)
	us := Places(room[0][:], b.MinX, b.MaxX, step, along)
	if side == Roof {
		return p.overLength(us, Places(room[1][:], 0, 1, step/max(step, b.MaxY-b.MinY), nil), func(x, t float64) float64 {
			low, high := p.Across(x)
			return p.High - r.Roof(x, low+t*(high-low))
		})
	}
	vs := Places(room[1][:], b.MinZ, b.MaxZ, step, up)
	if side == Left {
		return p.overLength(us, vs, func(x, z float64) float64 {
			low, _ := p.Across(x)
			return r.Left(x, z) - low
		})
	}
	return p.overLength(us, vs, func(x, z float64) float64 {
		_, high := p.Across(x)
		return high - r.Right(x, z)
	})
}

// overLength is the greatest f(x, v) over the prism's length, its corners in between included.
func (p Prism) overLength(us, vs []float64, f func(x, v float64) float64) float64 {
	most := Greatest(us, vs, f)
	for _, c := range p.Outline {
		if c.X > us[0] && c.X < us[len(us)-1] {
			most = max(most, Greatest([]float64{c.X}, vs, f))
		}
	}
	return most
}

// Across is the outline's extent in y at x; low is above high where the outline is not.
func (p Prism) Across(x float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	v := p.Outline[len(p.Outline)-1]
	for _, w := range p.Outline {
		if (v.X <= x && x <= w.X) || (w.X <= x && x <= v.X) {
			y := v.Y
			if v.X != w.X {
				y += (w.Y - v.Y) * (x - v.X) / (w.X - v.X)
			} else {
				low, high = min(low, w.Y), max(high, w.Y)
			}
			low, high = min(low, y), max(high, y)
		}
		v = w
	}
	return low, high
}
