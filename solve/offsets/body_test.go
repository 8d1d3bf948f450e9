package offsets_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/offsets"
)

// The bicubic surface against scipy's curves laid one over the other, and its
// integrals against sums over a fine grid.
func TestABodyAgainstScipy(t *testing.T) {
	var want struct {
		X, Heights          []float64
		Half                [][]float64
		Volume, Side, Floor float64
		Points              [][2]float64
		At                  []float64
	}
	oracle.Decode(t, oracle.Python, "testdata/body.py", &want)
	top := want.Heights[len(want.Heights)-1]
	table := offsets.Table{Heights: want.Heights}
	for i, x := range want.X {
		table.Stations = append(table.Stations, offsets.Station{X: x, Half: want.Half[i], Crown: top})
	}
	s := must(t, table)
	check := func(name string, got, expected, tolerance float64, unit string) {
		proof.Check(t, proof.Case{Name: "body through a table of offsets: " + name, Source: "scipy 1.10.1, PchipInterpolator, and numpy's trapezium rule",
			Inputs: "testdata/body.py", Got: got, Expected: expected, Tolerance: tolerance, Unit: unit})
	}
	check("volume", s.Volume(s.Start(), s.End()), want.Volume, 0.0005*want.Volume, "mm3")
	check("one side", s.Side(s.Start(), s.End(), 0, top).Area, want.Side, 0.0005*want.Side, "mm2")
	check("floor", s.Level(s.Start(), s.End(), -9999, 9999, 0).Area, want.Floor, 0.0005*want.Floor, "mm2")
	for i, p := range want.Points {
		check(fmt.Sprintf("half-breadth at x %g, z %g", p[0], p[1]), s.Half(p[0], p[1]), want.At[i], 0.5, "mm")
	}
}
