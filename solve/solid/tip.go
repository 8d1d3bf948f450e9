package solid

import (
	"math"
	"slices"
)

// Tipped is the space that the box passes through while it turns about a level edge from 0 to an angle in radians, at most a full turn,
// in upright slices. It covers the true space, and none of it is further than the tolerance from that; a tolerance below 1/10000 of the
// reach is taken as that, and a box without end gives nothing. No two of its slices overlap.
//
// The slices are made as wide as the tolerance lets them be: the corner that a slice has beyond an arc of radius r lies at r + tolerance
// at most. A quarter of a disc takes r/(2·tolerance) steps, and stairs cannot do it with fewer.
func (b Bounds) Tipped(e Edge, angle, tolerance float64) Solid {
	if b.Empty() {
		return nil
	}
	if angle = atMostATurn(angle); angle < 0 {
		angle, e.Upward = -angle, -e.Upward
	}
	h0, h1, l0, l1 := b.across(e.Along)
	t := newTipping(e, h0, h1, b.MinZ, b.MaxZ, angle)
	if !(t.far < math.MaxFloat64) {
		return nil
	}
	if !(tolerance > finest*t.far) {
		tolerance = finest * t.far
	}
	var tipped Solid
	t.cut(tolerance, func(from, till, low, high float64) {
		h, z := [2]float64{e.H + e.Away*from, e.H + e.Away*till}, [2]float64{e.Z + e.Upward*low, e.Z + e.Upward*high}
		tipped = append(tipped, e.slice(l0, l1, min(h[0], h[1]), max(h[0], h[1]), min(z[0], z[1]), max(z[0], z[1])))
	})
	return tipped
}

// tipping is a rectangle u0..u1, v0..v1 that turns about the origin, from u towards v, and what it traces.
type tipping struct {
	u0, u1, v0, v1 float64
	near, far      float64 // from the origin
	angle          float64
	traces         []trace
	breaks         []float64 // where a trace begins or ends
}

func newTipping(e Edge, h0, h1, z0, z1, angle float64) *tipping {
	u, w := (h0-e.H)*e.Away, (h1-e.H)*e.Away
	v, x := (z0-e.Z)*e.Upward, (z1-e.Z)*e.Upward
	t := &tipping{u0: min(u, w), u1: max(u, w), v0: min(v, x), v1: max(v, x), angle: angle}
	t.traces, t.breaks = make([]trace, 0, 32), make([]float64, 0, 64)
	corners := [4]Point{{t.u0, t.v0}, {t.u1, t.v0}, {t.u1, t.v1}, {t.u0, t.v1}}
	var last [4]Point
	turned(last[:0], corners[:], Point{}, angle, 1)
	t.far = reach(corners[:], Point{})
	nearest := Point{max(t.u0, min(t.u1, 0)), max(t.v0, min(t.v1, 0))}
	t.near = math.Hypot(nearest.X, nearest.Y)
	for i, c := range corners {
		t.straight(c, corners[(i+1)%4])
		t.straight(last[i], last[(i+1)%4])
		t.arc(c)
	}
	if t.near > 0 && !slices.Contains(corners[:], nearest) {
		t.arc(nearest)
	}
	slices.Sort(t.breaks)
	return t
}

// passes says whether the rectangle passes over a point: a turn backwards brings it in, at once or over a side.
func (t *tipping) passes(u, v float64) bool {
	if t.holds(u, v) {
		return true
	}
	r := math.Hypot(u, v)
	if r < t.near || r > t.far {
		return false
	}
	at := math.Atan2(v, u)
	for _, side := range [2]float64{t.u0, t.u1} {
		if other := math.Sqrt(r*r - side*side); t.comes(at, side, other) || t.comes(at, side, -other) {
			return true
		}
	}
	for _, side := range [2]float64{t.v0, t.v1} {
		if other := math.Sqrt(r*r - side*side); t.comes(at, other, side) || t.comes(at, -other, side) {
			return true
		}
	}
	return false
}

func (t *tipping) holds(u, v float64) bool {
	return t.u0 <= u && u <= t.u1 && t.v0 <= v && v <= t.v1
}

// comes says whether a point of the rectangle comes to a direction in the turn.
func (t *tipping) comes(at, u, v float64) bool {
	if !t.holds(u, v) {
		return false
	}
	by := at - math.Atan2(v, u)
	if by < 0 {
		by += 2 * math.Pi
	}
	return by <= t.angle
}
