package sheet

import (
	"strings"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// source is the column of what charges: from the busbar a fuse, what controls it, its cable, and the source.
func (c *circuitry) source(one *cables.Cable) {
	x := c.open(9)
	top := c.plus
	mark := "F" + number(one)
	atHouse, atSource := one.FarFuse, &one.Fuse
	if one.FarFuse == nil || one.Ends == "source" {
		atHouse = nil
	}
	if one.Fuse.End == "to" {
		atHouse, atSource = &one.Fuse, nil
	}
	if one.Ends == "house" || one.Fuse.None {
		atSource = nil
	}
	if atHouse != nil && !atHouse.None {
		c.fuse(mark, atHouse, x, top+fuseDown)
		mark += "a"
	}
	box := top + 24
	c.wire(draw.Pt(x, top), draw.Pt(x, box-converterHalf))
	c.control(one, x, box)
	c.label(one, x, box+13)
	at := draw.Pt(x, c.loads)
	half := batteryHalf
	if one.Source == cables.Sun {
		half = panelHalf
	}
	c.wire(draw.Pt(x, box+converterHalf), draw.Pt(x, c.loads-half))
	if atSource != nil {
		c.fuse(mark, atSource, x, c.loads-13)
	}
	c.origin(one, at)
	c.shut()
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
