package reckon_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// A machine that has worked on a build before says the same of it as one that never has, move for move.
func TestWhatAMachineRemembersChangesNothing(t *testing.T) {
	for _, name := range []string{"dipper", "godwit"} {
		t.Run(name, func(t *testing.T) {
			random := rand.New(rand.NewPCG(4, 20))
			warm := quick()
			r := warm.Reckon(demo(t, name), quantity.Date{})
			ids := build.SortedKeys(r.Document.Fittings)
			for range 25 {
				move := reckon.Move{Fitting: ids[random.IntN(len(ids))], DX: random.Float64()*600 - 300, DY: random.Float64()*400 - 200}
				patch, ok := r.MovePatch(move)
				if !ok {
					continue
				}
				doc, err := build.DecodeTree(tree.Merge(r.Written(), patch), catalogue.Builtin())
				if err != nil {
					continue // moved out of all bounds
				}
				r = warm.Reckon(doc, quantity.Date{})
				fresh := quick().Reckon(doc, quantity.Date{})
				if !reflect.DeepEqual(r.Figures, fresh.Figures) {
					t.Fatalf("after %s the figures are others: %s", fmt.Sprint(move), firstOther(r, fresh))
				}
				if !reflect.DeepEqual(r.Findings, fresh.Findings) {
					t.Fatalf("after %s the findings are others:\n%v\n%v", fmt.Sprint(move), r.Findings, fresh.Findings)
				}
			}
		})
	}
}

func firstOther(a, b *reckon.Reckoning) string {
	for i := range min(len(a.Figures), len(b.Figures)) {
		if !reflect.DeepEqual(a.Figures[i], b.Figures[i]) {
			return fmt.Sprintf("%+v\n%+v", a.Figures[i], b.Figures[i])
		}
	}
	return "their number"
}
