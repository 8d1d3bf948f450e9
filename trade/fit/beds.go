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

var bodySource = finding.Source{
	Text: "lying adds 15 mm to stature (university tables of body sizes); feet and pillow take 100 to 150 mm (common practice)", Sure: finding.Practice,
}

// berth is where a person lies in a mode.
type berth struct {
	mode   *Mode
	pose   Pose
	person Person
	bed    int
	axis   int // along which they lie: 0 x, 1 y
}

func (b berth) length(box solid.Bounds) (along, across float64) {
	x, y := box.MaxX-box.MinX, box.MaxY-box.MinY
	if b.axis == 1 {
		return y, x
	}
	return x, y
}

// beds judges every place where somebody lies: once for a person and bed, in the first mode that has them there.
func (w *worker) beds() {
	longEnough := map[string]bool{} // person, or mode and bed, already judged
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		beside, fresh := map[int][]berth{}, map[string]bool{}
		var order []int
		for _, pose := range mode.Poses {
			b, ok := w.berth(mode, pose)
			if !ok {
				continue
			}
			if len(beside[b.bed]) == 0 {
				order = append(order, b.bed)
			}
			beside[b.bed] = append(beside[b.bed], b)
			if !longEnough[pose.Person] {
				longEnough[pose.Person] = true
				w.bedLength(b)
				fresh[pose.Person] = true
			}
		}
		for _, bed := range order {
			for _, b := range beside[bed] {
				if fresh[b.person.ID] {
					w.bedAbove(b, len(beside[bed]))
				}
			}
			if key := "width of " + w.in.Fittings[bed].ID; !longEnough[key] {
				longEnough[key] = true
				w.bedWidth(beside[bed])
				w.bedBare(beside[bed][0])
				w.sitUp(beside[bed])
			}
		}
	}
}

// berth of a pose, if the person, the bed and its place are known. Heads lie along the bed's longer side if nothing is said.
func (w *worker) berth(mode *Mode, pose Pose) (berth, bool) {
	p, known := w.people[pose.Person]
	bed, ok := w.index[pose.At]
	if pose.Does != "lies" || !known || !ok || len(mode.Standings[bed].Solid) == 0 {
		return berth{}, false
	}
	return berth{mode: mode, pose: pose, person: w.in.People[p], bed: bed, axis: lainAlong(mode.Standings[bed].Box, pose.Head)}, true
}

// lainAlong is the axis along which one lies with the head towards some face of a bed; along its longer side if nothing is said.
func lainAlong(bed solid.Bounds, head string) int {
	if head == "left" || head == "right" || head == "" && bed.MaxY-bed.MinY > bed.MaxX-bed.MinX {
		return 1
	}
	return 0
}

func (w *worker) bedLength(b berth) {
	body := people.Of(quantity.Length(b.person.Stature))
	length, on := w.lain(b)
	need, least := float64(body.LyingLength()), b.person.Stature+people.Lying
	bed := w.in.Fittings[on]
	w.show(working.Figure{
		Code: "fit.bed.length." + b.person.ID, Value: length, Unit: "mm", Label: "Length of the bed for " + b.person.name(),
		Limit: &need, Least: true, Words: w.name(on) + ", " + b.mode.Name,
	}, working.Working{
		Formula: "needed = stature + 15 + 100", Source: bodySource,
		Lines: []working.Line{
			{Symbol: "H", Label: "stature", Value: b.person.Stature, Unit: "mm", From: working.Origin{Pointer: pointer("people", b.person.ID) + "/stature"}},
			{Symbol: "N", Label: "needed", Value: need, Unit: "mm", Sum: fmt.Sprintf("%g + 15 + 100", b.person.Stature), From: working.Origin{Here: true}},
			{Symbol: "L", Label: "length of " + w.name(on), Value: length, Unit: "mm", From: working.Origin{Pointer: pointer("fittings", bed.ID)}},
		},
	})
	w.grown(b, length)
	if length >= need-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.bed.length", Severity: finding.Close, Mode: b.mode.Name,
		About: []string{pointer("people", b.person.ID), pointer("fittings", bed.ID)},
		Title: fmt.Sprintf("The bed is short for %s", b.person.name()),
		Words: fmt.Sprintf("%s is %s long. Lying down %s is about %s; with feet and pillow %s is comfortable, so it is %s short of that.",
			w.name(on), about(length), b.person.name(), about(least), about(need), about(need-length)),
		Measured: mm(length), Limit: mm(need), Source: bodySource,
	}
	if box, _ := b.length(b.mode.Standings[b.bed].Box); on == b.bed && length < box-touching {
		out.Words = fmt.Sprintf("Between the linings, at the height one lies, there are %s, however long %s is lower down. Lying down %s is about %s; with feet and pillow %s is comfortable, so it is %s short of that.",
			about(length), w.name(on), b.person.name(), about(least), about(need), about(need-length))
	}
	if on == b.bed {
		out.Proposals = w.longer(b, need-length)
	} else {
		out.Title = fmt.Sprintf("%s is short for %s", w.name(on), b.person.name())
		out.Proposals = w.longerMattress(b)
	}
	if length < least {
		out.Severity = finding.Fault
		out.Title = fmt.Sprintf("The bed is shorter than %s", b.person.name())
		if on != b.bed {
			out.Title = fmt.Sprintf("%s is shorter than %s", w.name(on), b.person.name())
		}
	}
	w.find(out)
}

// grown notes that somebody who grows will be too long for the bed.
func (w *worker) grown(b berth, length float64) {
	p := b.person
	need := float64(people.Of(quantity.Length(p.GrowsTo)).LyingLength())
	if p.GrowsTo <= p.Stature || length >= need-touching {
		return
	}
	w.find(finding.Finding{
		Code: "fit.bed.growth", Severity: finding.Note,
		About: []string{pointer("people", p.ID), pointer("fittings", w.in.Fittings[b.bed].ID)},
		Title: fmt.Sprintf("%s will have outgrown %s in %d years", p.name(), w.name(b.bed), p.Years),
		Words: fmt.Sprintf("It is %s long. With the %s expected by then it takes about %s with feet and pillow. Nothing need be done today; leave room for a longer one.",
			about(length), about(p.GrowsTo), about(need)),
		Measured: mm(length), Limit: mm(need), Source: bodySource, Proposals: w.longer(b, need-length),
	})
}

// widened is the most by which a bed is proposed to be made wider [mm]: beyond it another bed is wanted.
const widened = 300

func (w *worker) bedWidth(beside []berth) {
	first := beside[0]
	bodies := make([]people.Body, len(beside))
	who := []string{pointer("fittings", w.in.Fittings[first.bed].ID)}
	shoulders := 0.0
	for i, b := range beside {
		bodies[i] = people.Of(quantity.Length(b.person.Stature))
		size, _ := bodies[i].Size(people.Shoulders)
		shoulders += float64(size)
		who = append(who, pointer("people", b.person.ID))
	}
	width := math.Inf(1)
	for _, b := range beside {
		_, usable := w.usable(b)
		width = min(width, usable)
	}
	need := float64(people.SideBySide(bodies...))
	if width >= need-touching {
		return
	}
	out := finding.Finding{
		Code: "fit.bed.width", Severity: finding.Close, Mode: first.mode.Name, About: who,
		Title:    fmt.Sprintf("%s is narrow for %d", w.name(first.bed), len(beside)),
		Words:    fmt.Sprintf("At the height of shoulders it is %s wide; shoulders side by side and room to turn over need about %s.", about(width), about(need)),
		Measured: mm(width), Limit: mm(need),
		Source: finding.Source{Text: "shoulder breadths of the public US Army survey of 2012, scaled by stature; turning room is common practice", Sure: finding.Practice},
	}
	if about(width) == about(need) {
		out.Words = fmt.Sprintf("At the height of shoulders it is %s wide; shoulders side by side and room to turn over need %s more.", about(width), about(need-width))
	}
	if need-width <= widened {
		out.Proposals = w.resize(first.bed, 1-first.axis, need-width, "wider", "narrower")
	}
	if width < shoulders {
		out.Severity = finding.Fault
		out.Title = fmt.Sprintf("%s is narrower than the shoulders of who lies there", w.name(first.bed))
		if n := int(width / (shoulders / float64(len(beside)))); n < len(beside) && len(beside) > 1 {
			out.Title = fmt.Sprintf("%d lie in %s, which is wide enough for %s", len(beside), w.name(first.bed), counted(n))
			out.Words += " Give the others a bed of their own."
		}
	}
	w.find(out)
}
