package reckon_test

import (
	"os"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func demo(t testing.TB, name string) *build.Document {
	t.Helper()
	text, err := os.ReadFile("../examples/" + name + ".yaml")
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// applied is the document with a patch; reading it again is part of what an edit costs.
func applied(t testing.TB, doc *build.Document, patch tree.Patch) *build.Document {
	t.Helper()
	after, err := build.Apply(doc, patch, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return after
}

// Goals on one core: cold 150 ms, a fitting moved 8 ms, an offset changed 40 ms.

func BenchmarkColdReckoning(b *testing.B) {
	doc := demo(b, "dipper")
	for b.Loop() {
		reckon.NewMachine().Reckon(doc, quantity.Date{})
	}
}

func BenchmarkMovingAFitting(b *testing.B) {
	doc := demo(b, "dipper")
	m := reckon.NewMachine()
	r := m.Reckon(doc, quantity.Date{})
	step := 0.0
	for b.Loop() {
		step++
		patch, ok := r.MovePatch(reckon.Move{Fitting: "table", DX: step})
		if !ok {
			b.Fatal("the table cannot be moved")
		}
		after, err := build.DecodeTree(tree.Merge(r.Written(), patch), catalogue.Builtin())
		if err != nil {
			b.Fatal(err)
		}
		m.Reckon(after, quantity.Date{})
	}
}

func BenchmarkChangingAnOffset(b *testing.B) {
	doc := demo(b, "dipper")
	m := reckon.NewMachine()
	m.Reckon(doc, quantity.Date{})
	crown := 1758.0
	for b.Loop() {
		crown += 0.01
		patch := tree.Setting("/shell/offsets/stations/s0/crown", tree.Plain(quantity.Length(crown).String()))
		m.Reckon(applied(b, doc, patch), quantity.Date{})
	}
}
