package sheet

import (
	"math"

	"tumblehome/draw"
)

// chart is a frame on the paper in which a figure runs along a night or a year.
type chart struct {
	box      draw.Rect
	from, to float64 // along
	low, top float64 // upwards
	letters  float64 // their size
}

// Sizes of charts [mm of the paper].
const (
	chartLeft  = 15.0 // room for the numbers beside
	chartRight = 4.0
	wideChart  = 240.0
	underFoot  = 0.8 // of the letters' size: from the foot to the words below it
)

// lettersOn is how large a drawing is lettered, so that it can be read where it is shown: narrow ones are shown on phones.
func lettersOn(width float64) float64 {
	if width < wideChart*0.8 {
		return 3.7
	}
	return 3
}

func (c chart) at(along, up float64) draw.Point {
	return draw.Pt(c.box.Min.X+(along-c.from)/(c.to-c.from)*c.box.Width(), c.box.Max.Y-(up-c.low)/(c.top-c.low)*c.box.Height())
}

// run is a line through points.
func (c chart) run(pen draw.Pen, points []place) draw.Shape {
	out := make([]draw.Point, len(points))
	for i, p := range points {
		out[i] = c.at(p[0], p[1])
	}
	return draw.Stroke(pen, draw.Polyline(out...))
}

// under is the area between a line through points and the foot of the chart.
func (c chart) under(fill draw.Fill, points []place) draw.Shape {
	if len(points) == 0 {
		return draw.Shape{}
	}
	out := []draw.Point{c.at(points[0][0], c.low)}
	for _, p := range points {
		out = append(out, c.at(p[0], p[1]))
	}
	return draw.Area(draw.NoPen, fill, draw.Polygon(append(out, c.at(points[len(points)-1][0], c.low))...))
}

// band covers a stretch of the chart from foot to top.
func (c chart) band(fill draw.Fill, from, to float64) draw.Shape {
	return draw.Area(draw.NoPen, fill, draw.Rectangle(draw.Rect{Min: c.at(from, c.top), Max: c.at(to, c.low)}))
}

// rules are fine lines across at every step, each with its number beside it.
func (c chart) rules(step float64) []draw.Mark {
	var out []draw.Mark
	for v := math.Ceil(c.low/step-1e-9) * step; v <= c.top+1e-9; v += step {
		left := c.at(c.from, v)
		out = append(out, draw.Stroke(draw.PenHairline, draw.Line(left, c.at(c.to, v))),
			draw.Lettering{Text: whole(v), At: left.Add(draw.Pt(-1.5, 0)), Anchor: draw.End, Level: draw.Midline, Size: c.letters, Ink: draw.InkQuiet})
	}
	return out
}

// heading letters what the chart shows above it.
func (c chart) heading(text string) draw.Lettering {
	return draw.Lettering{Text: text, At: c.box.Min.Add(draw.Pt(0, -2)), Size: c.letters, Strong: true}
}

// foot is the line on which it stands, with words under some places along it.
func (c chart) foot(words map[float64]string) []draw.Mark {
	out := []draw.Mark{draw.Stroke(draw.PenOutline, draw.Line(c.at(c.from, c.low), c.at(c.to, c.low)))}
	for along := c.from; along <= c.to; along += 0.5 {
		if text, ok := words[along]; ok {
			l := draw.Lettering{Text: text, At: c.at(along, c.low).Add(draw.Pt(0, underFoot*c.letters)), Anchor: draw.Middle, Level: draw.Topline, Size: c.letters, Ink: draw.InkQuiet}
			if along == c.from { // beside it stands a number
				l.Anchor = draw.Start
			}
			out = append(out, l)
		}
	}
	return out
}

// above is a height that some of the points stay below, and a round step to rule it by, at most so many times.
func above(points []place, least float64, rules int) (top, step float64) {
	for _, p := range points {
		least = math.Max(least, p[1])
	}
	step = roundStep(least / float64(rules))
	return math.Ceil(least/step-1e-9) * step, step
}

// roundStep is the next of 1, 2, 5, 10, 20, 50 ... from a number on.
func roundStep(v float64) float64 {
	for unit := 1.0; unit < 1e9; unit *= 10 {
		for _, s := range [...]float64{1, 2, 5} {
			if s*unit >= v-1e-9 {
				return s * unit
			}
		}
	}
	return 1e9
}
