package conduction_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

// rectangle is a region with its corners in millimetres.
func rectangle(x0, y0, x1, y1, conductivity float64) conduction.Region {
	return conduction.Region{X0: x0 / 1000, Y0: y0 / 1000, X1: x1 / 1000, Y1: y1 / 1000, Conductivity: conductivity}
}

func solve(t testing.TB, s conduction.Section, want conduction.Accuracy) conduction.Result {
	t.Helper()
	r, err := conduction.Solve(s, want)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func at(t testing.TB, r conduction.Result, p conduction.Point) float64 {
	t.Helper()
	v, ok := r.Field.At(p)
	if !ok {
		t.Fatalf("(%g, %g) is not in the material", p.X, p.Y)
	}
	return v
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

// series is the exact solution of case 1, y from the bottom.
func series(x, y float64) float64 {
	var sum float64
	for n := 1.0; n < 400; n += 2 {
		a := n * math.Pi / 2
		ratio := math.Exp(a*(y-2)) * (1 - math.Exp(-2*a*y)) / (1 - math.Exp(-4*a))
		sum += 80 / (n * math.Pi) * math.Sin(a*x) * ratio
	}
	return sum
}

func TestISO10211Case1HasTheTablesTemperatures(t *testing.T) {
	table := [7][4]float64{
		{9.7, 13.4, 14.7, 15.1}, {5.3, 8.6, 10.3, 10.8}, {3.2, 5.6, 7.0, 7.5}, {2.0, 3.6, 4.7, 5.0},
		{1.3, 2.3, 3.0, 3.2}, {0.7, 1.4, 1.8, 1.9}, {0.3, 0.6, 0.8, 0.9},
	}
	want := conduction.Accuracy{Temperature: 0.0005}
	for row := range table {
		for col := range table[row] {
			want.Points = append(want.Points, conduction.Point{X: 0.25 * float64(col+1), Y: 2 - 0.25*float64(row+1)})
		}
	}
	r := solve(t, column(), want)
	for k, p := range want.Points {
		got := at(t, r, p)
		inputs := fmt.Sprintf("rectangle 1 by 2, 20 °C above, 0 °C left and below, at x %g, depth %g", p.X, 2-p.Y)
		proof.Check(t, proof.Case{Name: "temperature in a square column, table", Source: "ISO 10211 annex, case 1; the table as a public repository shows it",
			Inputs: inputs, Expected: table[k/4][k%4], Got: got, Tolerance: 0.06, Unit: "°C"}) // 0.05 is its rounding
		proof.Check(t, proof.Case{Name: "temperature in a square column, series", Source: "Fourier series of ISO 10211 case 1",
			Inputs: inputs, Expected: series(p.X, p.Y), Got: got, Tolerance: 0.01, Unit: "°C"})
	}
}

// panel is ISO 10211 case 2: a Z of aluminium in an insulated panel.
func panel() conduction.Section {
	return conduction.Section{
		Regions: []conduction.Region{
			rectangle(0, 0, 500, 47.5, 0.029),   // insulation
			rectangle(0, 41.5, 500, 47.5, 1.15), // concrete
			rectangle(0, 36.5, 15, 41.5, 0.12),  // wood
			rectangle(0, 35, 15, 36.5, 230),
			rectangle(0, 1.5, 1.5, 35, 230),
			rectangle(0, 0, 500, 1.5, 230),
		},
		Boundaries: []conduction.Boundary{
			{Name: "inside", X1: 0.5, Temperature: 20, Resistance: 0.11},
			{Name: "outside", Y0: 0.0475, X1: 0.5, Y1: 0.0475, Temperature: 0, Resistance: 0.06},
		},
	}
}

func TestISO10211Case2HasTheTablesTemperaturesAndHeatFlow(t *testing.T) {
	tests := []struct {
		point       string
		x, y        float64 // mm
		table, fine float64 // °C
	}{
		{"A", 0, 47.5, 7.1, 7.065}, {"B", 500, 47.5, 0.8, 0.761}, {"C", 0, 41.5, 7.9, 7.898},
		{"D", 15, 41.5, 6.3, 6.273}, {"E", 500, 41.5, 0.8, 0.827}, {"F", 0, 36.5, 16.4, 16.407},
		{"G", 15, 36.5, 16.3, 16.333}, {"H", 0, 0, 16.8, 16.767}, {"I", 500, 0, 18.3, 18.334},
	}
	r := solve(t, panel(), conduction.Accuracy{Coupling: 0.001, Temperature: 0.001})
	const inputs = "ISO 10211 case 2, Rse 0.06, Rsi 0.11 m²K/W, 0 and 20 °C, half width 500 mm"
	for _, tt := range tests {
		got := at(t, r, conduction.Point{X: tt.x / 1000, Y: tt.y / 1000})
		proof.Check(t, proof.Case{Name: "panel with a metal Z, table, point " + tt.point, Source: "ISO 10211 annex, case 2; the table as a public repository shows it",
			Inputs: inputs, Expected: tt.table, Got: got, Tolerance: 0.1, Unit: "°C"})
		proof.Check(t, proof.Case{Name: "panel with a metal Z, point " + tt.point, Source: "independent bilinear finite elements, 214 by 98 points",
			Inputs: inputs, Expected: tt.fine, Got: got, Tolerance: 0.03, Unit: "°C"})
	}
	for _, s := range r.Surfaces {
		proof.Check(t, proof.Case{Name: "panel with a metal Z, heat at the " + s.Name + ", table", Source: "ISO 10211 annex, case 2",
			Inputs: inputs, Expected: 9.5, Got: math.Abs(s.Heat), Tolerance: 0.1, Unit: "W/m"})
		proof.Check(t, proof.Case{Name: "panel with a metal Z, heat at the " + s.Name, Source: "independent bilinear finite elements, 214 by 98 points",
			Inputs: inputs, Expected: 9.492, Got: math.Abs(s.Heat), Tolerance: 0.01, Unit: "W/m"})
	}
}
