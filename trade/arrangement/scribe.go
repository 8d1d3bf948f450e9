package arrangement

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// tolerance [mm] of cutting a scribed face into slices, always on the inner side.
const tolerance = 5

// cut is a box whose faces are cut to a frame's surfaces, each shifted by what the fitting keeps clear.
type cut struct {
	prism solid.Prism
	frame *frame
	faces [6]bool // which faces are cut
	clear [6]float64
	xs    []float64 // where along x the surfaces are looked at
	own   []reachY  // how far the uncut prism reaches there

	// room to work in
	run     []place
	outline []solid.Point
	block   []solid.Point
	chains  [][]reachY
}

// at is the uncut reach of a prism.
func at(p solid.Prism, x float64) reachY {
	low, high := p.Across(x)
	return reachY{low, high}
}

// scribe cuts the faces of the prism that follow curved surfaces into slices: upright prisms one above the other, each convex.
func scribe(p solid.Prism, f *frame, scribed []side, clear [6]float64) solid.Solid {
	c := cut{prism: p, frame: f, clear: clear}
	for _, s := range scribed {
		c.faces[s] = f.curved[s]
	}
	if !c.faces[left] && !c.faces[right] && !c.faces[roof] {
		return solid.Solid{p}
	}
	c.xs = c.lookAlong()
	for _, x := range c.xs {
		c.own = append(c.own, at(p, x))
	}
	return c.slice(p.Low, p.High, c.chain(p.Low), c.chain(p.High), nil)
}

// lookAlong is where along the prism its surfaces are looked at: even places, its own corners, and both sides of every step.
func (c *cut) lookAlong() []float64 {
	b := c.prism.Bounds()
	n := solid.Every(b.MaxX-b.MinX, step)
	var xs []float64
	for i := range n + 1 {
		xs = append(xs, b.MinX+(b.MaxX-b.MinX)*float64(i)/float64(n))
	}
	xs[n] = b.MaxX
	for _, v := range c.prism.Outline {
		xs = append(xs, v.X)
	}
	slices.Sort(xs)
	xs = slices.Compact(xs)
	for _, z := range [3]float64{c.prism.Low, (c.prism.Low + c.prism.High) / 2, c.prism.High} {
		for i, coarse := 1, xs; i < len(coarse); i++ {
			xs = c.refine(xs, coarse[i-1], coarse[i], c.look(coarse[i-1], z), c.look(coarse[i], z), z)
		}
		slices.Sort(xs)
		xs = slices.Compact(xs)
	}
	return xs
}

// look is the reach at one place.
func (c *cut) look(x, z float64) reachY { return c.limits(x, z, at(c.prism, x)) }

// bend is how far [mm] the middle between two places may be off the straight line before it is looked at more closely.
const bend = 1

// refine appends the middle of two places if a side bends or steps between them, and goes on until a step lies within a millimetre.
func (c *cut) refine(xs []float64, x0, x1 float64, r0, r1 reachY, z float64) []float64 {
	if x1-x0 <= 1 {
		return xs
	}
	m := (x0 + x1) / 2
	r := c.look(m, z)
	if !r.differs(reachY{(r0.low + r1.low) / 2, (r0.high + r1.high) / 2}, bend) {
		return xs
	}
	xs = append(xs, m)
	xs = c.refine(xs, x0, m, r0, r, z)
	return c.refine(xs, m, x1, r, r1, z)
}

// reachY is the room across at one place: from low to high.
type reachY struct{ low, high float64 }

func (r reachY) differs(o reachY, by float64) bool {
	return math.Abs(r.low-o.low) > by || math.Abs(r.high-o.high) > by
}

// limits is how far the cut prism reaches across at x and z, of what the uncut one does.
func (c *cut) limits(x, z float64, own reachY) reachY {
	low, high := own.low, own.high
	if c.faces[left] {
		low = max(low, c.frame.Left(x, z)+c.clear[left])
	}
	if c.faces[right] {
		high = min(high, c.frame.Right(x, z)+c.clear[right])
	}
	if c.faces[roof] {
		low, high = c.underRoof(x, z, low, high)
	}
	return reachY{low, high}
}

// underRoof narrows the reach to where the roof is not below z, taking the roof to fall away from its highest place.
func (c *cut) underRoof(x, z, low, high float64) (float64, float64) {
	fits := func(y float64) bool { return c.frame.Roof(x, y)+c.clear[roof] >= z }
	crown := min(max(0, low), high)
	if !fits(crown) {
		return crown, crown
	}
	return border(crown, low, fits), border(crown, high, fits)
}

// border is how far from a place where something holds towards another it still holds, to half a millimetre.
func border(holds, end float64, fits func(float64) bool) float64 {
	if fits(end) {
		return end
	}
	for math.Abs(end-holds) > 0.5 {
		if m := (holds + end) / 2; fits(m) {
			holds = m
		} else {
			end = m
		}
	}
	return holds
}

// chain is the reach at one height, at every place along.
func (c *cut) chain(z float64) []reachY {
	var chain []reachY
	if n := len(c.chains); n > 0 {
		chain, c.chains = c.chains[n-1][:0], c.chains[:n-1]
	} else {
		chain = make([]reachY, 0, len(c.xs))
	}
	for i, x := range c.xs {
		chain = append(chain, c.limits(x, z, c.own[i]))
	}
	return chain
}

// slice cuts between two heights in halves until the reach changes by less than the tolerance, or the slice is as thin as that.
func (c *cut) slice(z0, z1 float64, below, above []reachY, cuts solid.Solid) solid.Solid {
	m := (z0 + z1) / 2
	middle := c.chain(m)
	defer func() { c.chains = append(c.chains, middle) }()
	same := true
	for i := range below {
		same = same && !below[i].differs(above[i], tolerance) && !below[i].differs(middle[i], tolerance) && !above[i].differs(middle[i], tolerance)
	}
	if same || z1-z0 <= tolerance {
		inner := middle
		for i := range inner {
			inner[i].low = max(below[i].low, inner[i].low, above[i].low)
			inner[i].high = min(below[i].high, inner[i].high, above[i].high)
		}
		return c.pieces(inner, z0, z1, cuts)
	}
	return c.slice(m, z1, middle, above, c.slice(z0, m, below, middle, cuts))
}
