package offsets

import "math"

// A Surface is the body between the readings of a table. It does not change
// after New and may be used by several goroutines.
type Surface struct {
	x, z    []float64 // stations and heights
	patches []patch   // station by station, len(z)-1 each
	crown   Curve
	round   round
	doubt   doubt
}

// patch holds the bicubic y = Σ a[i][j] u^i v^j of one cell, u along x and v
// along z from 0 to 1.
type patch struct {
	a      [4][4]float64
	dx, dz float64
}

// Readings are the stations and the heights of the table that the surface was made from.
func (s *Surface) Readings() (x, z []float64) { return s.x, s.z }

// New returns the surface through a table of offsets, or a *TableError.
func New(t Table) (*Surface, error) {
	if err := t.check(); err != nil {
		return nil, err
	}
	nx, nz := len(t.Stations), len(t.Heights)
	s := &Surface{x: make([]float64, nx), z: append([]float64(nil), t.Heights...)}
	crowns := make([]float64, nx)
	for i, st := range t.Stations {
		s.x[i], crowns[i] = st.X, st.Crown
	}
	s.crown = NewCurve(s.x, crowns)
	g := newGrid(t, s.x, s.z)
	s.patches = make([]patch, (nx-1)*(nz-1))
	for i := range nx - 1 {
		for j := range nz - 1 {
			s.patches[i*(nz-1)+j] = g.patch(i, j)
		}
	}
	s.round = newRound(t, g)
	s.doubt = newDoubt(t, g)
	return s, nil
}

// Start, End, Base and TopRow are the limits of the table: its first and last
// station, its lowest and highest row of half-breadths.
func (s *Surface) Start() float64  { return s.x[0] }
func (s *Surface) End() float64    { return s.x[len(s.x)-1] }
func (s *Surface) Base() float64   { return s.z[0] }
func (s *Surface) TopRow() float64 { return s.z[len(s.z)-1] }

// Half returns the half-breadth at x and height z: from the middle plane to
// the surface, zero above the crown.
func (s *Surface) Half(x, z float64) float64 {
	if z > s.TopRow() {
		return s.roofHalf(x, z)
	}
	p, u, v := s.cell(x, z)
	return p.at(u, v)
}

// cell finds the patch that holds (x, z) and the place in it.
func (s *Surface) cell(x, z float64) (p *patch, u, v float64) {
	i, u := locate(s.x, x)
	j, v := locate(s.z, z)
	return &s.patches[i*(len(s.z)-1)+j], u, v
}

func (p *patch) at(u, v float64) float64 {
	a := &p.a
	r0 := a[0][0] + v*(a[0][1]+v*(a[0][2]+v*a[0][3]))
	r1 := a[1][0] + v*(a[1][1]+v*(a[1][2]+v*a[1][3]))
	r2 := a[2][0] + v*(a[2][1]+v*(a[2][2]+v*a[2][3]))
	r3 := a[3][0] + v*(a[3][1]+v*(a[3][2]+v*a[3][3]))
	return r0 + u*(r1+u*(r2+u*r3))
}

// slopes returns the half-breadth and its slopes along x and z.
func (p *patch) slopes(u, v float64) (y, yx, yz float64) {
	var r, q [4]float64
	for i := range 4 {
		a := &p.a[i]
		r[i] = a[0] + v*(a[1]+v*(a[2]+v*a[3]))
		q[i] = a[1] + v*(2*a[2]+v*3*a[3])
	}
	y = r[0] + u*(r[1]+u*(r[2]+u*r[3]))
	yx = (r[1] + u*(2*r[2]+u*3*r[3])) / p.dx
	yz = (q[0] + u*(q[1]+u*(q[2]+u*q[3]))) / p.dz
	return y, yx, yz
}

// column returns the cubic in v that the patch is at a fixed u.
func (p *patch) column(u float64) (c [4]float64) {
	for j := range 4 {
		c[j] = p.a[0][j] + u*(p.a[1][j]+u*(p.a[2][j]+u*p.a[3][j]))
	}
	return c
}

// Top returns the height of the surface above the point (x, y) of the base:
// the roof, or further out the place where the side leans in over it. Outside
// the body it is the base.
func (s *Surface) Top(x, y float64) float64 {
	y = math.Abs(y)
	crown, b := s.crown.At(x), s.Half(x, s.TopRow())
	if y <= b && b > 0 {
		return crown - (crown-s.TopRow())*s.round.at(y/b)
	}
	i, u := locate(s.x, x)
	rows := len(s.z) - 1
	for j := rows - 1; j >= 0; j-- {
		c := s.patches[i*rows+j].column(u)
		if c[0] >= y {
			return s.z[j] + (s.z[j+1]-s.z[j])*falls(c, y)
		}
	}
	return s.Base()
}

// falls returns where in 0..1 the cubic, which starts at or above y and ends
// below it, passes y.
func falls(c [4]float64, y float64) float64 {
	lo, hi := 0.0, 1.0
	for range 30 { // to a thousand-millionth of the cell
		mid := (lo + hi) / 2
		if c[0]+mid*(c[1]+mid*(c[2]+mid*c[3])) >= y {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

// Headroom returns the height from the base to the surface above (x, y).
func (s *Surface) Headroom(x, y float64) float64 { return s.Top(x, y) - s.Base() }

// Crown returns the height of the top in the middle at x.
func (s *Surface) Crown(x float64) float64 { return s.crown.At(x) }

// Normal returns the outward unit normal (x, y, z) of the right side at height
// z, up to the top row.
func (s *Surface) Normal(x, z float64) [3]float64 {
	p, u, v := s.cell(x, z)
	_, yx, yz := p.slopes(u, v)
	n := math.Sqrt(1 + yx*yx + yz*yz)
	return [3]float64{-yx / n, 1 / n, -yz / n}
}
