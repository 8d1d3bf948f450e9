package sheet

import (
	"strings"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// source is the column of what charges: from the busbar a fuse, the lead, what controls or converts, its line, and the source. A charger on the mains has
// no line here: its lead is its own cable.
func (c *circuitry) source(one *cables.Cable) {
	x := c.open(9)
	lead := c.leadOf(one)
	if !lead.Fuse.None {
		c.fuse("F"+number(lead), &lead.Fuse, x, c.plus+fuseDown)
	}
	c.label(lead, x, c.plus+labelDown)
	box := c.plus + controlDown
	c.wire(draw.Pt(x, c.plus), draw.Pt(x, box-converterHalf))
	c.control(one, x, box)
	at := draw.Pt(x, c.loads)
	half := batteryHalf
	if one.Source == cables.Sun {
		half = panelHalf
	}
	c.wire(draw.Pt(x, box+converterHalf), draw.Pt(x, c.loads-half))
	if lead != one {
		c.label(one, x, box+13)
		if !one.Fuse.None {
			c.fuse("F"+number(one), &one.Fuse, x, c.loads-13)
		}
	}
	c.origin(one, at)
	c.shut()
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
	foot := draw.Pt(x-converterHalf-4, c.minus)
	if one.Source != cables.Split {
		c.wire(draw.Pt(x-converterHalf, y), draw.Pt(foot.X, y), foot)
	}
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
		c.pair(at.X, at.Y-7)
		c.lines(at.X-1.5*module, at.Y+nameDown-2, true, shortName(strings.Join(names, ", "))...)
	case cables.Shore:
		c.marked(at.X, at.Y-2, "mains", "electrician's work")
	default:
		c.symbol("source-"+number(one), one.From.Words, one.From.Fitting, batterySymbol(at)...)
		foot := draw.Pt(at.X, at.Y+nameDown-2)
		c.wire(draw.Pt(at.X, at.Y+batteryHalf), foot)
		c.symbol("", "body", "", bodySymbol(foot)...)
		c.lines(at.X-module, foot.Y+4.4, true, "starter battery")
	}
}

// pair is the stroke across a wire that stands for its two conductors.
func (c *circuitry) pair(x, y float64) {
	c.put(strokes(seg(draw.Pt(x, y), -0.4, 0.4, 0.4, -0.1), seg(draw.Pt(x, y+0.4*module), -0.4, 0.4, 0.4, -0.1))...)
}
