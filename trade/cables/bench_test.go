package cables_test

import (
	"fmt"
	"testing"

	"tumblehome/trade/cables"
)

// The goal is 1 ms for a van with ten circuits: it is worked out while a thing is dragged.
func BenchmarkAVanWithTenCircuits(b *testing.B) {
	var all []cables.Circuit
	for i := range 10 {
		all = append(all, circuit(fmt.Sprintf("c%d", i), cables.Light, 2+float64(i), 3, section(2.5), fuse(15)))
	}
	in := van(all...)
	for b.Loop() {
		cables.Work(in)
	}
}

func BenchmarkAVanWithTenCircuitsOfWhichNothingIsChosen(b *testing.B) {
	var all []cables.Circuit
	for i := range 10 {
		all = append(all, circuit(fmt.Sprintf("c%d", i), cables.Fridge, 2+float64(i), 6))
	}
	in := van(all...)
	for b.Loop() {
		cables.Work(in)
	}
}
