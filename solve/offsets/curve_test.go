package offsets_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/offsets"
)

func TestTheCurveIsThatOfScipy(t *testing.T) {
	var cases []struct {
		Name                   string
		X, Y, At, Value, Slope []float64
	}
	oracle.Decode(t, oracle.Python, "testdata/pchip.py", &cases)
	for _, c := range cases {
		curve := offsets.NewCurve(c.X, c.Y)
		worst, worstSlope := 0.0, 0.0
		for i, x := range c.At {
			worst = math.Max(worst, math.Abs(curve.At(x)-c.Value[i]))
			if i < len(c.Slope) {
				worstSlope = math.Max(worstSlope, math.Abs(curve.Slope(x)-c.Slope[i]))
			}
		}
		proof.Check(t, proof.Case{Name: "shape-preserving cubic, " + c.Name + ": largest difference at 41 places",
			Source: "scipy 1.10.1, PchipInterpolator", Inputs: "testdata/pchip.py", Got: worst, Tolerance: 1e-9, Unit: "mm"})
		proof.Check(t, proof.Case{Name: "shape-preserving cubic, " + c.Name + ": largest difference of slope",
			Source: "scipy 1.10.1, PchipInterpolator", Inputs: "testdata/pchip.py", Got: worstSlope, Tolerance: 1e-9, Unit: "1"})
	}
}

func TestTheCurveStaysBetweenNeighbouringReadings(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		n := 2 + rng.IntN(8)
		x, y := make([]float64, n), make([]float64, n)
		for i := range n {
			y[i] = rng.Float64() * 100
			if i > 0 {
				x[i] = x[i-1] + 0.1 + rng.Float64()
			}
		}
		c := offsets.NewCurve(x, y)
		for i := range n - 1 {
			lo, hi := min(y[i], y[i+1])-1e-9, max(y[i], y[i+1])+1e-9
			for k := range 21 {
				at := x[i] + float64(k)/20*(x[i+1]-x[i])
				if v := c.At(at); v < lo || v > hi {
					t.Fatalf("between (%g, %g) and (%g, %g) the curve is %g at %g", x[i], y[i], x[i+1], y[i+1], v, at)
				}
			}
		}
	}
}

func TestTheCurveIsConstantOutsideItsPoints(t *testing.T) {
	c := offsets.NewCurve([]float64{0, 1, 3}, []float64{2, 4, 5})
	for _, p := range [][2]float64{{-1, 2}, {0, 2}, {3, 5}, {99, 5}} {
		if got := c.At(p[0]); got != p[1] {
			t.Errorf("at %g: got %g, want %g", p[0], got, p[1])
		}
	}
	if got := offsets.NewCurve([]float64{7}, []float64{3}).At(12); got != 3 {
		t.Errorf("a single point: got %g, want 3", got)
	}
}
