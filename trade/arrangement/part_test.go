package arrangement_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
)

func fronts(drawers, doors int) *build.Fronts { return &build.Fronts{Drawers: &drawers, Doors: &doors} }

// What opens of a thing 1000 long, 500 deep and 400 high with its back to the right side, its front at y 300.
func TestPartsOpenOutOfTheirFronts(t *testing.T) {
	tests := []struct {
		name   string
		make   string
		fronts *build.Fronts
		want   []string // kind, ways and where it is wholly open
	}{
		{"a bench has a lid, hinged at its back, that leans back over it when open", "bench", nil, []string{"lid 1 x 20..980 y 788..844 z 440..939"}},
		{"three drawers open as one front", "carcass", fronts(3, 0), []string{"drawer 1 x 0..1000 y -150..300 z 40..440"}},
		{"a door opens past a right angle and may hang at either side", "carcass", fronts(0, 1), []string{"door 2 x -87..12 y -697..300 z 40..440"}},
		{"drawers and a door share the front, drawers at the left hand of who stands before it", "carcass", fronts(2, 1),
			[]string{"drawer 1 x 0..500 y -150..300 z 40..440", "door 2 x 456..512 y -199..300 z 40..440"}},
		{"a locker has a door though nothing says so", "locker", nil, []string{"door 2 x -87..12 y -697..300 z 40..440"}},
		{"a cupboard without fronts is open", "carcass", nil, nil},
		{"an overhead locker's flap opens upwards", "overlocker", nil, []string{"flap 1 x 0..1000 y -100..300 z 428..440"}},
		{"a worktop has nothing to open", "worktop", nil, nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			it := thing(place(t, "0", "from 300", ""), 1000, 500, 400)
			it.Make, it.Board, it.Fronts = tt.make, 12, tt.fronts
			r := arrangement.Work(arrangement.Inputs{Room: wide, Outside: wide, Things: each(map[string]arrangement.Thing{"it": it})})
			var got []string
			for i := range r.Parts {
				p := &r.Parts[i]
				b := p.Opened(0, 1).Bounds()
				got = append(got, fmt.Sprintf("%s %d x %.0f..%.0f y %.0f..%.0f z %.0f..%.0f", p.Kind, p.Ways, b.MinX, b.MaxX, b.MinY, b.MaxY, b.MinZ, b.MaxZ))
				holds(t, p)
			}
			if fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("got  %q\nwant %q", got, tt.want)
			}
		})
	}
}

// holds: what a part passes through holds it wherever it is on its way.
func holds(t *testing.T, p *arrangement.Part) {
	t.Helper()
	for way := range p.Ways {
		path := p.Swept(way, 1)
		for _, share := range []float64{0.1, 0.35, 0.8, 1} {
			open := p.Opened(way, share)
			if out := open.Volume() - open.SharedVolume(path); out > 0.02*open.Volume() {
				t.Errorf("%s: open by %g, %.0f mm3 of %.0f are outside its path", p.Kind, share, out, open.Volume())
			}
		}
	}
}

// wide is a room with straight sides 1100 from the middle.
var wide = plain{}

type plain struct{}

func (plain) Left(x, z float64) float64  { return -1100 }
func (plain) Right(x, z float64) float64 { return 1100 }
func (plain) Roof(x, y float64) float64  { return 1900 }
func (plain) Floor() float64             { return 40 }
func (plain) Front() float64             { return 0 }
func (plain) Rear() float64              { return 3000 }

var _ solid.Region = plain{}

func TestAModeKnowsTheWayOfWhatItMoves(t *testing.T) {
	bed := thing(place(t, "0", "from 300", "400"), 1900, 600, 60)
	bed.Make = "slat-bed"
	bed.Moves = map[string]build.Move{"out": slide("y", true, 560)}
	bed.Positions = map[string]map[string]build.Amount{"made-up": {"out": {}}}
	shelf := thing(place(t, "2000", "from 300", "400"), 400, 300, 20)
	shelf.Moves = map[string]build.Move{"down": slide("z", true, 300)}
	shelf.Positions = map[string]map[string]build.Amount{"low": {"down": {}}}
	jar := thing(place(t, "mid 200", "mid 0", ""), 80, 80, 200)
	jar.Upon = "shelf"
	r := arrangement.Work(arrangement.Inputs{Room: wide, Outside: wide,
		Things: each(map[string]arrangement.Thing{"bed": bed, "shelf": shelf, "jar": jar}),
		Modes:  map[string]build.Mode{"night": {Take: map[string]string{"bed": "made-up", "shelf": "low"}}}})
	night := r.Mode("night")
	if len(night.Movers) != 2 {
		t.Fatalf("%d movers", len(night.Movers))
	}
	bounds := map[string]arrangement.Box{}
	for _, m := range night.Movers {
		bounds[r.Rest[m.Fitting].ID] = m.Path.Bounds()
	}
	if got, want := bounds["bed"], box(0, 1900, -260, 300, 400, 460); got != want {
		t.Errorf("the bed passes through %v, want %v", got, want)
	}
	if got, want := bounds["shelf"], box(2000, 2400, 300, 600, 100, 620); got != want {
		t.Errorf("shelf and jar pass through %v, want %v", got, want)
	}
	if math.IsNaN(night.Movers[0].Path.Volume()) {
		t.Error("no volume")
	}
}
