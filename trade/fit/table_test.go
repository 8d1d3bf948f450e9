package fit_test

import (
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

func TestATableIsJudgedHoweverLowItStands(t *testing.T) {
	for _, low := range []float64{430, 460, 480} {
		v := in(high).person("a", 1756).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 470)).
			put(fit.Fitting{ID: "table", Make: "table", Aside: true}, box(1200, 2000, -400, 250, low, low+25))
		r := fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in)
		if !strings.Contains(told(r), "close fit.table table seat a [day]") {
			t.Errorf("at %.0f: %s", low, told(r))
		}
	}
}

func TestATableLetDownInAModeIsNotEatenAt(t *testing.T) {
	v := in(high).person("a", 1756).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 470)).
		put(fit.Fitting{ID: "table", Make: "table", Aside: true}, box(1200, 2000, -400, 250, 720, 745))
	let := v.mode("day", map[int]solid.Bounds{1: box(1200, 2000, -400, 250, 430, 455)}, fit.Pose{Person: "a", Does: "sits", At: "seat"})
	if r := fit.Work(let.in); strings.Contains(told(r), "fit.table") {
		t.Error(told(r))
	}
}

func TestATableOutOfReachIsTold(t *testing.T) {
	for _, tt := range []struct {
		name string
		edge float64
		told bool
	}{
		{"a hand's breadth before the seat", 200, false},
		{"as far before the seat as one sees a table of that seat", -95, true},
	} {
		v := in(high).person("a", 1756).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 470)).
			put(fit.Fitting{ID: "table", Make: "table", Aside: true}, box(1200, 2000, tt.edge-400, tt.edge, 730, 755))
		r := fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in)
		if got := strings.Contains(told(r), "close fit.table table seat a [day]"); got != tt.told {
			t.Errorf("%s: %s", tt.name, told(r))
		}
	}
}
