package arrangement

import (
	"math"

	"tumblehome/solve/solid"
)

// askew is the box about a thing before it was turned by what its turn is off a quarter of a turn, and by how much that is. Its moves and what
// opens of it go by the faces of that box: a drawer comes out square to its front, however the carcass is turned.
func (s *standing) askew(b Box) (own Box, by float64) {
	quarters := math.Round(s.turn / (math.Pi / 2))
	by = s.turn - quarters*math.Pi/2
	if math.Abs(by) < 1e-9 || b.Empty() {
		return b, 0
	}
	long, wide := s.size[0], s.size[1]
	if int64(quarters)%2 != 0 {
		long, wide = wide, long
	}
	m := middleOf(b)
	return Box{MinX: m.X - long/2, MaxX: m.X + long/2, MinY: m.Y - wide/2, MaxY: m.Y + wide/2, MinZ: b.MinZ, MaxZ: b.MaxZ}, by
}

func middleOf(b Box) solid.Point {
	return solid.Point{X: (b.MinX + b.MaxX) / 2, Y: (b.MinY + b.MaxY) / 2}
}

// turnedBy is what happens to a thing that stands askew, of what would happen if it did not.
func (c change) turnedBy(askew float64, about solid.Point) change {
	if askew == 0 {
		return c
	}
	for i := range c.steps {
		c.steps[i].askew, c.steps[i].about = askew, about
	}
	c.adds, c.through = c.adds.Turned(about, askew), c.through.Turned(about, askew)
	return c
}
