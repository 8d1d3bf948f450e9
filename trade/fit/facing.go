package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// facing is a seat with the way who sits there looks: over its longer side, towards the middle of the van; along the van, or in
// its middle, to where there is more room for knees.
type facing struct {
	box   solid.Bounds
	axis  int     // 0 along the van, 1 across
	sign  float64 // +1 rearwards or to the right
	depth float64
	free  float64 // before its front edge, at the best place along it
	sits  int     // how many sit side by side with room for their legs
}

// faces is how one sits on a seat in a mode, remembered.
func (w *worker) faces(mode *Mode, seat int) facing {
	return recall(w, w.was.seats, w.now.seats, mode, spotAt{mode.Name, seat, 0}, all, func() (facing, solid.Bounds) {
		b, feet := mode.Standings[seat].Box, w.in.Room.Floor()+bodyFrom
		reach := b.Grown(legRoom)
		reach.MinZ, reach.MaxZ = min(b.MinZ, feet), max(b.MaxZ, feet+1)
		f := w.seekFacing(mode, seat)
		f.sits = w.placesWithLegs(mode, seat, f)
		return f, reach
	})
}

// seekFacing finds that out.
func (w *worker) seekFacing(mode *Mode, seat int) facing {
	b := mode.Standings[seat].Box
	b.MaxZ = w.ownTop(mode, seat)
	f := facing{box: b, axis: 1, sign: 1, depth: b.MaxY - b.MinY}
	middle := b.MinY + b.MaxY
	if f.depth > b.MaxX-b.MinX {
		f.axis, f.depth, middle = 0, b.MaxX-b.MinX, 0
	}
	if math.Abs(middle) > 2*touching {
		f.sign = -math.Copysign(1, middle)
		f.free = w.legsBefore(mode, seat, f)
		return f
	}
	back := f
	back.sign = -1
	f.free, back.free = w.legsBefore(mode, seat, f), w.legsBefore(mode, seat, back)
	if back.free > f.free {
		return back
	}
	return f
}

// legRoom is how far before a seat room for legs is looked for [mm].
const legRoom = 1000

// legsBefore is the free depth before a seat at its best place, for legs between 100 above the floor and the top of the seat.
func (w *worker) legsBefore(mode *Mode, seat int, f facing) float64 {
	best, blocks := 0.0, w.beforeSeat(mode, seat, f)
	from, to := f.span()
	const half = 200 // of the legs of one who sits
	for _, at := range spread(from+half, to-half, 150) {
		best = max(best, w.freeAt(f, blocks, at, half))
	}
	return best
}

// legZone is the space for legs before a seat, as far as they are looked for, about one place along it.
func (w *worker) legZone(f facing, at, half float64) solid.Bounds {
	zone := f.strip(at, half, legRoom)
	zone.MinZ, zone.MaxZ = w.in.Room.Floor()+bodyFrom, max(w.in.Room.Floor()+bodyFrom+1, f.box.MaxZ-50)
	return zone
}

// beforeSeat are the boxes of all that stands before a seat, anywhere along it.
func (w *worker) beforeSeat(mode *Mode, seat int, f facing) (blocks []solid.Bounds) {
	from, to := f.span()
	zone := w.legZone(f, (from+to)/2, (to-from)/2)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if i == seat || len(s.Solid) == 0 || !s.Box.Meets(zone) || !w.inTheWay(i) || w.carries(seat, i) || w.carries(i, seat) {
			continue
		}
		for _, p := range s.Solid {
			if b := p.Bounds(); b.Meets(zone) {
				blocks = append(blocks, b)
			}
		}
	}
	return blocks
}

// ahead is the side to which who sits there looks.
func (f facing) ahead() solid.Side {
	switch {
	case f.axis == 1 && f.sign < 0:
		return solid.Left
	case f.axis == 1:
		return solid.Right
	case f.sign < 0:
		return solid.Front
	}
	return solid.Rear
}

// forKnees are the attempts to make room for knees: what stands before the seat is moved off or made smaller, or the seat is moved back or made less deep.
func (w *worker) forKnees(mode *Mode, seat int, f facing, legs float64) []attempt {
	to := f.ahead()
	less := math.Ceil(legs - f.free + touching)
	out := []attempt{moves(seat, to^1, less)} // with its back to a wall it has no room for that
	if f.depth-less >= easySeat && w.leans(f.box, to^1) {
		out = append(out, attempt{thing: seat, axis: f.axis, less: less, drawsIn: to})
	}
	zone := f.strip((f.box.MinX+f.box.MaxX)/2, (f.box.MaxX-f.box.MinX)/2, legs)
	if f.axis == 0 {
		zone = f.strip((f.box.MinY+f.box.MaxY)/2, (f.box.MaxY-f.box.MinY)/2, legs)
	}
	zone.MinZ, zone.MaxZ = w.in.Room.Floor()+bodyFrom, max(w.in.Room.Floor()+bodyFrom+1, f.box.MaxZ-50)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if i == seat || !w.inTheWay(i) || w.carries(seat, i) || w.carries(i, seat) || len(s.Solid) == 0 || !s.Box.Meets(zone) {
			continue
		}
		out = append(out, moves(i, to, less))
		if w.leans(s.Box, to) {
			out = append(out, attempt{thing: i, axis: f.axis, less: less, drawsIn: to ^ 1})
		}
	}
	return out
}

// freeAt is the free depth before a seat about one place along it, among what stands before it.
func (w *worker) freeAt(f facing, blocks []solid.Bounds, at, half float64) float64 {
	r, floor := w.in.Room, w.in.Room.Floor()
	free, zone := float64(legRoom), w.legZone(f, at, half)
	switch {
	case f.axis == 1 && f.sign < 0:
		free = f.box.MinY - r.Left(at, floor+waist)
	case f.axis == 1:
		free = r.Right(at, floor+waist) - f.box.MaxY
	case f.sign > 0:
		free = r.Rear() - f.box.MaxX
	case w.in.Partition:
		free = f.box.MinX - r.Front()
	}
	for _, b := range blocks {
		if b.Meets(zone) {
			free = min(free, f.away(b))
		}
	}
	return max(0, min(free, legRoom))
}

// strip is the ground before the seat, so deep, about a place along it.
func (f facing) strip(at, half, deep float64) solid.Bounds {
	b := solid.Bounds{MinX: at - half, MaxX: at + half, MinY: f.box.MaxY, MaxY: f.box.MaxY + deep}
	if f.axis == 1 && f.sign < 0 {
		b.MinY, b.MaxY = f.box.MinY-deep, f.box.MinY
	}
	if f.axis == 0 {
		b = solid.Bounds{MinX: f.box.MaxX, MaxX: f.box.MaxX + deep, MinY: at - half, MaxY: at + half}
		if f.sign < 0 {
			b.MinX, b.MaxX = f.box.MinX-deep, f.box.MinX
		}
	}
	return b
}

// away is how far a box is before the front edge of the seat; negative if it reaches over it.
func (f facing) away(b solid.Bounds) float64 {
	switch {
	case f.axis == 1 && f.sign < 0:
		return f.box.MinY - b.MaxY
	case f.axis == 1:
		return b.MinY - f.box.MaxY
	case f.sign < 0:
		return f.box.MinX - b.MaxX
	}
	return b.MinX - f.box.MaxX
}
