package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/trade/power"
)

// PowerDay draws how full the battery is through a day on a trip in a month: as every second day is at least, and as all but one in twenty are. empty is
// the share that must stay in it (0 to 1).
func PowerDay(m power.MonthOf, month int, empty, width float64) draw.Scene {
	letters := lettersOn(width)
	c := chart{box: draw.Box(chartLeft, letters+5, width-chartLeft-chartRight, 42), to: 24, top: 118, letters: letters}
	s := draw.Scene{Size: draw.Size{Width: width, Height: math.Ceil(c.box.Max.Y + 2*letters + 3)}, Title: "The battery through a day", Description: dayWords(m, month, empty)}
	middle, low := through(m.Middle), through(m.Low)
	s = s.With(c.heading("How full the battery is, %"), draw.Area(draw.NoPen, draw.FillLeadWash, draw.Rectangle(draw.Rect{Min: c.at(0, 100*empty), Max: c.at(24, 0)})))
	s = s.With(c.rules(25)...).With(c.run(draw.PenFine, low), c.run(draw.PenCut, middle))
	s = s.With(named(c, middle, "every second day", -1), named(c, low, "one day in twenty is lower", 1))
	if empty > 0 {
		s = s.With(draw.Lettering{Text: "kept in it", At: c.at(24, 50*empty).Add(draw.Pt(-1.5, 0)), Anchor: draw.End, Level: draw.Midline, Size: letters, Ink: draw.InkQuiet})
	}
	return s.With(c.foot(dayHours())...)
}

// through are the hours of a day as points at their ends.
func through(day [24]float64) []place {
	out := []place{{0, 100 * day[23]}}
	for h, v := range day {
		out = append(out, place{float64(h + 1), 100 * v})
	}
	return out
}

// named letters a line near the middle of the day, above it (-1) or below (1).
func named(c chart, run []place, text string, side float64) draw.Lettering {
	const from, to, at = 6, 18, 12
	edge := run[at][1]
	for _, p := range run[from:to] {
		if side*(p[1]-edge) < 0 {
			edge = p[1]
		}
	}
	l := draw.Lettering{Text: text, At: c.at(at, edge).Add(draw.Pt(0, side*1.8)), Anchor: draw.Middle, Level: draw.Baseline, Size: c.letters}
	if side > 0 {
		l.Level = draw.Topline
	}
	return l
}

func dayHours() map[float64]string {
	out := map[float64]string{0: "0 h"}
	for h := 3; h <= 24; h += 3 {
		out[float64(h)] = fmt.Sprintf("%d", h)
	}
	return out
}

// dayWords are the drawing's text equivalent.
func dayWords(m power.MonthOf, month int, empty float64) string {
	text := fmt.Sprintf("How full the battery is in %s at the end of each hour; at least so much on every second day, and on all but one day in twenty:", shortMonths[month-1])
	for h := range 24 {
		text += fmt.Sprintf(" %d h %s %% and %s %%;", h+1, whole(100*m.Middle[h]), whole(100*m.Low[h]))
	}
	return text + fmt.Sprintf(" %s %% are kept in it.", whole(100*empty))
}
