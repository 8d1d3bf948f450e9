package fit_test

import (
	"encoding/json"
	"testing"

	"tumblehome/trade/fit"
)

func TestACushionLiesOnWhatCarriesIt(t *testing.T) {
	for _, tt := range []struct {
		name    string
		off     float64
		shelf   bool
		want    string
		offered string
	}{
		{"as it is laid", 0, false, "", ""},
		{"a hand's breadth over", 40, false, "", ""},
		{"the bed was moved and the mattress left", 170, false, "note fit.upon mattress bed 170", "move mattress 170 mm to the right"},
		{"a shelf as high fills the gap", 170, true, "", ""},
	} {
		v := in(high).
			put(fit.Fitting{ID: "bed", Make: "slat-bed", Held: "screwed", Rests: true}, box(800, 2755, -890+tt.off, -100+tt.off, 40, 400)).
			put(fit.Fitting{ID: "mattress", Carrier: "bed", Held: "strapped", Rests: true, Gives: 0.1}, box(800, 2755, -890, -100, 400, 500))
		if tt.shelf {
			v.put(fit.Fitting{ID: "shelf", Held: "screwed"}, box(800, 2755, -890, -890+tt.off, 40, 400))
		}
		v.in.Nudge = func(string, float64, float64, float64) (json.RawMessage, bool) { return json.RawMessage("{}"), true }
		r := fit.Work(v.mode("day", nil).in)
		sound(t, r)
		offered := ""
		for _, f := range r.Findings {
			for _, p := range f.Proposals {
				offered += p.Words
			}
		}
		if got := told(r); got != tt.want || offered != tt.offered {
			t.Errorf("%s: told %q, offered %q; want %q, %q", tt.name, got, offered, tt.want, tt.offered)
		}
	}
}

func TestACookerStandsOnItsWorktop(t *testing.T) {
	for _, tt := range []struct {
		name  string
		make  string
		over  float64
		shelf float64 // top of a cupboard behind the worktop; nought is none
		want  string
	}{
		{"a fifth of its length over", "", 80, 0, ""},
		{"more", "", 100, 0, "note fit.upon cooker worktop 100"},
		{"a box", "box", 100, 0, "note fit.upon cooker worktop 100"},
		{"a board is made so", "worktop", 100, 0, ""},
		{"a cupboard as high is behind it", "", 100, 920, ""},
		{"a cupboard 25 lower is behind it", "", 100, 895, "note fit.upon cooker worktop 100"},
	} {
		v := in(high).
			put(fit.Fitting{ID: "worktop", Make: "worktop", Held: "screwed"}, box(800, 1140, -890, -440, 40, 920)).
			put(fit.Fitting{ID: "cooker", Make: tt.make, Carrier: "worktop", Held: "screwed"}, box(1140+tt.over-400, 1140+tt.over, -800, -500, 920, 1000))
		if tt.shelf > 0 {
			v.put(fit.Fitting{ID: "cupboard", Held: "screwed"}, box(1140, 1400, -890, -440, 40, tt.shelf))
		}
		r := fit.Work(v.mode("day", nil).in)
		sound(t, r)
		if got := told(r); got != tt.want {
			t.Errorf("%s: told %q, want %q", tt.name, got, tt.want)
		}
	}
}
