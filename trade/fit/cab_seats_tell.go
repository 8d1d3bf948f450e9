package fit

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

var cabSeatSource = finding.Source{
	Text: "who sits in a cab takes up 300 by 400 mm about the middle of the seat, from 250 to 1300 mm over the load floor, and leans back by up to 300 with the head; the seat slides forward by 200: common practice, no source; the cab itself was not measured", Sure: finding.Practice,
}

func (w *worker) reportCovered(drive *Mode, seat Seat, things []int) {
	names, pointers := w.namesOf(things)
	out := finding.Finding{
		Code: "fit.cab.seat", Severity: finding.Fault, Mode: drive.Name, About: append(pointers, pointer("vehicle/seats", seat.ID)),
		Title:   fmt.Sprintf("%s %s where %s sits", listed(names), oneOrMore(len(things), "stands"), seat.called()),
		Words:   "While the van is driven that place must be free. Put it elsewhere then, or move it.",
		Source:  cabSeatSource,
		Caution: "Do not drive with anything where somebody sits, or where it can fall on the pedals.",
	}
	if slide := w.slideFor(drive, seat, things); slide > 0 {
		out.Severity, out.Measured, out.Limit = finding.Close, mm(slide), mm(slides)
		out.Title = fmt.Sprintf("%s %s into the place of %s", listed(names), oneOrMore(len(things), "comes"), seat.called())
		out.Words = fmt.Sprintf("It comes %s in. Slide the seat forward by as much; most go forward by about %d. Can you still drive or ride so? Sit in it and try. Else leave that part away while driving.", about(slide), slides)
	} else if low := lowest(drive, things); low >= headFrom {
		out.Severity, out.Measured, out.Limit = finding.Danger, mm(low), mm(headTo)
		out.Title = fmt.Sprintf("%s %s where the head of %s is", listed(names), oneOrMore(len(things), "is"), seat.called())
		out.Words = fmt.Sprintf("It begins %s over the load floor; over and behind who sits there %d should be free. In a crash the head is thrown against it. Raise it, or put it elsewhere while driving.", about(low), headTo)
		out.Caution = "Nobody drives or rides with a board at the height of the head."
	}
	if !seat.Driver {
		out.Words += fmt.Sprintf(" The build has %d people and %d seats with belts, so that this one is needed.", len(w.in.People), len(w.in.Seats))
	}
	for _, i := range things {
		out.Words += w.mayCome(i)
	}
	if len(things) == 1 {
		out.Proposals = w.clearSeat(out, drive, seat, things[0])
	}
	w.find(out)
}

// clearSeat proposes to leave what covers a seat where it rests, to put it where another mode has it, or to move it.
func (w *worker) clearSeat(out finding.Finding, drive *Mode, seat Seat, i int) []finding.Proposal {
	s := &drive.Standings[i]
	if s.Moved {
		if rest := w.resting(i); rest == nil || w.coversSeat(i, rest, seat) {
			return w.putAway(drive, seat, i)
		}
		return append(w.leftThere(drive, i), w.putAway(drive, seat, i)...)
	}
	off, head := seat.body(w.in.Room.Front())
	off.MaxX = max(off.MaxX, head.MaxX)
	attempts := append(w.asides(i, off, touching), moves(i, solid.Roof, headTo-s.Box.MinZ+touching))
	attempts = slices.DeleteFunc(attempts, func(a attempt) bool { return a.less > 0 }) // which face a size in the cab draws in nothing says
	return append(w.putAway(drive, seat, i), w.tried(out, (*worker).cabSeats, attempts...)...)
}

// lowest is how low some things begin.
func lowest(mode *Mode, things []int) float64 {
	low := math.Inf(1)
	for _, i := range things {
		low = min(low, mode.Standings[i].Box.MinZ)
	}
	return low
}

// putAway proposes to have a thing while driving as another mode has it, where that leaves the seat free.
func (w *worker) putAway(drive *Mode, seat Seat, i int) []finding.Proposal {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, mover := range mode.Movers {
			if mover.Fitting != i || w.coversSeat(i, &mode.Standings[i], seat) {
				continue
			}
			patch, err := json.Marshal(map[string]any{"modes": map[string]any{drive.Name: map[string]any{"take": map[string]any{w.in.Fittings[i].ID: mover.Position}}}})
			if err == nil {
				return []finding.Proposal{{Words: fmt.Sprintf("have %s %s while driving, as in the mode %q", w.name(i), mover.Position, mode.Name), Patch: patch}}
			}
		}
	}
	return nil
}

// coveredAtRest tells of what a mode has on the driver's seat that is not there while driving.
func (w *worker) coveredAtRest(drive, mode *Mode) {
	for _, seat := range w.in.Seats {
		if !seat.Driver {
			continue
		}
		things := slices.DeleteFunc(w.covers(mode, seat), func(i int) bool { return drive != nil && w.coversSeat(i, &drive.Standings[i], seat) })
		if len(things) == 0 {
			continue
		}
		names, pointers := w.namesOf(things)
		w.find(finding.Finding{
			Code: "fit.cab.seat", Severity: finding.Note, Mode: mode.Name, About: append(pointers, pointer("vehicle/seats", seat.ID)),
			Title: fmt.Sprintf("%s %s where the driver sits", listed(names), oneOrMore(len(things), "stands")),
			Words: "It has to be cleared before one can drive off, at night and in a hurry as well.", Source: cabSeatSource,
		})
	}
}
