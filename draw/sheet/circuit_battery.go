package sheet

import (
	"math"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// battery is the column of the bank: from the negative busbar by the shunt to the batteries, and by main fuse and isolator to the positive
// busbar.
func (c *circuitry) battery() {
	x := c.open(6)
	rail, foot := c.loads-railUp, c.minus-16
	c.wire(draw.Pt(x, c.plus), draw.Pt(x, c.plus+fuseDown-2*module))
	y := c.plus + fuseDown - 2*module
	if p := c.supply.Isolator; p != nil {
		at := draw.Pt(x, y+2*module)
		c.symbol("isolator", "isolator", p.ID, isolatorSymbol(at)...)
		c.lines(x, at.Y-1, true, shortName(c.named(p.ID, p.Name))...)
		y += 4 * module
	}
	c.wire(draw.Pt(x, y), draw.Pt(x, rail))
	if trunks := c.of(cables.Trunk, ""); len(trunks) > 0 {
		one := trunks[0]
		c.label(one, x, c.plus+labelDown+3)
		if !one.Fuse.None {
			c.fuse("F"+number(one), &one.Fuse, x, rail-10)
		}
	}
	c.join(draw.Pt(x, rail))
	c.cells(x, rail, foot)
	c.wire(draw.Pt(x, foot), draw.Pt(x, c.minus))
	if p := c.supply.Shunt; p != nil {
		c.symbol("shunt", "shunt", p.ID, shuntSymbol(draw.Pt(x, c.minus-8))...)
		c.lines(x+0.35*module, c.minus-10, true, shortName(c.named(p.ID, p.Name))...)
	}
	c.shut()
}

// cells are the batteries side by side between two rails.
func (c *circuitry) cells(x, rail, foot float64) {
	all := c.supply.Batteries
	if len(all) == 0 {
		all = []cables.Battery{{Name: "battery"}}
	}
	for i, b := range all {
		at := draw.Pt(x, c.loads)
		if i > 0 {
			before := x
			c.shut()
			x = c.open(2)
			at.X = x
			for _, y := range []float64{rail, foot} {
				c.wire(draw.Pt(before, y), draw.Pt(x, y))
				c.dot(draw.Pt(before, y))
			}
		}
		c.wire(draw.Pt(x, rail), draw.Pt(x, c.loads-batteryHalf))
		c.symbol("battery-"+b.ID, b.Name, b.ID, batterySymbol(at)...)
		c.wire(draw.Pt(x, c.loads+batteryHalf), draw.Pt(x, foot))
		y := c.lines(x, c.loads+5.5, true, shortName(c.named(b.ID, b.Name))...)
		if b.AmpHours > 0 {
			c.lines(x, y, false, plainNumber(calledVolts(b.Volts))+" V  "+plainNumber(b.AmpHours)+" Ah")
		}
	}
}

// calledVolts are those by which a battery is called: 12 for one of 12.8, and what is written for one that makes less than 12.
func calledVolts(volts float64) float64 {
	if volts > 0 && volts < 10 {
		return volts
	}
	return math.Max(1, math.Round(volts/12.5)) * 12
}
