package fit

import (
	"math"

	"tumblehome/solve/solid"
)

const (
	overBunk = 500  // over a bunk, least [mm]
	overBed  = 600  // over any other bed to sleep in, least
	hips     = 0.47 // of stature, from the head: from memory
)

// head is the end of a bed at which the head lies, and the other.
func (b berth) head(box solid.Bounds) (from, to float64) {
	from, to = box.MinX, box.MaxX
	if b.axis == 1 {
		from, to = box.MinY, box.MaxY
	}
	if b.pose.Head == "rear" || b.pose.Head == "right" {
		from, to = to, from
	}
	return from, to
}

// lanes are how many places side by side each sleeper may choose from.
const lanes = 3

// overBody is the least room over a body, from face to knees, of the sleeper who has least of some side by side, each lying where it is
// roomiest for them; and the most over the hips, where one sits up.
type overBody struct{ least, sits float64 }

// bodyAt is one of so many sleepers, in a bed pressed down to z.
type bodyAt struct {
	mode     string
	pose     Pose
	sleepers int
	z        float64
}

// overBody is remembered.
func (w *worker) overBody(b berth, sleepers int) (least, sits float64) {
	top, pressed := w.seatTop(b.mode, b.bed)
	at := bodyAt{b.mode.Name, b.pose, sleepers, top - pressed}
	known := recall(w, w.was.bodies, w.now.bodies, b.mode, at, all, func() (overBody, solid.Bounds) {
		return w.seekOverBody(b, sleepers, at.z), above(b.mode.Standings[b.bed].Box, feetOut+headWide/2)
	})
	return known.least, known.sits
}

func (w *worker) seekOverBody(b berth, sleepers int, top float64) overBody {
	least, sits := math.Inf(1), 0.0
	for k := range sleepers {
		best := 0.0
		for l := range lanes {
			lane, up := w.overLane(b, (float64(k*lanes+l)+0.5)/float64(lanes*sleepers), top)
			best, sits = max(best, lane), max(sits, up)
		}
		least = min(least, best)
	}
	return overBody{least, sits}
}

// feetOut is from the foot of a bed to the last place that is looked at [mm]; in a shorter bed it lies so far out.
const feetOut = 100

// overLane is the least room over one line along a bed, at a share of its width, and the room over the hips.
func (w *worker) overLane(b berth, share, top float64) (least, sits float64) {
	box := b.mode.Standings[b.bed].Box
	from, to := b.head(box)
	_, wide := b.length(box)
	across := max(0, wide-2*headWide)*share + min(headWide, wide/2)
	least = math.Inf(1)
	for _, part := range lieAt {
		at := from + math.Copysign(min(part*b.person.Stature, math.Abs(to-from)-feetOut), to-from)
		x, y := at, box.MinY+across
		if b.axis == 1 {
			x, y = box.MinX+across, at
		}
		room := w.over(b.mode, x, y, top+touching, b.bed, false) - top // a table is put aside for the night
		least = min(least, room)
		if part == hips {
			sits = room
		}
	}
	return least, sits
}

// lieAt are the places along a body, as shares of stature from the head, over which there must be room.
var lieAt = [5]float64{0.15, 0.25, 0.35, hips, 0.7}
