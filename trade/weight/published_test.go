package weight_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/weight"
)

// put loads things at distances from the front axle into a van weighed empty, and weighs it again.
func put(wheelbase, front, rear float64, things ...takeoff.Line) weight.Result {
	for i := range things {
		things[i].Pointer = fmt.Sprintf("/fittings/t%d", i)
	}
	return weight.Work(weight.Inputs{
		Wheelbase: quantity.Length(wheelbase), Lines: things, Track: 1710,
		Weighings: []weight.Weighing{{ID: "empty", Front: quantity.Mass(front), Rear: quantity.Mass(rear), Step: mass(0), Fuel: share(0)}},
	})
}

func thing(m, x float64) takeoff.Line { return takeoff.Line{Mass: m, At: [3]float64{x, 0, 0}} }

func beside(m, y float64) takeoff.Line { return takeoff.Line{Mass: m, At: [3]float64{0, y, 0}} }

// TestPrintedCasesOfTheLeverRule: the table carries exact answers; what the source prints is rounded, so one unit of its
// last digit is allowed. The handbook with the truck chassis misprints the front load (38.86 for 37.86).
func TestPrintedCasesOfTheLeverRule(t *testing.T) {
	file, err := os.Open("testdata/axle_load_cases.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment, r.LazyQuotes = '#', true
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range rows[1:] {
		v := make([]float64, 8)
		for i := 1; i < 8; i++ {
			v[i] = number(t, row[i])
		}
		got := put(v[1], v[2], v[3], thing(v[4], v[5]))
		inputs := fmt.Sprintf("L %g mm, empty %g / %g kg, %g kg at %g mm", v[1], v[2], v[3], v[4], v[5])
		for _, c := range []struct {
			axle, code string
			want       float64
		}{{"front", "weight.front-axle", v[6]}, {"rear", "weight.rear-axle", v[7]}} {
			proof.Check(t, proof.Case{
				Name: row[0] + ": " + c.axle, Source: strings.TrimPrefix(row[9], "read: ") + ", printed " + row[8], Inputs: inputs,
				Expected: c.want, Got: figure(t, got, c.code), Tolerance: 0.01, Unit: "kg",
			})
		}
	}
}

func TestConstructedVanOfSixThings(t *testing.T) {
	r := put(3665, 1200, 800, thing(75, 700), thing(75, 700), thing(150, 3200), thing(100, 4600), thing(200, 2300), thing(45, 1400))
	for _, c := range []struct {
		code string
		want float64
	}{{"weight.front-axle", 1417.2}, {"weight.rear-axle", 1227.8}, {"weight.total", 2645}} {
		proof.Check(t, proof.Case{
			Name: "six things in an empty van, " + c.code, Source: "lever rule by hand, own computation apart from this code",
			Inputs: "L 3665, empty 1200/800; 75, 75 at 700, 150 at 3200, 100 at 4600, 200 at 2300, 45 at 1400", Expected: c.want, Got: figure(t, r, c.code), Tolerance: 0.05, Unit: "kg",
		})
	}
}

func TestSideBalance(t *testing.T) {
	r := put(3000, 1000, 1000, beside(60, -800), beside(30, -800), beside(45, 800), beside(40, 600), beside(70, 700))
	total := figure(t, r, "weight.total")
	proof.Check(t, proof.Case{
		Name: "right heavier than left", Source: "2·Σ(m·y)/t by hand, own computation apart from this code", Inputs: "t 1710; 60, 30 at −800, 45 at 800, 40 at 600, 70 at 700 mm",
		Expected: 43.3, Got: figure(t, r, "weight.side") / 100 * total, Tolerance: 0.05, Unit: "kg",
	})
	proof.Check(t, proof.Case{
		Name: "middle of the mass, sideways", Source: "Σ(m·y)/Σm by hand", Inputs: "37 kg m in 2245 kg", Expected: 37e3 / 2245, Got: figure(t, r, "weight.centre.y"), Tolerance: 1e-9, Unit: "mm",
	})
}

func TestHeightByLiftingAnAxle(t *testing.T) {
	proof.Check(t, proof.Case{
		Name: "height of the mass from an axle lifted 600 mm", Source: "ISO 10392 formula, constructed backwards from h 950 mm", Inputs: "m 3000, L 3665, r 340, ΔF 82.86, tan θ 0.16595",
		Expected: 950, Got: weight.LiftedHeight(340, 3665, 82.86, 3000, 0.16595), Tolerance: 0.5, Unit: "mm",
	})
	// A much-copied textbook example prints 340 mm for these inputs; its own equation gives 1 876 mm.
	gain := 18000/9.81 - 2000*1200.0/2300 // level load of the front axle: m·(L − a1)/L
	got := weight.LiftedHeight(300, 2300, gain, 2000, 0.57735)
	proof.Check(t, proof.Case{
		Name: "height from an implausible lift", Source: "a vehicle dynamics textbook's own equation (its printed 34 cm is wrong)", Inputs: "m 2000, ground axle 18 000 N, θ 30°, a1 1.10 m, L 2.30 m, r 0.30 m",
		Expected: 1876, Got: got, Tolerance: 0.5, Unit: "mm",
	})
	if weight.LiftedHeight(300, 2300, 50, 0, 0) != 0 {
		t.Error("nothing lifted has a height")
	}
}
