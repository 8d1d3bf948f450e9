package conduction_test

import (
	"fmt"

	"tumblehome/solve/conduction"
)

// A sheet, foam and a board every 600 mm bridged by a steel web with a flange: half of one repeat.
func ExampleSolve() {
	wall := conduction.Wall{Outer: 0.04, Inner: 0.13, Layers: []conduction.Layer{
		{Name: "sheet", Thickness: 0.001, Conductivity: 50},
		{Name: "foam", Thickness: 0.040, Conductivity: 0.035},
		{Name: "board", Thickness: 0.004, Conductivity: 0.17},
	}}
	section := wall.Section(0.3, 0, 20)
	section.Regions = append(section.Regions,
		conduction.Region{Name: "web", X0: 0, Y0: 0.001, X1: 0.0005, Y1: 0.041, Conductivity: 50},
		conduction.Region{Name: "flange", X0: 0, Y0: 0.040, X1: 0.015, Y1: 0.041, Conductivity: 50})
	r, err := conduction.Solve(section, conduction.Accuracy{Coupling: 0.005, Temperature: 0.005})
	if err != nil {
		fmt.Println(err)
		return
	}
	inner := r.Surfaces[1]
	fmt.Printf("U %.2f bridged, %.2f plain, Ψ %.2f W/(m·K)\n", r.Coupling/0.3, wall.Transmittance(), 2*r.Excess(wall.Transmittance(), 0.3))
	fmt.Printf("coldest inside %.1f °C at x = %g, fRsi %.2f\n", inner.Lowest.Temperature, inner.Lowest.X, r.Factor(inner))
	// Output:
	// U 1.05 bridged, 0.75 plain, Ψ 0.18 W/(m·K)
	// coldest inside 8.0 °C at x = 0, fRsi 0.40
}

func ExampleWall_Follow() {
	wall := conduction.Wall{Outer: 0.04, Inner: 0.13, Layers: []conduction.Layer{
		{Name: "timber", Thickness: 0.02, Conductivity: 0.13, Density: 500, HeatCapacity: 1600}}}
	cold, warm := conduction.Drive{Temperature: 0}, conduction.Drive{Temperature: 20}
	f, err := wall.Follow(0, cold, warm, 60, 12)
	if err != nil {
		fmt.Println(err)
		return
	}
	for range 60 {
		f.Step(cold, warm)
	}
	_, inner := f.Surfaces()
	fmt.Printf("the inner surface an hour after heating begins: %.1f °C\n", inner)
	// Output:
	// the inner surface an hour after heating begins: 11.9 °C
}

func ExampleAirLayer() {
	gap := conduction.AirLayer{Thickness: 0.025, EmissivityA: 0.9, EmissivityB: 0.9, Mean: 10, Flow: conduction.Level}
	fmt.Printf("R %.2f m²·K/W, as a region λ %.3f W/(m·K)\n", gap.Resistance(), gap.Conductivity())
	// Output:
	// R 0.18 m²·K/W, as a region λ 0.137 W/(m·K)
}
