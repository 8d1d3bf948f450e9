package conditioning_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/conditioning"
)

func unit(n, k int) []float64 {
	e := make([]float64, n)
	e[k] = 1
	return e
}

func TestPosteriorAgreesWithNumpy(t *testing.T) {
	var want struct {
		Mean []float64
		Cov  [][]float64
	}
	oracle.Decode(t, oracle.Python, "testdata/posterior.py", &want)
	got, err := conditioning.Condition(
		[]float64{31, 6.5, 13, 50, 155}, []float64{6, 0.5, 1, 0, 20},
		[]conditioning.Reading{
			{Of: []float64{1, 1, 0, 1, 1}, Value: 270, Noise: 33.3},
			{Of: []float64{0.4, 0.2, 1.1, 0, 0.5}, Value: 110, Noise: 33.3},
			{Of: []float64{0, 0, 1}, Value: 12.4, Noise: 0.01},
		})
	if err != nil {
		t.Fatal(err)
	}
	const source, inputs = "numpy 1.24.2, testdata/posterior.py", "five parts, three readings, in the test"
	for i, w := range want.Mean {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("mean of part %d after reading", i+1), Source: source, Inputs: inputs, Expected: w, Got: got.Mean[i], Tolerance: 1e-9, Unit: "kg"})
		for j := i; j < 5; j++ {
			c := got.Covariance(unit(5, i), unit(5, j))
			proof.Check(t, proof.Case{Name: fmt.Sprintf("covariance of parts %d and %d after reading", i+1, j+1), Source: source, Inputs: inputs, Expected: want.Cov[i][j], Got: c, Tolerance: 1e-9, Unit: "kg2"})
		}
	}
}

func TestOneErrorReadOnceFollowsTheClosedForm(t *testing.T) {
	// mean 10 ± 3 read as 14 with noise 4²: weight 9/25; variance 9·16/25.
	got, err := conditioning.Condition([]float64{10}, []float64{3}, []conditioning.Reading{{Of: []float64{1}, Value: 14, Noise: 16}})
	if err != nil {
		t.Fatal(err)
	}
	proof.Check(t, proof.Case{Name: "one part read once: mean", Source: "closed form, any statistics text", Inputs: "10 ± 3 read as 14, noise 4", Expected: 10 + 4*9.0/25, Got: got.Mean[0], Tolerance: 1e-12, Unit: "1"})
	proof.Check(t, proof.Case{Name: "one part read once: deviation", Source: "closed form, any statistics text", Inputs: "10 ± 3 read as 14, noise 4", Expected: 2.4, Got: got.Dev([]float64{1}), Tolerance: 1e-12, Unit: "1"})
}

func TestAPartThatNoReadingTouchesStaysToTheLastBit(t *testing.T) {
	got, err := conditioning.Condition([]float64{1.1, 40.3}, []float64{0.3, 7.7}, []conditioning.Reading{{Of: []float64{1, 0}, Value: 2, Noise: 0.1}})
	if err != nil {
		t.Fatal(err)
	}
	if got.Mean[1] != 40.3 || got.Dev([]float64{0, 1}) != 7.7 {
		t.Errorf("untouched part became %v ± %v", got.Mean[1], got.Dev([]float64{0, 1}))
	}
}

func TestReadingsNeverMakeAnythingLessSure(t *testing.T) {
	mean, dev := []float64{5, 6, 7}, []float64{1, 2, 3}
	for _, of := range [][]float64{{1, 0, 0}, {1, 1, 1}, {0, -1, 2}} {
		before, _ := conditioning.Condition(mean, dev, nil)
		after, err := conditioning.Condition(mean, dev, []conditioning.Reading{{Of: []float64{1, 1, 1}, Value: 20, Noise: 2}})
		if err != nil || after.Dev(of) > before.Dev(of) {
			t.Errorf("%v: deviation %g before, %g after, error %v", of, before.Dev(of), after.Dev(of), err)
		}
	}
}

func TestContradictingReadingsWithoutNoiseAreRefusedWithTheirConditionNumber(t *testing.T) {
	same := conditioning.Reading{Of: []float64{1}, Value: 3}
	_, err := conditioning.Condition([]float64{1}, []float64{1}, []conditioning.Reading{same, same})
	var singular conditioning.Singular
	if !errors.As(err, &singular) || float64(singular) < 1e12 {
		t.Errorf("got %v, want Singular with a large condition number", err)
	}
}

func TestNoPartsAndNoReadingsAreNothing(t *testing.T) {
	got, err := conditioning.Condition(nil, nil, nil)
	if err != nil || got.Dev(nil) != 0 || math.IsNaN(got.Value(nil)) {
		t.Errorf("got %v, %v", got, err)
	}
}

func ExampleCondition() {
	// Two layers guessed at 20 ± 4 and 10 ± 2 kg; together the scale says 36, give or take 1.
	p, err := conditioning.Condition([]float64{20, 10}, []float64{4, 2}, []conditioning.Reading{{Of: []float64{1, 1}, Value: 36, Noise: 1}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f and %.1f\n", p.Mean[0], p.Mean[1])
	// Output: 24.6 and 11.1
}
