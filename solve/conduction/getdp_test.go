package conduction_test

import (
	"strconv"
	"strings"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

// hat is the detail of testdata/hat.pro: a folded steel hat on a sheet, air within, foam and board over it.
func hat(t testing.TB) (s conduction.Section) {
	t.Helper()
	read(t, "testdata/hat.json", &s)
	return s
}

// A last figure on each line that getdp prints is the value: two heat flows, then six temperatures.
func lastFigures(t *testing.T, text string) (figures []float64) {
	t.Helper()
	for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
		words := strings.Fields(line)
		v, err := strconv.ParseFloat(words[len(words)-1], 64)
		if err != nil {
			t.Fatalf("%q: %v", line, err)
		}
		figures = append(figures, v)
	}
	return figures
}

// The mesh of the other program is one of triangles, made by gmsh from testdata/hat.geo; its elements are of second
// order. With a mesh three times finer its heat flow falls from 5.2972 to 5.2966 W/m, which is the tolerance here.
func TestAFoldedHatAgreesWithFiniteElementsOnTriangles(t *testing.T) {
	want := lastFigures(t, string(oracle.Ask(t, oracle.GetDP, "testdata/hat.pro", "testdata/hat.msh")))
	if len(want) != 8 {
		t.Fatalf("got %d figures, want 8: %v", len(want), want)
	}
	r := solve(t, hat(t), conduction.Accuracy{Coupling: 0.001, Temperature: 0.0005})
	check := func(name string, want, got, tolerance float64, unit string) {
		proof.Check(t, proof.Case{Name: name + " of a folded steel hat", Source: "getdp, second-order triangles, testdata/hat.pro",
			Inputs: "testdata/hat.pro: 0 and 20 °C, Rse 0.04, Rsi 0.13 m²K/W", Expected: want, Got: got, Tolerance: tolerance, Unit: unit})
	}
	check("heat into the inside", want[0], r.Surfaces[1].Heat, 0.001, "W/m")
	check("heat out of the outside", want[1], r.Surfaces[0].Heat, 0.001, "W/m")
	for k, p := range []conduction.Point{{X: 0, Y: 0.045}, {X: 0.3, Y: 0.045}, {X: 0, Y: 0.0305}, {X: 0.0275, Y: 0.0015}, {X: 0.01, Y: 0.016}, {X: 0.1, Y: 0.02}} {
		check("temperature at point "+strconv.Itoa(k+1), want[k+2], at(t, r, p), 0.005, "°C")
	}
}
