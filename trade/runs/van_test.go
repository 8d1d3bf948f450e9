package runs_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/solve/solid"
	"tumblehome/trade/runs"
)

// hall is a room with flat faces: 3 m long, 1.8 m wide, 1.8 m high, its skin 60 mm further out.
type hall struct{ out float64 }

func (h hall) Left(x, z float64) float64  { return -900 - h.out }
func (h hall) Right(x, z float64) float64 { return 900 + h.out }
func (h hall) Roof(x, y float64) float64  { return 1800 + h.out }
func (h hall) Floor() float64             { return 40 - h.out }
func (h hall) Front() float64             { return 0 }
func (h hall) Rear() float64              { return 3000 + h.out }

func box(x0, x1, y0, y1, z0, z1 float64) solid.Bounds {
	return solid.Bounds{MinX: x0, MaxX: x1, MinY: y0, MaxY: y1, MinZ: z0, MaxZ: z1}
}

func thing(id string, b solid.Bounds, hollow bool) runs.Thing {
	return runs.Thing{ID: id, Name: id, Box: b, Solid: solid.Solid{solid.Box(b)}, Hollow: hollow}
}

func empty() runs.Inputs { return runs.Inputs{Room: hall{}, Skin: hall{60}} }

func led(in runs.Inputs, at ...runs.Point) runs.Led {
	in.Ways = []runs.Way{{ID: "way", At: at}}
	return runs.Work(in).Ways[0]
}

func TestWhatAWayFouls(t *testing.T) {
	bottle := thing("bottle", box(500, 700, 600, 880, 40, 500), false)
	locker := thing("locker", box(1000, 1500, 500, 900, 40, 800), true)
	gas := thing("gas", box(2000, 2300, -900, -600, 40, 600), true)
	gas.Gas = true
	for _, c := range []struct {
		name string
		in   func(*runs.Inputs)
		way  []runs.Point
		want string // kinds, ids and how long, in their order
	}{
		{"a leg through the middle of a bottle of 200", nil, []runs.Point{{300, 700, 200}, {900, 700, 200}}, "through bottle 200"},
		{"askew it is longer by Pythagoras: 200 along and 150 across of it", nil, []runs.Point{{300, 475, 200}, {900, 925, 200}}, "through bottle 250"},
		{"a leg over it fouls nothing", nil, []runs.Point{{300, 700, 520}, {900, 700, 520}}, ""},
		{"on the side behind it there is room", nil, []runs.Point{{300, 900, 200}, {900, 900, 200}}, ""},
		{"a hollow thing may be passed through", nil, []runs.Point{{800, 700, 300}, {1700, 700, 300}}, ""},
		{"the locker of the gas may not", nil, []runs.Point{{1800, -700, 300}, {2500, -700, 300}}, "gas gas 300"},
		{"a way that ends at a thing leads to it", nil, []runs.Point{{300, 700, 200}, {600, 700, 200}}, ""},
		{"a rib 45 deep is in the way 30 behind a lining of 60", nil, []runs.Point{{1600, 930, 900}, {1900, 930, 900}}, "rib r3 50"},
		{"10 behind it is not", nil, []runs.Point{{1600, 910, 900}, {1900, 910, 900}}, ""},
		{"the wheel arch", nil, []runs.Point{{1500, 890, 150}, {2700, 890, 150}}, "arch arch 700"},
		{"over the wheel arch", nil, []runs.Point{{1500, 890, 350}, {2700, 890, 350}}, ""},
		{"a hole in the roof 400 long", nil, []runs.Point{{800, 0, 1800}, {1600, 0, 1800}}, "opening fan 400"},
		{"along a side, to an end in the middle of its door", nil, []runs.Point{{300, -890, 900}, {1200, -890, 900}}, "opening side 400"},
		{"beside the hole", nil, []runs.Point{{800, 250, 1800}, {1600, 250, 1800}}, ""},
		{"out through the roof where there is no hole", nil, []runs.Point{{2000, 0, 1700}, {2000, 0, 1900}}, "skin roof 0"},
		{"out through the hole", nil, []runs.Point{{1200, 0, 1700}, {1200, 0, 1900}}, ""},
		{"across the open floor from the sill of the side door to 120 before the other side, looked at every 25", nil, []runs.Point{{1600, -900, 60}, {1600, 900, 60}}, "gangway floor 1675"},
		{"in the floor under its covering", nil, []runs.Point{{1600, -900, 30}, {1600, 900, 30}}, ""},
		{"on the floor through a locker nobody treads on it", nil, []runs.Point{{1050, 880, 45}, {1050, 500, 45}}, ""},
		{"at the foot of a side without a door", nil, []runs.Point{{100, -850, 45}, {450, -850, 45}}, ""},
		{"on the sill of the door at that side, 1000 wide, looked at every 25", nil, []runs.Point{{700, -850, 45}, {1990, -850, 45}}, "gangway floor 967"},
		{"where somebody lies", nil, []runs.Point{{2500, -700, 700}, {2500, 850, 700}}, "sleeper bed 600"},
	} {
		in := empty()
		in.Things = []runs.Thing{bottle, locker, gas}
		in.Ribs = []runs.Rib{{ID: "r3", On: "right", From: 1725, To: 1775, Depth: 45}}
		in.Arches = []runs.Arch{{ID: "arch", Box: box(1750, 2450, 700, 1400, -500, 300)}}
		in.Openings = []runs.Opening{{ID: "fan", Through: "roof", X: [2]float64{1000, 1400}, Y: [2]float64{-200, 200}}}
		in.Openings = append(in.Openings, runs.Opening{ID: "side", Through: "left", X: [2]float64{800, 1800}, Z: [2]float64{0, 1500}, Door: true})
		in.Sleepers = []runs.Sleeper{{On: "bed", Name: "bed", Mode: "night", Box: box(1900, 2900, 200, 800, 500, 850)}}
		got := ""
		for _, f := range led(in, c.way...).Fouls {
			id, long := f.ID, fmt.Sprintf(" %.0f", f.To-f.From)
			switch f.Kind {
			case runs.Skin:
				id, long = f.Surface, " 0"
			case runs.Gangway:
				id = f.Surface
			}
			got += string(f.Kind) + " " + id + long
		}
		if got != c.want {
			t.Errorf("%s: fouls %q, want %q", c.name, got, c.want)
		}
	}
}

// What goes round a hole does not hang under it instead.
func TestAWayRoundAHoleDoesNotHangBeforeIt(t *testing.T) {
	for _, c := range []struct {
		name string
		hole runs.Opening
		at   [2]runs.Point
		want string
	}{
		{"a fan in the roof", runs.Opening{ID: "hole", Through: "roof", X: [2]float64{1000, 1400}, Y: [2]float64{-200, 200}}, [2]runs.Point{{800, 0, 1800}, {1600, 0, 1800}}, "lead way on its left, 1.3 m in all"},
		{"a window in the side", runs.Opening{ID: "hole", Through: "left", X: [2]float64{1000, 1400}, Z: [2]float64{800, 1200}}, [2]runs.Point{{800, -900, 900}, {1600, -900, 900}}, "lead way under it, 1.1 m in all"},
	} {
		in := empty()
		in.Openings = []runs.Opening{c.hole}
		in.Ways = []runs.Way{{ID: "way", At: c.at[:], Corners: make([]build.Point3, 2)}}
		for _, f := range runs.Work(in).Findings() {
			if len(f.Proposals) != 1 || f.Proposals[0].Words != c.want {
				t.Errorf("%s: proposed is %v, not to %s", c.name, f.Proposals, c.want)
			}
		}
	}
}

func TestWhatCoversAWay(t *testing.T) {
	in := empty()
	in.Things = []runs.Thing{thing("locker", box(1000, 1500, 500, 900, 40, 800), true), thing("fridge", box(2000, 2400, 400, 880, 40, 900), false)}
	in.Laid = func(surface string, at runs.Point, behind float64) []runs.Layer {
		return []runs.Layer{{Pointer: "/lining/sides/2", Name: fmt.Sprintf("board over what lies %.0f behind", behind)}}
	}
	got := ""
	for _, c := range led(in, runs.Point{500, 910, 300}, runs.Point{2600, 910, 300}).Covers {
		got += fmt.Sprintf("%s %s %.0f..%.0f; ", c.How, c.Name, c.From, c.To)
	}
	if want := "lining board over what lies 10 behind 0..2100; behind locker 500..1000; behind fridge 1500..1900; "; got != want {
		t.Errorf("covered by %s, want %s", got, want)
	}
	got = ""
	for _, c := range led(in, runs.Point{500, 700, 300}, runs.Point{1800, 700, 300}).Covers {
		got += fmt.Sprintf("%s %s %.0f..%.0f; ", c.How, c.Name, c.From, c.To)
	}
	if want := "inside locker 500..1000; "; got != want {
		t.Errorf("out in the room it is %s, want %s", got, want)
	}
}

func TestHowACircuitGoes(t *testing.T) {
	board := runs.End{Fitting: "board", Name: "fuse board", At: runs.Point{500, 800, 100}}
	lamp := runs.End{Fitting: "lamp", Name: "lamp", At: runs.Point{2000, 0, 1800}}
	second := runs.End{Fitting: "second", Name: "second lamp", At: runs.Point{2000, -400, 1800}}
	fan := runs.End{Fitting: "fan", Name: "fan", At: runs.Point{2600, 900, 1000}}
	way := runs.Way{ID: "up", At: []runs.Point{{2000, 900, 1800}, {1000, 900, 1800}, {1000, 900, 100}}}
	for _, c := range []struct {
		name         string
		along        []string
		ends         []runs.End
		route, cable float64
	}{
		// to the way 500 + 100, up it 1700, along it 1000, across to the lamp 900
		{"along a way, entered at its nearer end", []string{"up"}, []runs.End{lamp}, 600 + 1700 + 1000 + 900, 600 + 1700 + 1000 + 900},
		{"on to a second lamp", []string{"up"}, []runs.End{lamp, second}, 4200 + 400, 4600},
		{"without a way along the side it shares", nil, []runs.End{fan}, 2100 + 900 + 100, 3100},
		// by the floor: down 60, along 1500, across 800, up 1760; by the roof: up 1700, along 1500, across 800
		{"without a way by the roof, which is shorter", nil, []runs.End{lamp}, 4000, 4000},
		// to the fan 2100 + 900 + 100, from there to the lamp 600 + 900 + 800, less than from the board
		{"the second load from the first, which is nearer than the board", nil, []runs.End{fan, lamp}, 5400, 5400},
	} {
		in := empty()
		in.Ways = []runs.Way{way}
		in.Circuits = []runs.Circuit{{ID: "c", Along: c.along, Section: 2.5, Start: &board, Ends: c.ends}}
		result := runs.Work(in)
		r := result.Route("c", false)
		if math.Abs(r.Reckoned-c.route) > 1 || math.Abs(r.Cable-c.cable) > 1 {
			t.Errorf("%s: %.0f mm to the farthest, %.0f of cable; want %.0f and %.0f: %v", c.name, r.Reckoned, r.Cable, c.route, c.cable, r.Steps)
		}
	}
}

func TestMovingTheBatteryChangesTheLengths(t *testing.T) {
	long := func(x float64) float64 {
		in := empty()
		in.Circuits = []runs.Circuit{{ID: "c", Start: &runs.End{At: runs.Point{x, 800, 100}}, Ends: []runs.End{{At: runs.Point{2000, 800, 100}}}}}
		r := runs.Work(in)
		v, _ := r.Route("c", false).Length()
		return v
	}
	if a, b := long(500), long(900); a != 1500 || b != 1100 {
		t.Errorf("from 500 it is %g, from 900 it is %g", a, b)
	}
}

func TestWhatWasMeasuredWins(t *testing.T) {
	measured := 2000.0
	in := empty()
	in.Circuits = []runs.Circuit{{ID: "c", Written: &measured, Start: &runs.End{At: runs.Point{500, 800, 100}}, Ends: []runs.End{{At: runs.Point{2000, 800, 100}}}}}
	r := runs.Work(in)
	if v, _ := r.Route("c", false).Length(); v != 2000 {
		t.Errorf("the route is %g", v)
	}
	if got := r.Route("c", false).Branches(); got != 0 {
		t.Errorf("to one load %g mm branch off", got)
	}
}

func BenchmarkWork(b *testing.B) {
	in := empty()
	for i := range 60 {
		x := float64(i%10) * 300
		in.Things = append(in.Things, thing(fmt.Sprint("t", i), box(x, x+250, -880+float64(i/10)*300, -640+float64(i/10)*300, 40, 700), i%2 == 0))
	}
	for i := range 6 {
		in.Ways = append(in.Ways, runs.Way{ID: fmt.Sprint("w", i), At: []runs.Point{{100, 900, 100}, {2000, 900, 100}, {2000, 900, 1700}, {2000, 400, 1800}, {500, 400, 1800}}})
		in.Circuits = append(in.Circuits, runs.Circuit{ID: fmt.Sprint("c", i), Along: []string{fmt.Sprint("w", i)}, Section: 2.5, Start: &runs.End{At: runs.Point{500, 800, 100}}, Ends: []runs.End{{At: runs.Point{2000, 0, 1700}}}})
	}
	for b.Loop() {
		runs.Work(in)
	}
}
