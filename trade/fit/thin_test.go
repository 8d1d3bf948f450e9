package fit_test

import (
	"testing"

	"tumblehome/trade/fit"
)

// A bed at the rear with a wall of 15 before its foot, from side to side: the side door lies beyond it, within reach of an arm.
func TestNobodyGetsOutOfABedThroughAThinWall(t *testing.T) {
	for at := 1100.0; at <= 1125; at += 5 {
		v := in(flat).person("ada", 1700)
		v.in.Openings = []fit.Opening{
			{ID: "side", Through: "left", X: [2]float64{100, 700}, Z: [2]float64{40, 1400}, Door: true, WayOut: true, Made: true},
			{ID: "rear", Name: "rear doors", Through: "rear", Y: [2]float64{-600, 600}, Z: [2]float64{40, 1500}, Door: true, WayOut: true, Made: true},
		}
		v.put(fit.Fitting{ID: "bed", Rests: true}, box(at+20, 2890, -890, 890, 40, 450))
		v.put(fit.Fitting{ID: "wall", Make: "panel"}, box(at, at+15, -900, 900, 40, 1690))
		r := fit.Work(v.mode("night", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed", Head: "rear"}).in)
		if routes := r.Routes(); len(routes) != 1 || routes[0].Out != "rear" {
			t.Errorf("wall at %g: ways out %+v", at, routes)
		}
	}
}

// A table let down under the slats is no bound of the way beside the bed: the cupboard opposite and nothing else is.
func TestATableUnderTheBedBoundsNoWay(t *testing.T) {
	v := in(flat).person("ada", 1700)
	v.in.Openings = []fit.Opening{{ID: "side", Through: "left", X: [2]float64{100, 700}, Z: [2]float64{40, 1400}, Door: true, WayOut: true, Made: true}}
	v.put(fit.Fitting{ID: "bed", Rests: true}, box(1000, 2890, 0, 890, 400, 460))
	v.put(fit.Fitting{ID: "table", Make: "table"}, box(1000, 2890, -20, 600, 370, 395))
	v.put(fit.Fitting{ID: "larder"}, box(800, 2890, -890, -590, 40, 1500))
	r := fit.Work(v.mode("night", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed", Head: "rear"}).in)
	for _, route := range r.Routes() {
		for _, id := range route.Between {
			if id == "table" {
				t.Errorf("narrowest %.0f between %v", route.Width, route.Between)
			}
		}
	}
}
