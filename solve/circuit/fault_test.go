package circuit_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"tumblehome/solve/circuit"
)

func TestAFaultSaysWhatIsWrongAndWhere(t *testing.T) {
	lamp := circuit.Load{Name: "lamp", Power: 20}
	tests := []struct {
		name  string
		spoil func(*circuit.Network)
		want  string
	}{
		{"no reference", func(n *circuit.Network) { n.Reference = "" }, "reference: no node"},
		{"nothing at all", func(n *circuit.Network) { *n = circuit.Network{} }, "reference: no node"},
		{"no source", func(n *circuit.Network) { n.Sources = nil }, "sources: there is none"},
		{"a reference that is nowhere", func(n *circuit.Network) { n.Reference = "earth" }, "node zero: neither conductor nor source leads from it to the reference earth"},
		{"a load at an unknown node", func(n *circuit.Network) { n.Loads[0].From = "fra" }, "node fra: neither"},
		{"an island without a source", func(n *circuit.Network) {
			n.Conductors = append(n.Conductors, circuit.Conductor{From: "i1", To: "i2", Resistance: 1})
		}, "node i1: neither"},
		{"a load that no source stands behind", func(n *circuit.Network) {
			n.Conductors = append(n.Conductors, circuit.Conductor{From: "i1", To: "zero", Resistance: 1})
			n.Loads = append(n.Loads, circuit.Load{Name: "fan", From: "i1", To: "zero", Power: 3})
		}, "loads[1] (fan): no voltage"},
		{"a load the wrong way round", func(n *circuit.Network) { n.Loads[0].From, n.Loads[0].To = "zero", "far" }, "loads[0] (lamp): no voltage in its direction"},
		{"negative resistance of a conductor", func(n *circuit.Network) { n.Conductors[0].Resistance = -1 }, "conductors[0] (wire): resistance -1"},
		{"no resistance of a conductor", func(n *circuit.Network) { n.Conductors[0].Resistance = 0 }, "is a single node"},
		{"negative resistance of a load", func(n *circuit.Network) { n.Loads[0].Resistance = -2 }, "loads[0] (lamp): resistance -2"},
		{"a source without resistance", func(n *circuit.Network) { n.Sources[0].Resistance = 0 }, "sources[0] (battery): resistance 0"},
		{"a source below nought", func(n *circuit.Network) { n.Sources[0].Voltage = -12 }, "change its ends"},
		{"a voltage that is no number", func(n *circuit.Network) { n.Sources[0].Voltage = math.NaN() }, "voltage NaN"},
		{"endless power", func(n *circuit.Network) { n.Loads[0].Power = math.Inf(1) }, "power +Inf"},
		{"a current that is no number", func(n *circuit.Network) { n.Loads[0].Current = math.NaN() }, "current NaN"},
		{"both ends at one node", func(n *circuit.Network) { n.Conductors[0].To = "near" }, "both ends are at node near"},
		{"an end without a node", func(n *circuit.Network) { n.Loads[0].To = "" }, "an end has no node"},
		{"a part without a name", func(n *circuit.Network) { n.Conductors[0] = circuit.Conductor{From: "near", To: "far"} }, "conductors[0]: resistance 0"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			n := line(12, 0.01, 0.1, lamp)
			tt.spoil(&n)
			_, err := circuit.Solve(n)
			var f *circuit.Fault
			if !errors.As(err, &f) || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %v, want a fault with %q", err, tt.want)
			}
		})
	}
}

func TestWhatLiesBehindAnOpenConductorIsDeadAndDrawsNothing(t *testing.T) {
	n := line(12, 0.01, 0.1, circuit.Load{Name: "lamp", Power: 20})
	n.Loads = append(n.Loads, circuit.Load{Name: "pump", From: "far", To: "zero", Resistance: 3}, circuit.Load{Name: "fridge", From: "near", To: "zero", Power: 50})
	n.Conductors[0].Open = true
	r := solve(t, n)
	for k, node := range r.Nodes {
		if node.Dead != (node.Name == "far") || node.Dead && node.Voltage != 0 {
			t.Errorf("node %d: %+v", k, node)
		}
	}
	if r.Loads[0].Power != 0 || r.Loads[1].Current != 0 || r.Conductors[0].Current != 0 || math.Abs(r.Loads[2].Power-50) > 1e-9 {
		t.Errorf("got loads %+v, conductors %+v", r.Loads, r.Conductors)
	}
	n.Conductors = append(n.Conductors, circuit.Conductor{From: "near", To: "far", Resistance: 0.2}) // another way round
	if r := solve(t, n); math.Abs(r.Loads[0].Power-20) > 1e-9 {
		t.Errorf("by another way the lamp has %+v", r.Loads[0])
	}
}

func TestALoadThatIsOffDrawsNothing(t *testing.T) {
	r := solve(t, line(12, 0.01, 0.1, circuit.Load{}))
	if v, ok := r.Voltage("far"); v != 12 || !ok || r.Given != 0 {
		t.Errorf("got %g V, %t, %g W given", v, ok, r.Given)
	}
	if _, ok := r.Voltage("elsewhere"); ok {
		t.Error("a node that is not there has a voltage")
	}
}

// Power put in at far lifts it above near, so that the lamp between them is left without a voltage in its direction.
func TestPowerPutInThatTurnsALoadsVoltageRoundIsAFault(t *testing.T) {
	n := line(12, 0.01, 10, circuit.Load{Name: "charger", Power: -1000})
	n.Conductors = append(n.Conductors, circuit.Conductor{From: "far", To: "zero", Resistance: 1})
	n.Loads = append(n.Loads, circuit.Load{Name: "lamp", From: "near", To: "far", Power: 1})
	_, err := circuit.Solve(n)
	var f *circuit.Fault
	if !errors.As(err, &f) || !strings.Contains(err.Error(), "what they put in") {
		t.Errorf("got %v", err)
	}
}

// scribbled makes a network of any bytes. Most figures and ends are good ones: few of the highest bytes make bad ones.
func scribbled(b []byte) circuit.Network {
	next := func() int {
		if len(b) == 0 {
			return 0
		}
		k := int(b[0])
		b = b[1:]
		return k
	}
	nodes := []string{"zero", "a", "b", "c", "d", "e"}
	bad := []float64{0, -3, 1e7, math.NaN(), math.Inf(1)}
	figure := func(middle float64) float64 {
		if k := next(); k < 255 {
			return middle * math.Pow(10, float64(k-128)/50)
		}
		return bad[next()%len(bad)]
	}
	n := circuit.Network{Reference: "zero", Sources: []circuit.Source{{From: "zero", To: "a", Voltage: 12, Resistance: 0.01}}}
	for k := 2; k < 6; k++ {
		n.Conductors = append(n.Conductors, circuit.Conductor{From: nodes[next()%k], To: nodes[k], Resistance: figure(0.1), Open: next() > 250})
	}
	for len(b) > 0 {
		from := next() % 6
		to := (from + next()%51/10 + 1) % 6
		switch a, b, high := nodes[from], nodes[to], nodes[1+from%5]; next() % 8 {
		case 0:
			n.Sources = append(n.Sources, circuit.Source{From: a, To: b, Voltage: figure(10), Resistance: figure(0.1)})
		case 1:
			n.Conductors = append(n.Conductors, circuit.Conductor{From: a, To: b, Resistance: figure(0.1)})
		case 2:
			n.Loads = append(n.Loads, circuit.Load{From: high, To: "zero", Power: -figure(10)})
		case 3:
			n.Loads = append(n.Loads, circuit.Load{From: a, To: b, Resistance: figure(10)})
		case 4:
			n.Loads = append(n.Loads, circuit.Load{From: a, To: b, Power: figure(1), Current: -figure(0.1)})
		default:
			n.Loads = append(n.Loads, circuit.Load{From: high, To: "zero", Power: figure(30), Current: figure(0.1)})
		}
	}
	return n
}

// Whatever is asked, the answer is a state that balances, or a fault or a collapse.
func answerIsSound(n circuit.Network) error {
	r, err := circuit.Solve(n)
	var f *circuit.Fault
	var c *circuit.Collapse
	switch {
	case errors.As(err, &f):
		return nil
	case errors.As(err, &c):
		if !(c.Share >= 0 && c.Share < 1 && c.Alone >= 0 && c.Alone <= c.Asked) || c.Load < 0 || c.Load >= len(n.Loads) {
			return fmt.Errorf("collapse %+v", c)
		}
		return nil
	case err != nil:
		return fmt.Errorf("an error of another kind: %w", err)
	}
	flow := 1.0
	for _, s := range append(r.Sources, append(r.Conductors, r.Loads...)...) {
		flow = max(flow, math.Abs(s.Current), math.Abs(s.Power))
	}
	least := 1.0
	for _, c := range n.Conductors {
		least = min(least, c.Resistance)
	}
	for _, s := range n.Sources {
		least = min(least, s.Resistance)
	}
	high := 0.0
	for _, node := range r.Nodes {
		high = max(high, math.Abs(node.Voltage))
	}
	if allowed := 1e-9*flow + 1e-13*high/least; !(r.Unbalanced.Current <= allowed) {
		return fmt.Errorf("currents miss by %g A, allowed %g", r.Unbalanced.Current, allowed)
	}
	return nil
}

func FuzzAnyNetworkIsSolvedOrRefused(f *testing.F) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		b := make([]byte, 12+r.IntN(60))
		for k := range b {
			b[k] = byte(r.UintN(256))
		}
		f.Add(b)
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		n := scribbled(b[:min(len(b), 200)])
		if err := answerIsSound(n); err != nil {
			t.Errorf("%v\n%+v", err, n)
		}
	})
}
