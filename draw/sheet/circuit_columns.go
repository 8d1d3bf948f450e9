package sheet

import (
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
	c.signed(one, draw.Pt(x+besides+draw.Measure(one.Number, plainSize, true)*draw.Allowance, y))
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
		y := c.lines(x, c.loads+nameDown, true, shortName(c.named(l.ID, l.Name))...)
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
