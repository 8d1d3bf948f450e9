package fit_test

import (
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// aisle is a van with a bed at the right that pulls out to the left by night, from y 300 to y -300; a table stands beside it.
func aisle() *van {
	return in(flat).
		put(fit.Fitting{ID: "bed"}, box(1000, 2900, 300, 900, 400, 460)).
		put(fit.Fitting{ID: "table"}, box(1200, 1800, -300, 200, 700, 725)).
		mode("drive", nil).mode("day", nil).
		mode("night", map[int]solid.Bounds{0: box(1000, 2900, -300, 900, 400, 460)})
}

// moves gives a mode its movers: from where each rests to where the mode has it, straight.
func (v *van) moves(mode string, fittings ...int) *van {
	for m := range v.in.Modes {
		it := &v.in.Modes[m]
		for _, f := range fittings {
			if it.Name == mode {
				path := solid.Solid{solid.Box(v.boxes[f].Join(it.Standings[f].Box))}
				it.Movers = append(it.Movers, fit.Mover{Fitting: f, Position: "gone", Path: path})
			}
		}
	}
	return v
}

func TestAModeIsMadeUpInSomeOrder(t *testing.T) {
	beside := func() *van { // two drawers side by side, each in the other's way once out
		return in(flat).
			put(fit.Fitting{ID: "first"}, box(0, 400, 400, 900, 100, 300)).
			put(fit.Fitting{ID: "second"}, box(500, 900, 400, 900, 100, 300)).
			mode("drive", nil).mode("day", nil)
	}
	tests := []struct {
		name string
		v    *van
		want string // findings, then the order by night
	}{
		{"a bed slides out under a table", aisle().moves("night", 0), "bed gone"},
		{"a post where it comes to lie is a foul of the night, not of the way", aisle().put(fit.Fitting{ID: "post"}, box(2400, 2450, -100, -50, 40, 1500)).again().moves("night", 0),
			"fault fit.foul bed post [night] 250\nbed gone"},
		{"a post that it passes and leaves behind bars it", in(flat).put(fit.Fitting{ID: "bed"}, box(0, 500, 500, 900, 400, 460)).
			put(fit.Fitting{ID: "post"}, box(100, 150, 200, 250, 40, 1500)).mode("drive", nil).mode("day", nil).
			mode("night", map[int]solid.Bounds{0: box(0, 500, -400, 0, 400, 460)}).moves("night", 0),
			"fault fit.moves bed post [night] 150"},
		{"of more than three posts the first is told", in(flat).put(fit.Fitting{ID: "bed"}, box(0, 500, 500, 900, 400, 460)).
			put(fit.Fitting{ID: "post"}, box(100, 110, 200, 250, 40, 1500)).put(fit.Fitting{ID: "next"}, box(200, 210, 200, 250, 40, 1500)).
			put(fit.Fitting{ID: "third"}, box(300, 310, 200, 250, 40, 1500)).put(fit.Fitting{ID: "last"}, box(400, 410, 200, 250, 40, 1500)).
			mode("drive", nil).mode("day", nil).mode("night", map[int]solid.Bounds{0: box(0, 500, -400, 0, 400, 460)}).moves("night", 0),
			"fault fit.moves bed post [night] 110"},
		{"a soft curtain does not", in(flat).put(fit.Fitting{ID: "bed"}, box(0, 500, 500, 900, 400, 460)).
			put(fit.Fitting{ID: "curtain", Gives: 1}, box(100, 150, 200, 250, 40, 1500)).mode("drive", nil).mode("day", nil).
			mode("night", map[int]solid.Bounds{0: box(0, 500, -400, 0, 400, 460)}).moves("night", 0),
			"bed gone"},
		{"a table that goes down into the bed's way goes last", in(flat).put(fit.Fitting{ID: "table"}, box(0, 500, 200, 400, 700, 725)).
			put(fit.Fitting{ID: "leaf"}, box(0, 500, 500, 900, 500, 560)).mode("drive", nil).mode("day", nil).
			mode("night", map[int]solid.Bounds{0: box(0, 500, 200, 400, 510, 535), 1: box(0, 500, -400, 0, 500, 560)}).moves("night", 0, 1),
			"leaf gone, then table gone"},
		{"of two that bar each other at both ends neither can go", beside().
			mode("night", map[int]solid.Bounds{0: box(500, 900, -200, 300, 100, 300), 1: box(0, 400, -200, 300, 100, 300)}).moves("night", 0, 1),
			"fault fit.moves first second [night]"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := fit.Work(tt.v.in)
			sound(t, r)
			got := told(r)
			for _, f := range r.Figures {
				if f.Code == "fit.moves.night" {
					got = strings.TrimPrefix(got+"\n"+f.Words, "\n")
				}
			}
			if got != tt.want {
				t.Errorf("got\n%s\nwant\n%s", got, tt.want)
			}
		})
	}
}

// Of two that bar one another it is enough to take one away: that one then need not move.
func TestTheSmallestSetThatBarsIsTold(t *testing.T) {
	r := fit.Work(in(flat).put(fit.Fitting{ID: "first"}, box(0, 100, 0, 400, 100, 300)).put(fit.Fitting{ID: "second"}, box(500, 600, 0, 400, 100, 300)).
		mode("drive", nil).mode("day", nil).
		mode("night", map[int]solid.Bounds{0: box(500, 600, 0, 400, 100, 300), 1: box(0, 100, 0, 400, 100, 300)}).moves("night", 0, 1).in)
	sound(t, r)
	if len(r.Findings) != 1 || !strings.Contains(r.Findings[0].Words, "Without second there is one.") {
		t.Errorf("%s: %+v", told(r), r.Findings)
	}
}

// again gives every mode the fittings that were put after it was made.
func (v *van) again() *van {
	for m := range v.in.Modes {
		it := &v.in.Modes[m]
		for i := len(it.Standings); i < len(v.boxes); i++ {
			it.Standings = append(it.Standings, fit.Standing{Solid: solid.Solid{solid.Box(v.boxes[i])}, Box: v.boxes[i]})
		}
	}
	return v
}

func TestEveryOrderOfTenIsLookedAt(t *testing.T) {
	// Ten leaves that must go one after the other: each stands where the next has to pass.
	v := in(room{half: 900, roof: 1700, floor: 40, rear: 20000})
	moved := map[int]solid.Bounds{}
	var all []int
	for i := range 10 {
		x := float64(1000 * i)
		v.put(fit.Fitting{ID: "leaf-" + string(rune('a'+i))}, box(x, x+100, -400, 400, 400, 450))
		moved[i] = box(x+1050, x+1150, -400, 400, 400, 450)
		all = append(all, i)
	}
	v.mode("drive", nil).mode("day", nil).mode("night", moved).moves("night", all...)
	r := fit.Work(v.in)
	sound(t, r)
	f := figure(t, r, "fit.moves.night")
	if f.Value != 10 || !strings.HasPrefix(f.Words, "leaf-j gone, then leaf-i gone") {
		t.Errorf("%g moves: %s", f.Value, f.Words)
	}
}
