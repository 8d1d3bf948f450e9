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

var overBedSource = finding.Source{
	Text: "500 mm over a bunk, 600 over any other bed to sleep in; to sit up, sitting height of the public US Army survey of 2012, scaled by stature, and 35 mm (common practice)", Sure: finding.Practice,
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
