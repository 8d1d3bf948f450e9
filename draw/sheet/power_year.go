package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/trade/power"
)

// PowerYear draws a year month by month: what a day on a trip takes beside what the sun and the engine bring, and in how many nights of a hundred the
// battery is found flat. Months without trips stay empty.
func PowerYear(r power.Result, width float64) draw.Scene {
	w := yearly{r: r, width: width, letters: lettersOn(width), y: 1}
	w.inAndOut()
	w.flat()
	return draw.Scene{Size: draw.Size{Width: width, Height: math.Ceil(w.y)}, Title: "Power through the year", Description: w.words(), Marks: w.marks}
}

// yearly is the work on one year, from the top of the paper downwards.
type yearly struct {
	r              power.Result
	width, letters float64
	y              float64
	marks          []draw.Mark
}

// next is the frame of the next chart, with room for head above it and the months below.
func (w *yearly) next(head, high, top float64) chart {
	c := chart{box: draw.Box(chartLeft, w.y+head, w.width-chartLeft-chartRight, high), to: 12, top: top, letters: w.letters}
	w.y += head + high + 2*w.letters + 3
	return c
}

func (w *yearly) add(marks ...draw.Mark) { w.marks = append(w.marks, marks...) }

// bar stands in a month, from and to as shares of its width.
func (c chart) bar(fill draw.Fill, month int, from, to, foot, top float64) draw.Shape {
	return draw.Area(draw.PenFine, fill, draw.Rectangle(draw.Rect{Min: c.at(float64(month)+from, top), Max: c.at(float64(month)+to, foot)}))
}

func (w *yearly) inAndOut() {
	var heights []place
	for i, m := range w.r.Months {
		heights = append(heights, place{float64(i), m.Use[w.r.Habit]}, place{float64(i), m.Yield + m.Engine})
	}
	top, step := above(heights, 100, 5)
	c := w.next(2*w.letters+7, 50, 1.08*top)
	heading := c.heading("Watt-hours a day on a trip")
	heading.At.Y -= w.letters + 2 // the key stands between
	w.add(heading)
	w.key(c, []keyed{{draw.FillDeep, "used"}, {draw.FillLeadWash, "from the sun"}, {draw.FillWash, "from the engine"}})
	w.add(c.rules(step)...)
	for i, m := range w.r.Months {
		if m.Nights <= 0 {
			continue
		}
		w.add(c.bar(draw.FillDeep, i, 0.12, 0.46, 0, m.Use[w.r.Habit]))
		if m.Yield > 0 {
			w.add(c.bar(draw.FillLeadWash, i, 0.54, 0.88, 0, m.Yield))
		}
		if m.Engine > 0 {
			w.add(c.bar(draw.FillWash, i, 0.54, 0.88, m.Yield, m.Yield+m.Engine))
		}
	}
	w.add(c.foot(w.months())...)
}

// keyed is a fill and what it stands for.
type keyed struct {
	fill draw.Fill
	word string
}

// key says what the fills of a chart mean, in the line under its heading.
func (w *yearly) key(c chart, all []keyed) {
	x, side := c.box.Min.X, 0.75*w.letters
	for _, k := range all {
		box := draw.Box(x, c.box.Min.Y-2-side, side, side)
		word := draw.Lettering{Text: k.word, At: draw.Pt(x+side+1.2, c.box.Min.Y-2), Size: w.letters, Ink: draw.InkQuiet}
		w.add(draw.Area(draw.PenFine, k.fill, draw.Rectangle(box)), word)
		x = word.Bounds().Max.X + 5
	}
}

func (w *yearly) flat() {
	var shares []place
	for i, m := range w.r.Months {
		shares = append(shares, place{float64(i), 100 * (m.Flat.Share + m.Flat.Error)})
	}
	top, step := above(shares, 10, 4)
	c := w.next(w.letters+4, 26, 1.08*top)
	w.add(c.heading("Nights of a hundred that find it flat"))
	w.add(c.rules(step)...)
	for i, m := range w.r.Months {
		if m.Nights <= 0 || m.Flat.In == 0 {
			continue
		}
		share, off := 100*m.Flat.Share, 100*m.Flat.Error
		if share > 0 {
			w.add(c.bar(draw.FillLead, i, 0.25, 0.75, 0, share))
		}
		if share > 0.01*top {
			w.add(draw.Stroke(draw.PenOutline, draw.Line(c.at(float64(i)+0.5, math.Max(0, share-off)), c.at(float64(i)+0.5, share+off))))
		}
	}
	w.add(c.foot(w.months())...)
}

// months are words under them; on a narrow drawing every second one has room.
func (w *yearly) months() map[float64]string {
	out := map[float64]string{}
	for i, name := range shortMonths {
		if w.width >= wideChart*0.8 || i%2 == 0 {
			out[float64(i)+0.5] = name
		}
	}
	return out
}

// words are the drawing's text equivalent.
func (w *yearly) words() string {
	text := "A day on a trip, month by month:"
	for i, m := range w.r.Months {
		if m.Nights > 0 {
			text += fmt.Sprintf(" %s %s Wh used, %s from the sun, %s from the engine, %s of a hundred nights flat.", shortMonths[i],
				tensOf(m.Use[w.r.Habit]), tensOf(m.Yield), tensOf(m.Engine), whole(100*m.Flat.Share))
		}
	}
	return text
}

func tensOf(v float64) string { return whole(10 * math.Round(v/10)) }
