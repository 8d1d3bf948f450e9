package conduction_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

func TestAirLayersHaveTheResistanceOfTheStandardsTable(t *testing.T) {
	table := []struct{ mm, up, level, down float64 }{
		{5, 0.11, 0.11, 0.11}, {7, 0.13, 0.13, 0.13}, {10, 0.15, 0.15, 0.15}, {15, 0.16, 0.17, 0.17}, {25, 0.16, 0.18, 0.19},
		{50, 0.16, 0.18, 0.21}, {100, 0.16, 0.18, 0.22}, {300, 0.16, 0.18, 0.23},
	}
	for _, row := range table {
		for k, want := range []float64{row.level, row.up, row.down} {
			flow := conduction.Direction(k)
			got := conduction.AirLayer{Thickness: row.mm / 1000, EmissivityA: 0.9, EmissivityB: 0.9, Mean: 10, Flow: flow}.Resistance()
			proof.Check(t, proof.Case{Name: "air layer between ordinary faces", Source: "ISO 6946, table of air layers as a surveying office quotes it",
				Inputs: fmt.Sprintf("%g mm, ε 0.9, 10 °C, flow %s", row.mm, []string{"level", "upward", "downward"}[k]), Expected: want, Got: got, Tolerance: 0.006, Unit: "m2K/W"})
		}
	}
}

// Upward flow in such a gap is left out: the table's convection is another, see AirLayer.Resistance.
func TestLevelGapsComeNearATradeTable(t *testing.T) {
	tests := []struct{ emissivity, want float64 }{{0.05, 0.444}, {0.9, 0.147}}
	for _, tt := range tests {
		got := conduction.AirLayer{Thickness: 0.013, EmissivityA: tt.emissivity, EmissivityB: 0.9, Mean: 23}.Resistance()
		proof.Check(t, proof.Case{Name: "upright gap of 13 mm", Source: "air-space table of a foil insulation association",
			Inputs: fmt.Sprintf("ε %g and 0.9, 23 °C, 5 K", tt.emissivity), Expected: tt.want, Got: got, Tolerance: 0.02, Unit: "m2K/W"})
	}
}

func TestSurfaceResistancesAreTheStandards(t *testing.T) {
	tests := []struct {
		name string
		got  float64
		want float64
	}{
		{"inside, level", conduction.InnerSurface(conduction.Level, 0.9, 20), 0.13},
		{"inside, upward", conduction.InnerSurface(conduction.Upward, 0.9, 20), 0.10},
		{"inside, downward", conduction.InnerSurface(conduction.Downward, 0.9, 20), 0.17},
		{"outside, 4 m/s", conduction.OuterSurface(4, 0.9, 10), 0.04},
	}
	for _, tt := range tests {
		proof.Check(t, proof.Case{Name: "surface resistance " + tt.name, Source: "ISO 6946, conventional surface resistances", Inputs: "ε 0.9",
			Expected: tt.want, Got: tt.got, Tolerance: 0.005, Unit: "m2K/W"})
	}
}

func TestANarrowCavityRadiatesLessAcross(t *testing.T) {
	a := conduction.AirLayer{Thickness: 0.03, EmissivityA: 0.9, EmissivityB: 0.9, Mean: 10}
	wide := a.Resistance()
	a.Width = 1e6
	near(t, "a very wide cavity", a.Resistance(), wide, 1e-6)
	a.Width = 0.038 // by hand: ha 1.25, E 0.8182, shape 0.7424, hr0 5.149
	near(t, "equivalent conductivity of 30 by 38 mm, W/(m·K)", a.Conductivity(), 0.03*(1.25+0.8182*0.7424*5.149), 1e-4)
}
