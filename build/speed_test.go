package build_test

import (
	"fmt"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// sixty is a document of sixty fittings.
func sixty(t testing.TB) *tree.Node {
	fittings := &tree.Node{Kind: tree.Map}
	for i := range 60 {
		one := parse(t, fmt.Sprintf("{make: carcass, at: {x: from galley.rear + %d, y: right - 15, z: 40}, size: {x: 300, y: 400, z: 500}, of: ply-poplar-12, mass: 12 ± 3}", i))
		fittings.Entries = append(fittings.Entries, tree.Entry{Key: fmt.Sprintf("box-%d", i), Value: one})
	}
	return tree.Merge(parse(t, base), tree.Setting("/fittings", fittings))
}

// Decoding is on the way of every edit: 2 ms is its share of the blink. Time is
// for the benchmark; what it allocates can be held here.
func TestDecodingSixtyFittingsAllocatesLittle(t *testing.T) {
	rows, node := catalogue.Builtin(), sixty(t)
	allocations := testing.AllocsPerRun(5, func() {
		if _, err := build.DecodeTree(node, rows); err != nil {
			t.Fatal(err)
		}
	})
	if allocations > 3000 {
		t.Errorf("%.0f allocations, want at most 3000", allocations)
	}
}

func BenchmarkDecodeSixtyFittings(b *testing.B) {
	rows, node := catalogue.Builtin(), sixty(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := build.DecodeTree(node, rows); err != nil {
			b.Fatal(err)
		}
	}
}
