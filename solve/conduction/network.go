package conduction

// A network is a rectangle of nodes, each joined to its four neighbours and perhaps to surroundings by conductances in
// W/(m·K), the metre being that of the section's depth. Node (i, j) is number j·nx+i.
type network struct {
	nx, ny     int
	right, up  []float64 // to node (i+1, j) and to node (i, j+1)
	ground     []float64 // sum of conductances to surroundings
	drive      []float64 // sum of conductance times temperature of those
	held, hold []float64 // weight with which a node is held, and sum of weight times temperature
}

func newNetwork(nx, ny int) network {
	n := nx * ny
	all := make([]float64, 6*n)
	part := func(k int) []float64 { return all[k*n : (k+1)*n : (k+1)*n] }
	return network{nx, ny, part(0), part(1), part(2), part(3), part(4), part(5)}
}

// join leads from a node to surroundings at a temperature.
func (n network) join(node int, conductance, temperature float64) {
	n.ground[node] += conductance
	n.drive[node] += conductance * temperature
}

// holdAt holds a node at a temperature; where several do, at their mean by weight.
func (n network) holdAt(node int, weight, temperature float64) {
	n.held[node] += weight
	n.hold[node] += weight * temperature
}

// outflow is the heat that leaves a node towards its neighbours, W/m.
func (n network) outflow(node int, t []float64) float64 {
	i, j := node%n.nx, node/n.nx
	var q float64
	if i > 0 {
		q += n.right[node-1] * (t[node] - t[node-1])
	}
	if i < n.nx-1 {
		q += n.right[node] * (t[node] - t[node+1])
	}
	if j > 0 {
		q += n.up[node-n.nx] * (t[node] - t[node-n.nx])
	}
	if j < n.ny-1 {
		q += n.up[node] * (t[node] - t[node+n.nx])
	}
	return q
}

// solve gives the temperature of every node, 0 for one that is joined to nothing. One step of iterative refinement
// brings the heat balance of each node down to rounding where conductances differ widely.
func (n network) solve() []float64 {
	a, at := n.matrix()
	a.factorise()
	t := make([]float64, n.nx*n.ny)
	for node, weight := range n.held {
		if weight > 0 {
			t[node] = n.hold[node] / weight
		}
	}
	b := make([]float64, len(t))
	for range 2 {
		for node := range t {
			b[at(node)] = n.excess(node, t)
		}
		a.solve(b)
		for node := range t {
			t[node] += b[at(node)]
		}
	}
	return t
}

// excess is the heat that a node gains at temperatures t, W/m; nought for one that is held.
func (n network) excess(node int, t []float64) float64 {
	if n.held[node] > 0 {
		return 0
	}
	return n.drive[node] - n.ground[node]*t[node] - n.outflow(node, t)
}

// matrix writes the balances down as a band, numbered along the shorter side, and tells the place of each node.
// A held node stands alone: what it gives its neighbours is already in their excess.
func (n network) matrix() (a band, at func(node int) int) {
	sx, sy := 1, n.nx
	if n.ny < n.nx {
		sx, sy = n.ny, 1
	}
	at = func(node int) int { return node%n.nx*sx + node/n.nx*sy }
	a = newBand(n.nx*n.ny, min(n.nx, n.ny))
	for node := range n.nx * n.ny {
		a.add(at(node), at(node), n.ground[node])
		if node%n.nx < n.nx-1 {
			n.link(a, node, node+1, n.right[node], at)
		}
		if node/n.nx < n.ny-1 {
			n.link(a, node, node+n.nx, n.up[node], at)
		}
	}
	for node := range n.nx * n.ny {
		if k := at(node); n.held[node] > 0 || a.diagonal(k) == 0 {
			a.alone(k)
		}
	}
	return a, at
}

func (n network) link(a band, p, q int, g float64, at func(int) int) {
	a.add(at(p), at(p), g)
	a.add(at(q), at(q), g)
	if n.held[p] == 0 && n.held[q] == 0 {
		a.add(at(q), at(p), -g)
	}
}
