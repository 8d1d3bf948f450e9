package circuit

// The equations of the live nodes. Node 0 is the reference; its row is left out of the matrix, as are those of dead
// nodes, so each node has a row or -1.

type equations struct {
	rows     []int // of each node
	size     int   // number of rows
	branches []branch
	draws    []draw
}

// A branch carries g·(e + va − vb) from a to b.
type branch struct {
	a, b int
	g    float64 // S
	e    float64 // V
}

// A draw is the part of a load that is not linear or may be scaled: share·(P/u + I) from a to b.
type draw struct {
	load           int // its place in Network.Loads
	a, b           int
	power, current float64
	fixed          bool // the share does not touch it: it puts in, or is held while another is tried
}

func newEquations(n Network, p plan) equations {
	e := equations{rows: make([]int, len(p.names))}
	for k, live := range p.live {
		e.rows[k] = -1
		if live && k > 0 {
			e.rows[k] = e.size
			e.size++
		}
	}
	for _, s := range n.Sources {
		if p.alive(s.From, s.To) {
			e.branches = append(e.branches, branch{p.number[s.From], p.number[s.To], 1 / s.Resistance, s.Voltage})
		}
	}
	for _, c := range n.Conductors {
		if !c.Open && p.alive(c.From, c.To) {
			e.branches = append(e.branches, branch{p.number[c.From], p.number[c.To], 1 / c.Resistance, 0})
		}
	}
	for k, l := range n.Loads {
		if p.alive(l.From, l.To) {
			e.addLoad(k, l, p.number[l.From], p.number[l.To])
		}
	}
	return e
}

// addLoad splits a load into what it draws and what it puts in, so that only the first is scaled.
func (e *equations) addLoad(k int, l Load, a, b int) {
	if l.Resistance > 0 {
		e.branches = append(e.branches, branch{a, b, 1 / l.Resistance, 0})
	}
	if l.Power > 0 || l.Current > 0 {
		e.draws = append(e.draws, draw{k, a, b, max(l.Power, 0), max(l.Current, 0), false})
	}
	if l.Power < 0 || l.Current < 0 {
		e.draws = append(e.draws, draw{k, a, b, min(l.Power, 0), min(l.Current, 0), true})
	}
}

func (d draw) at(share float64) (power, current float64) {
	if d.fixed {
		share = 1
	}
	return share * d.power, share * d.current
}

func (d draw) voltage(v []float64) float64 { return v[d.a] - v[d.b] }

// surplus is, for each row, the current that comes in less the current that goes out, A.
func (e equations) surplus(v []float64, share float64, out []float64) {
	clear(out)
	flow := func(a, b int, i float64) {
		if r := e.rows[a]; r >= 0 {
			out[r] -= i
		}
		if r := e.rows[b]; r >= 0 {
			out[r] += i
		}
	}
	for _, c := range e.branches {
		flow(c.a, c.b, c.g*(c.e+v[c.a]-v[c.b]))
	}
	for _, d := range e.draws {
		i, current := d.at(share)
		if i != 0 {
			i /= d.voltage(v)
		}
		flow(d.a, d.b, i+current)
	}
}

// slope is how the currents that go out rise with the voltages, S: conductances, less P/u² of a constant power.
func (e equations) slope(v []float64, share float64, m symmetric) {
	clear(m.lower)
	for _, c := range e.branches {
		m.conduct(e.rows[c.a], e.rows[c.b], c.g)
	}
	for _, d := range e.draws {
		if power, _ := d.at(share); power != 0 {
			u := d.voltage(v)
			m.conduct(e.rows[d.a], e.rows[d.b], -power/(u*u))
		}
	}
}
