package sheet

import (
	"strconv"

	"tumblehome/draw"
)

// Distances of a table whose cells may have several lines [mm of the paper].
const (
	cellLine = 3.9
	cellPad  = 2.0
)

// tabled sets rows of as many lines as they need on as many sheets as they need, the heads on each.
func tabled(frame draw.Frame, id, title string, heads []head, rows [][]string) []draw.Scene {
	field := frame.Field()
	lanes := lanesOf(heads, field)
	var out []draw.Scene
	for len(rows) > 0 {
		n, high := 0, tableRow
		for n < len(rows) && (n == 0 || high+rowHeight(lanes, rows[n]) <= field.Height()) {
			high += rowHeight(lanes, rows[n])
			n++
		}
		out = append(out, page(frame, id, title, lanes, rows[:n]))
		rows = rows[n:]
	}
	for i := range out {
		if len(out) > 1 {
			of := strconv.Itoa(i+1) + " of " + strconv.Itoa(len(out))
			inner := frame.Inner()
			out[i] = out[i].With(draw.Lettering{Text: of, At: draw.Pt(inner.Min.X+6, inner.Max.Y-4), Ink: draw.InkQuiet, Size: plainSize})
		}
	}
	return out
}

// toWrite stands over the column in which somebody writes.
const toWrite = "It shows"

// lane is a column where it stands.
type lane struct {
	head
	x, wide float64
}

func lanesOf(heads []head, field draw.Rect) []lane {
	sum := 0.0
	for _, h := range heads {
		sum += h.share
	}
	var out []lane
	x := field.Min.X
	for _, h := range heads {
		w := h.share / sum * field.Width()
		out = append(out, lane{h, x, w})
		x += w
	}
	return out
}

// cell breaks a text for a lane; a word that is wider than the lane is cut short.
func (l lane) cell(text string) []string {
	if text == "" {
		return nil
	}
	lines := wrapped(text, l.wide-2.4)
	for i := range lines {
		lines[i] = cutShort(lines[i], l.wide-2.4, false)
	}
	return lines
}

func rowHeight(lanes []lane, row []string) float64 {
	lines := 1
	for k, l := range lanes {
		lines = max(lines, len(l.cell(row[k])))
	}
	return cellLine*float64(lines) + cellPad
}

// page is one sheet of a table.
func page(frame draw.Frame, id, title string, lanes []lane, rows [][]string) draw.Scene {
	field := frame.Field()
	g := draw.Group{ID: id, Class: "table", Title: title}
	words := title + "."
	rule := func(y float64, pen draw.Pen) {
		g.Marks = append(g.Marks, draw.Stroke(pen, draw.Line(draw.Pt(field.Min.X, y), draw.Pt(field.Max.X, y))))
	}
	y, top := field.Min.Y, field.Min.Y
	for _, l := range lanes {
		if l.text != "" {
			g.Marks = append(g.Marks, l.set(cutShort(l.text, l.wide-2.4, true), y+tableRow/2, true))
		}
	}
	rule(y, draw.PenEdge)
	y += tableRow
	rule(y, draw.PenEdge)
	for _, row := range rows {
		for k, l := range lanes {
			for i, text := range l.cell(row[k]) {
				g.Marks = append(g.Marks, l.set(text, y+cellPad/2+cellLine*(float64(i)+0.5), false))
			}
			if row[k] != "" {
				words += " " + row[k] + ";"
			}
		}
		y += rowHeight(lanes, row)
		rule(y, draw.PenHairline)
	}
	for _, l := range lanes {
		if l.text == toWrite {
			g.Marks = append(g.Marks, draw.Stroke(draw.PenHairline, draw.Line(draw.Pt(l.x, top), draw.Pt(l.x, y))))
		}
	}
	return draw.Scene{Size: frame.Size, Title: title, Description: words}.With(frame.Group(), g)
}

// set letters a line in a lane.
func (l lane) set(text string, y float64, strong bool) draw.Lettering {
	out := draw.Lettering{Text: text, At: draw.Pt(l.x+1.2, y), Level: draw.Midline, Size: plainSize, Strong: strong}
	if l.right {
		out.Anchor, out.At.X = draw.End, l.x+l.wide-1.2
	}
	if strong {
		out.Ink = draw.InkQuiet
	}
	return out
}
