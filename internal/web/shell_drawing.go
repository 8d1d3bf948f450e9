package web

import (
	"fmt"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/draw"
)

// Sizes of the drawing of the bare body [mm on paper], 1 : 25.
const (
	bodyWide, bodyTall = 240.0, 92.0
	bodyScale          = 25.0
)

// bodyDrawing shows the body cut across at each station that was read, one behind the other as a boatbuilder draws them, with a dot for
// every reading; beside it the body cut level at half height.
func bodyDrawing(v view) templ.Component {
	across := draw.View{Origin: draw.Pt(52, bodyTall-12), Scale: bodyScale, Up: true}
	level := draw.View{Origin: draw.Pt(110, bodyTall/2-6), Scale: bodyScale, Up: true}
	body := v.Body
	var marks []draw.Mark
	for i, x := range stationsOf(v) {
		pen := draw.PenFine
		if i == 0 {
			pen = draw.PenOutline
		}
		marks = append(marks, draw.Stroke(pen, mirrored(across, body.Section(x), 0)))
	}
	marks = append(marks, readingDots(v, across)...)
	plan := body.Plan((body.Floor() + body.Eaves()) / 2)
	marks = append(marks, draw.Stroke(draw.PenOutline, mirrored(level, plan, 1)))
	for _, x := range stationsOf(v) {
		marks = append(marks, draw.Stroke(draw.PenHairline, draw.Line(level.At(x, -1000), level.At(x, 1000))))
	}
	low := draw.Dimension(level.At(body.Start(), -950), level.At(body.End(), -950), draw.Horizontal, level.At(0, -1000).Y+7, fmt.Sprintf("%.0f bare length", body.Length()))
	marks = append(marks, low.Marks()...)
	return svgOf(draw.Scene{
		Size: draw.Size{Width: bodyWide, Height: bodyTall}, Title: "The bare body as measured",
		Description: "Cut across at each place that was measured, and cut level at half its height. The table below has the numbers.",
		Marks:       marks,
	}, "body-drawing")
}

// stationsOf are the places along the van that were read, else three typical ones.
func stationsOf(v view) []float64 {
	var out []float64
	if o := v.Doc.Shell.Offsets; o != nil {
		for _, id := range build.SortedKeys(o.Stations) {
			out = append(out, o.Stations[id].X.Float())
		}
		return out
	}
	b := v.Body
	return []float64{b.Start(), (b.Start() + b.End()) / 2, b.End()}
}

// mirrored is half an outline, from the middle plane and back on its other side; across is the axis that is mirrored: 0 or 1.
func mirrored(view draw.View, half [][2]float64, across int) draw.Path {
	var points []draw.Point
	for _, p := range half {
		points = append(points, view.At(p[0], p[1]))
	}
	for i := len(half) - 1; i >= 0; i-- {
		p := half[i]
		p[across] = -p[across]
		points = append(points, view.At(p[0], p[1]))
	}
	return draw.Polygon(points...)
}

// readingDots marks what was read on the right half.
func readingDots(v view, across draw.View) []draw.Mark {
	o := v.Doc.Shell.Offsets
	if o == nil {
		return nil
	}
	var marks []draw.Mark
	for _, id := range build.SortedKeys(o.Stations) {
		for i, half := range o.Stations[id].Half {
			if i < len(o.Heights) {
				marks = append(marks, draw.Shape{Path: draw.Circle(across.At(half.Float(), o.Heights[i].Float()), 0.5), Fill: draw.FillInk})
			}
		}
	}
	return marks
}
