package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/draw/label"
	"tumblehome/trade/power"
)

// PowerKit draws which batteries and panels are enough: lines of equal risk over both, the heavy one where the promise is just kept, the van's own kit and
// the cheapest that can be bought and keeps it.
func PowerKit(c power.Chart, width float64) draw.Scene {
	if len(c.AmpHours) == 0 {
		return draw.Scene{}
	}
	letters := lettersOn(width)
	k := kitting{c: c, frame: chart{box: draw.Box(chartLeft, letters+5, width-chartLeft-2*chartRight, math.Min(0.6*width, 95)), letters: letters,
		from: c.AmpHours[0], to: c.AmpHours[len(c.AmpHours)-1], low: c.Watts[0], top: c.Watts[len(c.Watts)-1]}}
	k.names = label.Problem{Bounds: k.frame.box.Inset(1), Gap: 0.8}
	k.ruled()
	k.risks()
	k.spots()
	k.letter()
	high := math.Ceil(k.frame.box.Max.Y + 4*letters)
	return draw.Scene{Size: draw.Size{Width: width, Height: high}, Title: "Which battery and panel are enough", Description: kitWords(c), Marks: k.marks}
}

// kitting is the work on one such drawing.
type kitting struct {
	c     power.Chart
	frame chart
	marks []draw.Mark
	names label.Problem
	texts []draw.Lettering // what the labels of names say, in their order
}

func (k *kitting) add(marks ...draw.Mark) { k.marks = append(k.marks, marks...) }

// ruled is the grid: panels upwards, batteries along.
func (k *kitting) ruled() {
	f := k.frame
	k.add(f.heading("Panel, W; on the lines, flat nights of 100"))
	k.add(f.rules(roundStep((f.top - f.low) / 6))...)
	step := roundStep((f.to - f.from) / 6)
	for v := math.Ceil(f.from/step) * step; v <= f.to+1e-9; v += step {
		foot := f.at(v, f.low)
		k.add(draw.Stroke(draw.PenHairline, draw.Line(foot, f.at(v, f.top))),
			draw.Lettering{Text: whole(v), At: foot.Add(draw.Pt(0, underFoot*f.letters)), Anchor: draw.Middle, Level: draw.Topline, Size: f.letters, Ink: draw.InkQuiet})
	}
	k.add(draw.Stroke(draw.PenOutline, draw.Line(f.at(f.from, f.low), f.at(f.to, f.low))),
		draw.Lettering{Text: "Battery, Ah", At: f.at(f.to, f.low).Add(draw.Pt(0, 2.5*f.letters)), Anchor: draw.End, Level: draw.Topline, Size: f.letters, Strong: true})
}

// otherRisks are the shares of nights along which lines are drawn beside the one that was promised.
var otherRisks = [...]float64{0.01, 0.1, 0.3}

func (k *kitting) risks() {
	for _, share := range otherRisks {
		if share < k.c.Promise/1.5 || share > k.c.Promise*1.5 {
			k.risk(share, draw.PenFine)
		}
	}
	k.risk(k.c.Promise, draw.PenCut)
}

// risk is a line along which so large a share of nights is flat, with their number of a hundred on it.
func (k *kitting) risk(share float64, pen draw.Pen) {
	line := equalRisk(k.c, share)
	if len(line) < 2 {
		return
	}
	k.add(k.frame.run(pen, line))
	middle := line[len(line)/2]
	l := draw.Lettering{Text: whole(100 * share), At: k.frame.at(middle[0], middle[1]), Anchor: draw.Middle, Level: draw.Midline, Size: k.frame.letters, Strong: pen == draw.PenCut, Ground: draw.FillSheet}
	k.add(l)
	k.names.Obstacles = append(k.names.Obstacles, l.Bounds())
	for i, p := range line[1:] {
		k.names.Lines = append(k.names.Lines, [2]draw.Point{k.frame.at(line[i][0], line[i][1]), k.frame.at(p[0], p[1])})
	}
}

// name asks for a place for a text.
func (k *kitting) name(at draw.Point, text string, reach float64) {
	l := draw.Lettering{Text: text, Anchor: draw.Middle, Level: draw.Midline, Size: k.frame.letters, Ground: draw.FillSheet}
	b := l.Bounds()
	k.texts = append(k.texts, l)
	k.names.Labels = append(k.names.Labels, label.Label{Place: at, Width: b.Width(), Height: b.Height(), Reach: reach})
}

// spots are the van's own kit and the cheapest that is enough.
func (k *kitting) spots() {
	if kit := k.c.Kit; kit != nil {
		k.spot(kit.Battery.AmpHours*float64(kit.Batteries), kit.Panel.Watts*float64(kit.Panels), draw.FillGood, "cheapest enough")
	}
	k.spot(k.c.Own[0], k.c.Own[1], draw.FillLead, "yours")
}

const spotRadius = 1.6

func (k *kitting) spot(ah, watts float64, fill draw.Fill, name string) {
	f := k.frame
	if ah < f.from || ah > f.to || watts > f.top {
		return
	}
	at := f.at(ah, watts)
	k.add(draw.Area(draw.PenOutline, fill, draw.Circle(at, spotRadius)))
	k.names.Obstacles = append(k.names.Obstacles, draw.Rect{Min: at, Max: at}.Inset(-spotRadius))
	k.name(at, name, spotRadius+0.5)
}

func (k *kitting) letter() {
	for i, at := range label.Place(k.names) {
		if at.Fits {
			k.texts[i].At = at.Box.Centre()
			k.add(k.texts[i])
		}
	}
}

// kitWords are the drawing's text equivalent.
func kitWords(c power.Chart) string {
	text := fmt.Sprintf("Over batteries from %s to %s Ah and panels to %s W: with your %s Ah and %s W %s.", whole(c.AmpHours[0]), whole(c.AmpHours[len(c.AmpHours)-1]),
		whole(c.Watts[len(c.Watts)-1]), whole(c.Own[0]), whole(c.Own[1]), nightsOf(c.OwnShare))
	if c.Kit == nil {
		return text + " Nothing in the catalogue is enough."
	}
	return text + fmt.Sprintf(" The cheapest that is enough: %d × %s and %d × %s.", c.Kit.Batteries, c.Kit.Battery.Name, c.Kit.Panels, c.Kit.Panel.Name)
}

// nightsOf is a share of nights as one says it.
func nightsOf(share float64) string {
	if n := 100 * share; n > 0 && n < 1 {
		return "fewer than 1 night of 100 flat"
	}
	return fmt.Sprintf("%.0f of 100 nights flat", 100*share)
}
