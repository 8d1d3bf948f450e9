package quantity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

func TestAGuessIsReadAsItsLeastAndMost(t *testing.T) {
	tests := []struct {
		name, text        string
		low, likely, high quantity.Mass
		form              quantity.Form
		written           string
		mean, variance    float64
	}{
		{"a bare number has no spread of its own", "12", 12, 12, 12, quantity.Bare, "12", 12, 0},
		{"an even guess", "12 ± 3", 9, 12, 15, quantity.Even, "12 ± 3", 12, 9.0 / 7},
		{"an even guess in a share", "12 ± 25 %", 9, 12, 15, quantity.Even, "12 ± 3", 12, 9.0 / 7},
		{"units on both sides", "13 kg±300 g", 12.7, 13, 13.3, quantity.Even, "13 ± 0.3", 13, 0.09 / 7},
	}
	for _, tt := range tests {
		s, err := quantity.ParseSpread[quantity.Mass](tt.text)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if s.Low != tt.low || s.Likely != tt.likely || s.High != tt.high || s.Form != tt.form {
			t.Errorf("%s: %q gave %v", tt.name, tt.text, s)
		}
		if s.String() != tt.written {
			t.Errorf("%s: written %q, want %q", tt.name, s.String(), tt.written)
		}
		if math.Abs(s.Mean().Float()-tt.mean) > 1e-12 || math.Abs(s.Variance()-tt.variance) > 1e-12 {
			t.Errorf("%s: mean %v, variance %v", tt.name, s.Mean(), s.Variance())
		}
	}
}

func TestABadGuessIsRefused(t *testing.T) {
	tests := []struct{ text, want string }{
		{"12 ± -3", "`12 ± -3` has a minus after the ±; expected a mass or a guess such as `13`, `13 ± 25 %` or `{likely: 13, low: 10.4, high: 19.5}`"},
		{"12 ± 3 mm", "`3 mm` has the unknown unit `mm`; expected a mass or a guess such as `13`, `13 ± 25 %` or `{likely: 13, low: 10.4, high: 19.5}`"},
		{"heavy", "`heavy` is not a mass; expected a mass or a guess such as `13`, `13 ± 25 %` or `{likely: 13, low: 10.4, high: 19.5}`"},
	}
	for _, tt := range tests {
		if _, err := quantity.ParseSpread[quantity.Mass](tt.text); err == nil || err.Error() != tt.want {
			t.Errorf("%q:\n got %v\nwant %s", tt.text, err, tt.want)
		}
	}
}

// The mean and variance of a beta distribution between a and b with shapes
// 1 + 4(m−a)/(b−a) and 1 + 4(b−m)/(b−a) are worked out here by quadrature of its
// density, which knows nothing of the closed formulas.
func TestPERTAgreesWithItsBetaDistribution(t *testing.T) {
	for _, tt := range []struct{ low, likely, high quantity.Mass }{{9, 12, 20}, {0, 1, 2}, {10, 10, 40}, {-3, 5, 6}} {
		a, m, b := tt.low.Float(), tt.likely.Float(), tt.high.Float()
		alpha, beta := 4*(m-a)/(b-a), 4*(b-m)/(b-a)
		var mass, first, second float64
		const n = 200_000
		for i := range n {
			u := (float64(i) + 0.5) / n
			density := math.Pow(u, alpha) * math.Pow(1-u, beta)
			x := a + u*(b-a)
			mass, first, second = mass+density, first+x*density, second+x*x*density
		}
		mean := first / mass
		s := quantity.Between(tt.low, tt.likely, tt.high)
		const source = "beta distribution, Malcolm et al. 1959, shape 4, integrated numerically by 200 000 midpoints"
		inputs := tt.low.String() + " / " + tt.likely.String() + " / " + tt.high.String() + " kg"
		proof.Check(t, proof.Case{Name: "mean of a guess " + inputs, Source: source, Inputs: inputs, Expected: mean, Got: s.Mean().Float(), Tolerance: 1e-6, Unit: "kg"})
		proof.Check(t, proof.Case{Name: "variance of a guess " + inputs, Source: source, Inputs: inputs, Expected: second/mass - mean*mean, Got: s.Variance(), Tolerance: 1e-6, Unit: "kg2"})
	}
}

func TestAnEvenGuessIsWrittenAsItWasRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		likely := quantity.Mass(float64(rapid.IntRange(-100_000, 100_000).Draw(t, "likely")) / 100)
		half := quantity.Mass(float64(rapid.IntRange(0, 100_000).Draw(t, "half")) / 1000)
		s := quantity.Around(likely, half)
		again, err := quantity.ParseSpread[quantity.Mass](s.String())
		if err != nil || again != s {
			t.Fatalf("%v was written %q and read back as %v, %v", s, s.String(), again, err)
		}
	})
}

func TestAnUnevenGuessCalledEvenIsWrittenInThree(t *testing.T) {
	s := quantity.Spread[quantity.Mass]{Likely: 12, Low: 9, High: 20, Form: quantity.Even}
	if got := s.Canonical().Form; got != quantity.Three {
		t.Errorf("got form %d, want three values", got)
	}
}

func TestMoneyMayBeGuessed(t *testing.T) {
	s, err := quantity.ParseSpread[quantity.Money]("64 ± 12.5 %")
	if err != nil || s.Low.String() != "56" || s.High.String() != "72" || s.String() != "64 ± 8" {
		t.Errorf("got %v, %v", s, err)
	}
}

func TestABareGuessTakesTheDefaultSpread(t *testing.T) {
	if s := quantity.About(quantity.Mass(10)).WithDefault(0.2); s.Low != 8 || s.High != 12 {
		t.Errorf("got %v", s)
	}
	if s := quantity.Exactly(quantity.Mass(10)).WithDefault(0.2); s.Low != 10 || s.Variance() != 0 {
		t.Errorf("a weighed mass got a spread: %v", s)
	}
}
