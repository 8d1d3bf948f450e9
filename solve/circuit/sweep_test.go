package circuit_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"tumblehome/solve/circuit"
)

// A slow way to the same state, of which it is plain that it ends at the upper one: from the voltages without load each
// node in turn takes the upper root of its own quadratic, its neighbours held, until nothing moves. Voltages only fall, and
// never below any solution.
type sweep struct {
	volts, drive, conductance, power []float64
	ways                             [][]way // of each node; node 0 is the reference
}

type way struct {
	to int
	g  float64
}

// newSweep takes networks whose sources and loads all end at the reference.
func newSweep(n circuit.Network) (sweep, map[string]int) {
	number := map[string]int{n.Reference: 0}
	for _, e := range ends(n) {
		for _, name := range e {
			if _, known := number[name]; !known {
				number[name] = len(number)
			}
		}
	}
	size := len(number)
	s := sweep{make([]float64, size), make([]float64, size), make([]float64, size), make([]float64, size), make([][]way, size)}
	for _, source := range n.Sources {
		k := number[source.To]
		s.conductance[k] += 1 / source.Resistance
		s.drive[k] += source.Voltage / source.Resistance
	}
	for _, c := range n.Conductors {
		a, b, g := number[c.From], number[c.To], 1/c.Resistance
		s.ways[a], s.ways[b] = append(s.ways[a], way{b, g}), append(s.ways[b], way{a, g})
		s.conductance[a] += g
		s.conductance[b] += g
	}
	for _, l := range n.Loads {
		k := number[l.From]
		s.power[k] += l.Power
		s.drive[k] -= l.Current
		s.conductance[k] += 1 / l.Resistance
	}
	return s, number
}

func (s sweep) settle() {
	for moved, left := 1.0, 100000; moved > 1e-13 && left > 0; left-- {
		moved = 0
		for k := 1; k < len(s.volts); k++ {
			b := s.drive[k]
			for _, w := range s.ways[k] {
				b += w.g * s.volts[w.to]
			}
			u := (b + math.Sqrt(b*b-4*s.conductance[k]*s.power[k])) / (2 * s.conductance[k])
			moved = max(moved, math.Abs(u-s.volts[k]))
			s.volts[k] = u
		}
	}
}

func TestHeavyNetworksAreInTheUpperState(t *testing.T) {
	for seed := range uint64(6) {
		n := meshed(seed, false)
		for k := range n.Loads {
			n.Loads[k].Power, n.Loads[k].Current = 3000*math.Abs(n.Loads[k].Power), 0
		}
		share := 0.99 * collapseOf(t, n).Share
		for k := range n.Loads {
			n.Loads[k].Power *= share
		}
		s, number := newSweep(n)
		heavy := s.power
		s.power = make([]float64, len(heavy))
		s.settle()
		without := slices.Clone(s.volts)
		s.power = heavy
		s.settle()
		fall := 0.0
		for _, node := range solve(t, n).Nodes {
			k := number[node.Name]
			near(t, fmt.Sprintf("network %d, node %s", seed, node.Name), node.Voltage, s.volts[k], 1e-8)
			fall = max(fall, without[k]-node.Voltage)
		}
		if fall < 4 {
			t.Errorf("network %d: no voltage falls by more than %g V, so it is not heavy", seed, fall)
		}
	}
}
