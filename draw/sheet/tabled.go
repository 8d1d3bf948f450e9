package sheet

import (
	"regexp"
	"strconv"
	"strings"

	"tumblehome/draw"
)

// Distances of a table whose cells may have several lines [mm of the paper].
const (
	cellLine = 3.9
	cellPad  = 2.0
)

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

// tabled sets rows of as many lines as they need on as many sheets as they need, the heads on each. A heading stays with what follows it, and
// is said again where its rows go on over the page.
func tabled(frame draw.Frame, id, title string, heads []head, rows []row) []draw.Scene {
	t := tabling{field: frame.Field()}
	t.lanes = lanesOf(heads, t.field)
	var out []draw.Scene
	for len(rows) > 0 {
		n := t.fill(rows)
		out = append(out, t.page(frame, id, title, rows[:n]))
		rows = again(rows, n)
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

// tabling is the work on a table.
type tabling struct {
	field draw.Rect
	lanes []lane
}

// fill is how many rows go on a sheet, one at least.
func (t tabling) fill(rows []row) int {
	n, high := 0, tableRow
	for n < len(rows) && (n == 0 || high+t.height(rows[n]) <= t.field.Height()) {
		high += t.height(rows[n])
		n++
	}
	for n < len(rows) && n > 1 && rows[n-1].title != "" {
		n--
	}
	return n
}

// again are the rows after the first n, under the heading that they were under.
func again(rows []row, n int) []row {
	rest := rows[n:]
	if len(rest) == 0 || rest[0].cells == nil {
		return rest
	}
	for i := n - 1; i >= 0; i-- {
		if rows[i].title != "" && n-i > 1 {
			head := rows[i]
			if !strings.HasSuffix(head.title, goesOnWords) {
				head.title += goesOnWords
			}
			return append([]row{head}, rest...)
		}
	}
	return rest
}

const goesOnWords = " (goes on)"

// toWrite stands over the column in which somebody writes.
const toWrite = "It shows"

// toTick stands over the column of boxes for a tick.
const toTick = "OK"

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

// withUnits finds numbers with their units, which stay on one line.
var withUnits = regexp.MustCompile(`(\d) (A|V|W|m|mm²|Ω|MΩ)([^\pL\pN²]|$)`)

// cell breaks a text for a lane, and where it says so; a word that is wider than the lane is cut short.
func (l lane) cell(text string) []string {
	if text == "" {
		return nil
	}
	var lines []string
	for part := range strings.SplitSeq(withUnits.ReplaceAllString(text, "$1\u00a0$2$3"), "\n") {
		lines = append(lines, wrapped(part, l.wide-2.4)...)
	}
	for i := range lines {
		lines[i] = cutShort(lines[i], l.wide-2.4, false)
	}
	return lines
}

// height of a row on the paper.
func (t tabling) height(r row) float64 {
	if r.cells == nil {
		return cellLine*float64(len(t.across(r))) + 1.5*cellPad
	}
	lines := 1
	if r.sign != "" {
		lines = 2
	}
	for k, l := range t.lanes {
		lines = max(lines, len(l.cell(r.cells[k])))
	}
	return max(cellLine*float64(lines)+cellPad, r.high)
}

// across are the lines of a heading, its title first.
func (t tabling) across(r row) []string {
	var out []string
	if r.title != "" {
		out = append(out, r.title)
	}
	for _, s := range r.says {
		out = append(out, wrapped(s, t.field.Width()-2.4)...)
	}
	return out
}

// page is one sheet of a table.
func (t tabling) page(frame draw.Frame, id, title string, rows []row) draw.Scene {
	g := draw.Group{ID: id, Class: "table", Title: title}
	words := title + "."
	rule := func(y float64, pen draw.Pen) {
		g.Marks = append(g.Marks, draw.Stroke(pen, draw.Line(draw.Pt(t.field.Min.X, y), draw.Pt(t.field.Max.X, y))))
	}
	y := t.field.Min.Y
	for _, l := range t.lanes {
		if l.text != "" {
			g.Marks = append(g.Marks, l.set(cutShort(l.text, l.wide-2.4, true), y+tableRow/2, true))
		}
	}
	rule(y, draw.PenEdge)
	y += tableRow
	rule(y, draw.PenEdge)
	for _, r := range rows {
		high := t.height(r)
		if r.cells == nil {
			g.Marks = append(g.Marks, t.heading(r, y)...)
		} else {
			g.Marks = append(g.Marks, t.row(r, y, high)...)
		}
		words += r.words()
		y += high
		rule(y, draw.PenHairline)
	}
	return draw.Scene{Size: frame.Size, Title: title, Description: words}.With(frame.Group(), g)
}

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
