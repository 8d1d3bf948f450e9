package conduction_test

import (
	"encoding/json"
	"os"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

// detail is a bridged wall of testdata/sections.json with the figures expected of it.
type detail struct {
	Name              string
	Wall              conduction.Wall
	Width             float64
	Bridges           []conduction.Region
	U, Bridge, Middle float64 // W/(m²·K), temperature factor on the bridge and half-way between bridges
}

func (d detail) section() conduction.Section {
	s := d.Wall.Section(d.Width, 0, 1)
	s.Regions = append(s.Regions, d.Bridges...)
	return s
}

func details(t testing.TB) (all []detail) {
	t.Helper()
	text, err := os.ReadFile("testdata/sections.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &all); err != nil {
		t.Fatal(err)
	}
	return all
}

func TestBridgedWallsHaveTheReferencesTransmittanceAndFactors(t *testing.T) {
	const source = "two independent 2D runs (bilinear finite elements, mesh-converged to 0.0005 in U)"
	for _, d := range details(t) {
		r := solve(t, d.section(), conduction.Accuracy{Coupling: 0.002, Temperature: 0.001})
		top := r.Surfaces[1].Lowest.Y
		inputs := d.Name + ": testdata/sections.json, 0 and 1 °C"
		check := func(name string, want, got, tolerance float64, unit string) {
			proof.Check(t, proof.Case{Name: name + ", " + d.Name, Source: source, Inputs: inputs,
				Expected: want, Got: got, Tolerance: tolerance, Unit: unit})
		}
		check("transmittance", d.U, r.Coupling/d.Width, 0.003, "W/m2K")
		check("temperature factor on the bridge", d.Bridge, r.Factor(r.Surfaces[1]), 0.005, "1")
		check("temperature factor between bridges", d.Middle, at(t, r, conduction.Point{X: d.Width, Y: top}), 0.005, "1")
	}
}

func TestPlainLayersAreExact(t *testing.T) {
	d := details(t)[0]
	r := solve(t, d.section(), conduction.Accuracy{Coupling: 0.005})
	u := d.Wall.Transmittance()
	near(t, "transmittance", r.Coupling/d.Width, u, 1e-10)
	near(t, "excess over the plain wall", r.Excess(u, d.Width), 0, 1e-10)
	near(t, "fRsi = 1 - U*Rsi", r.Factor(r.Surfaces[1]), 1-u*d.Wall.Inner, 1e-10)
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
