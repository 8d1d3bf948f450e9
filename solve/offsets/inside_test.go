package offsets_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/offsets"
)

// Inside a half cylinder of radius 900 lies one of radius 850.
func TestASecondSurfaceInsideACylinderIsACylinder(t *testing.T) {
	heights := make([]float64, 27) // even in angle, to 78°
	for i := range heights {
		heights[i] = 900 * math.Sin(float64(i)*3*math.Pi/180)
	}
	s := must(t, table([]float64{0, 1000, 2000}, heights, func(x, z float64) float64 { return math.Sqrt(810000 - z*z) }, func(float64) float64 { return 900 }))
	for _, angle := range []float64{5, 20, 40, 60} {
		sin, cos := math.Sincos(angle * math.Pi / 180)
		// the tangent plane 50 inside the point at this angle, cut at the same height
		want := 900*cos - 50/cos
		if got := s.HalfInside(700, 900*sin, 50); math.Abs(got-want) > 0.3 {
			t.Errorf("%g° up the side: got %.2f, want %.2f", angle, got, want)
		}
	}
	for _, y := range []float64{0, 60, 120} {
		z := math.Sqrt(810000 - y*y)
		if got, want := s.TopInside(700, y, 50), z-50*900/z; math.Abs(got-want) > 0.3 {
			t.Errorf("roof at y %g: got %.2f, want %.2f", y, got, want)
		}
	}
}

// The tangent plane against a true parallel line: a tenth of a millimetre
// apart, except above 1350, where the side bends most, one.
func TestASecondSurfaceAgainstAParallelLine(t *testing.T) {
	var want struct {
		Heights, Half []float64
		Inside        [][2]float64
	}
	oracle.Decode(t, oracle.Python, "testdata/inside.py", &want)
	flat := offsets.Table{Heights: want.Heights}
	for _, x := range []float64{0, 1000} {
		flat.Stations = append(flat.Stations, offsets.Station{X: x, Half: want.Half, Crown: 1784})
	}
	s := must(t, flat)
	for _, c := range want.Inside {
		tolerance := 0.1
		if c[0] > 1350 {
			tolerance = 1
		}
		proof.Check(t, proof.Case{Name: fmt.Sprintf("half-breadth 60 inside a side at height %g", c[0]), Source: "shapely 1.8.5, buffer of a polygon",
			Inputs: "testdata/inside.py", Got: s.HalfInside(500, c[0], 60), Expected: c[1], Tolerance: tolerance, Unit: "mm"})
	}
}
