package sheet

import (
	"fmt"
	"slices"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// foot is what is said under a diagram, its last line at a place: the first of the cautions, then what the signs and strokes mean.
func (c *circuitry) foot(at draw.Point) draw.Group {
	lines := []string{cables.Cautions[0]}
	if slices.ContainsFunc(c.all, func(one cables.Cable) bool { return c.sign(&one) != "" }) {
		lines = append(lines, "Danger, an octagon: do not connect it before it is mended. Fault, a triangle: mend it before you rely on it. See margin notes.")
	}
	says := "Symbols of IEC 60617, from memory. Two strokes across a wire: plus and minus side by side. Lengths are one way; lost: in the cables, all on; short: far from the fuse."
	if c.sheets > 1 {
		says = fmt.Sprintf("Sheet %d of %d. %s", c.page, c.sheets, says)
	}
	lines = append(lines, says)
	g := draw.Group{ID: "foot", Class: "foot"}
	for i, text := range lines {
		g.Marks = append(g.Marks, draw.Lettering{Text: text, At: at.Add(draw.Pt(0, lineHigh*float64(i+1-len(lines)))), Ink: draw.InkQuiet, Size: plainSize})
	}
	return g
}

// signed puts the sign of a cable behind its number.
func (c *circuitry) signed(one *cables.Cable, after draw.Point) {
	if sign := c.sign(one); sign != "" {
		at := after.Add(draw.Pt(signSize/2+1, 0))
		c.symbol("", string(sign), "", signMark(sign, at))
		c.right = max(c.right, at.X+signSize/2+0.3)
	}
}

// tableSigns are those of the cables behind their numbers in the table.
func (c *circuitry) tableSigns(at draw.Point) draw.Group {
	g := draw.Group{ID: "table-signs", Class: "signs"}
	line := 0
	for i := range c.all {
		if sign := c.sign(&c.all[i]); sign != "" {
			x := at.X + 1.2 + draw.Measure(c.all[i].Number, plainSize, false)*draw.Allowance + signSize/2 + 1
			g.Marks = append(g.Marks, signMark(sign, draw.Pt(x, at.Y+tableRow*(float64(line)+1.5))))
		}
		line += 1 + len(c.pieces(&c.all[i]))
	}
	return g
}

const signSize = 3.0 // mm of the paper

func signMark(sign draw.Severity, at draw.Point) draw.Mark {
	return draw.Area(draw.PenEdge, draw.FillInk, sign.Outline(at, signSize))
}
