package arrangement

import "tumblehome/solve/solid"

const (
	jumpOver = 1.5 // places this near with different reach lie on two sides of a step [mm]
	hollow   = 0.5 // a piece may bridge a hollow this deep [mm]
)

// pieces splits the slice whose reach is given at every place along into convex prisms.
func (c *cut) pieces(reach []reachY, z0, z1 float64, cuts solid.Solid) solid.Solid {
	run := c.run[:0]
	for i, x := range c.xs {
		here := place{x, reach[i]}
		if here.high-here.low < 1 {
			cuts = c.close(run, z0, z1, cuts)
			run = run[:0]
			continue
		}
		if n := len(run); n > 0 {
			last := run[n-1]
			switch {
			case here.x-last.x < jumpOver && here.differs(last.reachY, bend):
				before := place{here.x, narrower(last.reachY, here.reachY)}
				run = append(run, before)
				cuts = c.close(run, z0, z1, cuts)
				run = run[:0]
			case !convex(append(run, here)):
				cuts = c.close(run, z0, z1, cuts)
				run = append(run[:0], last)
			}
		}
		run = append(run, here)
	}
	c.run = run
	return c.close(run, z0, z1, cuts)
}

// place is the reach at one place along.
type place struct {
	x float64
	reachY
}

// narrower is what both reaches have in common.
func narrower(a, b reachY) reachY { return reachY{max(a.low, b.low), min(a.high, b.high)} }

// convex says whether straight lines between the first and every later place stay within the reach, give or take.
func convex(run []place) bool {
	first, last := run[0], run[len(run)-1]
	for _, m := range run[1 : len(run)-1] {
		t := (m.x - first.x) / (last.x - first.x)
		if first.high+t*(last.high-first.high) > m.high+hollow || first.low+t*(last.low-first.low) < m.low-hollow {
			return false
		}
	}
	return true
}

// close makes a prism of a run: the hull of its low and its high chain.
func (c *cut) close(run []place, z0, z1 float64, cuts solid.Solid) solid.Solid {
	if len(run) < 2 || run[len(run)-1].x-run[0].x < 0.5 {
		return cuts
	}
	outline := c.outline[:0]
	for _, p := range run {
		outline = leftTurns(outline, 0, solid.Point{X: p.x, Y: p.low})
	}
	turn := len(outline)
	for i := len(run) - 1; i >= 0; i-- {
		outline = leftTurns(outline, turn, solid.Point{X: run[i].x, Y: run[i].high})
	}
	c.outline = outline
	return append(cuts, solid.Prism{Outline: c.keep(outline), Low: z0, High: z1})
}

// keep copies an outline into a block that many share.
func (c *cut) keep(outline []solid.Point) []solid.Point {
	if len(c.block)+len(outline) > cap(c.block) {
		c.block = make([]solid.Point, 0, max(256, len(outline)))
	}
	from := len(c.block)
	c.block = append(c.block, outline...)
	return c.block[from:len(c.block):len(c.block)]
}

// leftTurns appends a corner to a chain that began at from, dropping corners that turn right or hardly at all.
func leftTurns(chain []solid.Point, from int, p solid.Point) []solid.Point {
	for n := len(chain); n-from >= 2; n = len(chain) {
		a, b := chain[n-2], chain[n-1]
		cross := (b.X-a.X)*(p.Y-a.Y) - (b.Y-a.Y)*(p.X-a.X)
		if length := (p.X-a.X)*(p.X-a.X) + (p.Y-a.Y)*(p.Y-a.Y); cross > 0 && cross*cross > 0.25*length {
			break
		}
		chain = chain[:n-1]
	}
	return append(chain, p)
}
