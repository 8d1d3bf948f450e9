package fit_test

import (
	"testing"

	"tumblehome/trade/fit"
)

func TestOneSitsWhereTheRoomForKneesIs(t *testing.T) {
	seat := box(1000, 1950, 300, 890, 40, 480)
	ada, ben := fit.Pose{Person: "ada", Does: "sits", At: "bench"}, fit.Pose{Person: "ben", Does: "sits", At: "bench"}
	for _, tt := range []struct {
		name  string
		crate [2]float64 // from where to where along the bench
		poses []fit.Pose
		least float64
		most  float64
	}{
		{"one sits in the middle", [2]float64{2500, 2600}, []fit.Pose{ada}, 1475, 1475},
		{"one has a crate before the middle and sits before it", [2]float64{1420, 1950}, []fit.Pose{ada}, 1200, 1221},
		{"one has a crate before the front part and sits behind it", [2]float64{1000, 1500}, []fit.Pose{ada}, 1699, 1750},
		{"the first of two sits at her half", [2]float64{2500, 2600}, []fit.Pose{ada, ben}, 1237, 1238},
	} {
		got := fit.Work(in(high).person("ada", 1700).person("ben", 1700).
			put(fit.Fitting{ID: "bench", Make: "bench", Rests: true}, seat).
			put(fit.Fitting{ID: "crate", Make: "carcass"}, box(tt.crate[0], tt.crate[1], 100, 250, 40, 400)).mode("day", nil, tt.poses...).in)
		if len(got.Seated) != len(tt.poses) {
			t.Fatalf("%s: %v", tt.name, got.Seated)
		}
		s := got.Seated[0]
		if s.Person != "ada" || s.Front[0] < tt.least || s.Front[0] > tt.most || s.Front[1] != 300 || s.Faces != [2]float64{0, -1} {
			t.Errorf("%s: %+v", tt.name, s)
		}
	}
}
