package sheet

import (
	"slices"

	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// Leads that go to the battery itself pass over their sources, each below the one before, and come down beside it [mm of the paper].
const (
	postsDown  = 3.0 // from the positive busbar to the first
	postsApart = 2.0
)

// post is a lead on its way from what controls a source to the battery.
type post struct {
	lead *cables.Cable
	from draw.Point // where it turns towards the battery
}

// toBattery says whether a cable that charges ends at the battery, not at the fuse board.
func toBattery(one *cables.Cable) bool { return one.To.Symbol == cables.SymbolBattery }

// sources are those that lead to the fuse board and those that lead to the battery.
func (c *circuitry) sources() (board, battery []*cables.Cable) {
	for _, one := range c.of(cables.Charge, "") {
		if toBattery(c.leadOf(one)) {
			battery = append(battery, one)
		} else {
			board = append(board, one)
		}
	}
	return board, battery
}

// descents bring the leads down to the battery, the last first, so that none crosses another. Their fuses stand at the battery.
func (c *circuitry) descents() {
	rail := c.loads - railUp
	for _, p := range slices.Backward(c.turned) {
		x := c.open(2)
		c.wire(p.from, draw.Pt(x, p.from.Y), draw.Pt(x, rail))
		c.label(p.lead, x, c.plus+labelDown+3)
		c.strokesOf(p.lead, x, c.plus+labelDown-4)
		if !p.lead.Fuse.None {
			c.fuse("F"+number(p.lead), &p.lead.Fuse, x, rail-10)
		}
		c.posts = append(c.posts, draw.Pt(x, rail))
		c.shut()
	}
}

// join leads from the feet of the descents to where the battery's column passes by.
func (c *circuitry) join(at draw.Point) {
	for i := range c.posts {
		to := at
		if i+1 < len(c.posts) {
			to = c.posts[i+1]
		}
		c.wire(c.posts[i], to)
		c.dot(to)
	}
}
