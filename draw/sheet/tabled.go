package sheet

import (
	"strconv"
	"strings"

	"tumblehome/draw"
)

// Distances of a table whose cells may have several lines [mm of the paper].
const (
	cellLine = 3.9
	cellPad  = 2.0
)

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
