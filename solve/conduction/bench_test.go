package conduction_test

import (
	"testing"

	"tumblehome/solve/conduction"
)

// The goal is 20 ms for a detail at half a per cent.
func BenchmarkADetailAtHalfAPerCent(b *testing.B) {
	s := hat(b)
	for b.Loop() {
		solve(b, s, conduction.Accuracy{Coupling: 0.005, Temperature: 0.005})
	}
}

func BenchmarkISO10211Case2AtATenthOfAPerCent(b *testing.B) {
	s := readCases(b)[1].Section
	for b.Loop() {
		solve(b, s, conduction.Accuracy{Coupling: 0.001, Temperature: 0.001})
	}
}

func BenchmarkANightOfAWallInMinutes(b *testing.B) {
	for b.Loop() {
		w, err := light().Follow(15, conduction.Drive{}, conduction.Drive{Temperature: 15}, 60, 8)
		if err != nil {
			b.Fatal(err)
		}
		for range 8 * 60 {
			w.Step(conduction.Drive{}, conduction.Drive{Temperature: 15})
		}
	}
}

// light is a light wall: sheet, foam and board.
func light() conduction.Wall {
	return conduction.Wall{Outer: 0.04, Inner: 0.13, Layers: []conduction.Layer{
		{Name: "sheet", Thickness: 0.001, Conductivity: 50, Density: 7800, HeatCapacity: 450},
		{Name: "foam", Thickness: 0.040, Conductivity: 0.035, Density: 35, HeatCapacity: 1450},
		{Name: "board", Thickness: 0.004, Conductivity: 0.17, Density: 680, HeatCapacity: 1600},
	}}
}
