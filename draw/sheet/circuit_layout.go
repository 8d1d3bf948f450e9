package sheet

import (
	"math"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// Distances down the diagram [mm of the paper].
const (
	plusDown  = 8.0  // room over the positive busbar for its name
	fuseDown  = 9.0  // from the wire's beginning to its fuse
	labelDown = 19.0 // to the cable's number
	endDown   = 33.0 // to where the next circuits begin

	controlDown = 37.0 // from the positive busbar to what controls a source
	sourceDown  = 85.0 // from the positive busbar to the sources
	railUp      = 9.0  // from the loads up to the wire that joins several
	nameDown    = 8.0  // from a load to its name
	leastGap    = 3.0  // between columns
	mostGap     = 24.0
)

// spread draws everything within a field, the columns as far apart as its width allows.
func (c *circuitry) spread(field draw.Rect) {
	c.gap = leastGap
	c.lay(field.Min, field.Height())
	if c.columns < 2 || c.right >= field.Max.X {
		return
	}
	c.gap += math.Min(mostGap-leastGap, (field.Max.X-c.right)/float64(c.columns))
	c.easel = easel{}
	c.lay(field.Min, field.Height())
}

// lay draws everything, its top left corner at a point, no higher than is free where that is enough.
func (c *circuitry) lay(at draw.Point, free float64) {
	c.heights(at.Y, free)
	c.x = at.X + 2
	start := c.x
	board, battery := c.sources()
	for _, one := range board {
		c.source(one, c.plus)
	}
	c.turned, c.posts = nil, nil
	for i, one := range battery {
		c.source(one, c.plus+postsDown+postsApart*float64(i))
	}
	if c.bank {
		c.descents()
		c.battery()
	}
	first := c.x
	feeds := c.of(cables.Feed, "")
	last := 0.0
	for _, one := range feeds {
		last = c.x
		c.feed(one, 0)
	}
	end := c.x - c.gap
	c.busbars(start, math.Max(end, c.x))
	if len(feeds) > 0 {
		c.board(first, last)
	}
	c.right = math.Max(c.right, end)
}

// heights settles how high the diagram is. What is free beyond what it needs stretches it, up to a measure.
func (c *circuitry) heights(top, free float64) {
	deep, names := c.deepest(""), c.nameLines()
	c.plus = top + plusDown
	c.first, c.level = endDown, endDown+2
	down := endDown + c.level*float64(max(0, deep-1)) + railUp + 5
	if len(c.of(cables.Charge, "")) > 0 {
		down = math.Max(down, sourceDown)
	}
	if c.bank {
		down = math.Max(down, 64) // its own column
	}
	foot := nameDown + lineHigh*float64(names+1) + 3
	foot = math.Max(foot, nameDown+lineHigh*3+19)
	extra := math.Max(0, math.Min(free-plusDown-down-foot-14, 40))
	c.first += extra * 0.2
	c.loads = c.plus + down + extra*0.7
	c.minus = c.loads + foot + extra*0.3
	c.bottom = c.minus + 14
}

// nameLines is the most lines that the name of a load takes.
func (c *circuitry) nameLines() int {
	most := 1
	for i := range c.all {
		for _, l := range c.all[i].Loads {
			most = max(most, len(shortName(c.named(l.ID, l.Name))))
		}
	}
	return most
}

// end is where a circuit so deep ends and those that it feeds begin.
func (c *circuitry) end(deep int) float64 { return c.plus + c.first + c.level*float64(deep) }

// busbars are the thick lines above and below, and the bond to the body.
func (c *circuitry) busbars(from, to float64) {
	bar := func(y float64) draw.Mark {
		return draw.Area(draw.NoPen, draw.FillInk, draw.Rectangle(draw.Box(from, y-0.15*module, to-from, 0.3*module)))
	}
	fitting, name := "", "busbar"
	if p := c.supply.Busbar; p != nil {
		fitting, name = c.once(p.ID), cutShort(c.named(p.ID, p.Name), longName, true)
	}
	name = "+  " + name
	if !c.bank {
		name = "+" // it has its name beside the battery
	}
	c.symbol("plus", "positive busbar", fitting, append(c.arrows(c.plus, from, to), bar(c.plus), draw.Lettering{Text: name, At: draw.Pt(from, c.plus-3.4), Level: draw.Midline, Size: plainSize, Strong: true})...)
	c.symbol("minus", "negative busbar", "", append(c.arrows(c.minus, from, to), bar(c.minus), draw.Lettering{Text: "−  every negative comes back here", At: draw.Pt(from+12, c.minus+3.6), Level: draw.Midline, Size: plainSize, Strong: true})...)
	if bonds := c.of(cables.Bond, ""); len(bonds) > 0 {
		one := bonds[0]
		at := draw.Pt(from+4, c.minus+9)
		c.wire(draw.Pt(at.X, c.minus), at)
		c.symbol("bond", "bond to the body", "", bodySymbol(at)...)
		says := one.Number + "  " + sectionWords(one) + " to bare metal of the body, once"
		c.lines(at.X+module, c.minus+8.4, true, says)
		c.signed(one, draw.Pt(at.X+module+besides+draw.Measure(says, plainSize, true)*draw.Allowance, c.minus+8.4))
	}
}

// board is the enclosure of the fuse board about the fuses that begin there.
func (c *circuitry) board(from, last float64) {
	p := c.supply.FuseBoard
	name, fitting := "fuse board", ""
	if p != nil {
		name, fitting = cutShort(c.named(p.ID, p.Name), longName, true), c.once(p.ID)
	}
	box := draw.Rect{Min: draw.Pt(from-3, c.plus+2.6), Max: draw.Pt(last+15, c.plus+15.4)}
	words := draw.Lettering{Text: name, At: draw.Pt(box.Max.X, c.plus-3.4), Anchor: draw.End, Level: draw.Midline, Size: plainSize, Strong: true}
	if !c.bank {
		words.At.X, words.Anchor = box.Min.X+8, draw.Start
	}
	c.symbol("board", name, fitting, draw.Stroke(draw.PenCentre, draw.Rectangle(box)), words)
}

const longName = 60.0 // mm of the paper for the name of a busbar

// once is the fitting of what goes on over several sheets, on the sheet of the battery only.
func (c *circuitry) once(id string) string {
	if c.bank {
		return id
	}
	return ""
}
