package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// How far from the van a thing outside may be and still be held to it [mm]: common practice, no source.
const (
	heldOff     = 500 // beside it, before or behind it: a carrier with its arms
	racked      = 400 // over the roof, on a rack
	hungBelow   = 200 // under the floor, below the rails it hangs from
	wellInside  = 50  // what is deeper in the room than this is not outside
	nearlyAtTop = 150 // below the top of the roof, where the roof has fallen off to its sides and ends
)

// astray tells of what is said to be outside and is held by nothing of the van, or lies inside.
func (w *worker) astray(i int, s *Standing) bool {
	van, b := w.in.Van, s.Box
	if van.Empty() {
		return false
	}
	off := max(van.MinX-b.MaxX, b.MinX-van.MaxX, van.MinY-b.MaxY, b.MinY-van.MaxY, van.MinZ-b.MaxZ, b.MinZ-van.MaxZ)
	size := max(b.MaxX-b.MinX, b.MaxY-b.MinY, b.MaxZ-b.MinZ)
	limit := max(min(size, heldOff), touching)
	title := fmt.Sprintf("%s is %s away from the van", w.name(i), about(off))
	words := "It is said to be on the van or under it, but nothing of the van is near. Look at its place again: a number may be mistyped."
	proposed := w.bringIn
	if off <= limit {
		inside := w.deepInside(b)
		off, limit = w.inTheAir(b)
		title = w.name(i) + " hangs in the air"
		words = "It is said to be on the van or under it, but nothing is there to hold it. Look at its place again."
		if off <= limit && inside > wellInside {
			off, limit = inside, wellInside
			title = fmt.Sprintf("%s is said to be outside, but lies inside the van", w.name(i))
			proposed = func(i int, _ *Standing) []finding.Proposal { return w.saidInside(i) }
			words = "Its place is in the room. Correct its place, or take away that it is outside or under the van."
		}
	}
	if off <= limit {
		return false
	}
	w.find(finding.Finding{
		Code: "fit.astray", Severity: finding.Fault, About: []string{pointer("fittings", w.in.Fittings[i].ID)}, Title: title, Words: words,
		Measured: mm(off), Limit: mm(limit), Source: outdoorsSource, Proposals: proposed(i, s),
	})
	return true
}

// inTheAir is how far a thing is from the roof or the floor that should hold it, and how far it may be; nought for what is beside the van, before or behind it.
func (w *worker) inTheAir(b solid.Bounds) (off, limit float64) {
	x, y := (b.MinX+b.MaxX)/2, (b.MinY+b.MaxY)/2
	past := max(x-w.in.Van.MaxX, x-w.in.Room.Rear()-wellInside, math.Abs(y)-w.in.Van.MaxY)
	switch above, below := b.MinZ-w.in.OuterRoof, w.in.Underside-b.MaxZ; {
	case above > -nearlyAtTop && past > 0:
		return past, 0 // its middle is not over the roof
	case above > 0:
		return above, racked
	case below > 0 && past <= 0 && x > w.in.Room.Front():
		return below, hungBelow
	}
	return 0, 0
}

// deepInside is how deep the middle of a box lies inside the room.
func (w *worker) deepInside(b solid.Bounds) float64 {
	r, x, y, z := w.in.Room, (b.MinX+b.MaxX)/2, (b.MinY+b.MaxY)/2, (b.MinZ+b.MaxZ)/2
	return min(x-r.Front(), r.Rear()-x, y-r.Left(x, z), r.Right(x, z)-y, z-r.Floor(), r.Roof(x, y)-z)
}

// liesInside says whether a fitting is said to be outside or under the van and rests inside the room.
func (w *worker) liesInside(i int) bool {
	if !w.in.Fittings[i].isOutside() || w.in.Van.Empty() {
		return false
	}
	s := w.resting(i)
	return s != nil && w.deepInside(s.Box) > wellInside
}
