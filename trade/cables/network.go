package cables

import (
	"errors"

	"tumblehome/solve/circuit"
)

// A tree is a battery and what hangs on it, reduced to resistances [Ω]. Those of cables count both cores.
type tree struct {
	volts, inside      float64
	mainFuse, isolator float64 // on the way to the board; the second with all joints
	trunk              float64 // cable to the board
	legs               []leg   // each after the one that feeds it
	charge             float64 // A put in at the board
}

// A leg is a cable with its fuse and the load at its far end.
type leg struct {
	id          string
	from        string // id of the leg that feeds it; "" is the board
	fuse, cable float64
	watts, amps float64 // constant power and constant current
	ohms        float64 // constant resistance; 0 is none
}

// Nodes other than the far ends of legs, which have the names of the legs. No id has a blank in it.
const (
	negative = "the negative"
	posts    = "the posts"
	fused    = "the main fuse"
	board    = "the board"
)

// before is the node of a leg between its fuse and its cable.
func before(id string) string { return "fuse of " + id }

// network writes a tree as nodes and branches.
func (t tree) network() circuit.Network {
	n := circuit.Network{Reference: negative, Sources: []circuit.Source{{Name: "battery", From: negative, To: posts, Voltage: t.volts, Resistance: some(t.inside)}}}
	join := func(name, from, to string, ohms float64) {
		n.Conductors = append(n.Conductors, circuit.Conductor{Name: name, From: from, To: to, Resistance: some(ohms)})
	}
	join("main fuse", posts, fused, t.mainFuse+t.isolator)
	join("the trunk", fused, board, t.trunk)
	for _, l := range t.legs {
		from := l.from
		if from == "" {
			from = board
		}
		if l.fuse > 0 {
			join("fuse of "+l.id, from, before(l.id), l.fuse)
			from = before(l.id)
		}
		join(l.id, from, l.id, l.cable)
		n.Loads = append(n.Loads, circuit.Load{Name: l.id, From: l.id, To: negative, Power: l.watts, Current: l.amps, Resistance: l.ohms})
	}
	if t.charge != 0 {
		n.Loads = append(n.Loads, circuit.Load{Name: "charge", From: board, To: negative, Current: -t.charge})
	}
	return n
}

// some keeps a resistance above nought: nothing that carries current has none.
func some(ohms float64) float64 { return max(ohms, 2e-6) }

// net is a tree solved.
type net struct {
	tree
	result circuit.Result
	tipped *Collapsed // nothing else is known then
}

func (t tree) solve() net {
	result, err := circuit.Solve(t.network())
	var collapse *circuit.Collapse
	if errors.As(err, &collapse) {
		return net{tree: t, tipped: &Collapsed{Share: collapse.Share, Tips: collapse.Name, Alone: collapse.Alone, Asked: collapse.Asked, Unit: collapse.Unit}}
	}
	if err != nil { // no tree that Work makes gives one: all of it is fed, and every resistance is above nought
		return net{tree: t, tipped: &Collapsed{}}
	}
	return net{tree: t, result: result}
}

// at is the voltage of a node.
func (n net) at(node string) float64 {
	v, _ := n.result.Voltage(node)
	return v
}

// through is the current in a conductor: a leg, "the trunk" or "main fuse".
func (n net) through(name string) float64 {
	for _, c := range n.result.Conductors {
		if c.Name == name {
			return c.Current
		}
	}
	return 0
}

// toEnd is the resistance from within the battery to the far end of a leg, before its load; all that lies on the way counts once.
func (t tree) toEnd(id string) float64 { return t.toStart(id) + t.find(id).fuse + t.find(id).cable }

// toStart is that to where a leg begins, before its own fuse.
func (t tree) toStart(id string) float64 {
	if from := t.find(id).from; from != "" {
		return t.toEnd(from)
	}
	return t.toBoard()
}

func (t tree) toBoard() float64 { return t.inside + t.mainFuse + t.isolator + t.trunk }

func (t tree) find(id string) leg {
	for _, l := range t.legs {
		if l.id == id {
			return l
		}
	}
	return leg{}
}

// lone is a tree with one leg's load only.
func (t tree) lone(id string) net {
	only := t
	only.legs, only.charge = nil, 0
	for at := id; at != ""; {
		l := t.find(at)
		if at != id {
			l.watts, l.amps, l.ohms = 0, 0, 0
		}
		only.legs, at = append(only.legs, l), l.from
	}
	return only.solve()
}

// alone is the voltage at the far end of a leg with only its own load on, V, and false where there is none.
func (t tree) alone(id string) (float64, bool) {
	n := t.lone(id)
	return n.at(id), n.tipped == nil
}
