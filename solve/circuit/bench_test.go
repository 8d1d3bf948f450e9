package circuit_test

import (
	"testing"

	"tumblehome/solve/circuit"
)

// The goal is 1 ms for fifty nodes.
func BenchmarkATreeOfFiftyNodes(b *testing.B) {
	all := readNetworks(b)
	n := all[len(all)-1].Network
	for b.Loop() {
		solve(b, n)
	}
}

func BenchmarkACollapseOfFiftyNodes(b *testing.B) {
	all := readNetworks(b)
	n := all[len(all)-1].Network
	for k := range n.Loads {
		n.Loads[k].Power *= 1000
	}
	for b.Loop() {
		if _, err := circuit.Solve(n); err == nil {
			b.Fatal("it is carried")
		}
	}
}
