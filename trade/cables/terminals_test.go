package cables_test

import (
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

// Each piece of conductor has two ends, and each end a crimp: a cable that goes on from lamp to lamp is as many pieces as there are lamps.
func TestEveryEndOfAConductorIsCounted(t *testing.T) {
	lamp := func(id string) cables.Load {
		return cables.Load{ID: id, Name: id, Kind: cables.Light, Watts: 3, Volts: 12}
	}
	for _, tt := range []struct {
		name  string
		loads []cables.Load
		body  bool
		want  int
	}{
		{"one lamp: plus and minus, two ends each", []cables.Load{lamp("a")}, false, 4},
		{"two lamps on one cable: two pieces of each core", []cables.Load{lamp("a"), lamp("b")}, false, 8},
		{"three lamps on one cable: three pieces of each core", []cables.Load{lamp("a"), lamp("b"), lamp("c")}, false, 12},
		{"two lamps with the body as their negative", []cables.Load{lamp("a"), lamp("b")}, true, 4},
	} {
		in := van(cables.Circuit{Way: cables.Way{ID: "lights", About: "/power/circuits/lights", Title: "lights", Body: tt.body}, From: "house", Loads: tt.loads})
		r := cables.Work(in)
		got, said := 0, false
		for _, c := range r.Cables {
			if c.ID != "lights" {
				continue
			}
			for _, one := range c.Terminals {
				got += one.Count
				said = said || strings.Contains(one.At, "in and out")
			}
		}
		if got != tt.want || said != (len(tt.loads) > 1) {
			t.Errorf("%s: %d crimps, said that it goes on %v; want %d", tt.name, got, said, tt.want)
		}
	}
}
