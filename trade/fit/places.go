package fit

import (
	"fmt"

	"tumblehome/trade/finding"
)

// Room that shins and feet of one who sits take before a seat at the least [mm]: about the leg room of the survey of catalogue/people.
const (
	shinsDeep = 200
	shinsHalf = 200 // half as wide
)

var placeSource = finding.Source{Text: "450 mm of a bench for a grown person, and before it 400 wide and 200 deep for shins and feet: common practice, no source", Sure: finding.Practice}

// wide is how long a seat is across who sits there.
func (f facing) wide() float64 {
	from, to := f.span()
	return to - from
}

// span is from where to where they sit side by side.
func (f facing) span() (from, to float64) {
	if f.axis == 0 {
		return f.box.MinY, f.box.MaxY
	}
	return f.box.MinX, f.box.MaxX
}

// placesWithLegs is how many sit side by side and each have room for their legs. One is let sit wherever there is most room.
func (w *worker) placesWithLegs(mode *Mode, seat int, f facing) int {
	from, to := f.span()
	n, blocks := 0, w.beforeSeat(mode, seat, f)
	for at := from + sitsWide/2; at+sitsWide/2 <= to+touching; {
		if w.freeAt(f, blocks, at, shinsHalf) >= shinsDeep {
			n, at = n+1, at+sitsWide
		} else {
			at += exitCell
		}
	}
	return n
}

// placesLeft says in a figure how many of the places of a seat have room for legs, where it is not all.
func (f facing) placesLeft() string {
	if all := int((f.wide() + touching) / sitsWide); f.sits > 0 && f.sits < all {
		return fmt.Sprintf("; %d of %d places have room for legs", f.sits, all)
	}
	return ""
}

// placesLost tells of a seat on which more sit than have room for their legs, though one has; it says whether it did.
func (w *worker) placesLost(mode *Mode, seat int, who []string) bool {
	f := w.faces(mode, seat)
	if f.sits == 0 || f.sits >= min(len(who), int((f.wide()+touching)/sitsWide)) {
		return false // nobody has any: the knees are told of; or the seat is short and they are small
	}
	from, to := f.span()
	zone := f.strip((from+to)/2, (to-from)/2, shinsDeep)
	zone.MinZ, zone.MaxZ = w.in.Room.Floor()+bodyFrom, max(w.in.Room.Floor()+bodyFrom+1, f.box.MaxZ-50)
	var before []int
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if i != seat && w.inTheWay(i) && !w.carries(seat, i) && !w.carries(i, seat) && len(s.Solid) > 0 && s.Box.Meets(zone) {
			before = append(before, i)
		}
	}
	if len(before) == 0 {
		return false
	}
	names, pointers := w.namesOf(before)
	out := finding.Finding{
		Code: "fit.seat.place", Severity: finding.Close, Mode: mode.Name, About: append([]string{pointer("fittings", w.in.Fittings[seat].ID)}, pointers...),
		Title:    fmt.Sprintf("%d sit on %s, and %s %s before part of it", len(who), w.name(seat), and(names), oneOrMore(len(names), "stands")),
		Words:    fmt.Sprintf("Room for shins and feet is left for %s of them: the other place is lost. Move off what stands there, or let some sit elsewhere.", counted(f.sits)),
		Measured: &finding.Measure{Value: float64(f.sits), Unit: "1"}, Limit: &finding.Measure{Value: float64(len(who)), Unit: "1"}, Source: placeSource,
	}
	var attempts []attempt
	for _, i := range before {
		attempts = append(attempts, w.asides(i, zone, touching)...)
	}
	out.Proposals = w.tried(out, (*worker).together, attempts...)
	w.find(out)
	return true
}
