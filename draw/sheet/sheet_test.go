package sheet_test

import (
	"os"
	"path/filepath"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// demo reckons one of the example builds.
func demo(t testing.TB, name string) *reckon.Reckoning {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "examples", name+".yaml"))
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return reckon.NewMachine().Reckon(doc, quantity.Date{Year: 2026, Month: 9, Day: 19})
}

func BenchmarkArrangement(b *testing.B) {
	r := demo(b, "dipper")
	b.ReportAllocs()
	for b.Loop() {
		sheet.Arrangement(r, sheet.View{Mode: "night"})
	}
}
