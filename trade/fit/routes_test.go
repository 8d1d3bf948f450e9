package fit_test

import (
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/fit"
)

// lane is a van with a bed in the rear half, feet to the front, and two cupboards before it with a lane between them to the side door in front.
func lane(wide float64) *van {
	v := in(flat).person("ada", 1700)
	v.in.Openings = []fit.Opening{
		{ID: "side", Through: "left", X: [2]float64{100, 700}, Z: [2]float64{40, 1400}, Door: true, WayOut: true, Made: true},
		{ID: "rear", Name: "rear doors", Through: "rear", Y: [2]float64{-600, 600}, Z: [2]float64{40, 1500}, Door: true, WayOut: true, Made: true},
	}
	v.put(fit.Fitting{ID: "bed", Rests: true}, box(1400, 2890, -890, 890, 40, 450))
	v.put(fit.Fitting{ID: "galley"}, box(800, 1390, wide/2, 890, 40, 900))
	v.put(fit.Fitting{ID: "larder"}, box(800, 1390, -890, -wide/2, 40, 900))
	return v.mode("night", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed", Head: "rear"})
}

func TestARouteIsToldFromTheBedToEachWayOut(t *testing.T) {
	r := fit.Work(lane(430).in)
	routes := r.Routes()
	if len(routes) != 2 {
		t.Fatalf("%d routes: %+v", len(routes), routes)
	}
	side, rear := routes[0], routes[1]
	if side.First != "feet" || rear.First != "head" || rear.OutCalled != "the rear doors" || side.OutCalled != "the side door" {
		t.Errorf("to the side %q first by %q, to the rear %q first by %q", side.First, side.OutCalled, rear.First, rear.OutCalled)
	}
	proof.Check(t, proof.Case{Name: "narrowest place of a way out", Source: "the lane as it was built, between two cupboards", Inputs: "cupboards 430 apart",
		Expected: 430, Got: side.Width, Tolerance: 0.01, Unit: "mm"})
	if len(side.Between) != 2 || len(side.Past) != 2 {
		t.Errorf("narrowest between %v, past %v", side.Between, side.Past)
	}
	proof.Check(t, proof.Case{Name: "way out of a bed along a lane and round a corner", Source: "by hand: from the middle of the bed to the end of the lane, a quarter turn about the corner of the larder, on to the step of the door",
		Inputs: "1345 along, a quarter circle of 215, 585 across", Expected: 1345 + 215*math.Pi/2 + 585, Got: side.Length, Tolerance: 60, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "way out over the head of the bed", Source: "straight line from the middle of the bed to the rear doors, by hand", Inputs: "bed to 2890, rear at 2900",
		Expected: 2900 - 2145, Got: rear.Length, Tolerance: 30, Unit: "mm"})
}

func TestAClosedLaneLeavesOneRoute(t *testing.T) {
	r := fit.Work(lane(300).in)
	if routes := r.Routes(); len(routes) != 1 || routes[0].Out != "rear" {
		t.Errorf("routes %+v", routes)
	}
}

func TestRoutesDoNotDependOnWhatWasRemembered(t *testing.T) {
	v := lane(430)
	v.in.RoomKey = "flat"
	first := fit.Work(v.in)
	moved := lane(460)
	moved.in.RoomKey, moved.in.Before = "flat", first.Memory
	again, fresh := fit.Work(moved.in), fit.Work(lane(460).in)
	a, b := again.Routes(), fresh.Routes()
	if len(a) != len(b) || a[0].Width != b[0].Width || a[0].Length != b[0].Length || math.Abs(a[0].Width-460) > 0.01 {
		t.Errorf("remembered %+v, fresh %+v", a, b)
	}
}

func TestAWayOverALoweredBedIsTold(t *testing.T) {
	v := lane(400)
	v.in.Modes = nil
	v.put(fit.Fitting{ID: "lowered", Rests: true}, box(780, 1395, -890, 890, 1100, 1160))
	v.mode("night", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed", Head: "rear"})
	r := fit.Work(v.in)
	for _, route := range r.Routes() {
		if over := len(route.Over) == 1 && route.Over[0] == "lowered"; route.Out == "side" && !over {
			t.Errorf("over %v, though the lane under the lowered bed is only 400", route.Over)
		}
	}
}
