package sheet

import (
	"strings"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// open begins a column with so much room on its left and gives its x.
func (c *circuitry) open(left float64) float64 {
	x := c.x + left
	c.right = x
	c.columns++
	return x
}

func (c *circuitry) shut() { c.x = c.right + c.gap }

// label letters a cable beside its wire: number, copper, length.
func (c *circuitry) label(one *cables.Cable, x, y float64) {
	c.marked(x, y, one.Number, sectionWords(one), lengthWords(one))
}

// fuse stands in a wire, with its mark and rating beside it.
func (c *circuitry) fuse(mark string, p *cables.Protection, x, y float64) {
	c.symbol(mark, "fuse "+mark, "", fuseSymbol(draw.Pt(x, y))...)
	c.marked(x+0.35*module, y-1.9, mark, fuseWords(p))
}

// feed is the column of a circuit: fuse, cable, loads, and to its right the circuits that it feeds.
func (c *circuitry) feed(one *cables.Cable, deep int) float64 {
	x := c.open(0)
	from := c.plus
	if deep > 0 {
		from = c.end(deep - 1)
	}
	if !one.Fuse.None {
		c.fuse("F"+number(one), &one.Fuse, x, from+fuseDown)
	}
	c.label(one, x, from+labelDown)
	fed := c.of(cables.Feed, one.Number)
	end := draw.Pt(x, from)
	if len(fed) > 0 {
		end.Y = c.end(deep)
		c.wire(draw.Pt(x, from), end)
	}
	c.loadsOf(one, end)
	c.shut()
	if len(fed) > 0 {
		c.dot(end)
		for i, child := range fed {
			at := draw.Pt(c.feed(child, deep+1), end.Y)
			c.wire(end, at)
			if end = at; i+1 < len(fed) {
				c.dot(at)
			}
		}
	}
	return x
}

// loadsOf are the loads of a circuit, all joined to the wire that comes from above, each with its way back.
func (c *circuitry) loadsOf(one *cables.Cable, from draw.Point) {
	loads := one.Loads
	if len(loads) == 0 {
		loads = []cables.Load{{Name: one.To.Words}}
	}
	rail := c.loads - railUp
	for i := range loads {
		x := from.X
		if i > 0 {
			c.shut()
			x = c.open(0)
			c.wire(draw.Pt(from.X, rail), draw.Pt(x, rail))
			c.dot(draw.Pt(from.X, rail))
			from.X, from.Y = x, rail
		}
		c.wire(from, draw.Pt(x, c.loads-loadHalf))
		l := &loads[i]
		id := ""
		if l.ID != "" {
			id = number(one) + "-" + l.ID
		}
		c.symbol(id, l.Name, l.ID, loadSymbol(draw.Pt(x, c.loads), l.Kind)...)
		y := c.lines(x, c.loads+nameDown, true, wrapped(c.named(l.ID, l.Name), nameWide)...)
		if i == 0 && one.Current > 0 {
			c.lines(x, y, false, plainNumber(float64(int(one.Current*10+0.5))/10)+" A")
		}
		c.back(one, x)
	}
}

// back leads from a load to the negative busbar, or to the body where that is the way back.
func (c *circuitry) back(one *cables.Cable, x float64) {
	if !one.Body {
		c.wire(draw.Pt(x, c.loads+loadHalf), draw.Pt(x, c.minus))
		return
	}
	at := draw.Pt(x, c.minus-3)
	c.wire(draw.Pt(x, c.loads+loadHalf), at)
	c.symbol("", "body", "", bodySymbol(at)...)
}

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
	end, marks, name := one.To, converterSymbol(at, ""), one.To.Words
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
	name = c.named(end.Fitting, end.Words)
	c.symbol("control-"+number(one), name, end.Fitting, marks...)
	c.lines(x+converterHalf, y-lineHigh/2-1, true, wrapped(name, nameWide)...)
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
		c.lines(at.X-1.5*module, at.Y+nameDown-2, true, wrapped(strings.Join(names, ", "), nameWide)...)
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
