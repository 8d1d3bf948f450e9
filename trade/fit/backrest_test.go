package fit_test

import (
	"testing"

	"tumblehome/trade/fit"
)

// A travel seat is 1150 high with its backrest; nobody sits up there.
func TestOneSitsOnASeatAndNotOnItsBackrest(t *testing.T) {
	for _, tt := range []struct {
		name    string
		cushion bool
		want    float64
		assumed bool
	}{
		{"no height is known", false, 420, true},
		{"a cushion lies on it", true, 452.5, false},
	} {
		v := in(high).person("a", 1700).put(fit.Fitting{ID: "seat", Belted: true, Held: "bolted", Rests: true}, box(300, 920, -890, 10, 40, 1190))
		if tt.cushion {
			v.put(fit.Fitting{ID: "pad", Make: "cushions", Rests: true, Gives: 0.4, Carrier: "seat"}, box(300, 800, -890, 10, 440, 510))
		}
		r := fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in)
		how, _ := r.Working("fit.seat.height.a")
		last := how.Lines[len(how.Lines)-1]
		if last.Value != tt.want || (last.From.Assumption != "") != tt.assumed {
			t.Errorf("%s: %v", tt.name, last)
		}
	}
}
