package fit

import (
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
)

// lies is the place of a part of a body that lies at a share of the width of its bed, as high as the pressed mattress.
func (w *worker) lies(b berth, part, share float64) (x, y, z float64) {
	box := b.mode.Standings[b.bed].Box
	top, pressed := w.seatTop(b.mode, b.bed)
	from, to := b.head(box)
	at := from + math.Copysign(min(part*b.person.Stature, math.Abs(to-from)-feetOut), to-from)
	if b.axis == 1 {
		return box.MinX + share*(box.MaxX-box.MinX), at, top - pressed
	}
	return at, box.MinY + share*(box.MaxY-box.MinY), top - pressed
}

// inTheWall says which part of somebody lies beyond the finished side or end of the room, and beyond which, if so many lie side by side.
func (w *worker) inTheWall(b berth, sleepers int) (what string, side solid.Side, in bool) {
	for k := range sleepers {
		for _, part := range lieAt {
			x, y, z := w.lies(b, part, (float64(k)+0.5)/float64(sleepers))
			if to := w.beyond(x, y, z); to >= 0 && w.in.Fittings[b.bed].Where == "" {
				if part < hips {
					return "head", to, true
				}
				return "feet", to, true
			}
		}
	}
	return "", 0, false
}

// beyond is the side or end of the room that a place lies beyond; -1 if none.
func (w *worker) beyond(x, y, z float64) solid.Side {
	r := w.in.Room
	for to, is := range [4]bool{w.in.Partition && x < r.Front(), x > r.Rear(), y < r.Left(x, z), y > r.Right(x, z)} {
		if is {
			return solid.Side(to)
		}
	}
	return -1
}

// usable is how long and how wide a bed is at the height of shoulders: the sides of a van lean in.
func (w *worker) usable(b berth) (along, across float64) {
	box := b.mode.Standings[b.bed].Box
	top, pressed := w.seatTop(b.mode, b.bed)
	from, to := b.head(box)
	x := from + math.Copysign(min(0.2*b.person.Stature, math.Abs(to-from)/2), to-from)
	if b.axis == 1 {
		x = (box.MinX + box.MaxX) / 2
	}
	if r := w.in.Room; w.in.Fittings[b.bed].Where == "" || x > r.Front() {
		left, right := Linings(r, x, top-pressed, people.Of(quantity.Length(b.person.Stature)))
		box.MinY, box.MaxY = max(box.MinY, left), min(box.MaxY, right)
	}
	return b.length(box)
}

// Linings are the y of the left and the right lining [mm] beside somebody who lies at x on a bed whose top, pressed down, is at so high: at the
// height of the shoulders, which are widest half way up a body.
func Linings(r solid.Region, x, top float64, body people.Body) (left, right float64) {
	z := top + float64(body.LyingHeight())/2
	return r.Left(x, z), r.Right(x, z)
}
