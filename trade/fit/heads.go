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

// Allowances for heads and seats [mm].
const (
	headWide   = 160  // a head, across and along (from memory: 155)
	fromEdge   = 200  // from the front edge of a seat to the middle of the head, least
	fromBack   = 150  // from its back
	beforeWork = 200  // from the edge of what somebody stands at to the middle of the head: half a body's depth and some air
	stoops     = 1200 // what begins above this over the floor is overhead; below it nobody stands there
	slump      = 40   // slumped people need 35 to 50 less
	presses    = 0.25 // share of a cushion's thickness that a sitter presses it
)

var sitSource = finding.Source{
	Text: "sitting height of the public US Army survey of 2012, scaled by stature, and 35 mm over the head (common practice)", Sure: finding.Read,
}

var standSource = finding.Source{
	Text: "stature and 25 mm of shoes; 25 to 50 mm more over the head is comfortable (common practice)", Sure: finding.Practice,
}

// spot is a place under which there is room for a head.
type spot struct {
	x, y  float64
	under float64 // z of what is overhead
	mode  string
	at    int // fitting, -1 for none
}

// standingIn is where a fitting is in a mode.
func (w *worker) standingIn(mode string, i int) solid.Bounds { return w.mode(mode).Standings[i].Box }

// heads judges sitting and standing headroom of everybody.
func (w *worker) heads() {
	for _, p := range w.in.People {
		w.sitting(p)
		w.standing(p)
	}
	w.tellStooping()
}

// overhead is the lowest thing over a place: the roof over the width of a head, or what a mode has there above z, seen from a
// fitting that does not count itself, nor does what it carries.
func (w *worker) overhead(mode *Mode, x, y, z float64, seat int) float64 {
	return w.over(mode, x, y, z, seat, true)
}

// over is overhead; what can be put aside counts only if so asked.
func (w *worker) over(mode *Mode, x, y, z float64, seat int, aside bool) float64 {
	const half = headWide / 2
	room := w.in.Room
	top := min(room.Roof(x, y-half), room.Roof(x, y), room.Roof(x, y+half))
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if b := &s.Box; b.MaxX <= x-half || b.MinX >= x+half || b.MaxY <= y-half || b.MinY >= y+half || b.MaxZ <= z || b.MinZ >= top {
			continue
		}
		if f := &w.in.Fittings[i]; len(s.Solid) == 0 || f.Where != "" || f.For != "" || f.Gives >= 1 || i == seat || w.asideAbed(s, i) && !aside || seat >= 0 && w.carries(seat, i) && (w.yields(i) || w.asideAbed(s, i)) {
			continue
		}
		for _, p := range s.Solid {
			if p.High <= z || p.Low >= top {
				continue
			}
			head := solid.Bounds{MinX: x - half, MaxX: x + half, MinY: y - half, MaxY: y + half, MinZ: z, MaxZ: top}
			if q := p.Bounds(); q.MinX < head.MaxX && q.MaxX > head.MinX && q.MinY < head.MaxY && q.MaxY > head.MinY {
				top = max(z, p.Low)
			}
		}
	}
	return top
}

// sitting judges each seat a person is given; the figure is the worst.
func (w *worker) sitting(p Person) {
	worst, found := spot{under: math.Inf(1)}, false
	seatTop, press := 0.0, 0.0
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			if pose.Person != p.ID || pose.Does != "sits" || !ok || len(mode.Standings[i].Solid) == 0 {
				continue
			}
			top, pressed := w.seatTop(mode, i)
			s := w.seatSpot(mode, i, top-pressed)
			if !found || s.under-top+pressed < worst.under-seatTop+press {
				worst, seatTop, press, found = s, top, pressed, true
			}
		}
	}
	if found {
		w.reportSitting(p, worst, seatTop, press)
	}
}

// seatTop is how high a seat is with what lies on it for people to sit on, and how far a sitter presses that.
func (w *worker) seatTop(mode *Mode, seat int) (top, pressed float64) {
	top = w.ownTop(mode, seat)
	press := func(i int) float64 {
		if g := w.in.Fittings[i].Gives; g > 0 && g < 1 {
			b := mode.Standings[i].Box
			return presses * (b.MaxZ - b.MinZ)
		}
		return 0
	}
	pressed = press(seat)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if w.in.Fittings[i].Rests && len(s.Solid) > 0 && !w.in.Fittings[i].In && w.carries(seat, i) && s.Box.MaxZ > top {
			top, pressed = s.Box.MaxZ, press(i)
		}
	}
	return top, pressed
}

// seatSpot is the place on a seat with most room over the head, remembered.
func (w *worker) seatSpot(mode *Mode, seat int, z float64) spot {
	return recall(w, w.was.spots, w.now.spots, mode, spotAt{mode.Name, seat, z}, all, func() (spot, solid.Bounds) {
		return w.seekOver(mode, seat, z), above(mode.Standings[seat].Box, headWide/2)
	})
}

// seekOver looks for that place. A seat's front is the edge nearer the middle of the van.
func (w *worker) seekOver(mode *Mode, seat int, z float64) spot {
	b := mode.Standings[seat].Box
	y0, y1 := b.MinY+fromEdge, b.MaxY-fromBack
	if (b.MinY+b.MaxY)/2 < 0 {
		y0, y1 = b.MinY+fromBack, b.MaxY-fromEdge
	}
	if y0 > y1 {
		y0 = (b.MinY + b.MaxY) / 2
		y1 = y0
	}
	best := spot{under: math.Inf(-1)}
	for _, x := range spread(b.MinX+headWide, b.MaxX-headWide, 300) {
		for _, y := range spread(y0, y1, 60) {
			if under := w.overhead(mode, x, y, z, seat); under > best.under {
				best = spot{x, y, under, mode.Name, seat}
			}
		}
	}
	return best
}

// spread is even places from one to the other, at most step apart; the middle if there is no room.
func spread(from, to, step float64) []float64 {
	if from >= to {
		return []float64{(from + to) / 2}
	}
	n := solid.Every(to-from, step)
	places := make([]float64, n+1)
	for i := range places {
		places[i] = from + (to-from)*float64(i)/float64(n)
	}
	return places
}

func (w *worker) reportSitting(p Person, s spot, top, pressed float64) {
	have, need := s.under-top+pressed, float64(people.Of(quantity.Length(p.Stature)).SittingHeadroom())
	seat := w.in.Fittings[s.at]
	w.show(working.Figure{
		Code: "fit.headroom.sit." + p.ID, Value: have, Unit: "mm", Label: "Headroom sitting, " + p.name(), Limit: &need, Least: true,
		Words: w.name(s.at) + ", " + s.mode,
	}, working.Working{
		Formula: "headroom = what is overhead - (top of the seat - how far it is pressed)", Source: sitSource,
		Notes: []string{"Measured at the place on the seat with most room.", "A sitter presses a cushion by a quarter: common practice, no source.", "Slumped people need 35 to 50 mm less."},
		Lines: []working.Line{
			{Symbol: "r", Label: "what is overhead", Value: s.under, Unit: "mm", Sum: fmt.Sprintf("at x %.0f, y %.0f", s.x, s.y), From: working.Origin{Here: true}},
			{Symbol: "t", Label: "top of the seat", Value: top, Unit: "mm", From: w.topFrom(w.mode(s.mode), s.at)},
			{Symbol: "c", Label: "pressed by", Value: pressed, Unit: "mm", From: working.Origin{Assumption: "a quarter of the cushion's thickness"}},
			{Symbol: "n", Label: "needed", Value: need, Unit: "mm", From: working.Origin{Pointer: pointer("people", p.ID) + "/stature"}},
			{Symbol: "h", Label: "headroom", Value: have, Unit: "mm", Sum: fmt.Sprintf("%.1f - (%.1f - %.1f)", s.under, top, pressed), From: working.Origin{Here: true}},
		},
	})
	if have >= need-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.headroom.sit", Severity: finding.Fault, Mode: s.mode,
		About: []string{pointer("fittings", seat.ID), pointer("people", p.ID)},
		Title: fmt.Sprintf("%s cannot sit upright on %s", p.name(), w.name(s.at)),
		Words: fmt.Sprintf("Over the seat there is %s; sitting upright takes about %s. Lower the seat by %s.",
			about(have), about(need), about(need-have)),
		Measured: mm(have), Limit: mm(need), Source: sitSource, Proposals: w.higher(s.at, have-need),
	}
	switch how := w.sitsHow(have, people.Of(quantity.Length(p.Stature))); how {
	case "leaning back":
		out.Words += fmt.Sprintf(" Leaning back half way, as in a deck chair, takes about %s: that goes.", about(float64(people.Of(quantity.Length(p.Stature)).LeaningHeadroom())))
	default:
		out.Words += " As it is, one sits there " + how + "."
	}
	if need-have <= slump {
		out.Severity = finding.Close
		out.Title = fmt.Sprintf("%s can only sit slumped on %s", p.name(), w.name(s.at))
	}
	if hangs, attempts := w.offTheHead(s, need-have); hangs != "" {
		out.Words += " " + hangs
		out.Proposals = append(out.Proposals, w.tried(out, (*worker).heads, attempts...)...)
	}
	w.find(out)
}

// yields says whether a thing that a seat carries is no matter to who sits or lies there: cushions, slats, what stands inside.
func (w *worker) yields(i int) bool {
	f := w.in.Fittings[i]
	return f.Rests || f.Gives > 0 || f.In
}

// aside says whether a fitting can be put aside from where it stands.
func (w *worker) aside(s *Standing, i int) bool { return w.in.Fittings[i].Aside || s.Aside != nil }

// asideAbed says whether a fitting is put aside for the night or to sit: a table is, wherever it then goes.
func (w *worker) asideAbed(s *Standing, i int) bool {
	return w.in.Fittings[i].Make == "table" || w.aside(s, i)
}
