package conduction_test

import (
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

// rectangle is a region with its corners in millimetres.
func rectangle(x0, y0, x1, y1, conductivity float64) conduction.Region {
	return conduction.Region{X0: x0 / 1000, Y0: y0 / 1000, X1: x1 / 1000, Y1: y1 / 1000, Conductivity: conductivity}
}

// column is ISO 10211 case 1: half of a square column, one unit wide and two high, the top held at 20 °C, the left and
// the bottom at 0 °C, the right a plane of symmetry.
func column() conduction.Section {
	return conduction.Section{
		Regions: []conduction.Region{{X1: 1, Y1: 2, Conductivity: 1}},
		Boundaries: []conduction.Boundary{
			{Name: "top", Y0: 2, X1: 1, Y1: 2, Temperature: 20},
			{Name: "left", Y1: 2},
			{Name: "bottom", X1: 1},
		},
	}
}

func TestPlainLayersAreExact(t *testing.T) {
	r := solve(t, light().Section(0.3, 0, 1), conduction.Accuracy{Coupling: 0.005})
	u := light().Transmittance()
	near(t, "transmittance", r.Coupling/0.3, u, 1e-10)
	near(t, "excess over the plain wall", r.Excess(u, 0.3), 0, 1e-10)
	near(t, "fRsi = 1 - U*Rsi", r.Factor(r.Surfaces[1]), 1-u*light().Inner, 1e-10)
	proof.Check(t, proof.Case{Name: "layers in series", Source: "a public condensation code's test of ISO 6946",
		Inputs:   "0.110/0.667, 0.010/0.41, 0.030/0.0375, 0.030/0.445, 0.010/0.57 m per W/mK, Rse 0.04, Rsi 0.13",
		Expected: 0.80368578, Got: plaster.Transmittance(), Tolerance: 1e-8, Unit: "W/m2K"})
}

var plaster = conduction.Wall{Outer: 0.04, Inner: 0.13, Layers: []conduction.Layer{
	{Thickness: 0.110, Conductivity: 0.667}, {Thickness: 0.010, Conductivity: 0.41}, {Thickness: 0.030, Conductivity: 0.0375},
	{Thickness: 0.030, Conductivity: 0.445}, {Thickness: 0.010, Conductivity: 0.57},
}}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if d := got - want; !(d <= tolerance && d >= -tolerance) {
		t.Errorf("%s: got %.12g, want %.12g within %g", what, got, want, tolerance)
	}
}
