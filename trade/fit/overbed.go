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

const (
	overBunk = 500  // over a bunk, least [mm]
	overBed  = 600  // over any other bed to sleep in, least
	hips     = 0.47 // of stature, from the head: from memory
)

var overBedSource = finding.Source{
	Text: "500 mm over a bunk, 600 over any other bed to sleep in; to sit up, sitting height of the public US Army survey of 2012, scaled by stature, and 35 mm (common practice)", Sure: finding.Practice,
}

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

func (w *worker) bedAbove(b berth, sleepers int) {
	least, sits := w.overBody(b, sleepers)
	bed, p := w.in.Fittings[b.bed], b.person
	need := float64(overBed)
	if bed.Make == "bunk" {
		need = overBunk
	}
	up := float64(people.Of(quantity.Length(p.Stature)).SittingHeadroom())
	w.show(working.Figure{
		Code: "fit.bed.above." + p.ID, Value: least, Unit: "mm", Label: "Room over the bed, " + p.name(), Limit: &need, Least: true, Words: w.name(b.bed) + ", " + b.mode.Name,
	}, working.Working{
		Formula: "least height from the pressed mattress to what is above, from face to knees", Source: overBedSource,
		Notes: []string{"A mattress is pressed by a quarter: common practice, no source.", fmt.Sprintf("To sit up %s needs about %.0f mm over the hips; there is %.0f.", p.name(), up, sits)},
		Lines: []working.Line{
			{Symbol: "s", Label: "over the hips", Value: sits, Unit: "mm", From: working.Origin{Here: true}},
			{Symbol: "h", Label: "least", Value: least, Unit: "mm", From: working.Origin{Pointer: pointer("fittings", bed.ID)}},
		},
	})
	if least >= need-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.bed.above", Severity: finding.Fault, Mode: b.mode.Name, About: []string{pointer("fittings", bed.ID), pointer("people", p.ID)},
		Title:    fmt.Sprintf("There is only %s over %s in %s", about(least), p.name(), w.name(b.bed)),
		Words:    fmt.Sprintf("At least %s is wanted over who sleeps there, to turn over and to get out. Lower the bed or its mattress, or raise what is above.", about(need)),
		Measured: mm(least), Limit: mm(need), Source: overBedSource,
	}
	if what, side, in := w.inTheWall(b, sleepers); in {
		out.Title = fmt.Sprintf("The %s of %s would lie within the %s", what, p.name(), sideWords[side])
		out.Words = fmt.Sprintf("%s reaches through the %s there, so nothing is free over it. Turn or move the bed, make it shorter, or lay the head elsewhere.", w.name(b.bed), sideWords[side])
		w.find(out)
		return
	}
	if least >= overBunk {
		out.Severity = finding.Close
	}
	if i := w.standsOn(b); i >= 0 {
		out.Title = fmt.Sprintf("%s stands on %s, where %s lies", w.name(i), w.name(b.bed), p.name())
		out.Words = fmt.Sprintf("Say where it is in the mode %q: in another place, or out of the van.", b.mode.Name)
		out.About = append(out.About, pointer("fittings", w.in.Fittings[i].ID))
		w.find(out)
		return
	}
	lower := []attempt{moves(b.bed, solid.Floor, need-least)}
	for i := w.carriers[b.bed]; i >= 0; i = w.carriers[i] {
		lower = append(lower, moves(i, solid.Floor, need-least))
	}
	out.Proposals = w.tried(out, (*worker).beds, lower...)
	w.find(out)
}

// standsOn is what stands on a bed while somebody lies there, neither soft nor put aside; -1 if nothing does.
func (w *worker) standsOn(b berth) int {
	bed := &b.mode.Standings[b.bed].Box
	top, _ := w.seatTop(b.mode, b.bed)
	for i := range b.mode.Standings {
		s := &b.mode.Standings[i]
		if len(s.Solid) > 0 && w.carries(b.bed, i) && !w.yields(i) && !w.asideAbed(s, i) && s.Box.MinZ <= top+touching && s.Box.Meets(bed.Grown(2*touching)) {
			return i
		}
	}
	return -1
}

// sitUp notes once for a bed that who lies there cannot sit up; of bunks nobody expects it.
func (w *worker) sitUp(beside []berth) {
	bed := w.in.Fittings[beside[0].bed]
	room, need := math.Inf(1), 0.0
	who := []string{pointer("fittings", bed.ID)}
	for _, b := range beside {
		_, sits := w.overBody(b, len(beside))
		up := float64(people.Of(quantity.Length(b.person.Stature)).SittingHeadroom())
		if sits < up-slump && !w.sitsThere(b.person.ID, b.bed) {
			room, need = min(room, sits), max(need, up)
			who = append(who, pointer("people", b.person.ID))
		}
	}
	if need == 0 || bed.Make == "bunk" {
		return
	}
	out := finding.Finding{
		Code: "fit.bed.sit-up", Severity: finding.Note, Mode: beside[0].mode.Name, About: who,
		Title:    fmt.Sprintf("One cannot sit up in %s", w.name(beside[0].bed)),
		Words:    fmt.Sprintf("Over the hips there is %s; sitting up takes about %s. Many sleep well so; reading is done lying.", about(room), about(need)),
		Measured: mm(room), Limit: mm(need), Source: overBedSource,
	}
	out.Proposals = w.tried(out, (*worker).beds, w.lowered(beside[0].bed, need-slump-room+touching)...)
	w.find(out)
}

// lowBed is how high above the floor a bed is lowered at least: less is no place for anything under it [mm]; common practice, no source.
const lowBed = 250

// lowered are the attempts to have a bed lower: what carries it, or it itself, is made lower, or it is hung lower.
func (w *worker) lowered(bed int, by float64) []attempt {
	s := w.resting(bed)
	if s == nil || s.Box.MaxZ-by < w.in.Room.Floor()+lowBed {
		return nil
	}
	out := []attempt{moves(bed, solid.Floor, by)}
	for i := bed; i >= 0; i = w.carriers[i] {
		if w.in.Fittings[i].Gives == 0 {
			out = append(out, attempt{thing: i, axis: 2, less: by, drawsIn: solid.Roof})
		}
	}
	return out
}

// sitsThere says whether somebody sits on what they sleep on: then headroom is told of as a seat's.
func (w *worker) sitsThere(person string, bed int) bool {
	for _, m := range w.in.Modes {
		for _, pose := range m.Poses {
			if i, ok := w.index[pose.At]; ok && pose.Person == person && pose.Does == "sits" && (i == bed || w.carries(bed, i) || w.carries(i, bed)) {
				return true
			}
		}
	}
	return false
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
