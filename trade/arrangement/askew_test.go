package arrangement_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
)

// Whatever a thing does that stands askew is what it does standing straight, turned about its middle.
func TestWhatStandsAskewMovesAsItDoesStandingStraightButTurned(t *testing.T) {
	out := map[string]build.Move{"go": slide("y", true, 300)}
	up := map[string]build.Move{"go": hinge("right", "bottom", 90)}
	door := map[string]build.Move{"go": hinge("front", "left", 90)}
	for _, tt := range []struct {
		name, make string
		moves      map[string]build.Move
		askew      float64
		straight   float64
	}{
		{"a drawer of a carcass", "carcass", out, 30, 0},
		{"one turned the other way", "carcass", out, -20, 0},
		{"one turned by more than a quarter", "carcass", out, 115, 90},
		{"a flap that folds up", "flap", up, 30, 0},
		{"a bought thing on a hinge", "", door, 40, 0},
		{"a bought thing that slides", "", out, 10, 0},
		{"the door of a locker", "carcass", door, -35, 0},
	} {
		t.Run(tt.name, func(t *testing.T) {
			askew, straight := turnedThing(t, tt.make, tt.moves, tt.askew), turnedThing(t, tt.make, tt.moves, tt.straight)
			turned := func(s solid.Solid) solid.Solid {
				return s.Turned(solid.Point{X: 1000}, -(tt.askew-tt.straight)*math.Pi/180)
			}
			night, plain := askew.Mode("night"), straight.Mode("night")
			alike(t, "where it is", night.All[0].Solid, turned(plain.All[0].Solid))
			alike(t, "its path", night.Movers[0].Path, turned(plain.Movers[0].Path))
			for i := range straight.Parts {
				alike(t, "a part of it, open", askew.Parts[i].Opened(0, 1), turned(straight.Parts[i].Opened(0, 1)))
				alike(t, "what a part passes through", askew.Parts[i].Swept(0, 0.7), turned(straight.Parts[i].Swept(0, 0.7)))
			}
		})
	}
}

func turnedThing(t *testing.T, what string, moves map[string]build.Move, angle float64) arrangement.Result {
	it := thing(place(t, "mid 1000", "mid 0", "100"), 700, 500, 400)
	by := quantity.Angle(angle)
	it.Make, it.Board, it.Turn, it.Moves = what, 12, &by, moves
	it.Positions = map[string]map[string]build.Amount{"gone": {"go": {}}}
	return arrangement.Work(arrangement.Inputs{
		Room: wide, Outside: wide, Things: each(map[string]arrangement.Thing{"it": it}),
		Modes: map[string]build.Mode{"night": {Take: map[string]string{"it": "gone"}}},
	})
}

func alike(t *testing.T, what string, a, b solid.Solid) {
	t.Helper()
	if len(a) != len(b) || len(a) == 0 {
		t.Fatalf("%s is of %d pieces, want %d", what, len(a), len(b))
	}
	for i := range a {
		if shared := solid.SharedVolume(a[i], b[i]); math.Abs(shared-a[i].Volume()) > 1e-6*a[i].Volume() || math.Abs(shared-b[i].Volume()) > 1e-6*b[i].Volume() {
			t.Errorf("%s: piece %d is %v, want %v", what, i, a[i], b[i])
		}
	}
}
