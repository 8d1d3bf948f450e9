package sheet

import (
	"fmt"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// Room at the ends of the busbars where they come from another sheet and go on to the next [mm of the paper].
const (
	cameFrom = 28.0
	goesOn   = 28.0
)

// unit is what stays together on one sheet: a source, the battery with the sources that lead to it, or a circuit with all that it feeds.
type unit struct {
	cables []cables.Cable
	bank   bool
}

func (c *circuitry) units() []unit {
	var out []unit
	battery := unit{bank: true}
	for _, one := range c.of(cables.Charge, "") {
		u := unit{cables: []cables.Cable{*one}}
		lead := c.leadOf(one)
		if lead != one {
			u.cables = append(u.cables, *lead)
		}
		if toBattery(lead) {
			battery.cables = append(battery.cables, u.cables...)
			continue
		}
		out = append(out, u)
	}
	for _, role := range []cables.Role{cables.Trunk, cables.Bond} {
		for _, one := range c.of(role, "") {
			battery.cables = append(battery.cables, *one)
		}
	}
	out = append(out, battery)
	for _, one := range c.of(cables.Feed, "") {
		out = append(out, unit{cables: c.below(one)})
	}
	return out
}

// below is a circuit and all that hangs on it.
func (c *circuitry) below(one *cables.Cable) []cables.Cable {
	out := []cables.Cable{*one}
	for _, fed := range c.of(cables.Feed, one.Number) {
		out = append(out, c.below(fed)...)
	}
	return out
}

// pages parts the diagram where it is wider than a sheet.
func (c *circuitry) pages() []*circuitry {
	if c.fits() {
		return []*circuitry{c}
	}
	var out []*circuitry
	for units := c.units(); len(units) > 0; {
		p := &circuitry{supply: c.supply, names: c.names, sign: c.sign, pieces: c.pieces, page: len(out) + 1, sheets: len(out) + 2}
		n := 0
		for n < len(units) && (n == 0 || p.with(units[n]).fits()) {
			p = p.with(units[n])
			n++
		}
		out, units = append(out, p), units[n:]
	}
	for _, p := range out {
		p.sheets = len(out)
	}
	return out
}

func (c *circuitry) with(u unit) *circuitry {
	return &circuitry{supply: c.supply, names: c.names, sign: c.sign, pieces: c.pieces, page: c.page, sheets: c.sheets, bank: c.bank || u.bank, all: append(append([]cables.Cable{}, c.all...), u.cables...)}
}

// fits tries whether it goes on A3, drawn as close as may be.
func (c *circuitry) fits() bool {
	field := c.room(draw.Frame{Size: draw.A3, Heading: " ", Subheading: " "}.Field())
	trial := *c
	trial.easel, trial.gap = easel{}, leastGap
	trial.lay(field.Min, 0)
	return trial.right <= field.Max.X
}

// room is what is left of a field beside the arrows from and to other sheets.
func (c *circuitry) room(field draw.Rect) draw.Rect {
	if c.page > 1 {
		field.Min.X += cameFrom
	}
	if c.page < c.sheets {
		field.Max.X -= goesOn
	}
	return field
}

// arrows say where a busbar comes from and where it goes on.
func (c *circuitry) arrows(y, from, to float64) []draw.Mark {
	var out []draw.Mark
	point := func(x float64, text string, anchor draw.Anchor, away float64) {
		tail, tip := min(x, x+away), max(x, x+away) // both point the way the sheets are read
		out = append(out, draw.Area(draw.NoPen, draw.FillInk, draw.Polygon(draw.Pt(tip, y), draw.Pt(tail, y-1.2), draw.Pt(tail, y+1.2))),
			draw.Lettering{Text: text, At: draw.Pt(x+away*4/3, y), Anchor: anchor, Level: draw.Midline, Size: plainSize})
	}
	if c.page > 1 {
		point(from, fmt.Sprintf("from sheet %d", c.page-1), draw.End, -3)
	}
	if c.page < c.sheets {
		point(to, fmt.Sprintf("to sheet %d", c.page+1), draw.Start, 3)
	}
	return out
}

// Names beside the symbols have no more lines than this; a word longer than a line is cut short.
const (
	mostLines = 3
	wordWide  = 34.0 // mm of the paper, about 24 letters
)

func shortName(text string) []string {
	lines := wrapped(text, nameWide)
	cut := len(lines) > mostLines
	if cut {
		lines = lines[:mostLines]
		lines[mostLines-1] += "…"
	}
	for i := range lines {
		lines[i] = cutShort(lines[i], wordWide, true)
	}
	return lines
}
