package circuit

import "math"

// A Result is the stable state of a network. Parts stand in the order of the network's own.
type Result struct {
	Nodes      []Node  // the reference first
	Sources    []Flow  // Voltage from From to To, Current and Power given by the ideal voltage within
	Conductors []Flow  // Power lost
	Loads      []Flow  // Power drawn, below nought when put in
	Given      float64 // W, by sources (below nought what they take back) and by loads that put in
	Drawn      float64 // W, by the other loads
	Lost       float64 // W, in conductors and inside sources
	Unbalanced struct {
		Current float64 // A, the most that the currents at one node miss of nought
		Power   float64 // W, Given less Drawn less Lost
	}
}

// A Node is a node's voltage against the reference, V.
type Node struct {
	Name    string
	Voltage float64
	Dead    bool // behind an open conductor
}

// A Flow is what passes through a part from its From to its To.
type Flow struct {
	Name    string
	Voltage float64 // V, of From above To; for a source of To above From
	Current float64 // A
	Power   float64 // W
}

// Voltage is a node's voltage against the reference, V, and whether there is such a node.
func (r Result) Voltage(node string) (float64, bool) {
	for _, n := range r.Nodes {
		if n.Name == node {
			return n.Voltage, true
		}
	}
	return 0, false
}

func newResult(n Network, p plan, v []float64) Result {
	r := Result{Nodes: make([]Node, len(v))}
	for k, name := range p.names {
		r.Nodes[k] = Node{name, v[k], !p.live[k]}
	}
	surplus := make([]float64, len(v))
	pass := func(from, to string, current float64) {
		surplus[p.number[from]] -= current
		surplus[p.number[to]] += current
	}
	across := func(from, to string) float64 {
		if !p.alive(from, to) {
			return 0
		}
		return v[p.number[from]] - v[p.number[to]]
	}
	for _, s := range n.Sources {
		f := s.flow(across(s.To, s.From), p.alive(s.From, s.To))
		pass(s.From, s.To, f.Current)
		r.Sources = append(r.Sources, f)
		r.Given += f.Power
		r.Lost += f.Current * f.Current * s.Resistance
	}
	for _, c := range n.Conductors {
		f := c.flow(across(c.From, c.To))
		pass(c.From, c.To, f.Current)
		r.Conductors = append(r.Conductors, f)
		r.Lost += f.Power
	}
	for _, l := range n.Loads {
		f := l.flow(across(l.From, l.To), p.alive(l.From, l.To))
		pass(l.From, l.To, f.Current)
		r.Loads = append(r.Loads, f)
		r.Given -= min(f.Power, 0)
		r.Drawn += max(f.Power, 0)
	}
	for _, miss := range surplus {
		r.Unbalanced.Current = max(r.Unbalanced.Current, math.Abs(miss))
	}
	r.Unbalanced.Power = r.Given - r.Drawn - r.Lost
	return r
}

func (s Source) flow(u float64, alive bool) Flow {
	f := Flow{Name: s.Name, Voltage: u}
	if alive {
		f.Current = (s.Voltage - u) / s.Resistance
		f.Power = s.Voltage * f.Current
	}
	return f
}

func (c Conductor) flow(u float64) Flow {
	f := Flow{Name: c.Name, Voltage: u}
	if !c.Open {
		f.Current = u / c.Resistance
		f.Power = u * f.Current
	}
	return f
}

func (l Load) flow(u float64, alive bool) Flow {
	f := Flow{Name: l.Name, Voltage: u}
	if !alive {
		return f
	}
	f.Current = l.Current
	if l.Power != 0 {
		f.Current += l.Power / u
	}
	if l.Resistance > 0 {
		f.Current += u / l.Resistance
	}
	f.Power = u * f.Current
	return f
}
