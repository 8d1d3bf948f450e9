package weight_test

import (
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/trade/weight"
)

// TestThreeWeighingsAgreeWithLeastSquares: the reference takes the bare van as unknown and all three tickets as readings, with a
// prior of 1e9 kg² where ours has none; that leaves less than 0.001 kg between the two.
func TestThreeWeighingsAgreeWithLeastSquares(t *testing.T) {
	type load struct{ Mean, Dev float64 }
	var want map[string]struct{ Total, Front, Rear load }
	oracle.Decode(t, oracle.Python, "testdata/three_weighings.py", &want, "testdata/three_vans.csv")
	r := weight.Work(dipper(t))
	for name, on := range map[string]weight.On{"finished": r.Finished, "today": r.Today} {
		for _, c := range []struct {
			what string
			want load
			got  weight.Load
		}{
			{"in all", want[name].Total, on.Total}, {"on the front axle", want[name].Front, on.Front}, {"on the rear axle", want[name].Rear, on.Rear},
		} {
			const source, inputs = "numpy 1.24.2, weighted least squares, testdata/three_weighings.py", "three tickets, 36 guesses of ± 12 %"
			proof.Check(t, proof.Case{Name: name + " van after three weighings, " + c.what, Source: source, Inputs: inputs, Expected: c.want.Mean, Got: c.got.Mean, Tolerance: 0.001, Unit: "kg"})
			proof.Check(t, proof.Case{Name: name + " van after three weighings, deviation " + c.what, Source: source, Inputs: inputs, Expected: c.want.Dev, Got: c.got.Dev, Tolerance: 0.001, Unit: "kg"})
		}
	}
}
