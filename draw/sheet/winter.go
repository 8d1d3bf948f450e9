package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/trade/warmth"
)

var shortMonths = [...]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}

// Winter draws the water that lies behind a lining at the end of each month, from October to September, against what would run.
func Winter(w warmth.Winter, width float64) draw.Scene {
	size := lettersOn(width)
	top, step := above(monthly(w), warmth.Runs, 5)
	c := chart{box: draw.Box(chartLeft, size+5, width-chartLeft-chartRight, 36), to: float64(len(w.Months)), top: top * 1.15, letters: size}
	s := draw.Scene{Size: draw.Size{Width: width, Height: math.Ceil(c.box.Max.Y + 2*size + 2)}, Title: "Water behind the lining, month by month", Description: winterWords(w)}
	s = s.With(c.heading("Behind the lining, grams a square metre")).With(c.rules(step)...)
	words := map[float64]string{}
	for i, m := range w.Months {
		if water := w.Water[i]; water > 0 {
			s = s.With(draw.Area(draw.PenWater, draw.FillWash, draw.Rectangle(draw.Rect{Min: c.at(float64(i)+0.18, water), Max: c.at(float64(i)+0.82, 0)})))
		}
		words[float64(i)+0.5] = shortMonths[m-1]
		if width < wideChart*0.8 && i%2 == 1 { // every second one has room
			delete(words, float64(i)+0.5)
		}
	}
	runs := []draw.Mark{draw.Stroke(draw.PenGhost, draw.Line(c.at(0, warmth.Runs), c.at(c.to, warmth.Runs))),
		draw.Lettering{Text: "from here it runs", At: c.at(c.to, warmth.Runs).Add(draw.Pt(-1, -1)), Anchor: draw.End, Size: size, Ink: draw.InkQuiet}}
	return s.With(runs...).With(c.foot(words)...)
}

func monthly(w warmth.Winter) []place {
	var out []place
	for i, v := range w.Water {
		out = append(out, place{float64(i), v})
	}
	return out
}

// winterWords are the drawing's text equivalent.
func winterWords(w warmth.Winter) string {
	text := "Grams of water on each square metre behind the lining at the end of the month:"
	for i, m := range w.Months {
		text += fmt.Sprintf(" %s %s.", shortMonths[m-1], whole(w.Water[i]))
	}
	return text
}
