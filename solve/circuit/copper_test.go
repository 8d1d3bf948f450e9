package circuit_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/circuit"
)

func perMetre(t *testing.T, class circuit.Class, area, celsius float64) float64 {
	t.Helper()
	r, err := circuit.PerMetre(class, area, celsius)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// The wiring rules give the voltage drop of flexible cords at 60 °C for supply and return together, in whole millivolts.
func TestFlexibleCopperHasTheVoltageDropOfTheWiringRules(t *testing.T) {
	for _, row := range []struct{ area, millivolts, tolerance float64 }{{0.5, 93, 0.5}, {0.75, 62, 0.5}, {1, 46, 0.5}, {1.5, 32, 0.5}, {2.5, 19, 0.5}, {4, 12, 0.5}} {
		proof.Check(t, proof.Case{Name: "voltage drop of two-core flexible cord at 60 °C", Source: "BS 7671, table 4F3B as a distributor prints it, two digits",
			Inputs: fmt.Sprintf("%g mm², class 5 tinned, 60 °C", row.area), Expected: row.millivolts, Got: 2000 * perMetre(t, circuit.FlexibleTinned, row.area, 60), Tolerance: row.tolerance, Unit: "mV/(A·m)"})
	}
}

func TestCopperWarmsAsHandbooksSay(t *testing.T) {
	for _, row := range []struct{ celsius, want float64 }{{20, 1}, {30, 1.0393}, {50, 1.1179}, {60, 1.1572}, {70, 1.1965}, {105, 1.3341}} {
		got := perMetre(t, circuit.Flexible, 25, row.celsius) / 0.780e-3
		proof.Check(t, proof.Case{Name: "resistance of copper against that at 20 °C", Source: "an industrial power handbook, α 0.00393 per K",
			Inputs: fmt.Sprintf("%g °C", row.celsius), Expected: row.want, Got: got, Tolerance: 5.001e-5, Unit: "1"})
		proof.Check(t, proof.Case{Name: "resistance of copper against that at 20 °C, by the standard's own form", Source: "IEC 60228, annex on temperature (from memory): (234.5 + t)/254.5",
			Inputs: fmt.Sprintf("%g °C", row.celsius), Expected: (234.5 + row.celsius) / 254.5, Got: got, Tolerance: 1e-4, Unit: "1"})
	}
}

// No conductor of the table may resist less than pure copper of its area, and none much more; larger ones resist less.
func TestTheTableLiesAbovePureCopperAndFalls(t *testing.T) {
	areas := []float64{0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150}
	for _, class := range []circuit.Class{circuit.Stranded, circuit.Flexible, circuit.FlexibleTinned} {
		before := 1.0
		for _, area := range areas {
			r, err := circuit.PerMetre(class, area, 20)
			if class == circuit.Stranded && (area < 1 || area > 50) {
				if err == nil {
					t.Errorf("%s of %g mm² has %g Ω/m though no print gives it", class, area, r)
				}
				continue
			}
			if ratio := r * 58 * area; err != nil || ratio < 1.04 || ratio > 1.20 || r >= before {
				t.Errorf("%s of %g mm²: %g Ω/m, %g of pure copper, %v", class, area, r, ratio, err)
			}
			before = r
		}
	}
}

func TestConductorsOutsideTheTableAreRefused(t *testing.T) {
	tests := []struct {
		name          string
		class         circuit.Class
		area, celsius float64
		want          string
	}{
		{"an area between two rows", circuit.Flexible, 3, 20, "area: no flexible (class 5) conductor of 3 mm²"},
		{"no area", circuit.Stranded, 0, 20, "area: no stranded (class 2)"},
		{"an unknown class", circuit.Class(7), 4, 20, "class numbered 7"},
		{"too hot", circuit.FlexibleTinned, 4, 400, "temperature: 400"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if r, err := circuit.PerMetre(tt.class, tt.area, tt.celsius); err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %g, %v, want an error with %q", r, err, tt.want)
			}
		})
	}
}
