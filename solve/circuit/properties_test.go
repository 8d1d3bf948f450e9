package circuit_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"tumblehome/solve/circuit"
)

// meshed is a random network with loops, loads of every kind and two sources; its loads are light enough to be carried.
func meshed(seed uint64, linear bool) circuit.Network {
	r := rand.New(rand.NewPCG(seed, 7))
	count := 3 + r.IntN(25)
	node := func(k int) string { return fmt.Sprint("n", k) }
	n := circuit.Network{Reference: "zero", Sources: []circuit.Source{
		{From: "zero", To: "n0", Voltage: 12 + r.Float64(), Resistance: 0.002 + 0.01*r.Float64()},
		{From: "zero", To: node(r.IntN(count)), Voltage: 12 + r.Float64(), Resistance: 0.01 + 0.1*r.Float64()}}}
	join := func(a, b int) {
		n.Conductors = append(n.Conductors, circuit.Conductor{From: node(a), To: node(b), Resistance: 0.001 + 0.05*r.Float64()})
	}
	for k := 1; k < count; k++ {
		join(r.IntN(k), k)
		if r.IntN(3) == 0 && k > 1 {
			join(k-1-r.IntN(k-1), k)
		}
		l := circuit.Load{From: node(k), To: "zero", Resistance: 5 + 50*r.Float64(), Current: 2*r.Float64() - 0.5}
		if !linear {
			l.Power = 15*r.Float64() - 3
		}
		n.Loads = append(n.Loads, l)
	}
	return n
}

func ends(n circuit.Network) (all [][2]string) {
	for _, s := range n.Sources {
		all = append(all, [2]string{s.From, s.To})
	}
	for _, c := range n.Conductors {
		all = append(all, [2]string{c.From, c.To})
	}
	for _, l := range n.Loads {
		all = append(all, [2]string{l.From, l.To})
	}
	return all
}

// Summed here apart from the result's own sums.
func TestKirchhoffsLawsAndTheBalanceOfPowerHold(t *testing.T) {
	for seed := range uint64(40) {
		n := meshed(seed, false)
		r := solve(t, n)
		sum, flows := map[string]float64{}, slices.Concat(r.Sources, r.Conductors, r.Loads)
		for k, e := range ends(n) {
			sum[e[0]] -= flows[k].Current
			sum[e[1]] += flows[k].Current
		}
		for node, miss := range sum {
			near(t, fmt.Sprintf("network %d: sum of currents at %s, A", seed, node), miss, 0, 1e-9)
		}
		near(t, "balance of power, W", r.Given-r.Drawn-r.Lost, 0, 1e-9*r.Given)
		near(t, "largest sum the result tells, A", r.Unbalanced.Current, 0, 1e-9)
		near(t, "balance the result tells, W", r.Unbalanced.Power, r.Given-r.Drawn-r.Lost, 0)
		checkLaws(t, n, r)
	}
}

// checkLaws checks that each part keeps its own law at the voltages of its ends, so that voltages sum to nought in loops.
func checkLaws(t testing.TB, n circuit.Network, r circuit.Result) {
	t.Helper()
	across := func(from, to string) float64 {
		a, _ := r.Voltage(from)
		b, _ := r.Voltage(to)
		return a - b
	}
	for k, s := range n.Sources {
		near(t, "voltage of a source", across(s.To, s.From), s.Voltage-s.Resistance*r.Sources[k].Current, 1e-9)
	}
	for k, c := range n.Conductors {
		near(t, "voltage along a conductor", across(c.From, c.To), c.Resistance*r.Conductors[k].Current, 1e-9)
	}
	for k, l := range n.Loads {
		u := across(l.From, l.To)
		want := l.Power + l.Current*u
		if l.Resistance > 0 {
			want += u * u / l.Resistance
		}
		near(t, "power of a load", r.Loads[k].Power, want, 1e-9*(1+math.Abs(want)))
	}
}

// Each source and each constant current alone, the rest at nought, give voltages that sum to those of all together.
func TestStatesOfALinearNetworkSumUp(t *testing.T) {
	for seed := range uint64(10) {
		n := meshed(seed, true)
		for k := range n.Loads {
			n.Loads[k].Current = -math.Abs(n.Loads[k].Current) // what is drawn would have no voltage to draw from alone
		}
		whole := solve(t, n)
		sum := make([]float64, len(whole.Nodes))
		for alone := range len(n.Sources) + len(n.Loads) {
			part := n
			part.Sources, part.Loads = slices.Clone(n.Sources), slices.Clone(n.Loads)
			for k := range part.Sources {
				if k != alone {
					part.Sources[k].Voltage = 0
				}
			}
			for k := range part.Loads {
				if k+len(n.Sources) != alone {
					part.Loads[k].Current = 0
				}
			}
			for k, node := range solve(t, part).Nodes {
				sum[k] += node.Voltage
			}
		}
		for k, node := range whole.Nodes {
			near(t, fmt.Sprintf("network %d, node %s", seed, node.Name), sum[k], node.Voltage, 1e-9)
		}
	}
}

// Voltages and currents a times as high leave resistances as they are and raise powers by a².
func TestScaledNetworksHaveScaledStates(t *testing.T) {
	const a = 3.7
	for seed := range uint64(10) {
		n := meshed(seed, false)
		one := solve(t, n)
		for k := range n.Sources {
			n.Sources[k].Voltage *= a
		}
		for k := range n.Loads {
			n.Loads[k].Current *= a
			n.Loads[k].Power *= a * a
		}
		for k, node := range solve(t, n).Nodes {
			near(t, node.Name, node.Voltage, a*one.Nodes[k].Voltage, 1e-9)
		}
	}
}

func TestANewReferenceShiftsVoltagesAndNothingElse(t *testing.T) {
	n := readNetworks(t)[7].Network // supply and return are two trees
	one := solve(t, n)
	n.Reference = "p1"
	shift, _ := one.Voltage("p1")
	two := solve(t, n)
	for _, node := range one.Nodes {
		got, _ := two.Voltage(node.Name)
		near(t, node.Name, got, node.Voltage-shift, 1e-9)
	}
	near(t, "power lost, W", two.Lost, one.Lost, 1e-9)
}

func TestMoreLoadNeverRaisesAVoltage(t *testing.T) {
	for seed := range uint64(10) {
		n := meshed(seed, false)
		before := solve(t, n)
		n.Loads[0].Power += 20
		for k, node := range solve(t, n).Nodes {
			if node.Voltage > before.Nodes[k].Voltage+1e-12 {
				t.Errorf("network %d, node %s: %g V rises to %g V", seed, node.Name, before.Nodes[k].Voltage, node.Voltage)
			}
		}
	}
}

// Just below the share that a collapse tells the network is solved, just above it is not.
func TestAShareThatIsToldIsTheLimit(t *testing.T) {
	for seed := range uint64(10) {
		n := meshed(seed, false)
		for k := range n.Loads {
			n.Loads[k].Power, n.Loads[k].Current = 3000*math.Abs(n.Loads[k].Power), 0
		}
		share := collapseOf(t, n).Share
		for _, side := range []float64{0.9999999, 1.0000001} {
			scaled := n
			scaled.Loads = slices.Clone(n.Loads)
			for k := range scaled.Loads {
				scaled.Loads[k].Power *= side * share
			}
			_, err := circuit.Solve(scaled)
			var c *circuit.Collapse
			if errors.As(err, &c) != (side > 1) {
				t.Errorf("network %d: at %.7f of the share told: %v", seed, side, err)
			}
		}
	}
}

func TestAStateIsTheSameEachTime(t *testing.T) {
	for _, n := range readNetworks(t)[:20] {
		if !reflect.DeepEqual(solve(t, n.Network), solve(t, n.Network)) {
			t.Errorf("%s: two answers differ", n.Name)
		}
	}
}
