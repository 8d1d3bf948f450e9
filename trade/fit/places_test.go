package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

func TestAPlaceWithoutRoomForLegsIsLost(t *testing.T) {
	seat := box(1000, 1950, 300, 890, 40, 480)
	ada, ben := fit.Pose{Person: "ada", Does: "sits", At: "bench"}, fit.Pose{Person: "ben", Does: "sits", At: "bench"}
	for _, tt := range []struct {
		name  string
		crate [6]float64
		poses []fit.Pose
		want  string
		words string
	}{
		{"two, and nothing before them", [6]float64{1000, 1950, -800, -400, 40, 400}, []fit.Pose{ada, ben}, "", ""},
		{"two, and a crate before one place", [6]float64{1500, 1950, 100, 250, 40, 400}, []fit.Pose{ada, ben}, "close fit.seat.place bench crate [day] 1", "; 1 of 2 places have room for legs"},
		{"one, and a crate before the other place", [6]float64{1500, 1950, 100, 250, 40, 400}, []fit.Pose{ada}, "", "; 1 of 2 places have room for legs"},
	} {
		c := tt.crate
		got := fit.Work(in(high).person("ada", 1700).person("ben", 1700).
			put(fit.Fitting{ID: "bench", Make: "bench", Rests: true}, seat).
			put(fit.Fitting{ID: "crate", Make: "carcass"}, box(c[0], c[1], c[2], c[3], c[4], c[5])).mode("day", nil, tt.poses...).in)
		if told(got) != tt.want {
			t.Errorf("%s: told %q, want %q", tt.name, told(got), tt.want)
		}
		for _, f := range got.Figures {
			if f.Code == "fit.seat.knees.ada" && !strings.HasSuffix(f.Words, "day"+tt.words) {
				t.Errorf("%s: %s", tt.name, f.Words)
			}
		}
	}
}
