package fit_test

import (
	"encoding/json"
	"slices"
	"testing"

	"tumblehome/trade/fit"
)

// A bench across the whole side door bars the way to the bed: it is named, and made shorter one gets in.
func TestWhatBarsTheWayInIsNamed(t *testing.T) {
	side := fit.Opening{ID: "side", Through: "left", X: [2]float64{200, 1300}, Z: [2]float64{40, 1600}, Door: true, WayOut: true, Made: true}
	v := in(high).put(fit.Fitting{ID: "bench", Make: "bench"}, box(150, 1300, -900, -450, 40, 470)).
		put(fit.Fitting{ID: "bed", Rests: true}, box(100, 2800, 250, 890, 40, 400)).
		put(fit.Fitting{ID: "chest"}, box(1350, 1800, -900, -450, 40, 470)).person("ada", 1700)
	v.mode("day", nil, fit.Pose{Person: "ada", Does: "sits", At: "bed"})
	v.in.Openings, v.in.Nudge = []fit.Opening{side}, anywhere
	v.in.Lengthen = func(string, int, float64) (json.RawMessage, bool) { return json.RawMessage("{}"), true }
	r := fit.Work(v.in)
	for _, f := range r.Findings {
		if f.Code != "fit.walkway" {
			continue
		}
		if !slices.Contains(f.About, "/fittings/bench") || slices.Contains(f.About, "/fittings/chest") {
			t.Errorf("it is about %v", f.About)
		}
		if got := offered(r, "fit.walkway"); got != "make bench 455 mm shorter" {
			t.Errorf("proposed is %q", got)
		}
		return
	}
	t.Errorf("no way is told to be barred: %s", told(r))
}
