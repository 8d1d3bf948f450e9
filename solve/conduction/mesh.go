package conduction

// A mesh is the section cut by lines along y at every x and along x at every y. Points where lines cross are
// numbered j·len(x)+i, cells j·(len(x)-1)+i.
type mesh struct {
	x, y         []float64
	owner        []int     // region of each cell, -1 for none
	conductivity []float64 // of each cell, 0 for none
	faces        []face
}

// A face is the side of one cell that lies on a boundary.
type face struct {
	boundary   int
	cell       int     // -1 when there is material on both sides or on none
	i, j       int     // point at its start
	upright    bool    // it runs along y, to point (i, j+1); else to (i+1, j)
	outward    float64 // +1 when the surroundings are on the side of greater x or y, else -1
	length     float64
	resistance float64 // from the middle of the cell to the surface, m²·K/W
}

// newMesh paints the regions over each other onto the cells. The lines must pass through every edge.
func newMesh(s Section, x, y []float64) mesh {
	m := mesh{x: x, y: y, owner: make([]int, (len(x)-1)*(len(y)-1))}
	m.conductivity = make([]float64, len(m.owner))
	for c := range m.owner {
		m.owner[c] = -1
	}
	for k, r := range s.Regions {
		i0, i1 := place(x, r.X0), place(x, r.X1)
		for j := place(y, r.Y0); j < place(y, r.Y1); j++ {
			for c := m.cell(i0, j); c < m.cell(i1, j); c++ {
				m.owner[c], m.conductivity[c] = k, r.Conductivity
			}
		}
	}
	for k, b := range s.Boundaries {
		m.faces = append(m.faces, m.along(k, b)...)
	}
	return m
}

func (m mesh) points() int        { return len(m.x) * len(m.y) }
func (m mesh) cell(i, j int) int  { return j*(len(m.x)-1) + i }
func (m mesh) point(i, j int) int { return j*len(m.x) + i }

// solid is the cell (i, j), or -1 when there is no material.
func (m mesh) solid(i, j int) int {
	if i < 0 || j < 0 || i >= len(m.x)-1 || j >= len(m.y)-1 {
		return -1
	}
	if c := m.cell(i, j); m.owner[c] >= 0 {
		return c
	}
	return -1
}

// along gives the faces that lie on a boundary.
func (m mesh) along(k int, b Boundary) (faces []face) {
	i0, j0 := place(m.x, min(b.X0, b.X1)), place(m.y, min(b.Y0, b.Y1))
	if b.upright() {
		for j := j0; j < place(m.y, max(b.Y0, b.Y1)); j++ {
			f := face{boundary: k, i: i0, j: j, upright: true, length: m.y[j+1] - m.y[j]}
			faces = append(faces, m.against(f, m.solid(i0-1, j), m.solid(i0, j)))
		}
		return faces
	}
	for i := i0; i < place(m.x, max(b.X0, b.X1)); i++ {
		f := face{boundary: k, i: i, j: j0, length: m.x[i+1] - m.x[i]}
		faces = append(faces, m.against(f, m.solid(i, j0-1), m.solid(i, j0)))
	}
	return faces
}

// against completes a face that has one cell before it and one behind it along the axis across, either perhaps empty.
func (m mesh) against(f face, before, behind int) face {
	f.cell, f.outward = max(before, behind), 1
	if before < 0 {
		f.outward = -1
	}
	if (before < 0) == (behind < 0) {
		f.cell = -1
		return f
	}
	i, j := f.cell%(len(m.x)-1), f.cell/(len(m.x)-1)
	depth := m.y[j+1] - m.y[j]
	if f.upright {
		depth = m.x[i+1] - m.x[i]
	}
	f.resistance = depth / 2 / m.conductivity[f.cell]
	return f
}

// ends gives the two points of a face.
func (m mesh) ends(f face) (a, b int) {
	a = m.point(f.i, f.j)
	if f.upright {
		return a, a + len(m.x)
	}
	return a, a + 1
}
