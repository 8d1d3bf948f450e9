package runs_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/solid"
	"tumblehome/trade/runs"
)

// six are the outer diameters of six cables of 2.5 mm2.
var six = []float64{3, 3, 3, 3, 3, 3}

func TestConduitAgainstPublishedFigures(t *testing.T) {
	check := func(name, source, inputs string, want, got, tolerance float64, unit string) {
		t.Helper()
		proof.Check(t, proof.Case{Name: name, Source: source, Inputs: inputs, Expected: want, Got: got, Tolerance: tolerance, Unit: unit})
	}
	const byHand = "six circles of 3.0 mm at the 40 % that conduit tables work with, by hand"
	check("area of six cables of 2.5 mm2", byHand, "d 3.0 mm", 42.4, runs.Area(six), 0.05, "mm2")
	check("bore for six cables of 2.5 mm2", byHand, "42.4 mm2 at 40 %", 11.62, runs.BoreFor(six, runs.MostFull), 0.005, "mm")
	check("fill of that bore", byHand, "42.4 mm2 in 11.62 mm", 0.40, runs.Fill(six, 11.62), 0.0005, "1")
	check("outer diameter of 2.5 mm2", "thin-wall vehicle cable, trade table from memory", "2.5 mm2", 3.0, runs.Diameter(2.5), 1e-9, "mm")
	check("outer diameter of 16 mm2", "thin-wall vehicle cable, trade table from memory", "16 mm2", 7.5, runs.Diameter(16), 1e-9, "mm")
	const iso = "ISO 10133:2012, conductors held every 450 mm at most, those of the battery every 300"
	check("fixings of 3 m of cable", iso, "3000 mm", 8, float64(runs.Supports(3000, 450)), 0, "1")
	check("fixings of 900 mm of cable", iso, "900 mm", 3, float64(runs.Supports(900, 450)), 0, "1")
	check("fixings of 3 m of battery cable", iso, "3000 mm", 11, float64(runs.Supports(3000, 300)), 0, "1")
}

func TestNumpyAndShapelyAgreeOnRandomWays(t *testing.T) {
	var want struct {
		Ways []struct {
			Points       []runs.Point
			Length       float64
			Turns, Radii []float64
		}
		Prisms []struct {
			Outline           [][2]float64
			Low, High, Inside float64
			A, B              runs.Point
		}
	}
	oracle.Decode(t, oracle.Python, "testdata/lines.py", &want)
	for i, w := range want.Ways {
		name := fmt.Sprintf("way %d", i)
		proof.Check(t, proof.Case{Name: name + ", length", Source: "shapely and numpy, testdata/lines.py", Inputs: fmt.Sprint(w.Points), Expected: w.Length, Got: runs.Length(w.Points), Tolerance: 1e-5, Unit: "mm"})
		bends := runs.Bends(w.Points)
		if len(bends) != len(w.Turns) {
			t.Fatalf("%s has %d bends, numpy finds %d", name, len(bends), len(w.Turns))
		}
		for k, b := range bends {
			if off(b.Turn, w.Turns[k], 1e-6) || off(b.Radius, w.Radii[k], 1e-4*w.Radii[k]+1e-4) {
				t.Errorf("%s turns at corner %d by %.6f° with room for %.4f mm, numpy says %.6f° and %.4f", name, b.Corner, b.Turn, b.Radius, w.Turns[k], w.Radii[k])
			}
		}
	}
	crossed := 0
	for i, p := range want.Prisms {
		prism := solid.Prism{Low: p.Low, High: p.High}
		for _, c := range p.Outline {
			prism.Outline = append(prism.Outline, solid.Point{X: c[0], Y: c[1]})
		}
		got := runs.Within(p.A, p.B, solid.Solid{prism})
		if off(got, p.Inside, 1e-4) {
			t.Errorf("prism %d holds %.5f mm of the leg, shapely says %.5f", i, got, p.Inside)
		}
		if p.Inside > 0 {
			crossed++
		}
	}
	if crossed < 15 {
		t.Errorf("only %d prisms are crossed at all", crossed)
	}
}

func off(a, b, by float64) bool { return !(a-b <= by && b-a <= by) }
