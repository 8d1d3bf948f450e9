package fit

import (
	"math"
	"testing"

	"tumblehome/internal/proof"
)

// Whether a rectangle goes into another, by turning it through all angles in steps of a thousandth of a degree and looking whether its
// shadows on both sides are short enough, against the formula.
func TestRectanglesInRectanglesByTurning(t *testing.T) {
	const a, b = 1360.0, 1000.0
	worst := 0.0
	for _, p := range []float64{1365, 1400, 1450, 1500, 1550, 1600, 1650, 1680} {
		widest := 0.0
		for angle := 0.0; angle < 90; angle += 0.001 {
			sin, cos := math.Sincos(angle * math.Pi / 180)
			if q := min((a-p*cos)/sin, (b-p*sin)/cos); angle > 0 && q > widest {
				widest = q
			}
		}
		// A rectangle of the widest found goes in but for nothing; one 10 wider is 10 too much.
		worst = max(worst, oversize(p, widest-0.01, a, b), math.Abs(oversize(p, widest+10, a, b)-10))
	}
	proof.Check(t, proof.Case{Name: "how much too wide a rectangle is for a door", Source: "brute force: turned by thousandths of a degree", Inputs: "8 lengths of 1365 to 1680 in 1360 by 1000",
		Expected: 0, Got: worst, Tolerance: 0.1, Unit: "mm"})
}
