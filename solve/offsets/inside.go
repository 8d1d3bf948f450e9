package offsets

import "math"

// HalfInside returns the half-breadth at (x, z) of a second surface that lies
// depth inside the side, measured square to it: y - depth √(1 + y_x² + y_z²).
// It follows the tangent plane, so it holds where the depth is small against the
// radius of the surface. Up to the top row; never below zero.
func (s *Surface) HalfInside(x, z, depth float64) float64 {
	p, u, v := s.cell(x, z)
	y, yx, yz := p.slopes(u, v)
	return math.Max(0, y-depth*math.Sqrt(1+yx*yx+yz*yz))
}

// TopInside returns the height over (x, y) of a second surface that lies depth
// inside the roof, measured square to it. Beyond the roof's edge it goes on as at the edge.
func (s *Surface) TopInside(x, y, depth float64) float64 {
	i, u := locate(s.x, x)
	rows := len(s.z) - 1
	half, halfX, _ := s.patches[i*rows+rows-1].slopes(u, 1)
	crown, crownX := s.crown.both(x)
	camber := crown - s.TopRow()
	if half <= 0 {
		return crown - depth
	}
	t := math.Min(1, math.Abs(y)/half)
	g, gt := s.round.both(t)
	zy := camber * gt / half
	zx := crownX*(1-g) + zy*t*halfX
	return crown - camber*g - depth*math.Sqrt(1+zx*zx+zy*zy)
}
