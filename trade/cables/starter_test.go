package cables_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

// By hand: a converter of 30 A into 24 V takes 60 A from 12 V, one into 12 V takes 15 A from 24 V. A starter battery of 12.8 V and 5 mΩ gives 2560 A into a
// short, two of them in a row the same.
func TestTheVehiclesOwnVoltageCounts(t *testing.T) {
	for _, tt := range []struct {
		name                  string
		house, vehicle        float64 // V; 0 is not said
		volts, line, lead     float64
		says, assumed, relays bool
	}{
		{"both of 12 V", 12.8, 0, 14, 30, 30, false, false, false},
		{"a house battery of 24 V, and nobody said what the vehicle has", 25.6, 0, 28, 30, 30, true, true, false},
		{"both of 24 V", 25.6, 24, 28, 30, 30, true, false, false},
		{"a house battery of 24 V in a van of 12 V", 25.6, 12, 14, 60, 30, false, false, true},
		{"a house battery of 12 V in a van of 24 V", 12.8, 24, 28, 15, 30, true, false, true},
	} {
		in := charged(cables.Engine, cables.Load{ID: "converter", Name: "converter", Amps: 30}, func(s *cables.Source) { s.Starter = tt.vehicle })
		in.Banks[0].Batteries[0].Volts = tt.house
		r := cables.Work(in)
		line, lead := lineAndLead(t, r)
		if line.Volts != tt.volts || line.Current != tt.line || math.Abs(lead.Current-tt.lead) > 1e-9 || math.Abs(line.Fault[0]-2560) > 1e-6 {
			t.Errorf("%s: the line is of %g V and carries %g A, the lead %g A; a short %g A", tt.name, line.Volts, line.Current, lead.Current, line.Fault[0])
		}
		if said := slices.ContainsFunc(r.Tests, func(one cables.Test) bool {
			return strings.HasPrefix(one.Expect, "27.6 to 28.8 V at the starter battery")
		}); said != tt.says {
			t.Errorf("%s: the meter is to show 27.6 to 28.8 V with the engine on: %v", tt.name, said)
		}
		if assumed := slices.ContainsFunc(r.Assumed, func(one string) bool { return strings.Contains(one, "taken to be of 24 V") }); assumed != tt.assumed {
			t.Errorf("%s: said that 24 V are assumed: %v", tt.name, assumed)
		}
		in.Sources[0].Kind = cables.Split
		joined := false
		for _, f := range cables.Work(in).Findings() {
			joined = joined || f.Code == "power.volts" && f.About[0] == "/power/sources/one"
		}
		if joined != tt.relays {
			t.Errorf("%s: a relay between the two is found: %v", tt.name, joined)
		}
	}
}
