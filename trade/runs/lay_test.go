package runs_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/trade/runs"
)

func path(id string) runs.Path {
	for _, p := range runs.Paths {
		if p.ID == id {
			return p
		}
	}
	panic("no such path: " + id)
}

func manner(id string) runs.Manner {
	for _, m := range runs.Manners {
		if m.ID == id {
			return m
		}
	}
	panic("no such manner: " + id)
}

// written are the corners as the document would write them.
func written(corners []runs.Corner) string {
	var out []string
	for _, c := range corners {
		out = append(out, c.X+", "+c.Y+", "+c.Z)
	}
	return strings.Join(out, "; ")
}

// laidHall is the hall with a battery at the right, a fridge at the left, a lamp under the roof and a wheel arch on each side.
func laidHall(lining float64) runs.Result {
	in := runs.Inputs{Room: hall{}, Skin: hall{lining}}
	in.Things = []runs.Thing{thing("battery", box(400, 800, 600, 880, 40, 260), false), thing("fridge", box(2500, 2900, -880, -400, 40, 640), false), thing("chest", box(2400, 2600, -200, 200, 40, 400), false), thing("lamp", box(1480, 1520, -20, 20, 1780, 1800), false)}
	in.Arches = []runs.Arch{{ID: "right", Box: box(1500, 2100, 700, 1400, -500, 300)}, {ID: "left", Box: box(1500, 2100, -1400, -700, -500, 300)}}
	in.Ribs = []runs.Rib{{ID: "r1", On: "right", From: 1000, To: 1050, Depth: 45}}
	in.Circuits = []runs.Circuit{{ID: "fridge", Section: 2.5, Start: &runs.End{Fitting: "battery", Name: "battery", At: runs.Point{600, 740, 150}},
		Ends: []runs.End{{Fitting: "fridge", Name: "fridge", At: runs.Point{2700, -640, 340}}}}}
	return runs.Work(in)
}

func TestHowAWayIsLaid(t *testing.T) {
	for _, c := range []struct {
		name         string
		lining       float64
		path, manner string
		to           string
		want         string
	}{
		{"along the floor from the battery to the rear it climbs over the wheel arch", 60, "floor-right", "loose", "rear",
			"600, right + 10, floor + 60; 1440, right + 10, floor + 60; 1440, right + 10, 360; 2160, right + 10, 360; 2160, right + 10, floor + 60; 2940, right + 10, floor + 60"},
		{"a conduit of 22 lies 15 behind the finished surface, which a rib 45 deep in a lining of 60 just leaves", 60, "floor-right", "conduit-22", "front", "600, right + 15, floor + 60; 0, right + 15, floor + 60"},
		{"where the lining is no thicker than a rib on the way it lies on the surface", 45, "belt-right", "conduit-22", "rear", "600, right, 150; 600, right, 900; 2940, right, 900"},
		{"where no rib is on the way it may be as deep as the lining", 45, "floor-right", "conduit-22", "front", "600, right + 15, floor + 60; 0, right + 15, floor + 60"},
		{"half-way up nothing is in the way but the leg up from the battery", 60, "belt-right", "clipped", "rear", "600, right, 150; 600, right, 900; 2940, right, 900"},
		{"to the fridge on the other side, since the floor between is walked on, by the roof", 60, "floor-right", "clipped", "fridge",
			"600, right, floor + 60; 1440, right, floor + 60; 1440, right, 360; 2160, right, 360; 2160, right, floor + 60; 2700, right, floor + 60; 2700, right, 1600; 2700, 630, roof; 2700, -630, roof; 2700, left, 1600; 2700, left, 340"},
		{"and by the roof", 60, "roof-right", "clipped", "fridge", "600, right, 150; 600, right, 1600; 600, 630, roof; 2700, 630, roof; 2700, -630, roof; 2700, left, 1600; 2700, left, 340"},
		{"to a lamp in the middle of the roof", 60, "roof-right", "clipped", "lamp", "600, right, 150; 600, right, 1600; 600, 630, roof; 1500, 630, roof; 1500, 0, roof"},
		{"half-way up and down again to a box out on the floor", 60, "belt-right", "clipped", "chest", "600, right, 150; 600, right, 900; 2500, right, 900; 2500, right, floor + 60; 2500, 0, floor"},
		{"from half-way up to the lamp", 60, "belt-right", "clipped", "lamp", "600, right, 150; 600, right, 900; 1500, right, 900; 1500, right, 1600; 1500, 630, roof; 1500, 0, roof"},
	} {
		r := laidHall(c.lining)
		from, _ := r.Spot("battery")
		to, ok := r.Spot(c.to)
		switch {
		case c.to == "rear":
			to = r.Rear()
		case c.to == "front":
			to = r.Front()
		case !ok:
			t.Fatalf("%s stands nowhere", c.to)
		}
		corners := r.Lay(path(c.path), manner(c.manner), from, to)
		if got := written(corners); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
		if meets := r.Meets(corners); len(meets) > 0 && c.to != "chest" { // to what stands in the open only the floor leads
			t.Errorf("%s: it meets %v", c.name, meets)
		}
	}
}

// A cable without a way is offered the written way that serves it before new ones, and is told how long it would become: at
// least the 2100 along and 1380 across from middle to middle.
func TestWhatIsOfferedToACable(t *testing.T) {
	r := laidHall(60)
	offers := r.Offers("fridge", false)
	if len(offers) != 4 || offers[0].Way != "" {
		t.Fatalf("offered are %+v", offers)
	}
	for _, o := range offers {
		if len(o.Meets) > 0 || o.Length < 2100+1380 || o.Length > 8000 {
			t.Errorf("%s: %.0f mm, it meets %v", o.Path.ID, o.Length, o.Meets)
		}
	}
	in := runs.Inputs{Room: hall{}, Skin: hall{60}, Circuits: []runs.Circuit{{ID: "fridge", Start: &runs.End{Fitting: "b", Name: "b", At: runs.Point{600, 900, 100}}, Ends: []runs.End{{Fitting: "f", Name: "f", At: runs.Point{2700, 900, 100}}}}},
		Ways: []runs.Way{{ID: "old", At: []runs.Point{{600, 900, 300}, {2700, 900, 300}}}, {ID: "elsewhere", At: []runs.Point{{0, -900, 1700}, {300, -900, 1700}}}}}
	led := runs.Work(in)
	first := led.Offers("fridge", false)[0]
	if first.Way != "old" || fmt.Sprintf("%.0f", first.Length) != "2500" { // 200 up, 2100 along, 200 down
		t.Errorf("offered first is %+v", first)
	}
	for _, o := range led.Offers("fridge", false) {
		if o.Way == "elsewhere" {
			t.Error("a way that leads elsewhere is offered")
		}
	}
	in.Circuits[0].Along = []string{"old"}
	led = runs.Work(in)
	if got := led.Offers("fridge", false); len(got) > 0 {
		t.Errorf("a cable that has a way is offered %+v", got)
	}
}

// Under a bench that stands across the van nobody walks: there a way crosses by the floor, the shorter way.
func TestAWayCrossesTheFloorUnderFurniture(t *testing.T) {
	in := runs.Inputs{Room: hall{}, Skin: hall{60}, Things: []runs.Thing{thing("battery", box(400, 800, 600, 880, 40, 260), false), thing("fridge", box(2500, 2900, -880, -400, 40, 640), false)}}
	for _, c := range []struct {
		name, want string
		bench      float64 // its height above the load floor; 0 is none
	}{
		{"in the open it goes by the roof", "600, right, floor + 60; 2700, right, floor + 60; 2700, right, 1600; 2700, 630, roof; 2700, -630, roof; 2700, left, 1600; 2700, left, 340", 0},
		{"under a bench by the floor", "600, right, floor + 60; 2700, right, floor + 60; 2700, left, floor + 60; 2700, left, 340", 440},
	} {
		with := in
		if c.bench > 0 {
			with.Things = append(with.Things, thing("bench", box(2400, 2960, -880, 880, 40, c.bench), true))
		}
		r := runs.Work(with)
		from, _ := r.Spot("battery")
		to, _ := r.Spot("fridge")
		if got := written(r.Lay(path("floor-right"), manner("clipped"), from, to)); got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
	}
}

// A cable to a heater that stands beside the fuse box wants no climb to half-way up and back; the heater is no obstacle to its own cable; no
// way turns straight back.
func TestWhatIsOfferedToAShortCable(t *testing.T) {
	heater := thing("heater", box(700, 900, 300, 650, 40, 300), false)
	in := runs.Inputs{Room: hall{}, Skin: hall{60}, Things: []runs.Thing{thing("board", box(700, 900, 700, 880, 400, 600), false), heater}}
	in.Circuits = []runs.Circuit{{ID: "heater", Section: 2.5, Start: &runs.End{Fitting: "board", Name: "board", At: runs.Point{800, 790, 500}}, Ends: []runs.End{{Fitting: "heater", Name: "heater", At: runs.Point{800, 475, 170}}}}}
	r := runs.Work(in)
	for _, o := range r.Offers("heater", false) {
		at := runs.At(o.Corners)
		for i := 1; i+1 < len(at); i++ {
			if at[i-1] == at[i+1] || at[i-1] == at[i] {
				t.Errorf("%s turns straight back: %s", o.Path.ID, written(o.Corners))
			}
		}
		if strings.Contains(strings.Join(o.Meets, " "), "heater") {
			t.Errorf("%s meets what it feeds: %v", o.Path.ID, o.Meets)
		}
		for _, p := range at {
			if p[2] > 700 {
				t.Errorf("%s climbs to %.0f for a cable of a metre: %s", o.Path.ID, p[2], written(o.Corners))
			}
		}
	}
}

// A way that lies where one walks is told so at the offer, and stands behind one that does not, though it is shorter.
func TestAWayWhereOneWalksIsNotOfferedFirst(t *testing.T) {
	in := runs.Inputs{Room: hall{}, Skin: hall{60}, Circuits: []runs.Circuit{{ID: "fridge", Section: 2.5, Start: &runs.End{Name: "b", At: runs.Point{600, 900, 100}}, Ends: []runs.End{{Name: "f", At: runs.Point{2700, -900, 100}}}}},
		Ways: []runs.Way{{ID: "over", At: []runs.Point{{600, 900, 60}, {600, -900, 60}, {2700, -900, 60}}}}}
	r := runs.Work(in)
	offers := r.Offers("fridge", false)
	if len(offers) == 0 || offers[0].Way == "over" || len(offers[0].Meets) > 0 {
		t.Errorf("offered first is %+v", offers)
	}
	in.Circuits[0].Along = []string{"over"}
	r = runs.Work(in)
	if got := r.Underfoot(r.Route("fridge", false)); len(got) > 0 {
		t.Errorf("what lies on a way is told as a guess: %v", got)
	}
	in.Circuits[0].Along, in.Circuits[0].Ends[0].At = nil, runs.Point{700, -900, 100}
	r = runs.Work(in)
	if got := strings.Join(r.Underfoot(r.Route("fridge", false)), ", "); got != "lies on the open floor, where one walks" {
		t.Errorf("of a guess across the floor is said %q", got)
	}
}
