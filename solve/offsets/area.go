package offsets

import "math"

// A Piece is a part of the surface: its area and the point where that
// area has its centre. A piece of no area has its centre at the origin.
type Piece struct {
	Area    float64
	X, Y, Z float64
}

// add takes a small area at a place into the sums; close ends the summing.
func (p *Piece) add(da, x, y, z float64) {
	p.Area += da
	p.X += da * x
	p.Y += da * y
	p.Z += da * z
}

func (p Piece) close() Piece {
	if p.Area > 0 {
		p.X, p.Y, p.Z = p.X/p.Area, p.Y/p.Area, p.Z/p.Area
	}
	return p
}

// Side returns the part of the right side between x0 and x1 and between the
// heights z0 and z1, at most up to the top row.
func (s *Surface) Side(x0, x1, z0, z1 float64) Piece {
	var sum Piece
	for i := range len(s.x) - 1 {
		a, b := max(x0, s.x[i]), min(x1, s.x[i+1])
		for j := range len(s.z) - 1 {
			c, d := max(z0, s.z[j]), min(z1, s.z[j+1])
			if b > a && d > c {
				s.sidePatch(&sum, &s.patches[i*(len(s.z)-1)+j], a, b, c, d)
			}
		}
	}
	return sum.close()
}

// sidePatch adds the area √(1 + y_x² + y_z²) dx dz over the part a..b, c..d of
// one patch.
func (s *Surface) sidePatch(sum *Piece, p *patch, a, b, c, d float64) {
	i, _ := locate(s.x, (a+b)/2)
	j, _ := locate(s.z, (c+d)/2)
	for _, nx := range three {
		x := a + nx[0]*(b-a)
		u := (x - s.x[i]) / p.dx
		for _, nz := range three {
			z := c + nz[0]*(d-c)
			y, yx, yz := p.slopes(u, (z-s.z[j])/p.dz)
			sum.add(nx[1]*(b-a)*nz[1]*(d-c)*math.Sqrt(1+yx*yx+yz*yz), x, y, z)
		}
	}
}

// Roof returns the part of the roof, above the top row, between x0 and x1 and
// between y0 and y1.
func (s *Surface) Roof(x0, x1, y0, y1 float64) Piece {
	var sum Piece
	top := s.TopRow()
	for i := range len(s.x) - 1 {
		a, b := max(x0, s.x[i]), min(x1, s.x[i+1])
		if !(b > a) {
			continue
		}
		for _, nx := range five {
			x := a + nx[0]*(b-a)
			p, u, v := s.cell(x, top)
			half, halfX, _ := p.slopes(u, v)
			s.roofStrip(&sum, x, nx[1]*(b-a), half, halfX, y0, y1)
		}
	}
	return sum.close()
}

// roofStrip adds one strip across the roof, dx wide, from y0 to y1.
func (s *Surface) roofStrip(sum *Piece, x, dx, half, halfX, y0, y1 float64) {
	if half <= 0 {
		return
	}
	crown, crownX, camber := s.crown.At(x), s.crown.Slope(x), s.crown.At(x)-s.TopRow()
	add := func(from, to, sign float64) { // shares of the breadth, on one side
		for k := range len(roofPanels) - 1 {
			a, b := max(from, roofPanels[k]), min(to, roofPanels[k+1])
			if !(b > a) {
				continue
			}
			for _, n := range five {
				t := a + n[0]*(b-a)
				g, gt := s.round.at(t), s.round.slope(t)
				zy := camber * gt / half
				zx := crownX - crownX*g + zy*t*halfX
				sum.add(dx*n[1]*(b-a)*half*math.Sqrt(1+zx*zx+zy*zy), x, sign*t*half, crown-camber*g)
			}
		}
	}
	add(max(0, y0/half), min(1, y1/half), 1)
	add(max(0, -y1/half), min(1, -y0/half), -1)
}

// Level returns the part of the level cut at height z between x0 and x1 and
// between y0 and y1.
func (s *Surface) Level(x0, x1, y0, y1, z float64) Piece {
	var sum Piece
	strip := func(x, dx float64) {
		h := s.Half(x, z)
		if lo, hi := max(y0, -h), min(y1, h); hi > lo {
			sum.add(dx*(hi-lo), x, (lo+hi)/2, z)
		}
	}
	for i := range len(s.x) - 1 {
		strips(max(x0, s.x[i]), min(x1, s.x[i+1]), strip)
	}
	return sum.close()
}

// Across returns the part of the cut across at x between y0 and y1 and between
// the heights z0 and z1.
func (s *Surface) Across(x, y0, y1, z0, z1 float64) Piece {
	var sum Piece
	strip := func(z, dz float64) {
		h := s.Half(x, z)
		if lo, hi := max(y0, -h), min(y1, h); hi > lo {
			sum.add(dz*(hi-lo), x, (lo+hi)/2, z)
		}
	}
	for j := range len(s.z) - 1 {
		strips(max(s.z[j], z0), min(s.z[j+1], z1), strip)
	}
	// The half-breadth of the roof runs to the crown like a square root, so
	// the strips narrow towards it.
	top, camber := s.TopRow(), s.Crown(x)-s.TopRow()
	below := top
	for k := len(roofPanels) - 1; k >= 0 && camber > 0; k-- {
		edge := top + camber*(1-s.round.at(roofPanels[k]))
		strips(max(below, z0), min(edge, z1), strip)
		below = edge
	}
	return sum.close()
}

// strips cuts a..b into four and calls do at five places in each with the width
// each stands for: what is summed may have a kink where the outline leaves the
// window, and a quarter holds its error to a sixteenth.
func strips(a, b float64, do func(at, width float64)) {
	if !(b > a) {
		return
	}
	w := (b - a) / 4
	for k := range 4 {
		for _, n := range five {
			do(a+(float64(k)+n[0])*w, n[1]*w)
		}
	}
}
