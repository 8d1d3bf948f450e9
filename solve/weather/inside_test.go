package weather

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
)

func TestTheRowsOfTheMatricesAddToOne(t *testing.T) {
	for _, c := range classes {
		for s, row := range c.next {
			if sum := total(row[:]); math.Abs(sum-1) > 0.0031 {
				t.Errorf("class up to %g, state %d: %g", c.under, s+1, sum)
			}
		}
	}
}

// A matrix was counted from months of its class, so days that follow it for long have a mean of that class. A figure in
// the wrong column of a busy row shows here.
func TestTheLongRunOfEachMatrixHasTheClearnessOfItsClass(t *testing.T) {
	from := 0.2
	for i := range classes {
		c := &classes[i]
		if i == 1 {
			from = 0.35 // the class serves from 0.30 but was counted from here
		}
		to := min(c.under, 0.8)
		m := month{class: c, clearness: 1, factor: 1}
		proof.Check(t, proof.Case{Name: "long-run clearness of days in months from " + fmt.Sprintf("%g to %g", from, to),
			Source: "Aguiar, Collares-Pereira and Conde 1988, bounds of the class", Inputs: "the matrix of the class",
			Expected: (from + to) / 2, Got: m.mean(), Tolerance: (to - from) / 2, Unit: "1"})
		from = c.under
	}
}

// The hours' mean clearness, before the noise, must come to the day's by itself: that is what it was fitted to. The
// paper is not at hand to say how nearly; 0.03 is a fifth of the noise of an hour.
func TestTheMeanHoursComeToTheDay(t *testing.T) {
	for _, kt := range []float64{0.2, 0.3, 0.4, 0.5, 0.6, 0.7} {
		var sum, light float64
		for h := range 24 { // an equinox at 40° N
			sine := math.Cos(40*math.Pi/180) * math.Cos(math.Pi/12*(float64(h)-11.5))
			if sine > 0 {
				sum += sine * tagOf(kt).mean(sine)
				light += sine
			}
		}
		proof.Check(t, proof.Case{Name: "clearness of a day from its mean hours", Source: "TAG, Aguiar and Collares-Pereira 1992 (coefficients from public programs)",
			Inputs: fmt.Sprintf("clearness %g, equinox, 40° N", kt), Expected: kt, Got: sum / light, Tolerance: 0.03, Unit: "1"})
	}
}
