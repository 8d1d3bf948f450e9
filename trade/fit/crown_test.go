package fit_test

import (
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// vaulted is a room whose sides come together at the crown of its roof, as a body's do.
type vaulted struct{ room }

func (v vaulted) Right(x, z float64) float64 {
	if z > v.roof {
		return 0
	}
	return v.room.Right(x, z)
}
func (v vaulted) Left(x, z float64) float64 { return -v.Right(x, z) }

func TestAThingOverTheCrownStandsIntoTheRoofAndNoSide(t *testing.T) {
	v := in(flat).put(fit.Fitting{ID: "fan"}, box(500, 620, -60, 60, 1500, 1712)).mode("day", nil)
	v.in.Room = solid.Region(vaulted{flat})
	r := fit.Work(v.in)
	sound(t, r)
	if got, want := told(r), "fault fit.sticks-out fan 12"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
