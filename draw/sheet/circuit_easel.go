package sheet

import (
	"math"
	"strconv"

	"tumblehome/draw"
)

// Module of the symbols and distances of the diagram [mm of the paper].
const (
	module   = 2.5 // g of IEC 60617
	lineHigh = 3.9 // from one line of lettering to the next
	besides  = 1.6 // from a wire to its lettering
	nameWide = 25.0
)

// easel gathers the marks of a diagram and, apart, its wires, so that they can be held against the lettering.
type easel struct {
	marks   []draw.Mark
	wires   [][2]draw.Point
	dots    []draw.Point
	right   float64 // how far the column that is being drawn reaches
	columns int
}

func (e *easel) put(marks ...draw.Mark) { e.marks = append(e.marks, marks...) }

// wire draws a run of straight wires.
func (e *easel) wire(points ...draw.Point) { e.led(draw.PenCable, points) }

// fine draws a run of wires that are no cable of the list.
func (e *easel) fine(points ...draw.Point) { e.led(draw.PenFine, points) }

func (e *easel) led(pen draw.Pen, points []draw.Point) {
	for i := 0; i+1 < len(points); i++ {
		e.wires = append(e.wires, [2]draw.Point{points[i], points[i+1]})
		e.right = math.Max(e.right, math.Max(points[i].X, points[i+1].X))
	}
	e.put(draw.Stroke(pen, draw.Polyline(points...)))
}

// dot is a joint.
func (e *easel) dot(at draw.Point) {
	e.dots = append(e.dots, at)
	e.put(draw.Area(draw.NoPen, draw.FillInk, draw.Circle(at, 0.28*module)))
}

// lines letters to the right of a wire, one line under another, the first at y; strong ones are names and marks, plain ones figures.
func (e *easel) lines(x, y float64, strong bool, texts ...string) float64 {
	for _, text := range texts {
		if text == "" {
			continue
		}
		l := draw.Lettering{Text: text, At: draw.Pt(x+besides, y), Level: draw.Midline, Strong: strong, Size: plainSize}
		e.put(l)
		e.right = math.Max(e.right, l.Bounds().Max.X)
		y += lineHigh
	}
	return y
}

// symbol is a group of marks that stands for a component.
func (e *easel) symbol(id, title, fitting string, marks ...draw.Mark) {
	g := draw.Group{Class: "symbol", Title: title, Marks: marks}
	if id != "" {
		g.ID = "circuit-" + id
	}
	if fitting != "" {
		g.Data = map[string]string{"fitting": fitting}
	}
	e.put(g)
}

// marked letters a mark, and under it figures.
func (e *easel) marked(x, y float64, mark string, figures ...string) {
	e.lines(x, e.lines(x, y, true, mark), false, figures...)
}

// plainNumber is a number without needless digits.
func plainNumber(v float64) string { return strconv.FormatFloat(math.Round(v*100)/100, 'f', -1, 64) }
