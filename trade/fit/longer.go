package fit

import (
	"fmt"
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// longer proposes a longer bed where there is room at its ends: behind, before, or, where neither is enough, at both.
func (w *worker) longer(b berth, by float64) []finding.Proposal {
	by = math.Ceil(by/5) * 5
	for i := b.bed; i >= 0; i = w.carriers[i] { // a bed as long as what carries it grows with that
		if all := w.longerBy(b, i, by); len(all) > 0 {
			return all
		}
	}
	return nil
}

// longerBy proposes to make one thing that somebody lies on, or that carries it, longer.
func (w *worker) longerBy(b berth, i int, by float64) []finding.Proposal {
	before, behind := w.roomBeyond(i, b.axis, solid.Side(2*b.axis)), w.roomBeyond(i, b.axis, solid.Side(2*b.axis+1))
	var all []finding.Proposal
	if behind >= by {
		all = append(all, w.stretched(i, b.axis, 0, by, "")...)
	}
	if before >= by {
		all = append(all, w.stretched(i, b.axis, by, 0, "")...)
	}
	if len(all) > 0 {
		return all
	}
	if before+behind >= by {
		return w.stretched(i, b.axis, by-min(by, behind), min(by, behind), "")
	}
	length, _ := w.usable(b)
	least, room := b.person.Stature+people.Lying-length, before+behind
	if least <= 0 || room < least { // then not even the sleeper himself would have room
		return nil
	}
	all = w.stretched(i, b.axis, before, behind, ", as far as there is room: enough to lie, not to stretch")
	// The last centimetres often bar a lid or a way: half-way there may do no harm.
	if half := math.Ceil((least+room)/2/5) * 5; half < room {
		at := min(half, behind)
		all = append(all, w.stretched(i, b.axis, half-at, at, ": enough to lie, not to stretch")...)
	}
	return all
}

// stretched proposes to make a thing longer by so much at either end.
func (w *worker) stretched(i, axis int, low, high float64, more string) []finding.Proposal {
	if low+high <= 0 {
		return nil
	}
	words := fmt.Sprintf("make %s %s mm longer", finding.SetOff(w.name(i)), quantity.Parted(low+high))
	ends := [2][2]string{{"the front", "the rear"}, {"the left", "the right"}}[axis]
	switch {
	case low > 0 && high > 0:
		words += fmt.Sprintf(", %.0f at %s and %.0f at %s", low, ends[0], high, ends[1])
	case low > 0:
		words += " towards " + ends[0]
	}
	if w.in.Stretch != nil {
		if patch, ok := w.in.Stretch(w.in.Fittings[i].ID, axis, low, high); ok {
			return []finding.Proposal{{Words: words + more, Patch: patch}}
		}
	}
	if w.in.Lengthen == nil || low > 0 {
		return nil
	}
	if patch, ok := w.in.Lengthen(w.in.Fittings[i].ID, axis, high); ok {
		return []finding.Proposal{{Words: words + more, Patch: patch}}
	}
	return nil
}

// roomBeyond is how much longer a thing may become at one end, in whole 5 mm, until it meets the wall or something else in any mode.
func (w *worker) roomBeyond(i, axis int, end solid.Side) float64 {
	room := math.Inf(1)
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		s := &mode.Standings[i]
		if len(s.Solid) == 0 {
			continue
		}
		room = min(room, w.toWall(s.Box, end))
		for j := range mode.Standings {
			o := &mode.Standings[j]
			if f := &w.in.Fittings[j]; j == i || len(o.Solid) == 0 || f.Gives > 0 || f.For != "" || f.isOutside() || w.carries(i, j) || w.carries(j, i) {
				continue
			}
			if off, before := offEnd(s.Box, o.Box, axis, end); before {
				room = min(room, off)
			}
		}
	}
	return max(0, math.Floor((room+touching)/5)*5)
}

// toWall is how far an end of a box is from the wall behind it.
func (w *worker) toWall(b solid.Bounds, end solid.Side) float64 {
	r, off := w.in.Room, math.Inf(1)
	switch end {
	case solid.Front:
		return b.MinX - r.Front()
	case solid.Rear:
		return r.Rear() - b.MaxX
	}
	for _, x := range [2]float64{b.MinX, b.MaxX} {
		for _, z := range [2]float64{b.MinZ, b.MaxZ} {
			if end == solid.Left {
				off = min(off, b.MinY-r.Left(x, z))
			} else {
				off = min(off, r.Right(x, z)-b.MaxY)
			}
		}
	}
	return off
}

// offEnd is how far another box is beyond an end of a box, if it stands before that end and not beside it.
func offEnd(b, o solid.Bounds, axis int, end solid.Side) (off float64, before bool) {
	beside := min(b.MaxY, o.MaxY) - max(b.MinY, o.MinY)
	if axis == 1 {
		beside = min(b.MaxX, o.MaxX) - max(b.MinX, o.MinX)
	}
	if beside <= touching || min(b.MaxZ, o.MaxZ)-max(b.MinZ, o.MinZ) <= touching {
		return 0, false
	}
	off = [4]float64{b.MinX - o.MaxX, o.MinX - b.MaxX, b.MinY - o.MaxY, o.MinY - b.MaxY}[end]
	return off, off >= -touching
}
