package fit

import (
	"slices"
	"strings"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// Seat is one of the vehicle's own seats with belts.
type Seat struct {
	ID     string
	Driver bool
	Middle solid.Point
}

func (s Seat) called() string {
	if s.Driver {
		return "the driver"
	}
	return "a passenger (seat " + strings.ReplaceAll(s.ID, "-", " ") + ")"
}

// What surely belongs to who sits in the cab, about the middle of the seat and over the load floor [mm]. Common practice, no source.
const (
	bodyHalfDeep = 150
	bodyHalfWide = 200
	sitsFrom     = 250 // what is lower lies under the seat or is its console
	headFrom     = 900
	headTo       = 1300
	headBack     = 300 // the back of a head lies so far behind the middle of its seat: one leans back
	headHalfWide = 130
	slides       = 200 // so far a seat goes forward on its rails from where one commonly sits
)

// body is the space of who sits there; what is behind the front of the room is not the cab.
func (s Seat) body(front float64) (trunk, head solid.Bounds) {
	x, y := s.Middle.X, s.Middle.Y
	trunk = solid.Bounds{MinX: x - bodyHalfDeep, MaxX: min(front, x+bodyHalfDeep), MinY: y - bodyHalfWide, MaxY: y + bodyHalfWide, MinZ: sitsFrom, MaxZ: headTo}
	head = solid.Bounds{MinX: x, MaxX: min(front, x+headBack), MinY: y - headHalfWide, MaxY: y + headHalfWide, MinZ: headFrom, MaxZ: headTo}
	return trunk, head
}

// cabSeats tells of what stands, while the van is driven, where the driver sits or a passenger for whom no other seat is free, and of what covers the
// driver's seat in another mode, so that it has to be cleared before one can drive off.
func (w *worker) cabSeats() {
	drive := w.named("drive")
	for m := range w.in.Modes {
		if mode := &w.in.Modes[m]; drive == nil || mode.Name != drive.Name {
			w.coveredAtRest(drive, mode)
		}
	}
	if drive == nil {
		return
	}
	free := len(w.in.Seats)
	covered := make([][]int, len(w.in.Seats))
	for k, seat := range w.in.Seats {
		if covered[k] = w.covers(drive, seat); len(covered[k]) > 0 {
			free--
		}
	}
	for k, seat := range w.in.Seats {
		if len(covered[k]) > 0 && (seat.Driver || free < len(w.in.People) && !w.clearedFor(seat)) {
			w.reportCovered(drive, seat, covered[k])
		}
	}
}

// clearedFor says whether a mode of the builder's own leaves a seat free, for driving with a passenger.
func (w *worker) clearedFor(seat Seat) bool {
	return slices.ContainsFunc(w.in.Modes, func(m Mode) bool {
		return m.Name != "drive" && m.Name != "day" && m.Name != "night" && len(w.covers(&m, seat)) == 0
	})
}

// covers are the things that a mode has where somebody sits in the cab.
func (w *worker) covers(mode *Mode, seat Seat) (things []int) {
	front := w.in.Room.Front()
	if seat.Middle.X >= front {
		return nil
	}
	for i := range mode.Standings {
		if s := &mode.Standings[i]; s.Box.MinX < front && w.coversSeat(i, s, seat) {
			things = append(things, i)
		}
	}
	return things
}

// coversSeat says whether a thing stands where the body or the head of who sits there is.
func (w *worker) coversSeat(i int, s *Standing, seat Seat) bool {
	f := &w.in.Fittings[i]
	if len(s.Solid) == 0 || f.isOutside() || f.For != "" || f.Gives >= 1 || f.Belted || w.in.Partition && f.Where != "cab" {
		return false
	}
	trunk, head := seat.body(w.in.Room.Front())
	return standsIn(s, trunk) || standsIn(s, head)
}

func standsIn(s *Standing, zone solid.Bounds) bool {
	if !s.Box.Meets(zone) {
		return false
	}
	deep, in := s.Solid.Deepest(solid.Solid{solid.Box(zone)})
	return in && deep.Depth > touching
}

// coversDriver says whether a thing that is moved so far from where it rests comes to stand where the driver sits.
func (w *worker) coversDriver(i int, dx, dy, dz float64) bool {
	s := w.resting(i)
	if s == nil || s.Box.MinX+dx >= w.in.Room.Front() {
		return false
	}
	there := Standing{Solid: s.Solid.Moved(dx, dy, dz), Box: s.Box.Moved(dx, dy, dz)}
	return slices.ContainsFunc(w.in.Seats, func(seat Seat) bool {
		return seat.Driver && seat.Middle.X < w.in.Room.Front() && w.coversSeat(i, &there, seat) && !w.coversSeat(i, s, seat)
	})
}

// slideFor is how far a seat is to be slid forward, so that some things no longer reach into it from behind; nought where that does not clear it, or
// where they are at the height of the head.
func (w *worker) slideFor(drive *Mode, seat Seat, things []int) float64 {
	if lowest(drive, things) >= headFrom {
		return 0
	}
	forward := seat
	forward.Middle.X -= slides
	begins := w.in.Room.Front()
	for _, i := range things {
		if w.coversSeat(i, &drive.Standings[i], forward) {
			return 0
		}
		begins = min(begins, drive.Standings[i].Box.MinX)
	}
	return seat.Middle.X + bodyHalfDeep - begins
}

// namesOf are the names of some things and the pointers to them.
func (w *worker) namesOf(things []int) (names, pointers []string) {
	for _, i := range things {
		names, pointers = append(names, w.name(i)), append(pointers, pointer("fittings", w.in.Fittings[i].ID))
	}
	return names, pointers
}

// oneOrMore is a verb after one thing, or after several.
func oneOrMore(n int, verb string) string {
	if n > 1 && verb == "is" {
		return "are"
	}
	if n > 1 {
		return strings.TrimSuffix(verb, "s")
	}
	return verb
}

// toldOf says whether a finding with some code already tells of a thing.
func (w *worker) toldOf(code string, i int) bool {
	return slices.ContainsFunc(w.result.Findings, func(f finding.Finding) bool {
		return f.Code == code && slices.Contains(f.About, pointer("fittings", w.in.Fittings[i].ID))
	})
}
