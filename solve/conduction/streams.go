package conduction

// streams are the heat flows of the network below through the sides of its cells, W/m.
type streams struct {
	x []float64 // towards greater x through the side from point (i, j) to (i, j+1), numbered like its lower point
	y []float64 // towards greater y through the side from point (i, j) to (i+1, j), numbered like its left point
}

func (m mesh) streams(s Section, n network, t []float64) streams {
	q := streams{make([]float64, len(m.x)*len(m.y)), make([]float64, len(m.x)*len(m.y))}
	for c := range t {
		p := m.point(c%n.nx, c/n.nx)
		if n.right[c] > 0 {
			q.x[p+1] = n.right[c] * (t[c] - t[c+1])
		}
		if n.up[c] > 0 {
			q.y[p+len(m.x)] = n.up[c] * (t[c] - t[c+n.nx])
		}
	}
	for _, f := range m.faces {
		through := -f.outward * f.enters(s, t)
		if f.upright {
			q.x[m.point(f.i, f.j)] = through
		} else {
			q.y[m.point(f.i, f.j)] = through
		}
	}
	return q
}

// streamFunction gives each point that touches material a value, such that the heat which flows between two points is
// the difference of their values, W/m: it rises to the left of the flow. Points of nothing keep nought.
//
// Around a hole that heat enters or leaves no such function exists; the value then jumps along some line from it.
func (m mesh) streamFunction(q streams) []float64 {
	psi := make([]float64, len(m.x)*len(m.y))
	seen := make([]bool, len(psi))
	for start := range psi {
		if !seen[start] && m.touches(start) {
			seen[start] = true
			m.spread(q, psi, seen, start)
		}
	}
	return psi
}

// spread walks from a point along the sides of material.
func (m mesh) spread(q streams, psi []float64, seen []bool, start int) {
	nx, queue := len(m.x), []int{start}
	for len(queue) > 0 {
		p := queue[0]
		queue = queue[1:]
		i, j := p%nx, p/nx
		reach := func(to int, solid bool, more float64) {
			if solid && !seen[to] {
				seen[to], psi[to] = true, psi[p]+more
				queue = append(queue, to)
			}
		}
		east, west := m.edge(i, j, i, j-1), m.edge(i-1, j, i-1, j-1)
		north, south := m.edge(i, j, i-1, j), m.edge(i, j-1, i-1, j-1)
		if east {
			reach(p+1, east, -q.y[p])
		}
		if west {
			reach(p-1, west, q.y[p-1])
		}
		if north {
			reach(p+nx, north, q.x[p])
		}
		if south {
			reach(p-nx, south, -q.x[p-nx])
		}
	}
}

// edge says whether either of two cells is material.
func (m mesh) edge(i, j, k, l int) bool { return m.solid(i, j) >= 0 || m.solid(k, l) >= 0 }

// touches says whether any of the four cells around a point is material.
func (m mesh) touches(p int) bool {
	i, j := p%len(m.x), p/len(m.x)
	return m.edge(i, j, i-1, j) || m.edge(i, j-1, i-1, j-1)
}
