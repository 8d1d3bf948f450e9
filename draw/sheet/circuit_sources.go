package sheet

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// source is the column of what charges: from the busbar a fuse, the lead, what controls or converts, its line, and the source. A charger on the mains has
// no line here: its lead is its own cable. A lead that goes to the battery turns there at the top.
func (c *circuitry) source(one *cables.Cable, top float64) {
	left := 9.0
	if one.Source == cables.Split {
		left += coilWide
	}
	x := c.open(left)
	lead := c.leadOf(one)
	if toBattery(lead) {
		c.turned = append(c.turned, post{lead, draw.Pt(x, top)})
	} else {
		if !lead.Fuse.None {
			c.fuse("F"+number(lead), &lead.Fuse, x, c.plus+fuseDown)
		}
		c.label(lead, x, c.plus+labelDown)
		c.strokesOf(lead, x, c.plus+labelDown-4)
	}
	box := c.plus + controlDown
	c.wire(draw.Pt(x, top), draw.Pt(x, box-converterHalf))
	c.control(one, x, box)
	at := draw.Pt(x, c.loads)
	half := batteryHalf
	if one.Source == cables.Sun {
		half = panelHalf
	}
	c.wire(draw.Pt(x, box+converterHalf), draw.Pt(x, c.loads-half))
	c.strokesOf(one, x, c.loads-7)
	if lead != one {
		c.label(one, x, box+13)
		if !one.Fuse.None {
			c.fuse("F"+number(one), &one.Fuse, x, c.loads-13)
		}
	}
	c.stringFuse(one, x, c.loads-13)
	c.origin(one, at)
	c.shut()
}

// stringFuse stands for the fuses of all panels of a line: their own cables are not drawn one by one.
func (c *circuitry) stringFuse(one *cables.Cable, x, y float64) {
	for _, p := range c.pieces(one) {
		if p.Amps > 0 {
			c.symbol("strings-"+number(one), p.Words, "", fuseSymbol(draw.Pt(x, y))...)
			c.lines(x+0.35*module, y-1.9, false, fmt.Sprintf("%d × %s A", p.Count, plainNumber(p.Amps)), "one in each panel's plus")
		}
	}
}

// leadOf is the lead of a source's line, or the line itself where it has none.
func (c *circuitry) leadOf(line *cables.Cable) *cables.Cable {
	for i := range c.all {
		if one := &c.all[i]; one.Role == cables.Lead && one.FedBy == line.Number {
			return one
		}
	}
	return line
}

// control is what stands between a source and the busbar. What converts has a negative lead of its own.
func (c *circuitry) control(one *cables.Cable, x, y float64) {
	at := draw.Pt(x, y)
	end, marks := one.To, converterSymbol(at, "")
	switch one.Source {
	case cables.Split:
		marks = relaySymbol(at)
		end = cables.End{Words: "relay"}
		if len(one.Loads) > 0 {
			end = cables.End{Fitting: one.Loads[0].ID, Words: one.Loads[0].Name}
		}
	case cables.Shore:
		end, marks = one.From, converterSymbol(at, "~")
	}
	name := c.named(end.Fitting, end.Words)
	c.symbol("control-"+number(one), name, end.Fitting, marks...)
	c.lines(x+converterHalf, y-lineHigh/2-1, true, shortName(name)...)
	if one.Source == cables.Split {
		c.coil(x, y)
		return
	}
	foot := draw.Pt(x-converterHalf-4, c.minus)
	if c.leadOf(one).Body {
		foot.Y -= 3
		c.symbol("", "body", "", bodySymbol(foot)...)
	}
	c.wire(draw.Pt(x-converterHalf, y), draw.Pt(foot.X, y), foot)
}

// coilWide is the room for the words beside the wire of a coil [mm of the paper].
const coilWide = 18.0

// coil is the thin wire from the coil of a relay to the negative busbar. It is no cable of the list: the relay's own sheet says how it is joined.
func (c *circuitry) coil(x, y float64) {
	foot := draw.Pt(x-coilWide-2, c.minus)
	c.fine(draw.Pt(x-1.25*module, y), draw.Pt(foot.X, y), foot)
	c.lines(foot.X, y+6, false, "coil: its", "own sheet")
}

// origin is the source itself: panels, the starter battery, or the mains, which are an electrician's.
func (c *circuitry) origin(one *cables.Cable, at draw.Point) {
	switch one.Source {
	case cables.Sun:
		var names []string
		ids := ""
		for _, l := range one.Loads {
			names, ids = append(names, c.named(l.ID, l.Name)), ids+" "+l.ID
		}
		c.symbol("source-"+number(one), one.From.Words, strings.TrimSpace(ids), panelSymbol(at)...)
		c.lines(at.X-1.5*module, at.Y+nameDown-2, true, shortName(strings.Join(names, ", "))...)
	case cables.Shore:
		c.marked(at.X, at.Y-2, "mains", "electrician's work")
	default:
		c.symbol("source-"+number(one), one.From.Words, one.From.Fitting, batterySymbol(at)...)
		foot := draw.Pt(at.X, at.Y+nameDown-2)
		c.wire(draw.Pt(at.X, at.Y+batteryHalf), foot)
		c.symbol("", "body", "", bodySymbol(foot)...)
		c.lines(at.X-module, foot.Y+4.4, true, "starter battery"+starterVolts(one))
	}
}

// starterVolts are those of a vehicle that has not the usual 12 V; its engine charges at some 14 V for each 12.
func starterVolts(line *cables.Cable) string {
	if n := math.Round(line.Volts / 14); n > 1 {
		return fmt.Sprintf("  %.0f V", 12*n)
	}
	return ""
}

// strokesOf are two strokes across the wire of a cable whose minus runs beside its plus and is not drawn.
func (c *circuitry) strokesOf(one *cables.Cable, x, y float64) {
	if paired(one) {
		c.symbol("pair-"+number(one), one.Number+", plus and minus side by side", "", strokes(seg(draw.Pt(x, y), -0.4, 0.4, 0.4, -0.1), seg(draw.Pt(x, y+0.4*module), -0.4, 0.4, 0.4, -0.1))...)
	}
}

// paired says of a cable from a source whether it has a minus that is not drawn: that of a line, and of a relay's lead. What converts has its own drawn.
func paired(one *cables.Cable) bool {
	return !one.Body && (one.Role == cables.Charge && one.Source != cables.Shore || one.Role == cables.Lead && one.Source == cables.Split)
}
