package fit_test

import (
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// tabled is the lane with a table set up across it by day.
func tabled(aside *fit.Standing) *van {
	v := lane(600)
	v.in.Modes = nil
	v.put(fit.Fitting{ID: "table", Make: "table"}, box(900, 1200, -300, 300, 400, 1500))
	v.mode("day", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed", Head: "rear"})
	v.in.Modes[0].Standings[3].Aside = aside
	return v
}

func TestATableBarsTheWayUnlessItCanBePutAside(t *testing.T) {
	against := box(900, 1200, 260, 300, 400, 725)
	tests := []struct {
		name         string
		aside        *fit.Standing
		ways, narrow float64
		said         int
	}{
		{"one that nothing moves closes the lane", nil, 1, 0, 0},
		{"one that folds against the galley leaves the rest of it", &fit.Standing{Solid: solid.Solid{solid.Box(against)}, Box: against}, 2, 560, 1},
		{"one that is lifted out leaves all of it", &fit.Standing{}, 2, 600, 1},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := fit.Work(tabled(tt.aside).in)
			if got := figure(t, r, "fit.ways-out.day").Value; got != tt.ways {
				t.Errorf("%g ways out, want %g", got, tt.ways)
			}
			if got := figure(t, r, "fit.walkway").Value; got != tt.narrow {
				t.Errorf("the way in is %g wide, want %g", got, tt.narrow)
			}
			for _, route := range r.Routes() {
				if route.Mode == "day" && route.Out == "side" && (route.Width != tt.narrow || len(route.Aside) != tt.said) {
					t.Errorf("the way out is %g wide, put aside %v", route.Width, route.Aside)
				}
			}
		})
	}
}

func TestWhereATableIsPutAsideIsRemembered(t *testing.T) {
	folded := func(y float64, before *fit.Memory) fit.Result {
		against := box(900, 1200, y, 300, 400, 725)
		v := tabled(&fit.Standing{Solid: solid.Solid{solid.Box(against)}, Box: against})
		v.in.RoomKey, v.in.Before = "flat", before
		return fit.Work(v.in)
	}
	again, fresh := folded(100, folded(260, nil).Memory), folded(100, nil)
	if a, b := figure(t, again, "fit.walkway").Value, figure(t, fresh, "fit.walkway").Value; a != b || b != 400 {
		t.Errorf("remembered %g, fresh %g", a, b)
	}
}

func TestATableLetDownAsLowAsASeatIsCrawledOver(t *testing.T) {
	for high, want := range map[float64]float64{540: 2, 560: 1} { // the floor is at 40
		v := tabled(nil)
		v.in.Modes[0].Standings[3].Box.MinZ, v.in.Modes[0].Standings[3].Box.MaxZ = high-25, high
		v.in.Modes[0].Standings[3].Solid = solid.Solid{solid.Box(v.in.Modes[0].Standings[3].Box)}
		if got := figure(t, fit.Work(v.in), "fit.ways-out.day").Value; got != want {
			t.Errorf("over a table whose top is at %g: %g ways out, want %g", high, got, want)
		}
	}
}
