package fit_test

import (
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// A bed of 1900 turned across a van of 1600: it and what lies on it stand out of both sides, and the head with it.
func TestABedTurnedIntoTheWallIsToldOnceAndItsSleeperOnce(t *testing.T) {
	narrow := room{half: 800, roof: 1900, drop: 1500, floor: 40, rear: 2900}
	v := in(narrow).person("a", 1800).
		put(fit.Fitting{ID: "bed", Make: "slat-bed", Rests: true}, box(1000, 1700, -1100, 800, 40, 400)).
		put(fit.Fitting{ID: "mattress", Name: "mattress", Carrier: "bed", Rests: true, Gives: 0.1}, box(1000, 1700, -1100, 800, 400, 500)).
		put(fit.Fitting{ID: "lamp", Carrier: "bed", Held: "screwed"}, box(1100, 1200, -1300, -1200, 400, 450))
	r := fit.Work(v.mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "left"}).in)
	sound(t, r)
	var out []string
	for _, f := range r.Findings {
		switch f.Code {
		case "fit.sticks-out":
			out = append(out, f.About[0])
			if f.About[0] == "/fittings/bed" && !strings.HasSuffix(f.Words, "What it carries is out with it: mattress.") {
				t.Errorf("the bed: %s", f.Words)
			}
		case "fit.bed.above":
			if want := "The head of a would lie within the left side"; f.Title != want {
				t.Errorf("over the bed: %q, want %q", f.Title, want)
			}
			out = append(out, f.Code)
		}
	}
	if got, want := strings.Join(out, " "), "fit.bed.above /fittings/bed /fittings/lamp"; got != want {
		t.Errorf("told of %s, want %s: the lamp stands out farther by itself", got, want)
	}
}

// A bed for two turned across a van whose rear it passes by so much that only the heads of who lies nearer the doors would be outside it.
func TestASleeperBeyondTheWallIsNotToldToLowerTheBed(t *testing.T) {
	narrow := room{half: 950, roof: 1900, drop: 1500, floor: 40, rear: 2900}
	v := in(narrow).person("a", 1700).person("b", 1700).
		put(fit.Fitting{ID: "bed", Make: "slat-bed", Rests: true}, box(2200, 3600, -900, 900, 40, 500))
	lying := func(who string) fit.Pose { return fit.Pose{Person: who, Does: "lies", At: "bed", Head: "left"} }
	r := fit.Work(v.mode("night", nil, lying("a"), lying("b")).in)
	sound(t, r)
	for _, f := range r.Findings {
		if f.Code == "fit.bed.above" && !strings.Contains(f.Title, "would lie within the rear") {
			t.Errorf("over the bed: %q %q", f.Title, f.Words)
		}
	}
}

func TestADrawerLeftOutWhileDrivingIsPutBackNotMoved(t *testing.T) {
	long := room{half: 900, roof: 1900, drop: 1500, floor: 40, rear: 2900}
	v := in(long).put(fit.Fitting{ID: "drawer", Make: "drawer", Held: "latched"}, box(2190, 2890, -200, 200, 100, 400)).
		mode("day", nil).mode("drive", map[int]solid.Bounds{0: box(2840, 3540, -200, 200, 100, 400)}).moves("drive", 0)
	r := fit.Work(v.in)
	sound(t, r)
	for _, f := range r.Findings {
		if f.Code != "fit.sticks-out" {
			continue
		}
		if !strings.HasPrefix(f.Words, "It is pulled out or opened while driving.") || len(f.Proposals) != 1 || !strings.Contains(string(f.Proposals[0].Patch), `{"take":{"drawer":null}}`) {
			t.Errorf("%s: %q, proposed %+v", f.Title, f.Words, f.Proposals)
		}
		return
	}
	t.Error("nothing is said of it")
}
