package lining

import "math"

// Room is what is left inside the finished surfaces. Places are in mm. It does
// not change and may be used by several goroutines.
type Room struct {
	body               Body
	front, rear, floor float64
	left, right        wall
	roof               []*field
	roofTo             []float64 // x at which each bay of the roof ends
	lowRoof            float64   // below it the roof nowhere narrows the room
	narrow             float64   // nearer to the middle than this no side comes above lowRoof
	heights            []float64 // where the build-up of a side changes, and every 100 between
	lengths            []float64 // where it changes along the van
	along, up          []float64 // where finished surfaces may step or bend
}

// wall is one finished side.
type wall struct {
	fields  []*field
	to      []float64 // x at which each field ends
	hatches []hatch   // side doors
	arches  []hatch   // wheel arches with their lining
}

// hatch is a rectangle of a wall: a door with its own thickness, or an arch
// with the |y| of its face.
type hatch struct {
	from, to, low, up float64
	value             float64
}

func (h *hatch) holds(x, z float64) bool { return x >= h.from && x <= h.to && z >= h.low && z <= h.up }

// thick is the depth of the lining from the skin at (x, z).
func (w *wall) thick(x, z float64) float64 {
	for i := range w.hatches {
		if w.hatches[i].holds(x, z) {
			return w.hatches[i].value
		}
	}
	return w.fields[bayAt(w.to, x)].at(z).thick
}

// bayAt is the index of the bay that holds x, held to the ends.
func bayAt(to []float64, x float64) int {
	last := len(to) - 1
	for i := range last {
		if x < to[i] {
			return i
		}
	}
	return last
}

// Floor is the height of the finished floor.
func (r *Room) Floor() float64 { return r.floor }

// Front and Rear are the x of the finished partition and of the lining of the
// closed rear doors.
func (r *Room) Front() float64 { return r.front }
func (r *Room) Rear() float64  { return r.rear }

// Steps are where the finished surfaces may step or bend: places along x, and heights.
func (r *Room) Steps() (along, up []float64) { return r.along, r.up }

// Left is the y, below zero, of the finished left side at (x, z).
func (r *Room) Left(x, z float64) float64 { return -r.breadth(&r.left, x, z) }

// Right is the y of the finished right side at (x, z), wheel arches included. High up it is
// where the roof comes down; above the roof it is 0.
func (r *Room) Right(x, z float64) float64 { return r.breadth(&r.right, x, z) }

// Roof is the height of the finished surface above (x, y): of the roof, or
// further out of the side that leans in. Outside the room it is the floor.
func (r *Room) Roof(x, y float64) float64 {
	w := &r.right
	if y < 0 {
		w, y = &r.left, -y
	}
	z := r.ceiling(x, y)
	if y <= r.narrow || y <= r.side(w, x, z) {
		return math.Max(z, r.floor)
	}
	return r.under(w, x, y, z)
}

// Headroom is the height between the finished floor and roof at (x, y).
func (r *Room) Headroom(x, y float64) float64 { return r.Roof(x, y) - r.floor }

// Inside says whether a point lies in the room.
func (r *Room) Inside(x, y, z float64) bool {
	return x >= r.front && x <= r.rear && z >= r.floor && y >= r.Left(x, z) && y <= r.Right(x, z)
}

// ceiling is the height of the lining under the roof at |y|.
func (r *Room) ceiling(x, y float64) float64 {
	return r.body.RoofInside(x, y, r.roof[bayAt(r.roofTo, x)].bands[0].thick)
}

// side is the half-breadth to the finished side, as if the roof were not there.
func (r *Room) side(w *wall, x, z float64) float64 {
	y := r.body.HalfInside(x, math.Min(z, r.body.Eaves()), w.thick(x, z))
	for i := range w.arches {
		if w.arches[i].holds(x, z) {
			y = math.Min(y, w.arches[i].value)
		}
	}
	return y
}

func (r *Room) breadth(w *wall, x, z float64) float64 {
	y := r.side(w, x, z)
	if z <= r.lowRoof || z <= r.ceiling(x, y) {
		return y
	}
	return r.below(x, z, y)
}

// below is where the roof comes down to z between the middle and y.
func (r *Room) below(x, z, y float64) float64 {
	lo, hi := 0.0, y
	if r.ceiling(x, 0) <= z {
		return 0
	}
	for hi-lo > 0.05 {
		mid := (lo + hi) / 2
		if r.ceiling(x, mid) > z {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}
