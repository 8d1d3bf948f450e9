package fit

import (
	"fmt"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Limits of comfort, common practice without a source [mm].
const (
	grownUp    = 1450 // stature from which the proportions of adults hold
	feetHang   = 100  // above the hollow of the knee and the shoe: feet no longer reach the floor
	squats     = 150  // below it: knees stand high
	shallow    = 350  // of a seat
	easySeat   = 400  // depth of a seat that one may be cut down to
	atTable    = 400  // from the front of a seat to its table
	tableOff   = 80   // of the height of a table
	worktopOff = 100  // of the height of a worktop
	kneesOut   = 115  // that knees stand before the front of a seat: survey, middle of men and women
)

var seatSource = finding.Source{
	Text: "hollow of the knee, thighs, elbows and length of the leg of the public US Army survey of 2012, scaled by stature; what is still comfortable is common practice", Sure: finding.Practice,
}

// seats judges the seat of every grown person who sits: its height, its depth, the room for knees and the table before it.
func (w *worker) seats() {
	told := map[string]bool{}
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			k, known := w.people[pose.Person]
			if !ok || !known || len(mode.Standings[i].Solid) == 0 || mode.Standings[i].Box.MaxX <= w.in.Room.Front() || w.in.People[k].Stature < grownUp {
				continue
			}
			if pose.Does == "sits" && !told[pose.Person] {
				told[pose.Person] = true
				w.seat(mode, i, w.in.People[k])
			}
			if pose.Does == "cooks" && !told["cooks "+pose.Person] {
				told["cooks "+pose.Person] = true
				w.worktop(mode, i, w.in.People[k])
			}
		}
	}
}

func (w *worker) seat(mode *Mode, seat int, p Person) {
	body, f := people.Of(quantity.Length(p.Stature)), w.faces(mode, seat)
	top, pressed := w.seatTop(mode, seat)
	high := top - pressed - w.in.Room.Floor()
	low, best := body.SeatHeight()
	most, legs := float64(best), float64(body.LegRoom())
	who := []string{pointer("fittings", w.in.Fittings[seat].ID), pointer("people", p.ID)}
	w.show(working.Figure{
		Code: "fit.seat.height." + p.ID, Value: high, Unit: "mm", Label: "Height of the seat, " + p.name(), Words: fmt.Sprintf("%s, %s; %.0f to %.0f suits best", w.name(seat), mode.Name, float64(low), most),
	}, working.Working{
		Formula: "top of the pressed seat above the finished floor", Source: seatSource,
		Notes: []string{fmt.Sprintf("It is %.0f deep; %.0f is the most without a cushion behind the back.", f.depth, float64(body.SeatDepth()))},
		Lines: []working.Line{
			{Symbol: "n", Label: "hollow of the knee and shoe", Value: most, Unit: "mm", From: working.Origin{Pointer: pointer("people", p.ID) + "/stature"}},
			{Symbol: "h", Label: "height", Value: high, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f - %.1f", top, pressed, w.in.Room.Floor()), From: w.topFrom(mode, seat)},
		},
	})
	w.show(working.Figure{
		Code: "fit.seat.knees." + p.ID, Value: f.free, Unit: "mm", Label: "Room for knees before the seat, " + p.name(), Limit: &legs, Least: true, Words: w.name(seat) + ", " + mode.Name + f.placesLeft(),
	}, working.Working{
		Formula: "free depth before the front of the seat, at its best place, 400 wide, up to 1000", Source: seatSource,
		Lines: []working.Line{{Symbol: "d", Label: "free depth", Value: f.free, Unit: "mm", From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[seat].ID)}}},
	})
	note := func(code string, severity finding.Severity, title, words string, measured, limit float64, proposals []finding.Proposal) *finding.Finding {
		w.find(finding.Finding{Code: code, Severity: severity, Mode: mode.Name, About: who, Title: title, Words: words, Measured: mm(measured), Limit: mm(limit),
			Source: seatSource, Proposals: proposals})
		return &w.result.Findings[len(w.result.Findings)-1]
	}
	// In a low van a higher seat would cost the headroom: then its height is no matter of choice.
	room := w.seatSpot(mode, seat, top-pressed).under - top + pressed
	tooHigh := high > most+feetHang && !w.staysMade(mode, seat) // such a bed is as high as what is kept beneath it wants
	if tooHigh || high < most-squats && room > float64(body.SittingHeadroom())+squats {
		title := fmt.Sprintf("%s is too high a seat for %s", w.name(seat), p.name())
		if high < most {
			title = fmt.Sprintf("%s is a very low seat for %s", w.name(seat), p.name())
		}
		note("fit.seat.height", finding.Note, title, fmt.Sprintf("Pressed it is %s above the floor; %s suits best. A footrest or a thinner cushion helps.", about(high), about(most)), high, most, w.higher(seat, most-high))
	}
	if f.depth < shallow {
		note("fit.seat.depth", finding.Close, fmt.Sprintf("%s is too shallow to sit on", w.name(seat)), fmt.Sprintf("It is %s deep; one perches on less than %d mm.", about(f.depth), shallow), f.depth, shallow, w.resize(seat, f.axis, shallow-f.depth, "deeper", "less deep"))
	}
	if f.free < legs-touching {
		severity := finding.Close
		if w.sleptOn(seat) { // one sits on a bed with one's legs up as well
			severity = finding.Note
		}
		out := note("fit.seat.knees", severity, fmt.Sprintf("There is no room for the knees of %s before %s", p.name(), w.name(seat)),
			fmt.Sprintf("Before the seat %s is free at the best place; knees and feet need about %s.", about(f.free), about(legs)), f.free, legs, nil)
		out.Proposals = w.tried(*out, (*worker).seats, w.forKnees(mode, seat, f, legs)...)
	}
	w.table(mode, seat, p, body, f, top-pressed)
}

// staysMade says whether a seat is a bed on which somebody lies in another mode, where it is in this one. In a mode of the builder's own, one who
// sits there is written to do so: then it is a seat.
func (w *worker) staysMade(mode *Mode, seat int) bool {
	if mode.Name != "drive" && mode.Name != "day" && mode.Name != "night" {
		return false
	}
	for m := range w.in.Modes {
		other := &w.in.Modes[m]
		for _, pose := range other.Poses {
			i, ok := w.index[pose.At]
			if ok && pose.Does == "lies" && (i == seat || w.carries(seat, i)) && len(other.Standings[i].Solid) > 0 && other.Standings[i].Box == mode.Standings[i].Box {
				return true
			}
		}
	}
	return false
}

// sleptOn says whether somebody lies on a seat, as it is.
func (w *worker) sleptOn(seat int) bool {
	for _, m := range w.in.Modes {
		for _, pose := range m.Poses {
			if i, ok := w.index[pose.At]; ok && pose.Does == "lies" && i == seat {
				return true
			}
		}
	}
	return false
}
