package fit_test

import (
	"encoding/json"
	"testing"

	"tumblehome/trade/fit"
)

func TestWhatIsInTheCabStaysInTheCab(t *testing.T) {
	flap := fit.Fitting{ID: "flap", Where: "cab", Held: "screwed"}
	for _, tt := range []struct {
		name string
		at   [6]float64
		want string
	}{
		{"well within", [6]float64{-450, -20, 270, 890, 330, 350}, ""},
		{"out through the right door", [6]float64{-450, -20, 713, 1333, 330, 350}, "fault fit.sticks-out flap 433"},
		{"a hand's breadth into a door nobody measured", [6]float64{-450, -20, 320, 940, 330, 350}, ""},
		{"out through the windscreen", [6]float64{-1400, -970, 0, 600, 330, 350}, "fault fit.sticks-out flap 400"},
		{"out through the roof", [6]float64{-450, -20, 0, 600, 1750, 1850}, "fault fit.sticks-out flap 150"},
		{"on the floor of the cab, lower than that of the room", [6]float64{-450, -20, 0, 600, 0, 20}, ""},
		{"from the cab into the room", [6]float64{-450, 1450, 270, 870, 330, 350}, ""},
		{"from the cab into the side of the room", [6]float64{-450, 1450, 270, 912, 330, 350}, "fault fit.sticks-out flap 12"},
	} {
		v := in(flat)
		v.in.Partition = false
		r := fit.Work(v.put(flap, box(tt.at[0], tt.at[1], tt.at[2], tt.at[3], tt.at[4], tt.at[5])).mode("day", nil).in)
		sound(t, r)
		if got := told(r); got != tt.want {
			t.Errorf("%s: told %q, want %q", tt.name, got, tt.want)
		}
	}
}

// Two boards in the cab lie in one another: neither is proposed to go out through the side.
func TestNothingIsProposedToGoOutOfTheCab(t *testing.T) {
	v := in(flat).
		put(fit.Fitting{ID: "flap", Where: "cab", Held: "screwed"}, box(-450, -20, 0, 600, 100, 900)).
		put(fit.Fitting{ID: "shelf", Where: "cab", Held: "screwed"}, box(-450, -20, 300, 890, 100, 900))
	v.in.Partition = false
	v.in.Nudge = func(id string, dx, dy, dz float64) (json.RawMessage, bool) {
		if dy > 10 || dx < -550 {
			t.Errorf("%s is moved by %g, %g, %g", id, dx, dy, dz)
		}
		return json.RawMessage("{}"), true
	}
	fit.Work(v.mode("day", nil).in)
}
