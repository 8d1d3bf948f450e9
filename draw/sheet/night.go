package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/trade/warmth"
)

// WideChart is the width of a drawing of a night or a winter beside other things of a page [mm]; Phone is that on a phone.
const WideChart = wideChart

// Night draws one night from coming in to leaving: inside and outside temperature, how hard the heater runs, how stale the air grows, and what water
// lies on glass and steel, if any does. power is that of the heater [W]; 0 is none that may burn at night.
func Night(n warmth.Night, habit warmth.Habit, power, width float64) draw.Scene {
	w := nightly{n: n, habit: habit, power: power, width: width, letters: lettersOn(width), y: 1}
	w.temperatures()
	if power > 0 {
		w.heater()
	}
	w.air()
	w.water()
	return draw.Scene{Size: draw.Size{Width: width, Height: math.Ceil(w.y)}, Title: "A night hour by hour", Description: w.words(), Marks: w.marks}
}

// nightly is the work on one night, from the top of the paper downwards.
type nightly struct {
	n              warmth.Night
	habit          warmth.Habit
	power          float64
	width, letters float64
	y              float64
	marks          []draw.Mark
}

const nightLong = 24 - warmth.ComeIn + warmth.Leave // h

// next is the frame of the next chart, with room for its heading and the hours below it.
func (w *nightly) next(high, low, top float64) chart {
	head := w.letters + 4
	c := chart{box: draw.Box(chartLeft, w.y+head, w.width-chartLeft-chartRight, high), to: nightLong, low: low, top: top, letters: w.letters}
	w.y += head + high + 2*w.letters + 2
	bed, up := float64(w.habit.ToBed-warmth.ComeIn), float64(24-warmth.ComeIn+w.habit.Up)
	w.marks = append(w.marks, c.band(draw.FillTone, bed, up))
	return c
}

// hours are words under every second hour.
func hours() map[float64]string {
	out := map[float64]string{}
	for h := 0; h <= nightLong; h += 2 {
		out[float64(h)] = fmt.Sprintf("%d", (warmth.ComeIn+h)%24)
	}
	out[0] += " h"
	return out
}

// each is a figure of every hour at its end.
func (w *nightly) each(of func(warmth.Hour) float64) []place {
	var out []place
	for i, h := range w.n.Hours {
		out = append(out, place{float64(i + 1), of(h)})
	}
	return out
}

func (w *nightly) temperatures() {
	inside, outside := w.each(func(h warmth.Hour) float64 { return h.Inside }), w.each(func(h warmth.Hour) float64 { return h.Outside })
	low, high := 0.0, 20.0
	for i := range inside {
		low, high = math.Min(low, math.Min(inside[i][1], outside[i][1])), math.Max(high, math.Max(inside[i][1], outside[i][1]))
	}
	c := w.next(54, math.Floor((low-4)/5)*5, math.Ceil((high+6)/5)*5)
	w.marks = append(w.marks, c.heading("How warm, °C"))
	w.marks = append(w.marks, c.rules(5)...)
	w.marks = append(w.marks, c.run(draw.PenFine, outside), c.run(draw.PenCut, inside))
	w.name(c, outside, "outside", lowestOf(outside), 1)
	w.name(c, inside, "inside", w.n.Low, -1)
	asleep := draw.Lettering{Text: "asleep", At: c.at(8.5, c.top).Add(draw.Pt(0, 1.6)), Anchor: draw.Middle, Level: draw.Topline, Size: w.letters, Ink: draw.InkQuiet}
	w.marks = append(w.marks, asleep)
	w.marks = append(w.marks, c.foot(hours())...)
}

// name letters a line in the middle of the night, above it (-1) or below (1).
func (w *nightly) name(c chart, run []place, text string, low, side float64) {
	const from, to = 5, 11 // what the words lie over
	edge := math.Inf(int(side))
	for i, p := range run {
		if i >= from && i <= to && side*(p[1]-edge) < 0 {
			edge = p[1]
		}
	}
	if len(run) <= to {
		return
	}
	l := draw.Lettering{Text: text + ", lowest " + degrees(low), At: c.at(8.5, edge).Add(draw.Pt(0, side*1.8)), Anchor: draw.Middle, Level: draw.Baseline, Size: w.letters, Ground: draw.FillTone}
	if side > 0 {
		l.Level = draw.Topline
	}
	w.marks = append(w.marks, l)
}

func lowestOf(run []place) float64 {
	low := math.Inf(1)
	for _, p := range run {
		low = math.Min(low, p[1])
	}
	return low
}

func degrees(v float64) string { return whole(v) + " °C" }

func (w *nightly) heater() {
	c := w.next(12, 0, 1)
	w.marks = append(w.marks, c.heading(fmt.Sprintf("The heater, %.1f kWh", w.n.Heat)))
	for i, h := range w.n.Hours {
		share := math.Min(h.Heater/w.power, 1)
		if share < 0.005 {
			continue
		}
		w.marks = append(w.marks, draw.Area(draw.PenFine, draw.FillLeadWash, draw.Rectangle(draw.Rect{Min: c.at(float64(i), share), Max: c.at(float64(i+1), 0)})))
	}
	w.marks = append(w.marks, draw.Stroke(draw.PenGhost, draw.Line(c.at(0, 1), c.at(nightLong, 1))))
	w.marks = append(w.marks, draw.Lettering{Text: "full", At: c.at(0, 1).Add(draw.Pt(-1.5, 0)), Anchor: draw.End, Level: draw.Midline, Size: w.letters, Ink: draw.InkQuiet})
	w.marks = append(w.marks, c.foot(nil)...)
	w.y -= 2 * w.letters
}

func (w *nightly) air() {
	run := w.each(func(h warmth.Hour) float64 { return h.CO2 })
	top, step := above(run, 1.25*warmth.Disturbed, 4)
	c := w.next(26, 0, top)
	w.marks = append(w.marks, c.heading("Used air: carbon dioxide, ppm"))
	w.marks = append(w.marks, c.under(draw.FillDeep, run))
	w.marks = append(w.marks, c.rules(step)...)
	w.marks = append(w.marks, c.run(draw.PenOutline, run))
	for _, m := range []struct {
		at, along float64
		word      string
		anchor    draw.Anchor
		ground    draw.Fill
	}{{warmth.Stale, 8.5, "stale", draw.Middle, draw.FillTone}, {warmth.Disturbed, nightLong, "disturbs sleep", draw.End, draw.NoFill}} {
		w.marks = append(w.marks, draw.Stroke(draw.PenGhost, draw.Line(c.at(0, m.at), c.at(nightLong, m.at))),
			draw.Lettering{Text: m.word, At: c.at(m.along, m.at).Add(draw.Pt(1-float64(m.anchor), -1)), Anchor: m.anchor, Size: w.letters, Ink: draw.InkQuiet, Ground: m.ground})
	}
	w.marks = append(w.marks, c.foot(hours())...)
}

// water is what lies on glass and steel, where any does that one would see.
func (w *nightly) water() {
	run := w.each(func(h warmth.Hour) float64 { return h.OnGlass + h.OnSteel })
	top, step := above(run, 0, 3)
	if top < leastSeen {
		return
	}
	c := w.next(20, 0, top)
	w.marks = append(w.marks, c.heading("Water on glass, steel and linings, grams"))
	w.marks = append(w.marks, c.under(draw.FillWash, run))
	w.marks = append(w.marks, c.rules(step)...)
	w.marks = append(w.marks, c.run(draw.PenWater, run))
	w.marks = append(w.marks, c.foot(hours())...)
}

const leastSeen = 5.0 // g

// words are the drawing's text equivalent.
func (w *nightly) words() string {
	text := "From the end of one hour to the next, inside and outside: "
	for _, h := range w.n.Hours {
		text += fmt.Sprintf("%d h %s and %s; ", (h.Hour+1)%24, degrees(h.Inside), degrees(h.Outside))
	}
	text += fmt.Sprintf("lowest inside %s. ", degrees(w.n.Low))
	if w.power > 0 {
		text += fmt.Sprintf("The heater gives %.1f kWh. ", w.n.Heat)
	}
	text += fmt.Sprintf("Carbon dioxide rises to %s ppm while people sleep. ", whole(math.Round(w.n.CO2/50)*50))
	return text + fmt.Sprintf("At most %s g of water lie on glass, steel and linings, at %s.", whole(1000*w.n.Condensed()), w.n.WettestHour())
}
