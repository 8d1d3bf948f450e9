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
