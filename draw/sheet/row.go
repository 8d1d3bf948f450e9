package sheet

import "tumblehome/draw"

// row is a row of a table: cells, or a heading with sentences across all columns.
type row struct {
	cells []string
	sign  draw.Severity // drawn under the first cell with its word; "" is none
	high  float64       // at least so high

	title string
	says  []string
}

// words tell a row.
func (r row) words() string {
	words := ""
	if r.title != "" {
		words += " " + r.title + "."
	}
	for _, s := range append(r.says, r.cells...) {
		if s != "" {
			words += " " + s + ";"
		}
	}
	if r.sign != "" {
		words += " " + string(r.sign) + ";"
	}
	return words
}

// toWrite stands over the column in which somebody writes.
const toWrite = "It shows"

// toTick stands over the column of boxes for a tick.
const toTick = "OK"

// heading sets a title and sentences across all columns.
func (t tabling) heading(r row, y float64) []draw.Mark {
	var out []draw.Mark
	for i, text := range t.across(r) {
		out = append(out, draw.Lettering{Text: text, At: draw.Pt(t.field.Min.X+1.2, y+0.75*cellPad+cellLine*(float64(i)+0.5)), Level: draw.Midline, Size: plainSize, Strong: i == 0 && r.title != ""})
	}
	return out
}

// row sets cells, the sign under the first, and rules where something is written.
func (t tabling) row(r row, y, high float64) []draw.Mark {
	var out []draw.Mark
	for k, l := range t.lanes {
		for i, text := range l.cell(r.cells[k]) {
			out = append(out, l.set(text, y+cellPad/2+cellLine*(float64(i)+0.5), false))
		}
		switch l.text {
		case toWrite:
			out = append(out, draw.Stroke(draw.PenHairline, draw.Line(draw.Pt(l.x, y), draw.Pt(l.x, y+high))))
		case toTick:
			out = append(out, draw.Stroke(draw.PenEdge, draw.Rectangle(draw.Box(l.x+l.wide/2-tickSize/2, y+high/2-tickSize/2, tickSize, tickSize))))
		}
	}
	if r.sign != "" {
		out = append(out, signed(r.sign, draw.Pt(t.lanes[0].x+1.2, y+cellPad/2+cellLine*1.5))...)
	}
	return out
}

const tickSize = 4.0 // of the box for a tick [mm of the paper]

// signed is the shape of a severity with its word behind it.
func signed(s draw.Severity, at draw.Point) []draw.Mark {
	const size = 3.0
	return []draw.Mark{draw.Area(draw.PenEdge, draw.FillInk, s.Outline(at.Add(draw.Pt(size/2, 0)), size)),
		draw.Lettering{Text: string(s), At: at.Add(draw.Pt(size+0.8, 0)), Level: draw.Midline, Size: plainSize, Strong: true}}
}
