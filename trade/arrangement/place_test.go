package arrangement_test

import (
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// The room: flat sides at -900 and 920, roof at 1700, floor at 40, x from 0 to 2900. The galley stands at x 100..1100,
// y 470..920, z 40..920. All numbers are worked by hand.
func TestEachFormOfEachAxisRule(t *testing.T) {
	galley := thing(place(t, "100", "right", ""), 1000, 450, 880)
	tests := []struct {
		name    string
		x, y, z string
		want    arrangement.Box // of a thing 300 x 200 x 100, or as long as .. makes it
	}{
		{"a length is its low face", "250", "-50", "700", box(250, 550, -50, 150, 700, 800)},
		{"against the front", "front", "0", "", box(0, 300, 0, 200, 40, 140)},
		{"clear of the front", "front + 12", "0", "", box(12, 312, 0, 200, 40, 140)},
		{"against the rear", "rear", "0", "", box(2600, 2900, 0, 200, 40, 140)},
		{"clear of the rear", "rear - 15", "0", "", box(2585, 2885, 0, 200, 40, 140)},
		{"against the left side", "0", "left", "", box(0, 300, -900, -700, 40, 140)},
		{"clear of the right side", "0", "right - 15", "", box(0, 300, 705, 905, 40, 140)},
		{"under the roof", "0", "0", "roof", box(0, 300, 0, 200, 1600, 1700)},
		{"clear of the roof", "0", "0", "roof - 150", box(0, 300, 0, 200, 1450, 1550)},
		{"on the floor", "0", "0", "floor", box(0, 300, 0, 200, 40, 140)},
		{"above the floor", "0", "0", "floor + 60", box(0, 300, 0, 200, 100, 200)},
		{"behind another", "galley.rear", "0", "", box(1100, 1400, 0, 200, 40, 140)},
		{"behind another and clear of it", "galley.rear + 10", "0", "", box(1110, 1410, 0, 200, 40, 140)},
		{"before another and clear of it", "galley.front - 10", "0", "", box(-210, 90, 0, 200, 40, 140)},
		{"to the left of another", "0", "galley.left", "", box(0, 300, 270, 470, 40, 140)},
		{"to the right of another", "0", "galley.right", "", box(0, 300, 920, 1120, 40, 140)},
		{"on top of another", "0", "0", "galley.top + 4", box(0, 300, 0, 200, 924, 1024)},
		{"under another", "0", "0", "galley.bottom", box(0, 300, 0, 200, -60, 40)},
		{"flush with another's front", "from galley.front", "0", "", box(100, 400, 0, 200, 40, 140)},
		{"flush with another's rear", "to galley.rear", "0", "", box(800, 1100, 0, 200, 40, 140)},
		{"high face at a length", "to 900", "to 0", "to 1000", box(600, 900, -200, 0, 900, 1000)},
		{"low face from a face of the van", "from front + 40", "from left + 10", "from floor + 5", box(40, 340, -890, -690, 45, 145)},
		{"middle at a length", "mid 1000", "mid 0", "mid 500", box(850, 1150, -100, 100, 450, 550)},
		{"middle at another's face", "mid galley.rear", "mid galley.left - 20", "", box(950, 1250, 350, 550, 40, 140)},
		{"both faces at lengths", "100..700", "-10..30", "50..60", box(100, 700, -10, 30, 50, 60)},
		{"between the front and another", "front..galley.front", "0", "", box(0, 100, 0, 200, 40, 140)},
		{"right across", "front..rear", "left..right", "floor..roof", box(0, 2900, -900, 920, 40, 1700)},
		{"across with air", "0", "left + 10..right - 20", "", box(0, 300, -890, 900, 40, 140)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := work(room{}, map[string]arrangement.Thing{"galley": galley, "it": thing(place(t, tt.x, tt.y, tt.z), 300, 200, 100)})
			near(t, r.Find("galley").Box, box(100, 1100, 470, 920, 40, 920), 1e-9)
			near(t, r.Find("it").Box, tt.want, 1e-9)
		})
	}
}

// The host is the galley above, of 16 mm board: its inner faces are x 116..1084, y 486..904, z 56..904.
func TestFramesOtherThanTheVan(t *testing.T) {
	galley := thing(place(t, "100", "right", ""), 1000, 450, 880)
	galley.Board = 16
	can := thing(place(t, "116", "mid 600", ""), 400, 300, 300) // a bought host: walls of no thickness
	tests := []struct {
		name  string
		frame func(*arrangement.Thing)
		x     string
		y     string
		z     string
		want  arrangement.Box
	}{
		{"in a host, against its inner front, in its middle, on its floor", in("galley"), "front", "mid 0", "", box(116, 416, 595, 795, 56, 156)},
		{"in a host, lengths count from its inner front, middle and floor", in("galley"), "10", "5", "20", box(126, 426, 700, 900, 76, 176)},
		{"in a host, against its inner right and under its inner top", in("galley"), "rear", "right - 4", "roof", box(784, 1084, 700, 900, 804, 904)},
		{"in a host of no board", in("can"), "front", "left", "", box(116, 416, 450, 650, 40, 140)},
		{"upon a host: on its top, at its edges", upon("galley"), "front", "right", "", box(100, 400, 720, 920, 920, 1020)},
		{"upon a host, lengths count from the front edge, the middle and the top", upon("galley"), "10", "0", "30", box(110, 410, 695, 895, 950, 1050)},
		{"upon a host, under the roof", upon("galley"), "10", "0", "roof", box(110, 410, 695, 895, 1600, 1700)},
		{"outside, left out, it lies on the roof", where("outside"), "500", "0", "", box(500, 800, 0, 200, 1770, 1870)},
		{"outside, above the roof", where("outside"), "500", "0", "roof + 30", box(500, 800, 0, 200, 1800, 1900)},
		{"outside, it hangs behind the rear", where("outside"), "rear + 20", "0", "700", box(2970, 3270, 0, 200, 700, 800)},
		{"outside, on the right", where("outside"), "500", "right", "700", box(500, 800, 980, 1180, 700, 800)},
		{"under, left out, it hangs from the floor", where("under"), "500", "0", "", box(500, 800, 0, 200, -120, -20)},
		{"under, lower", where("under"), "500", "0", "roof - 30", box(500, 800, 0, 200, -150, -50)},
		{"in the cab, on its floor", where("cab"), "-420", "mid 0", "", box(-420, -120, -100, 100, 0, 100)},
		{"in the cab, against its rear", where("cab"), "rear", "left", "", box(-300, 0, -900, -700, 0, 100)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			it := thing(place(t, tt.x, tt.y, tt.z), 300, 200, 100)
			tt.frame(&it)
			r := work(room{}, map[string]arrangement.Thing{"galley": galley, "can": can, "it": it})
			near(t, r.Find("it").Box, tt.want, 1e-9)
		})
	}
}

func in(id string) func(*arrangement.Thing)   { return func(t *arrangement.Thing) { t.In = id } }
func upon(id string) func(*arrangement.Thing) { return func(t *arrangement.Thing) { t.Upon = id } }
func where(w string) func(*arrangement.Thing) { return func(t *arrangement.Thing) { t.Where = w } }
func degrees(v float64) *quantity.Angle       { a := quantity.Angle(v); return &a }

func TestBelongingToAnOpening(t *testing.T) {
	openings := map[string]build.Opening{
		"rear": {Through: "rear", Y: &build.Extent{From: -700, To: 700}, Z: &build.Extent{From: 0, To: 1500}},
		"fan":  {Through: "roof", X: &build.Extent{From: 1000, To: 1400}, Y: &build.Extent{From: -200, To: 200}},
		"side": {Through: "right", X: &build.Extent{From: 200, To: 1200}, Z: &build.Extent{From: 0, To: 1400}},
	}
	tests := []struct {
		name  string
		thing arrangement.Thing
		want  arrangement.Box
	}{
		{"a blind covers the opening inside", arrangement.Thing{Fitting: build.Fitting{Make: "blackout", For: "shell.openings.rear"}}, box(2885, 2900, -700, 700, 0, 1500)},
		{"a curtain of its own size hangs in the middle", arrangement.Thing{Fitting: build.Fitting{Make: "blackout", For: "shell.openings.side"}, Size: [3]float64{800, 10, 600}},
			box(300, 1100, 910, 920, 400, 1000)},
		{"a bought fan stands on the outer roof", arrangement.Thing{Fitting: build.Fitting{Buy: "fan", For: "shell.openings.fan"}, Size: [3]float64{380, 380, 120}}, box(1010, 1390, -190, 190, 1770, 1890)},
		{"a place of its own goes before", arrangement.Thing{Fitting: build.Fitting{Make: "blackout", For: "shell.openings.rear", At: place(t, "", "0", "")}, Size: [3]float64{10, 100, 100}}, box(2890, 2900, 0, 100, 700, 800)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := arrangement.Work(arrangement.Inputs{Room: room{}, Outside: skin{room{}}, Openings: openings, Things: each(map[string]arrangement.Thing{"it": tt.thing})})
			near(t, r.Find("it").Box, tt.want, 1e-9)
		})
	}
}

func TestTurned(t *testing.T) {
	tests := []struct {
		name string
		turn float64
		x, y string
		want arrangement.Box
	}{
		{"a quarter turn swaps length and depth", 90, "100", "0", box(100, 300, 0, 300, 40, 140)},
		{"a half turn changes nothing", 180, "100", "0", box(100, 400, 0, 200, 40, 140)},
		{"the rules hold for the turned outline", 90, "rear", "right", box(2700, 2900, 620, 920, 40, 140)},
		{"by 30 degrees the outline is 300 cos + 200 sin long", 30, "100", "right", box(100, 100+359.8076, 920-323.2051, 920, 40, 140)},
		{"a turned thing between two faces", 90, "100..300", "0", box(100, 300, 0, 300, 40, 140)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			it := thing(place(t, tt.x, tt.y, ""), 300, 200, 100)
			it.Turn = degrees(tt.turn)
			r := work(room{}, map[string]arrangement.Thing{"it": it})
			near(t, r.Find("it").Box, tt.want, 1e-3)
		})
	}
	// Clockwise seen from above, with x to the right of the paper and y up it: the rear end of a thing turned a little goes
	// to the left of the van.
	it := thing(place(t, "mid 1000", "mid 0", ""), 1000, 10, 10)
	it.Turn = degrees(10)
	r := work(room{}, map[string]arrangement.Thing{"it": it})
	s := r.Find("it")
	for _, v := range s.Solid[0].Outline {
		if v.X > 1400 && v.Y > 0 {
			t.Errorf("the rear end of a thing turned clockwise lies at y %.1f, want to the left", v.Y)
		}
	}
}

func TestWhatCannotBePlacedCountsInTheMiddle(t *testing.T) {
	things := map[string]arrangement.Thing{
		"loose":  thing(&build.Place{Undecided: true}, 100, 100, 100),
		"bare":   thing(nil, 100, 100, 100),
		"lamp":   {Fitting: build.Fitting{Upon: "loose", At: place(t, "0", "0", "")}},
		"ring-a": thing(place(t, "ring-b.rear", "0", ""), 100, 100, 100),
		"ring-b": thing(place(t, "ring-a.rear", "0", ""), 100, 100, 100),
		"ghost":  thing(place(t, "nobody.rear", "0", ""), 100, 100, 100),
		"self":   {Fitting: build.Fitting{In: "self", At: place(t, "0", "0", "")}},
		"hole":   {Fitting: build.Fitting{For: "shell.openings.none"}},
		"good":   thing(place(t, "0", "0", ""), 100, 100, 100),
	}
	r := work(room{}, things)
	for id := range things {
		s := r.Find(id)
		if id == "good" {
			if !s.Placed() || s.Undecided != "" {
				t.Errorf("good is not placed: %q", s.Undecided)
			}
			continue
		}
		if s.Placed() || s.Undecided == "" || s.Middle != [3]float64{1450, 0, 440} {
			t.Errorf("%s: placed %v, why %q, middle %v", id, s.Placed(), s.Undecided, s.Middle)
		}
	}
	if len(r.Assumed) != len(things)-1 {
		t.Errorf("assumptions %q, want one for each of %d", r.Assumed, len(things)-1)
	}
}

// A galley scribed to the right side that leans in, with a worktop and a can pushed to its right: these go along when it is moved away from there.
func TestWhatStandsAtTheScribedSideOfAHostGoesAlongWithIt(t *testing.T) {
	on := func(y string, f func(*arrangement.Thing)) [2]arrangement.Box {
		galley := scribed(thing(place(t, "100", y, ""), 1000, 450, 880), "right")
		top := scribed(thing(place(t, "front", "right", ""), 1000, 450, 20), "right")
		can := thing(place(t, "front", "right", ""), 200, 200, 300)
		top.Upon, can.In, galley.Board = "galley", "galley", 16
		f(&galley)
		r := work(room{}, map[string]arrangement.Thing{"galley": galley, "top": top, "can": can})
		return [2]arrangement.Box{r.Find("top").Box, r.Find("can").Box}
	}
	as := func(*arrangement.Thing) {}
	at := on("right", as)
	near(t, at[0], box(100, 1100, 470, 920, 920, 940), 1e-9)
	near(t, at[1], box(116, 316, 720, 920, 56, 356), 1e-9)
	away := on("-330", as)
	near(t, away[0], box(100, 1100, -330, 120, 920, 940), 1e-9)
	near(t, away[1], box(116, 316, -96, 104, 56, 356), 1e-9)
}
