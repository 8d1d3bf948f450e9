package arrangement_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

func slide(axis string, back bool, by float64) build.Move {
	return build.Move{Slide: build.Direction{Axis: axis, Back: back}, By: &build.Amount{Form: build.Slid, Length: quantity.Length(by)}}
}

func hinge(a, b string, by float64) build.Move {
	return build.Move{Hinge: build.Edge{A: a, B: b}, By: &build.Amount{Form: build.Swung, Angle: quantity.Angle(by)}}
}

func yes() *quantity.YesNo { y := quantity.YesNo(true); return &y }

// A thing 400 long, 600 deep and 300 high stands at x 1000..1400, y -100..500, z 40..340, on it a lamp of 50 in its middle.
func TestMovesTakeThingsAndWhatTheyCarry(t *testing.T) {
	rest := box(1000, 1400, -100, 500, 40, 340)
	lamp := box(1175, 1225, 175, 225, 340, 390)
	half := build.Amount{Form: build.Slid, Length: 150}
	tests := []struct {
		name   string
		make   string
		move   build.Move
		amount build.Amount
		want   arrangement.Box // of the thing, with what reaches out of it
		lamp   arrangement.Box
	}{
		{"a bought thing slides as a whole and takes along what stands on it", "", slide("x", false, 300), build.Amount{}, rest.Moved(300, 0, 0), lamp.Moved(300, 0, 0)},
		{"half way", "", slide("x", true, 300), half, rest.Moved(-150, 0, 0), lamp.Moved(-150, 0, 0)},
		{"it is lifted", "", slide("z", false, 100), build.Amount{}, rest.Moved(0, 0, 100), lamp.Moved(0, 0, 100)},
		{"a slatted bed stretches and leaves the lamp", "slat-bed", slide("y", true, 600), build.Amount{}, box(1000, 1400, -700, 500, 40, 340), lamp},
		{"a drawer of a carcass reaches out, the carcass stays", "carcass", slide("y", true, 400), build.Amount{}, box(1000, 1400, -500, 500, 40, 340), lamp},
		{"a bench's lid hinged at the right stands up at the right", "bench", hinge("right", "top", 90), build.Amount{}, box(1000, 1400, -100, 500, 40, 940), lamp},
		{"its edge named the other way round", "bench", hinge("top", "right", 90), build.Amount{}, box(1000, 1400, -100, 500, 40, 940), lamp},
		{"a carcass against the right has its door in its left face, hinged at the front of the van", "carcass", hinge("front", "left", 90), build.Amount{}, box(1000, 1400, -500, 500, 40, 340), lamp},
		{"a locker's front hinged at the top opens upwards", "overlocker", hinge("left", "top", 90), build.Amount{}, box(1000, 1400, -400, 500, 40, 340), lamp},
		// What stood on top of a flap ends up on its far side.
		{"a flap hinged at its right and bottom stands up against its right", "flap", hinge("right", "bottom", 90), build.Amount{}, box(1000, 1400, 200, 500, 40, 640), box(1175, 1225, 500, 550, 315, 365)},
		{"a flap hinged at its right and top hangs down", "flap", hinge("right", "top", 90), build.Amount{}, box(1000, 1400, 200, 500, -260, 340), box(1175, 1225, 150, 200, 15, 65)},
		{"a bought door swings about an upright edge", "", hinge("front", "left", 90), build.Amount{}, box(1000, 1600, -100, 300, 40, 340), box(1275, 1325, 75, 125, 340, 390)},
		{"it turns on a pin in its middle, clockwise", "", build.Move{Swivel: &build.Pivot{}, By: &build.Amount{Form: build.Swung, Angle: 90}}, build.Amount{}, box(900, 1500, 0, 400, 40, 340), lamp},
		{"on a pin at its front end", "", build.Move{Swivel: &build.Pivot{X: -200}, By: &build.Amount{Form: build.Swung, Angle: 180}}, build.Amount{}, rest.Moved(-400, 0, 0), lamp.Moved(-400, 0, 0)},
		{"it is stowed elsewhere with what stands on it", "", build.Move{Stow: place(t, "rear", "left", "100")}, build.Amount{}, box(2500, 2900, -900, -300, 100, 400), box(2675, 2725, -625, -575, 400, 450)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			it := thing(place(t, "1000", "to 500", ""), 400, 600, 300)
			it.At.Y = place(t, "", "from right - 1020", "").Y // its back is to the right
			it.Make, it.Board = tt.make, 12
			it.Moves = map[string]build.Move{"go": tt.move}
			it.Positions = map[string]map[string]build.Amount{"gone": {"go": tt.amount}}
			on := thing(place(t, "mid 200", "mid 0", ""), 50, 50, 50)
			on.Upon = "it"
			r := arrangement.Work(arrangement.Inputs{
				Room: room{}, Outside: skin{room{}}, Things: each(map[string]arrangement.Thing{"it": it, "lamp": on}),
				Modes: map[string]build.Mode{"night": {Take: map[string]string{"it": "gone"}}},
			})
			near(t, r.Find("it").Box, rest, 1e-9)
			near(t, r.Mode("day").Find("it").Box, rest, 1e-9)
			near(t, r.Mode("night").Find("it").Box, tt.want, 0.01)
			near(t, r.Mode("night").Find("it").Solid.Bounds(), tt.want, 0.01)
			near(t, r.Mode("night").Find("lamp").Box, tt.lamp, 0.01)
			if !r.Mode("night").Find("it").Moved || r.Mode("day").Find("it").Moved {
				t.Error("moved is not said of the mode it moves in")
			}
		})
	}
}

func TestWhatIsOffTakesAlongWhatItCarries(t *testing.T) {
	it, on := thing(place(t, "1000", "0", ""), 400, 600, 300), thing(place(t, "0", "0", ""), 50, 50, 50)
	on.In = "it"
	it.Moves = map[string]build.Move{"away": {Off: yes()}}
	it.Positions = map[string]map[string]build.Amount{"away": {"away": {}}}
	r := arrangement.Work(arrangement.Inputs{
		Room: room{}, Outside: skin{room{}}, Things: each(map[string]arrangement.Thing{"it": it, "on": on}),
		Modes: map[string]build.Mode{"summer": {Take: map[string]string{"it": "away"}}},
	})
	if m := r.Mode("summer"); !m.Find("it").Off || !m.Find("on").Off || m.Find("on").Placed() {
		t.Errorf("off: it %v, what it holds %v", m.Find("it").Off, m.Find("on").Off)
	}
	if len(r.Modes) != 4 || r.Modes[0].Name != "drive" || r.Modes[3].Name != "summer" {
		t.Errorf("modes %v", r.Modes)
	}
}

func TestASettingBringsItsMoves(t *testing.T) {
	// A bench against the left: its lid hinges at the left. A drawer of 0.9 of the depth comes out to the right.
	bench := thing(place(t, "1000", "left", ""), 800, 500, 400)
	bench.Make, bench.Board = "bench", 12
	bench.Positions = map[string]map[string]build.Amount{"open": {"lid": {Form: build.Swung, Angle: 90}}}
	galley := thing(place(t, "0", "left", ""), 800, 500, 880)
	galley.Make, galley.Board = "carcass", 12
	galley.Positions = map[string]map[string]build.Amount{"open": {"drawer": {}}}
	r := arrangement.Work(arrangement.Inputs{
		Room: room{}, Outside: skin{room{}}, Things: each(map[string]arrangement.Thing{"bench": bench, "galley": galley}),
		Modes: map[string]build.Mode{"try": {Take: map[string]string{"bench": "open", "galley": "open"}}},
	})
	near(t, r.Mode("try").Find("bench").Solid.Bounds(), box(1000, 1800, -900, -400, 40, 440+500), 0.01)
	near(t, r.Mode("try").Find("galley").Solid.Bounds(), box(0, 800, -900, -400+450, 40, 920), 0.01)
}

func TestALeaningLidIsCutIntoSlices(t *testing.T) {
	lid := thing(place(t, "1000", "0", ""), 400, 600, 18)
	lid.Make = "flap"
	lid.Moves = map[string]build.Move{"up": hinge("right", "bottom", 45)}
	lid.Positions = map[string]map[string]build.Amount{"up": {"up": {}}}
	r := arrangement.Work(arrangement.Inputs{
		Room: room{}, Outside: skin{room{}}, Things: each(map[string]arrangement.Thing{"lid": lid}),
		Modes: map[string]build.Mode{"try": {Take: map[string]string{"lid": "up"}}},
	})
	s := r.Mode("try").Find("lid").Solid
	if got, want := s.Volume(), 400*600*18.0; math.Abs(got-want) > 0.02*want {
		t.Errorf("volume %.0f, want %.0f: a tilted board keeps its wood", got, want)
	}
	b := s.Bounds()
	want := 40 + (600+18)*math.Sqrt2/2
	if math.Abs(b.MaxZ-want) > 8 || math.Abs(b.MaxY-600) > 0.01 {
		t.Errorf("it reaches up to %.1f and right to %.1f, want %.1f and 600", b.MaxZ, b.MaxY, want)
	}
}
