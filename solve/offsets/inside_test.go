package offsets_test

import (
	"math"
	"testing"
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
