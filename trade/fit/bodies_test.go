package fit_test

import (
	"math"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// doors is a room with one side door of 1000 by 1360 inside the lining.
func doors(v *van) *van {
	v.in.Openings = []fit.Opening{{ID: "side", Through: "left", X: [2]float64{100, 1100}, Z: [2]float64{0, 1400}, Door: true}}
	return v
}

// Which rectangles go in: cases plain enough to need no formula, the longest slant of the door being 1688.
func TestWhatGoesInThroughADoor(t *testing.T) {
	bought := func(x, y, z float64) fit.Inputs {
		return doors(in(high).put(fit.Fitting{ID: "a"}, box(1000, 1000+x, -y/2, y/2, 40, 40+z)).mode("day", nil)).in
	}
	panel := func(x, y, board float64) fit.Inputs {
		return doors(in(high).put(fit.Fitting{ID: "a", Make: "bench", Board: board}, box(200, 200+x, -200, 200, 40, 40+y)).mode("day", nil)).in
	}
	today := bought(1500, 1500, 1500)
	today.Fittings[0].Today = true
	for _, c := range []struct {
		name string
		in   fit.Inputs
		want string
	}{
		{"straight through", bought(1300, 900, 1300), ""},
		{"the smallest face first", bought(1700, 900, 300), ""},
		{"too large every way", bought(1500, 1500, 1500), "fault fit.door"},
		{"what is in already went in", today, ""},
		{"a panel as long as the slant of the door goes in tilted", panel(2500, 1660, 12), ""},
		{"a panel longer than the slant both ways does not", panel(2700, 1720, 12), "fault fit.door"},
	} {
		r := fit.Work(c.in)
		sound(t, r)
		if got := told(r); !strings.HasPrefix(got, c.want) || c.want == "" && strings.Contains(got, "fit.door") {
			t.Errorf("%s: %q", c.name, got)
		}
	}
}

func TestLooseThingsAreToldByTheirMassAndForce(t *testing.T) {
	v := in(flat).put(fit.Fitting{ID: "crate", Held: "loose", Mass: 20}, box(0, 400, 0, 400, 40, 400)).
		put(fit.Fitting{ID: "kettle", Held: "loose", Mass: 1.5}, box(500, 600, 0, 200, 40, 200)).
		put(fit.Fitting{ID: "spoon", Held: "loose", Mass: 0.1}, box(700, 720, 0, 20, 40, 60)).
		put(fit.Fitting{ID: "bench", Make: "bench", Mass: 30, Today: true}, box(1000, 2000, 300, 900, 40, 450)).
		put(fit.Fitting{ID: "cell", Carrier: "bench", In: true, Mass: 13, Today: true}, box(1100, 1400, 400, 600, 60, 250)).
		put(fit.Fitting{ID: "place", Mass: 13, Later: true}, box(2100, 2400, 400, 600, 60, 250)).
		mode("drive", nil)
	r := fit.Work(v.in)
	sound(t, r)
	if got, want := told(r), "fault fit.loose crate [drive] 20\nclose fit.loose kettle [drive] 2"; got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	if words := r.Findings[0].Words; !strings.Contains(words, "160 N to 200 N") { // 0.8 g of 20 kg is 157 N, 1 g 196 N
		t.Errorf("the forces are not told: %s", words)
	}
}

// Out of a bed one crawls over what has 500 above it, and not under what has less.
func TestWaysOutAreCrawledOverBeds(t *testing.T) {
	asleep := func(over float64) float64 {
		v := in(high).person("a", 1670).
			put(fit.Fitting{ID: "bed", Rests: true}, box(900, 2900, -900, 900, 400, 460)).
			put(fit.Fitting{ID: "wall"}, box(1800, 2000, -900, 900, 460+over, 1990)).
			mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"})
		v.in.Openings = []fit.Opening{
			{ID: "rear", Through: "rear", Y: [2]float64{-700, 700}, Z: [2]float64{0, 1500}, Door: true, WayOut: true},
			{ID: "side", Through: "left", X: [2]float64{100, 800}, Z: [2]float64{0, 1500}, Door: true, WayOut: true},
		}
		return figure(t, fit.Work(v.in), "fit.ways-out.night").Value
	}
	if a, b := asleep(510), asleep(490); a != 2 || b != 2 { // from beside the whole bed one gets out at either end
		t.Errorf("%g and %g ways out", a, b)
	}
	v := in(high).person("a", 1670).
		put(fit.Fitting{ID: "bed", Rests: true}, box(2000, 2900, -900, 900, 400, 460)).
		put(fit.Fitting{ID: "chest"}, box(1300, 1650, -900, 900, 40, 600)).
		mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "left"})
	v.in.Openings = []fit.Opening{
		{ID: "rear", Through: "rear", Y: [2]float64{-700, 700}, Z: [2]float64{0, 1500}, Door: true, WayOut: true},
		{ID: "side", Through: "left", X: [2]float64{100, 800}, Z: [2]float64{0, 1500}, Door: true, WayOut: true},
	}
	if got := figure(t, fit.Work(v.in), "fit.ways-out.night").Value; got != 1 {
		t.Errorf("over a chest nobody rests on: %g ways out, want 1", got)
	}
	v.in.Fittings[1].Rests = true
	if got := figure(t, fit.Work(v.in), "fit.ways-out.night").Value; got != 2 {
		t.Errorf("over a seat: %g ways out, want 2", got)
	}
}

// A side that leans in takes width at the height of shoulders, not at the mattress.
func TestShouldersBesideALeaningWall(t *testing.T) {
	lean := room{half: 900, lean: 0.5, roof: 2000, floor: 40, rear: 2900}
	v := in(lean).person("a", 1756).put(fit.Fitting{ID: "bed", Rests: true}, box(500, 2500, 300, 900, 540, 600)).
		mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"})
	r := fit.Work(v.in)
	sound(t, r)
	var got float64
	for _, f := range r.Findings {
		if f.Code == "fit.bed.width" {
			got = f.Measured.Value
		}
	}
	// The chest of one of 1756 is 0.1482 of stature deep (survey: 253.8/1756.2 and 247.4/1628.5, the middle): shoulders are 130 over 600, where the side is in by 65.
	chest := 1756 * (253.8/1756.2 + 247.4/1628.5) / 2
	proof.Check(t, proof.Case{Name: "width of a bed at the height of shoulders", Source: "by hand from means of the US Army survey of 2012", Inputs: "bed from 300 to 900 at 600, side at 900 leaning in by half above 600",
		Expected: 600 - chest/2/2, Got: got, Tolerance: 0.1, Unit: "mm"})
}

func TestWhomTheVanSuits(t *testing.T) {
	v := doors(in(flat).person("a", 1640)).
		put(fit.Fitting{ID: "bed", Rests: true}, box(900, 2800, 200, 880, 400, 460)).
		mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "bed"}).mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"})
	r := fit.Work(v.in)
	if len(r.Suits.Bodies) != 7 || r.Suits.Bodies[0].ID != "a" {
		t.Fatalf("bodies %v", r.Suits.Bodies)
	}
	want := map[string]string{ // of a, small to large woman, small to large man
		"sit": "ok ok ok ok ok ok ok", "sit height of the seat": "ok ok ok ok ok ok ok", "sit room for knees": "ok ok ok ok ok ok ok", "lie": "ok ok ok ok ok ok close", "stand": "close ok ok short close short short", "pass": "ok ok ok ok ok ok ok",
	}
	for _, row := range r.Suits.Rows {
		var got []string
		for _, c := range row.Cells {
			got = append(got, c.Fits)
			if math.IsNaN(c.Room) || c.Need <= 0 {
				t.Errorf("%s: %+v", row.Does, c)
			}
		}
		key := row.Does
		if _, known := want[key]; !known {
			key += " " + row.What
		}
		if w := want[key]; w != strings.Join(got, " ") {
			t.Errorf("%s (%s): %v, want %s; %v", row.Does, row.What, got, w, row.Cells)
		}
		delete(want, key)
	}
	if len(want) > 0 {
		t.Errorf("no rows for %v", want)
	}
}

func TestSeatsTablesAndWorktops(t *testing.T) {
	sits := func(top float64, more ...solid.Bounds) *van {
		v := in(high).person("a", 1756).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 40+top))
		for k, b := range more {
			v.put(fit.Fitting{ID: string(rune('p' + k)), Make: map[bool]string{true: "table"}[k == 0], Aside: k == 0}, b)
		}
		return v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"})
	}
	nowhere := box(0, 1, -800, -799, 40, 41)
	for _, c := range []struct {
		name string
		v    *van
		want string
	}{
		{"as the trade makes it", sits(430), ""},
		{"feet hang", sits(580), "note fit.seat.height seat a [day] 580"},
		{"low as a step", sits(280), "note fit.seat.height seat a [day] 280"},
		{"a table to eat at", sits(430, box(1500, 2200, -150, 250, 725, 750)), ""},
		{"a table on the knees", sits(430, box(1500, 2200, -150, 250, 600, 625)), "close fit.table p seat a [day] 130"},
		{"a table to stand at", sits(430, box(1500, 2200, -150, 250, 900, 925)), "note fit.table p seat a [day] 455"},
		{"too far to be the table of this seat", sits(430, box(1500, 2200, -600, -150, 600, 625)), ""},
		{"knees against a locker", sits(430, nowhere, box(1000, 2900, -900, 150, 40, 800)), "close fit.seat.knees seat a [day] 150"},
		{"a locker that leaves half the seat", sits(430, nowhere, box(1900, 2900, -900, 150, 40, 800)), ""},
	} {
		r := fit.Work(c.v.in)
		sound(t, r)
		if got := told(r); got != c.want {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}
