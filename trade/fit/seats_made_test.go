package fit_test

import (
	"encoding/json"
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

// madeBed is a bed of 660 over the floor with a crate of 500 in it, on which one sits in a mode and lies at night.
func madeBed(sits string) *van {
	v := in(high).person("a", 1756).
		put(fit.Fitting{ID: "bed", Make: "platform", Board: 15}, box(900, 2800, -900, 335, 40, 700)).
		put(fit.Fitting{ID: "crate", Carrier: "bed", In: true}, box(1000, 1400, -300, 200, 55, 555)).
		mode(sits, nil, fit.Pose{Person: "a", Does: "sits", At: "bed"}).
		mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"})
	v.in.Lengthen = func(string, int, float64) (json.RawMessage, bool) { return json.RawMessage(`{}`), true }
	return v
}

func TestABedThatStaysMadeIsNoSeatThatIsTooHigh(t *testing.T) {
	if got := told(fit.Work(madeBed("day").in)); strings.Contains(got, "fit.seat.height") {
		t.Errorf("by day: %s", got)
	}
	r := fit.Work(madeBed("supper").in)
	for _, f := range r.Findings {
		if f.Code != "fit.seat.height" {
			continue
		}
		if want := "make bed 215 mm lower; then it is too low for crate in it"; len(f.Proposals) != 1 || f.Proposals[0].Words != want {
			t.Errorf("proposed %v, want %q", f.Proposals, want)
		}
		return
	}
	t.Errorf("in a mode of its own it is a seat: %s", told(r))
}
