package arrangement_test

import (
	"encoding/json"
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/trade/arrangement"
)

func TestDraggingKeepsTheBuildersWords(t *testing.T) {
	tests := []struct {
		name       string
		x, y, z    string
		where      string
		dx, dy, dz float64
		patch      string
	}{
		{"a number stays a number", "40", "right", "", "", 10, 0, 0, `{"x":50}`},
		{"a face keeps the face and gets an offset", "40", "right", "", "", 0, -30, 0, `{"y":"right - 30"}`},
		{"an offset changes", "galley.rear + 10", "0", "", "", -25, 0, 0, `{"x":"galley.rear - 15"}`},
		{"an offset that comes to nothing goes", "rear - 15", "0", "", "", 15, 0, 0, `{"x":"rear"}`},
		{"nothing is dragged through a surface", "rear - 15", "left + 5", "", "", 100, -100, 0, `{"x":"rear","y":"left"}`},
		{"from, to and mid stay", "from galley.front", "mid 0", "to 900", "", 5, -7, 9, `{"x":"from galley.front + 5","y":"mid -7","z":"to 909"}`},
		{"both ends go along", "1010..2910", "left..right", "", "", 20, 0, 0, `{"x":"1030..2930"}`},
		{"lifted off the floor", "0", "0", "", "", 0, 0, 55, `{"z":"floor + 55"}`},
		{"lifted off the roof", "0", "0", "", "outside", 0, 0, 40, `{"z":"roof + 40"}`},
		{"lowered from under the floor", "0", "0", "", "under", 0, 0, -40, `{"z":"roof - 40"}`},
		{"millimetres are whole", "40", "0", "", "", 10.4, 0.2, 0, `{"x":50}`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			f := build.Fitting{At: place(t, tt.x, tt.y, tt.z), Where: tt.where}
			after := arrangement.Drag(f, box(0, 100, 0, 100, 40, 140), tt.dx, tt.dy, tt.dz)
			got := string(arrangement.PlacePatch("it", f.At, after))
			if want := `{"fittings":{"it":{"at":` + tt.patch + `}}}`; got != want {
				t.Errorf("got %s, want %s", got, want)
			}
		})
	}
}

func TestWhatHadNoPlaceGetsOneByDragging(t *testing.T) {
	f := build.Fitting{At: &build.Place{Undecided: true}}
	after := arrangement.Drag(f, box(1450, 1450, 0, 0, 440, 440), 100, -200, 0)
	if got, want := string(arrangement.PlacePatch("it", f.At, after)), `{"fittings":{"it":{"at":{"x":1550,"y":-200}}}}`; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestSnappingWritesTheFace(t *testing.T) {
	for _, face := range []string{"rear", "galley.rear", "from galley.front", "to galley.rear", "mid 0"} {
		if got, ok := arrangement.SnapTo(face); !ok || got.String() != face {
			t.Errorf("got %q, want %q", got, face)
		}
	}
	for _, none := range []string{"", "120", "1..2", "galley.nose", "; drop"} {
		if got, ok := arrangement.SnapTo(none); ok {
			t.Errorf("%q is taken for the rule %q", none, got)
		}
	}
}

func TestADragMovesAThingByThatMuch(t *testing.T) {
	r := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	for id, one := range things(t) {
		if one.In != "" || id == "overlocker" || id == "strip" {
			continue // these stand in a corner, where a drag along one axis goes round it
		}
		all := things(t)
		before := work(r, all)
		dy := -7.0
		if id == "locker" || id == "behind" {
			dy = 7
		}
		at := arrangement.Drag(one.Fitting, before.Find(id).Box, 0, dy, 0)
		one.At = &at
		all[id] = one
		after := work(r, all)
		near(t, after.Find(id).Box, before.Find(id).Box.Moved(0, dy, 0), 0.01)
	}
}

func TestLengthening(t *testing.T) {
	sized := build.Fitting{Make: "slat-bed", At: place(t, "10", "right", ""), Size: &build.Size{X: length(1900)}}
	between := build.Fitting{Make: "slat-bed", At: place(t, "1000..2900", "right", "")}
	filled := build.Fitting{Make: "slat-bed", At: place(t, "front..rear", "right", "")}
	bought := build.Fitting{Buy: "bed", At: place(t, "10", "right", ""), Size: &build.Size{X: length(1900)}}
	tests := []struct {
		name string
		f    build.Fitting
		want string
	}{
		{"its size grows", sized, `{"fittings":{"bed":{"size":{"x":1945}}}}`},
		{"its far end goes on", between, `{"fittings":{"bed":{"at":{"x":"1000..2945"}}}}`},
		{"what fills its frame cannot grow", filled, ""},
		{"what is bought cannot grow", bought, ""},
	}
	for _, tt := range tests {
		got, ok := arrangement.Lengthen("bed", tt.f, 0, 45)
		if string(got) != tt.want || ok != (tt.want != "") {
			t.Errorf("%s: got %s, want %s", tt.name, got, tt.want)
		}
	}
}

func TestTheDragKitHoldsWhatAPageNeeds(t *testing.T) {
	r := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	result := arrangement.Work(arrangement.Inputs{Room: r, Outside: skin{r}, Things: each(things(t)), Modes: nightBed})
	all := things(t)
	settle := all["settle"]
	settle.Locked = yes()
	all["settle"] = settle
	kit := arrangement.NewKit(result.Mode("night"), r, all, []arrangement.KitRib{{ID: "r2", X: 760, Half: 25, On: "right"}})
	text, err := json.Marshal(kit)
	if err != nil {
		t.Fatal(err)
	}
	if len(kit.Fittings) != len(things(t)) || len(kit.Snaps) != 3+6*len(kit.Fittings) || kit.Mode != "night" {
		t.Errorf("%d fittings, %d faces, mode %q", len(kit.Fittings), len(kit.Snaps), kit.Mode)
	}
	for _, f := range kit.Fittings {
		if f.Locked != (f.ID == "settle") || f.Holds[0] == "" || f.Holds[1] == "" || f.Holds[2] == "" {
			t.Errorf("%s: locked %v, holds %v", f.ID, f.Locked, f.Holds)
		}
		if f.ID == "battery" && (f.Carrier != "settle" || !f.In) {
			t.Errorf("battery: carrier %q, in %v", f.Carrier, f.In)
		}
		for _, p := range f.Prisms {
			if len(p.Outline) < 3 || !(p.High > p.Low) || p.Low != math.Round(p.Low*10)/10 {
				t.Errorf("%s: prism %+v", f.ID, p)
			}
		}
	}
	for _, s := range kit.Surfaces {
		sum := 0.0
		for i, a := range s.Outline {
			b := s.Outline[(i+1)%len(s.Outline)]
			sum += a[0]*b[1] - a[1]*b[0]
		}
		if sum <= 0 {
			t.Errorf("surface at %g runs clockwise", s.Height)
		}
	}
	if len(text) > 60_000 {
		t.Errorf("a kit of %d fittings weighs %d bytes", len(kit.Fittings), len(text))
	}
}
