package fit

import (
	"fmt"
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Limits of comfort, common practice without a source [mm].
const (
	grownUp    = 1450 // stature from which the proportions of adults hold
	feetHang   = 100  // above the hollow of the knee and the shoe: feet no longer reach the floor
	squats     = 150  // below it: knees stand high
	shallow    = 350  // of a seat
	atTable    = 400  // from the front of a seat to its table
	tableOff   = 80   // of the height of a table
	worktopOff = 100  // of the height of a worktop
	kneesOut   = 115  // that knees stand before the front of a seat: survey, middle of men and women
)

var seatSource = finding.Source{
	Text: "hollow of the knee, thighs, elbows and length of the leg of the public US Army survey of 2012, scaled by stature; what is still comfortable is common practice", Sure: finding.Practice,
}

// facing is a seat with the way who sits there looks: over its longer side, towards the middle of the van; along the van, or in
// its middle, to where there is more room for knees.
type facing struct {
	box   solid.Bounds
	axis  int     // 0 along the van, 1 across
	sign  float64 // +1 rearwards or to the right
	depth float64
	free  float64 // before its front edge, at the best place along it
}

// faces finds out how one sits on a seat in a mode.
func (w *worker) faces(mode *Mode, seat int) facing {
	b := mode.Standings[seat].Box
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

// legsBefore is the free depth before a seat at its best place, for legs between 100 above the floor and the top of the seat.
func (w *worker) legsBefore(mode *Mode, seat int, f facing) float64 {
	best := 0.0
	from, to := f.box.MinX, f.box.MaxX
	if f.axis == 0 {
		from, to = f.box.MinY, f.box.MaxY
	}
	const half = 200 // of the legs of one who sits
	for _, at := range spread(from+half, to-half, 150) {
		best = max(best, w.freeAt(mode, seat, f, at, half))
	}
	return best
}

// freeAt is the free depth before a seat about one place along it.
func (w *worker) freeAt(mode *Mode, seat int, f facing, at, half float64) float64 {
	r, floor := w.in.Room, w.in.Room.Floor()
	zone := f.strip(at, half, 1000)
	zone.MinZ, zone.MaxZ = floor+bodyFrom, max(floor+bodyFrom+1, f.box.MaxZ-50)
	free := 1000.0
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
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if i == seat || !w.inTheWay(i) || w.carries(seat, i) || w.carries(i, seat) || len(s.Solid) == 0 || !s.Box.Meets(zone) {
			continue
		}
		for _, p := range s.Solid {
			if b := p.Bounds(); b.Meets(zone) {
				free = min(free, f.away(b))
			}
		}
	}
	return max(0, min(free, 1000))
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
			{Symbol: "h", Label: "height", Value: high, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f - %.1f", top, pressed, w.in.Room.Floor()), From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[seat].ID)}},
		},
	})
	w.show(working.Figure{
		Code: "fit.seat.knees." + p.ID, Value: f.free, Unit: "mm", Label: "Room for knees before the seat, " + p.name(), Limit: &legs, Least: true, Words: w.name(seat) + ", " + mode.Name,
	}, working.Working{
		Formula: "free depth before the front of the seat, at its best place, 400 wide, up to 1000", Source: seatSource,
		Lines: []working.Line{{Symbol: "d", Label: "free depth", Value: f.free, Unit: "mm", From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[seat].ID)}}},
	})
	note := func(code string, severity finding.Severity, title, words string, measured, limit float64) {
		w.find(finding.Finding{Code: code, Severity: severity, Mode: mode.Name, About: who, Title: title, Words: words, Measured: mm(measured), Limit: mm(limit), Source: seatSource})
	}
	if high > most+feetHang || high < most-squats {
		title := fmt.Sprintf("%s is too high a seat for %s", w.name(seat), p.name())
		if high < most {
			title = fmt.Sprintf("%s is a very low seat for %s", w.name(seat), p.name())
		}
		note("fit.seat.height", finding.Note, title, fmt.Sprintf("Pressed it is %s above the floor; %s suits best. A footrest or a thinner cushion helps.", about(high), about(most)), high, most)
	}
	if f.depth < shallow {
		note("fit.seat.depth", finding.Close, fmt.Sprintf("%s is too shallow to sit on", w.name(seat)), fmt.Sprintf("It is %s deep; one perches on less than %d mm.", about(f.depth), shallow), f.depth, shallow)
	}
	if f.free < legs-touching {
		note("fit.seat.knees", finding.Close, fmt.Sprintf("There is no room for the knees of %s before %s", p.name(), w.name(seat)),
			fmt.Sprintf("Before the seat %s is free at the best place; knees and feet need about %s.", about(f.free), about(legs)), f.free, legs)
	}
	w.table(mode, seat, p, body, f, top-pressed)
}

// table judges the table one eats at from a seat: the nearest before it.
func (w *worker) table(mode *Mode, seat int, p Person, body people.Body, f facing, top float64) {
	best, at := math.Inf(1), -1
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if w.in.Fittings[i].Make != "table" || len(s.Solid) == 0 || s.Box.MinZ <= top {
			continue
		}
		if away := f.away(s.Box); away < best && f.beside(s.Box) {
			best, at = away, i
		}
	}
	if at < 0 || best > atTable {
		return
	}
	b := mode.Standings[at].Box
	gap, need := b.MinZ-top, float64(body.KneeRoom())
	above, wanted := b.MaxZ-top, float64(body.TableAboveSeat())
	w.show(working.Figure{
		Code: "fit.table." + p.ID, Value: above, Unit: "mm", Label: "Table above the seat, " + p.name(), Words: fmt.Sprintf("%s, %s; about %.0f suits best", w.name(at), mode.Name, wanted),
	}, working.Working{
		Formula: "top of the table above the pressed seat", Source: seatSource,
		Notes: []string{fmt.Sprintf("Between seat and table there is %.0f for thighs, which need %.0f; the table begins %.0f before the seat.", gap, need, best)},
		Lines: []working.Line{{Symbol: "t", Label: "table above the seat", Value: above, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f", b.MaxZ, top), From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[at].ID)}}},
	})
	out := finding.Finding{Code: "fit.table", Mode: mode.Name, Source: seatSource,
		About: []string{pointer("fittings", w.in.Fittings[at].ID), pointer("fittings", w.in.Fittings[seat].ID), pointer("people", p.ID)}}
	switch {
	case best < kneesOut && gap < need-20:
		out.Severity, out.Measured, out.Limit = finding.Close, mm(gap), mm(need)
		out.Title = fmt.Sprintf("The legs of %s do not go under %s", p.name(), w.name(at))
		out.Words = fmt.Sprintf("Between the pressed seat and the table there is %s; thighs need about %s. Raise the table or move it away from the seat.", about(gap), about(need))
		if up := need - gap; math.Abs(above+up-wanted) <= tableOff-touching {
			out.Proposals = w.nudge(at, 0, 0, up, "")
		}
	case math.Abs(above-wanted) > tableOff:
		out.Severity, out.Measured, out.Limit = finding.Note, mm(above), mm(wanted)
		out.Title = fmt.Sprintf("%s is not at the height of the elbows of %s", w.name(at), p.name())
		out.Words = fmt.Sprintf("It is %s above the pressed seat; about %s suits best.", about(above), about(wanted))
	default:
		return
	}
	w.find(out)
}

// beside says whether a box lies before a seat for at least the width of one who sits.
func (f facing) beside(b solid.Bounds) bool {
	const sitter = 300
	if f.axis == 1 {
		return min(b.MaxX, f.box.MaxX)-max(b.MinX, f.box.MinX) >= sitter
	}
	return min(b.MaxY, f.box.MaxY)-max(b.MinY, f.box.MinY) >= sitter
}

// worktop judges how high one works at what one cooks at, where one can nearly stand.
func (w *worker) worktop(mode *Mode, at int, p Person) {
	top, floor := mode.Standings[at].Box.MaxZ, w.in.Room.Floor()
	for i := range mode.Standings {
		if s := &mode.Standings[i]; w.in.Fittings[i].Make == "worktop" && w.carries(at, i) && len(s.Solid) > 0 {
			top = max(top, s.Box.MaxZ)
		}
	}
	high, need := top-floor, float64(people.Of(quantity.Length(p.Stature)).WorktopHeight())
	if w.before(mode, at).under-floor < sittingVan*p.Stature {
		return
	}
	source := finding.Source{Text: "elbow at 63 % of stature and 25 of shoes, less 125 (from memory; common practice)", Sure: finding.Memory}
	w.show(working.Figure{
		Code: "fit.worktop." + p.ID, Value: high, Unit: "mm", Label: "Height of the worktop, " + p.name(), Words: fmt.Sprintf("%s; about %.0f suits best", w.name(at), need),
	}, working.Working{
		Formula: "top of the worktop above the finished floor", Source: source,
		Lines: []working.Line{{Symbol: "h", Label: "height", Value: high, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f", top, floor), From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[at].ID)}}},
	})
	if math.Abs(high-need) <= worktopOff {
		return
	}
	word := "low"
	if high > need {
		word = "high"
	}
	w.find(finding.Finding{
		Code: "fit.worktop", Severity: finding.Note, Mode: mode.Name, About: []string{pointer("fittings", w.in.Fittings[at].ID), pointer("people", p.ID)},
		Title:    fmt.Sprintf("%s is %s for %s to work at", w.name(at), word, p.name()),
		Words:    fmt.Sprintf("It is %s above the floor; about %s suits best.", about(high), about(need)),
		Measured: mm(high), Limit: mm(need), Source: source,
	})
}
