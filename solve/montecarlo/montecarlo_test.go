package montecarlo_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/montecarlo"
)

type quantiles struct{ P50, P80 float64 }

type answer struct {
	One []struct {
		Low, Likely, High, Mean, Dev, P50, P80, P95 float64
	}
	Three, Shared quantiles
}

const scipy = "scipy 1.10.1, testdata/sums.py"

func TestPertAgreesWithTheBetaDistributionOfScipy(t *testing.T) {
	var want answer
	oracle.Decode(t, oracle.Python, "testdata/sums.py", &want)
	for _, w := range want.One {
		d := montecarlo.Pert(w.Low, w.Likely, w.High)
		inputs := fmt.Sprintf("low %g, likely %g, high %g", w.Low, w.Likely, w.High)
		for _, c := range []struct {
			name      string
			want, got float64
		}{
			{"mean", w.Mean, d.Mean()}, {"deviation", w.Dev, d.Dev()},
			{"P50", w.P50, d.Quantile(0.5)}, {"P80", w.P80, d.Quantile(0.8)}, {"P95", w.P95, d.Quantile(0.95)},
		} {
			proof.Check(t, proof.Case{Name: "PERT " + c.name, Source: scipy, Inputs: inputs, Expected: c.want, Got: c.got, Tolerance: 1e-9, Unit: "1"})
		}
	}
}

// The sums that testdata/sums.py convolves.
var (
	three = []montecarlo.Term{
		{Of: montecarlo.Pert(9, 12, 20), Times: 1},
		{Of: montecarlo.Pert(2, 3, 7), Times: 1},
		{Of: montecarlo.Pert(5, 5.5, 6), Times: 1},
	}
	shared = []montecarlo.Term{
		{Of: montecarlo.Pert(9, 12, 20), Times: 1, Key: "ply"},
		{Of: montecarlo.Pert(9, 12, 20), Times: 2, Key: "ply"},
		{Of: montecarlo.Normal(10, 2), Times: 1},
		{Of: montecarlo.Even(0, 4), Times: 1},
	}
)

func TestSampledQuantilesAgreeWithConvolutionWithinThreeStandardErrors(t *testing.T) {
	var want answer
	oracle.Decode(t, oracle.Python, "testdata/sums.py", &want)
	for _, c := range []struct {
		name  string
		terms []montecarlo.Term
		want  quantiles
	}{
		{"three independent guesses", three, want.Three},
		{"two parts of one error, a normal and an even part", shared, want.Shared},
	} {
		s := montecarlo.Sample(c.terms, 40_000, 1)
		for _, q := range []struct{ p, want float64 }{{0.5, c.want.P50}, {0.8, c.want.P80}} {
			got, se := s.Quantile(q.p)
			if se <= 0 || se > 0.1 {
				t.Errorf("%s: standard error of P%.0f is %g, want a small positive number", c.name, 100*q.p, se)
			}
			proof.Check(t, proof.Case{
				Name: fmt.Sprintf("%s: P%.0f by 40 000 draws", c.name, 100*q.p), Source: scipy + ", densities convolved in steps of 0.001",
				Inputs: "terms in montecarlo_test.go, seed 1", Expected: q.want, Got: got, Tolerance: 3*se + 0.001, Unit: "1",
			})
		}
	}
}

func TestTheQuantileErrorIsThatOfRepeatedSampling(t *testing.T) {
	const runs = 200
	var sum, squares, stated float64
	for seed := range uint64(runs) {
		v, se := montecarlo.Sample(three, 500, seed).Quantile(0.8)
		sum, squares, stated = sum+v, squares+v*v, stated+se
	}
	mean := sum / runs
	seen := math.Sqrt(squares/runs - mean*mean)
	// The deviation of 200 runs is itself known to 1/√400 = 5 %; three times that is allowed.
	if ratio := stated / runs / seen; math.Abs(ratio-1) > 0.15 {
		t.Errorf("stated standard error %.4f, seen over %d seeds %.4f", stated/runs, runs, seen)
	}
}

func TestTheSameSeedGivesTheSameDraws(t *testing.T) {
	a, _ := montecarlo.Sample(shared, 1000, 7).Quantile(0.8)
	b, _ := montecarlo.Sample(shared, 1000, 7).Quantile(0.8)
	c, _ := montecarlo.Sample(shared, 1000, 8).Quantile(0.8)
	if a != b || a == c {
		t.Errorf("seed 7 gives %g and %g, seed 8 gives %g", a, b, c)
	}
}

func TestDeviationsAddWithinAKeyAndVariancesBetweenKeys(t *testing.T) {
	with := func(keys ...string) float64 {
		var terms []montecarlo.Term
		for _, k := range keys {
			terms = append(terms, montecarlo.Term{Of: montecarlo.Normal(10, 3), Times: 1, Key: k})
		}
		return montecarlo.Approximate(terms).Dev()
	}
	for _, c := range []struct {
		name string
		keys []string
		want float64
	}{
		{"two of one key: 3 + 3", []string{"a", "a"}, 6},
		{"two of two keys: √(9 + 9)", []string{"a", "b"}, math.Sqrt(18)},
		{"two without a key are strangers", []string{"", ""}, math.Sqrt(18)},
		{"one key among strangers", []string{"a", "", "a"}, math.Sqrt(45)},
	} {
		if got := with(c.keys...); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%s: deviation %g, want %g", c.name, got, c.want)
		}
	}
}

func TestNothingAtAllSumsToNought(t *testing.T) {
	d := montecarlo.Approximate(nil)
	v, se := montecarlo.Sample(nil, 0, 1).Quantile(0.8)
	if d.Mean() != 0 || d.Dev() != 0 || v != 0 || se != 0 {
		t.Errorf("the empty sum has mean %g, deviation %g, P80 %g ± %g", d.Mean(), d.Dev(), v, se)
	}
}

func ExampleApproximate() {
	sum := []montecarlo.Term{
		{Of: montecarlo.Pert(9, 12, 20), Times: 1},
		{Of: montecarlo.Normal(50, 3), Times: 1},
	}
	d := montecarlo.Approximate(sum)
	fmt.Printf("likely %.1f, one in five it passes %.1f\n", d.Quantile(0.5), d.Quantile(0.8))
	// Output: likely 62.8, one in five it passes 65.9
}
