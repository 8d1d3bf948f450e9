package sheet

import (
	"fmt"
	"math"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// Rows of the table of cables [mm of the paper].
const tableRow = 5.0

func tableHeight(rows int) float64 { return tableRow * float64(rows+1) }

// circuitHeads are the columns: what stands over each, how wide it is as a share, and whether figures stand at its right.
var circuitHeads = []head{
	{"No.", 5, false}, {"Cable", 18, false}, {"Leads to", 26, false}, {"A", 5, true}, {"mm²", 6, true}, {"Length m", 8, true}, {"", 2, false}, {"Plus", 6, false}, {"Minus", 6, false},
	{"Fuse A", 7, true}, {"", 2, false}, {"Kind", 7, false}, {"Lost V", 7, true}, {"Lost %", 7, true}, {"Short A", 8, true},
}

// rows are what the table says, cable by cable, each with its small pieces under it.
func (c *circuitry) rows() [][]string {
	var out [][]string
	for i := range c.all {
		out = append(out, cableRow(&c.all[i], c.named))
		for _, p := range c.pieces(&c.all[i]) {
			out = append(out, pieceRow(p))
		}
	}
	return out
}

func pieceRow(p cables.Piece) []string {
	return []string{"", fmt.Sprintf("%d × %s", p.Count, p.Title), p.Where, "", some(p.MM2, three(p.MM2)), "", "", p.Positive, p.Negative, some(p.Amps, three(p.Amps)), "", "", "", "", ""}
}

func cableRow(one *cables.Cable, named func(id, words string) string) []string {
	to := one.To.Words
	if len(one.Loads) <= 1 || one.Role == cables.Charge {
		to = named(one.To.Fitting, one.To.Words)
	}
	row := []string{one.Number, one.Title, to, some(one.Current, three(one.Current)), some(one.Section.MM2, three(one.Section.MM2)), plainNumber(math.Round(one.Length.MM/100) / 10), "", one.Positive, one.Negative,
		some(one.Fuse.Amps, three(one.Fuse.Amps)), "", chosen(one.Fuse.Kind.Words(), one.Fuse.KindSaid), "", "", ""}
	if one.Body {
		row[8] = "body"
	}
	if lost := one.Drop.Cables(); lost > 0 && one.Volts > 0 {
		row[12], row[13] = fmt.Sprintf("%.2f", lost), fmt.Sprintf("%.1f", 100*lost/one.Volts)
	}
	if one.Role != cables.Bond {
		row[14] = some(one.Weakest(), "%.0f")
	}
	return row
}

// some is a number, or nothing where it is none.
func some(v float64, format string) string {
	if v <= 0 || math.IsInf(v, 0) || math.IsNaN(v) {
		return ""
	}
	return fmt.Sprintf(format, v)
}

// three is how a number is written with three digits that count, and a larger one whole: 2000, never 2e+03.
func three(v float64) string {
	if v >= 999.5 {
		return "%.0f"
	}
	return "%.3g"
}

// head is a column of a table.
type head struct {
	text  string
	share float64
	right bool
}

// circuitTable sets the rows under their heads.
func circuitTable(rows [][]string, at draw.Point, wide float64) draw.Group {
	return table("cables", circuitHeads, rows, at, wide)
}

// table sets rows of one line each; what is too long for its column is cut short.
func table(id string, heads []head, rows [][]string, at draw.Point, wide float64) draw.Group {
	g := draw.Group{ID: id, Class: "table", Title: "table"}
	sum := 0.0
	for _, h := range heads {
		sum += h.share
	}
	x := at.X
	for k, h := range heads {
		w := h.share / sum * wide
		set := func(text string, y float64, strong bool) {
			l := draw.Lettering{Text: cutShort(text, w-2.4, strong), At: draw.Pt(x+1.2, y), Level: draw.Midline, Size: plainSize, Strong: strong}
			if h.right {
				l.Anchor, l.At.X = draw.End, x+w-1.2
			}
			if strong {
				l.Ink = draw.InkQuiet
			}
			if text != "" {
				g.Marks = append(g.Marks, l)
			}
		}
		set(h.text, at.Y+tableRow/2, true)
		for i, row := range rows {
			set(row[k], at.Y+tableRow*(float64(i)+1.5), false)
		}
		x += w
	}
	for i := range len(rows) + 2 {
		pen := draw.PenHairline
		if i < 2 || i == len(rows)+1 {
			pen = draw.PenEdge
		}
		y := at.Y + tableRow*float64(i)
		g.Marks = append(g.Marks, draw.Stroke(pen, draw.Line(draw.Pt(at.X, y), draw.Pt(at.X+wide, y))))
	}
	return g
}

// cutShort is a text cut short to a width.
func cutShort(text string, wide float64, strong bool) string {
	if draw.Measure(text, plainSize, strong)*draw.Allowance <= wide {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && draw.Measure(string(runes)+"…", plainSize, strong)*draw.Allowance > wide {
		runes = runes[:len(runes)-1]
	}
	return string(runes) + "…"
}
