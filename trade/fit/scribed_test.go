package fit_test

import (
	"math"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// barrel is a room whose sides go over into the roof in quarters of an ellipse, from 1200 to 1700 high and 900 to either side.
type barrel struct{ room }

func (b barrel) Right(_, z float64) float64 {
	up := min(max(0, z-1200), 500) / 500
	return 900 * math.Sqrt(1-up*up)
}
func (b barrel) Left(x, z float64) float64 { return -b.Right(x, z) }
func (b barrel) Roof(_, y float64) float64 {
	out := min(math.Abs(y), 900) / 900
	return 1200 + 500*math.Sqrt(1-out*out)
}

func TestALockerCutToTheSideLosesItsCornerUnderTheRoofButNotItsHeight(t *testing.T) {
	for _, c := range []struct {
		name   string
		inner  float64 // its face in the room
		top    float64 // the roof is 1596 high over 550, and 1673 over 300
		expect string
	}{
		{"its corner is cut where the side goes over into the roof", 550, 1590, ""},
		{"its face stands into the roof", 550, 1640, "fault fit.sticks-out locker 44"},
		{"a deeper one reaches farther up", 300, 1640, ""},
	} {
		v := in(flat).put(fit.Fitting{ID: "locker"}, box(500, 1500, c.inner, 900, 1300, c.top)).mode("day", nil)
		v.in.Room = solid.Region(barrel{flat})
		v.in.Modes[0].Standings[0].Scribed = []solid.Side{solid.Right}
		r := fit.Work(v.in)
		sound(t, r)
		if got := told(r); got != c.expect {
			t.Errorf("%s: got %q, want %q", c.name, got, c.expect)
		}
	}
}
