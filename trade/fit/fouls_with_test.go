package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

func TestABedAndItsMattressInOneLockerAreOneMatter(t *testing.T) {
	got := fit.Work(in(flat).
		put(fit.Fitting{ID: "bed", Make: "slat-bed"}, box(1000, 2800, 200, 800, 400, 460)).
		put(fit.Fitting{ID: "mattress", Make: "cushions", Carrier: "bed", Rests: true, Gives: 0.4}, box(1000, 2800, 200, 800, 460, 540)).
		put(fit.Fitting{ID: "locker", Make: "carcass"}, box(2500, 2900, 200, 600, 40, 900)).mode("day", nil).in)
	if want := "fault fit.foul bed locker mattress 300"; told(got) != want {
		t.Errorf("told %q, want %q", told(got), want)
	}
	if words := got.Findings[0].Words; !strings.Contains(words, "What bed carries is in locker with it: mattress.") {
		t.Error(words)
	}
}
