package fit_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

func TestWhoLiesOnCushionsHasTheirLength(t *testing.T) {
	for _, tt := range []struct {
		name     string
		cushions [][2]float64 // along the bed of 1955
		want     string       // length, and what is told of it
		offered  string
	}{
		{"no mattress is planned yet", nil, "1955", ""},
		{"a mattress as long as the bed", [][2]float64{{800, 2755}}, "1955", ""},
		{"a mattress within its rim", [][2]float64{{820, 2735}}, "1955", ""},
		{"a short mattress", [][2]float64{{985, 2755}}, "1770 close c0", "make “c0” 185 mm longer towards the front, as long as bed"},
		{"a mattress that a head lies off", [][2]float64{{1055, 2755}}, "1700 fault c0", "make “c0” 255 mm longer towards the front, as long as bed"},
		{"one that hangs out over the foot", [][2]float64{{985, 2940}}, "1770 close c0", "make “c0” 185 mm longer towards the front, as long as bed"},
		{"two joined", [][2]float64{{800, 1700}, {1700, 2755}}, "1955", ""},
		{"two with a gap", [][2]float64{{800, 1700}, {1800, 2755}}, "955 fault c1", ""},
	} {
		v := in(high).person("a", 1730).put(fit.Fitting{ID: "bed", Make: "slat-bed", Held: "screwed", Rests: true}, box(800, 2755, -890, 0, 40, 400))
		for k, c := range tt.cushions {
			v.put(fit.Fitting{ID: "c" + string(rune('0'+k)), Carrier: "bed", Held: "strapped", Rests: true, Gives: 0.1}, box(c[0], c[1], -890, 0, 400, 500))
		}
		v.in.Stretch = func(string, int, float64, float64) (json.RawMessage, bool) { return json.RawMessage("{}"), true }
		v.in.Lengthen = func(string, int, float64) (json.RawMessage, bool) { return nil, false }
		r := fit.Work(v.mode("night", map[int]solid.Bounds{}, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"}).in)
		sound(t, r)
		length := figure(t, r, "fit.bed.length.a").Value
		got, offered := fmt.Sprintf("%.0f", length), ""
		for _, f := range r.Findings {
			if f.Code == "fit.bed.length" {
				got += " " + f.Severity.String() + strings.Replace(f.About[1], "/fittings/", " ", 1)
				for _, p := range f.Proposals {
					offered += p.Words
				}
			}
		}
		if got != tt.want || offered != tt.offered {
			t.Errorf("%s: %s, offered %q; want %s, %q", tt.name, got, offered, tt.want, tt.offered)
		}
	}
}
