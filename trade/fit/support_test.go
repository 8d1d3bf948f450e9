package fit_test

import (
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// A flap that stands before a drawer is moved off it; not so where the head of a mattress lies on the flap and would then hang in the air.
func TestNothingIsMovedFromUnderWhatLiesOnIt(t *testing.T) {
	reach := func(_ int, share float64) solid.Solid {
		if share == 0 {
			return nil
		}
		return solid.Solid{solid.Box(box(1000, 1400, 200, 200+300*share, 40, 400))}
	}
	for _, tt := range []struct {
		name  string
		lies  bool
		moved bool
	}{
		{"nothing lies on it", false, true},
		{"a mattress lies on it", true, false},
	} {
		v := in(high).put(fit.Fitting{ID: "chest"}, box(1000, 1400, -200, 200, 40, 400)).put(fit.Fitting{ID: "flap", Make: "flap"}, box(1000, 1240, 250, 500, 382, 400))
		if tt.lies {
			v.put(fit.Fitting{ID: "mattress", Rests: true, Gives: 0.3}, box(200, 1240, 250, 500, 400, 480))
		}
		v.mode("day", nil)
		v.in.Nudge = anywhere
		v.in.Parts = []fit.Part{{Fitting: 0, Kind: "drawer", Ways: 1, Key: "drawer", Swept: reach, Opened: reach}}
		if got := offered(fit.Work(v.in), "fit.opens"); strings.Contains(got, "move flap") != tt.moved {
			t.Errorf("%s: proposed is %q", tt.name, got)
		}
	}
}
