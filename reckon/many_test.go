package reckon_test

import (
	"fmt"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// boxes is a build with so many lockers more: spread through the van in a lattice, or all in one spot.
func boxes(t testing.TB, n int, spread bool) *build.Document {
	t.Helper()
	doc := demo(t, "dipper")
	fittings := &tree.Node{Kind: tree.Map}
	for i := range n {
		x, y, z := 200+i%5, 300+i%7, 100
		if spread {
			x, y, z = 100+i%20*140, -700+i/20%14*100, 60+i/280*150
		}
		text := fmt.Sprintf(`{"make": "carcass", "at": {"x": %d, "y": %d, "z": %d}, "size": {"x": 90, "y": 60, "z": 90}, "of": "ply-poplar-12"}`, x, y, z)
		patch, err := tree.ParsePatch([]byte(text))
		if err != nil {
			t.Fatal(err)
		}
		fittings.Entries = append(fittings.Entries, tree.Entry{Key: fmt.Sprintf("box-%d", i), Value: tree.Merge(&tree.Node{Kind: tree.Map}, patch)})
	}
	return applied(t, doc, tree.Setting("/fittings", fittings))
}

// mover moves one of many boxes a little further each time, as a drag does, and reads and reckons what comes of it.
func mover(t testing.TB, n int, spread bool) func() {
	t.Helper()
	doc := boxes(t, n, spread)
	m := reckon.NewMachine()
	r := m.Reckon(doc, quantity.Date{})
	step := 0.0
	return func() {
		step++
		patch, ok := r.MovePatch(reckon.Move{Fitting: "box-7", DX: step})
		if !ok {
			t.Fatal("the box cannot be moved")
		}
		after, err := build.DecodeTree(tree.Merge(r.Written(), patch), catalogue.Builtin())
		if err != nil {
			t.Fatal(err)
		}
		m.Reckon(after, quantity.Date{})
	}
}

// What one move costs grows as the fittings do, not as their pairs. Time is for the benchmark; what is allocated can be held here.
func TestMovingOneOfManyFittingsTakesWorkByTheFittingNotByThePair(t *testing.T) {
	for name, spread := range map[string]bool{"spread through the van": true, "all in one spot": false} {
		few, many := testing.AllocsPerRun(1, mover(t, 30, spread)), testing.AllocsPerRun(1, mover(t, 90, spread))
		if many > 4*few {
			t.Errorf("%s: three times the fittings take %.0f allocations instead of %.0f", name, many, few)
		}
	}
}

// Goal for two thousand fittings spread through the van: 150 ms after one was moved.
func BenchmarkMovingOneOfManyFittings(b *testing.B) {
	for _, c := range []struct {
		name   string
		n      int
		spread bool
	}{{"200 spread", 200, true}, {"2000 spread", 2000, true}, {"200 in one spot", 200, false}, {"500 in one spot", 500, false}} {
		b.Run(c.name, func(b *testing.B) {
			move := mover(b, c.n, c.spread)
			b.ReportAllocs()
			for b.Loop() {
				move()
			}
		})
	}
}
