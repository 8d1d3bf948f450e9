package fit

import (
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
)

// Seated is where one sits in a mode, for a drawing: the place is judged by the same measures as the room for knees.
type Seated struct {
	Mode, Person string
	Front        [2]float64 // x and y of the front edge of the seat before who sits there
	Faces        [2]float64 // the way who sits there looks
}

// seated finds the place of everybody who sits, in every mode.
func (w *worker) seated() {
	for m := range w.in.Modes {
		mode, on := &w.in.Modes[m], map[int][]Person{}
		var seats []int
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			k, known := w.people[pose.Person]
			if pose.Does != "sits" || !ok || !known || len(mode.Standings[i].Solid) == 0 {
				continue
			}
			if on[i] == nil {
				seats = append(seats, i)
			}
			on[i] = append(on[i], w.in.People[k])
		}
		for _, i := range seats {
			w.seatAll(mode, i, on[i])
		}
	}
}

// seatAll sets each at their share of a seat, or at the place next to it that has room for their knees and is nobody else's.
func (w *worker) seatAll(mode *Mode, seat int, who []Person) {
	f, blocks := w.faces(mode, seat), w.beforeSeat(mode, seat, w.faces(mode, seat))
	from, to := f.span()
	var taken []float64
	for k, p := range who {
		share := from + (to-from)*(float64(k)+0.5)/float64(len(who))
		at := w.placeNear(f, blocks, share, float64(people.Of(quantity.Length(p.Stature)).LegRoom()), taken)
		taken = append(taken, at)
		w.result.Seated = append(w.result.Seated, Seated{Mode: mode.Name, Person: p.ID, Front: f.front(at), Faces: f.looks()})
	}
}

// placeNear is the place next to one along a seat before which there is room for legs, or as much as there is anywhere.
func (w *worker) placeNear(f facing, blocks []solid.Bounds, share, legs float64, taken []float64) float64 {
	from, to := f.span()
	best, off := share, math.Inf(1)
	places := append(spread(from+shinsHalf, to-shinsHalf, 50), spread(from+shinsHalf, to-shinsHalf, 150)...) // the latter are those where the room was measured
	for _, at := range append(places, share) {
		if d := math.Abs(at - share); d < off && ownPlace(at, taken) && w.freeAt(f, blocks, at, shinsHalf) >= min(legs, f.free)-touching {
			best, off = at, d
		}
	}
	return best
}

// ownPlace says whether a place along a seat is a place's width from those that are taken.
func ownPlace(at float64, taken []float64) bool {
	for _, t := range taken {
		if math.Abs(at-t) < sitsWide-touching {
			return false
		}
	}
	return true
}

// front is the front edge of a seat at a place along it.
func (f facing) front(at float64) [2]float64 {
	switch {
	case f.axis == 1 && f.sign < 0:
		return [2]float64{at, f.box.MinY}
	case f.axis == 1:
		return [2]float64{at, f.box.MaxY}
	case f.sign < 0:
		return [2]float64{f.box.MinX, at}
	}
	return [2]float64{f.box.MaxX, at}
}

// looks is the way who sits there looks.
func (f facing) looks() [2]float64 {
	if f.axis == 1 {
		return [2]float64{0, f.sign}
	}
	return [2]float64{f.sign, 0}
}
