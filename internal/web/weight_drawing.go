package web

import (
	"fmt"
	"math"

	"github.com/a-h/templ"

	"tumblehome/draw"
)

// Sizes of the drawing that shows where the mass is [mm on paper].
const (
	massWide, massTall = 240.0, 74.0
	massFoot           = 52.0 // where the load floor lies
	massHigh           = 38.0 // the tallest column
	columnLong         = 250  // mm of the van that one column gathers
)

// massDrawing shows along the van how many kilograms were put where: a column for every quarter metre, and the axles below.
func massDrawing(v view) templ.Component {
	vehicle := v.Doc.Vehicle
	front, rear := -vehicle.Datum.Float(), (vehicle.Wheelbase - vehicle.Datum).Float()
	from, to := front-300, rear+1300
	if o := vehicle.Overhang; o != nil {
		from, to = front-o.Front.Float(), rear+o.Rear.Float()
	}
	columns := columnsOf(v)
	for _, c := range columns { // a carrier at the rear stands out
		from, to = math.Min(from, c.from), math.Max(to, c.from+columnLong)
	}
	scale := (to - from) / (massWide - 16)
	at := func(x float64) float64 { return 8 + (x-from)/scale }
	scene := draw.Scene{
		Size: draw.Size{Width: massWide, Height: massTall}, Title: "Where the mass is",
		Description: describeColumns(columns),
		Marks: []draw.Mark{
			draw.Stroke(draw.PenOutline, draw.Line(draw.Pt(8, massFoot), draw.Pt(massWide-8, massFoot))),
			axleMark(at(front), "front axle"), axleMark(at(rear), "rear axle"),
		},
	}
	most := 1.0
	for _, c := range columns {
		most = math.Max(most, c.mass)
	}
	for _, c := range columns {
		scene = scene.With(c.marks(at, most)...)
	}
	return svgOf(scene, "mass-drawing")
}

// column is what was put into one stretch of the van.
type column struct{ from, mass float64 }

// mostColumns is more than any van has; things told to be farther apart than that are not drawn.
const mostColumns = 100

func columnsOf(v view) []column {
	sums := map[int]float64{}
	low, high := math.MaxInt32, math.MinInt32
	for _, l := range v.Lines {
		if !(math.Abs(l.At[0]) < math.MaxInt32) || !(math.Abs(l.Mass) < math.MaxInt32) { // no place or no mass that can be drawn
			continue
		}
		k := int(math.Floor(l.At[0] / columnLong))
		sums[k] += l.Mass
		low, high = min(low, k), max(high, k)
	}
	if high < low || high-low >= mostColumns {
		return nil
	}
	var out []column
	for k := low; k <= high; k++ {
		if sums[k] > 0 {
			out = append(out, column{float64(k * columnLong), sums[k]})
		}
	}
	return out
}

func (c column) marks(at func(float64) float64, most float64) []draw.Mark {
	tall := massHigh * c.mass / most
	left, right := at(c.from)+0.4, at(c.from+columnLong)-0.4
	marks := []draw.Mark{draw.Area(draw.PenFine, draw.FillTone, draw.Rectangle(draw.Box(left, massFoot-tall, right-left, tall)))}
	return append(marks, draw.Lettering{
		Text: fmt.Sprintf("%.0f", c.mass), At: draw.Pt((left+right)/2, massFoot-tall-1), Anchor: draw.Middle, Ink: draw.InkQuiet,
	})
}

func axleMark(x float64, words string) draw.Group {
	foot := massFoot + 4
	return draw.Group{Class: "axle-mark", Title: words, Marks: []draw.Mark{
		draw.Area(draw.PenOutline, draw.FillPaper, draw.Circle(draw.Pt(x, foot+3.5), 3.5)),
		draw.Lettering{Text: words, At: draw.Pt(x, foot+13), Anchor: draw.Middle},
	}}
}

// describeColumns is the drawing in words.
func describeColumns(columns []column) string {
	text := "Kilograms put into each quarter metre of the van, from the front."
	for _, c := range columns {
		text += fmt.Sprintf(" From %.0f: %.0f.", c.from, c.mass)
	}
	return text
}
