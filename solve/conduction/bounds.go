package conduction

// The two networks of one mesh.
//
// Above has its nodes at the points. Its temperatures are continuous and bilinear in each cell, and its energy, summed
// by the trapezoidal rule, is never less than the true one: so by Dirichlet's principle it passes too much heat.
//
// Below has its nodes in the cells. Its heat flows balance in each cell and vary linearly across it, and their
// dissipation, summed likewise, is never less than the true one: so by Thomson's principle it passes too little.

// above is the network of the points.
func (m mesh) above(s Section) network {
	nx := len(m.x)
	n := newNetwork(nx, len(m.y))
	for j := range len(m.y) - 1 {
		for i := range nx - 1 {
			k, p := m.conductivity[m.cell(i, j)], m.point(i, j)
			slant := (m.y[j+1] - m.y[j]) / (m.x[i+1] - m.x[i])
			n.right[p] += k * slant / 2
			n.right[p+nx] += k * slant / 2
			n.up[p] += k / slant / 2
			n.up[p+1] += k / slant / 2
		}
	}
	for _, f := range m.faces {
		a, b := m.ends(f)
		outer := s.Boundaries[f.boundary]
		for _, p := range []int{a, b} {
			if outer.Resistance == 0 {
				n.holdAt(p, f.length/2, outer.Temperature)
			} else {
				n.join(p, f.length/2/outer.Resistance, outer.Temperature)
			}
		}
	}
	return n
}

// below is the network of the cells.
func (m mesh) below(s Section) network {
	cx, cy := len(m.x)-1, len(m.y)-1
	n := newNetwork(cx, cy)
	for c := range n.right {
		i, j := c%cx, c/cx
		dx, dy := m.x[i+1]-m.x[i], m.y[j+1]-m.y[j]
		if e := m.solid(i+1, j); e >= 0 && m.owner[c] >= 0 {
			n.right[c] = 2 * dy / (dx/m.conductivity[c] + (m.x[i+2]-m.x[i+1])/m.conductivity[e])
		}
		if e := m.solid(i, j+1); e >= 0 && m.owner[c] >= 0 {
			n.up[c] = 2 * dx / (dy/m.conductivity[c] + (m.y[j+2]-m.y[j+1])/m.conductivity[e])
		}
	}
	for _, f := range m.faces {
		outer := s.Boundaries[f.boundary]
		n.join(f.cell, f.length/(f.resistance+outer.Resistance), outer.Temperature)
	}
	return n
}

// entersAbove gives the heat that enters through each boundary of the network above, W/m. What a held point gives is
// shared among the faces that hold it.
func (m mesh) entersAbove(s Section, n network, t []float64) []float64 {
	heat := make([]float64, len(s.Boundaries))
	for _, f := range m.faces {
		a, b := m.ends(f)
		outer := s.Boundaries[f.boundary]
		for _, p := range []int{a, b} {
			if outer.Resistance == 0 {
				net := n.outflow(p, t) + n.ground[p]*t[p] - n.drive[p]
				heat[f.boundary] += net * f.length / 2 / n.held[p]
			} else {
				heat[f.boundary] += f.length / 2 / outer.Resistance * (outer.Temperature - t[p])
			}
		}
	}
	return heat
}

// enters is the heat that enters the cell behind a face, W/m, at the temperatures of the network below.
func (f face) enters(s Section, t []float64) float64 {
	outer := s.Boundaries[f.boundary]
	return f.length / (f.resistance + outer.Resistance) * (outer.Temperature - t[f.cell])
}

func (m mesh) entersBelow(s Section, t []float64) []float64 {
	heat := make([]float64, len(s.Boundaries))
	for _, f := range m.faces {
		heat[f.boundary] += f.enters(s, t)
	}
	return heat
}
