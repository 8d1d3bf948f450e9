package fit

import (
	"cmp"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

const (
	barredShare = 1.0 / 3 // of a side door is told to be taken, even where one still gets in
	climbed     = 500     // what stands lower behind a door is sat on and climbed over, as a bed is [mm]: common practice, no source
)

// barred tells by day of doors that something outside stands before, and of side doors in which something stands right behind the door.
func (w *worker) barred() {
	day := w.named("day")
	if day == nil {
		return
	}
	for _, o := range w.in.Openings {
		if o.Door && w.doorBarredOutside(day, o) {
			continue
		}
		if o.Door && (o.Through == "left" || o.Through == "right") && o.X[1]-o.X[0] > escapeWidth {
			w.doorWidth(day, o)
		}
	}
}

// doorWidth is how wide a door is beside what stands within an arm's length of it, and who takes most of it.
func (w *worker) doorWidth(day *Mode, o Opening) {
	zone, _, _ := w.zone(o)
	floor := w.in.Room.Floor()
	zone.MinZ, zone.MaxZ = floor+climbed, min(zone.MaxZ, floor+bodyTo)
	type taken struct {
		from, to float64
		by       int
	}
	var all []taken
	for i := range day.Standings {
		s, f := day.Standings[i].passed(), w.in.Fittings[i]
		if len(s.Solid) == 0 || f.Gives > 0 || f.Aside || f.For != "" || f.isOutside() || !s.Box.Meets(zone) {
			continue
		}
		if _, in := s.Solid.Deepest(solid.Solid{solid.Box(zone)}); in {
			all = append(all, taken{max(s.Box.MinX, o.X[0]), min(s.Box.MaxX, o.X[1]), i})
		}
	}
	if len(all) == 0 {
		return
	}
	most := slices.MaxFunc(all, func(a, b taken) int { return cmp.Compare(a.to-a.from, b.to-b.from) }).by
	slices.SortFunc(all, func(a, b taken) int { return cmp.Compare(a.from, b.from) })
	free, at := 0.0, o.X[0]
	for _, t := range all {
		free, at = max(free, t.from-at), max(at, t.to)
	}
	w.tellBarred(o, most, max(free, o.X[1]-at))
}

func (w *worker) tellBarred(o Opening, by int, free float64) {
	wide := o.X[1] - o.X[0]
	if free >= (1-barredShare)*wide-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.door.barred", Severity: finding.Note, Mode: "day", About: []string{pointer("fittings", w.in.Fittings[by].ID), o.pointer()},
		Title:    fmt.Sprintf("%s stands right behind %s", w.name(by), o.called()),
		Words:    fmt.Sprintf("Of the %s of the door %s are left to get in by. A body wants %d.", about(wide), about(free), escapeWidth),
		Measured: mm(free), Limit: mm(escapeWidth), Source: walkSource,
	}
	switch {
	case free < touching:
		out.Severity, out.Title = finding.Fault, fmt.Sprintf("There is no way in by %s: %s stands behind it", o.called(), w.name(by))
		out.Words = "What stands there takes the whole of the door."
	case free < sidling-touching:
		out.Severity = finding.Fault
	case free < escapeWidth-touching:
		out.Severity = finding.Close
	}
	out.Words += w.mayCome(by)
	out.Proposals = w.triedBeside(out, (*worker).barred, w.worseBy((*worker).ways), w.beyondDoor(o, by, (1-barredShare)*wide)...)
	w.find(out)
}

// mayCome says of a thing of which only the place is kept that it is not there yet.
func (w *worker) mayCome(i int) string {
	if !w.in.Fittings[i].Later {
		return ""
	}
	return fmt.Sprintf(" Only the place of %s is kept: it is so once it comes.", w.name(i))
}
