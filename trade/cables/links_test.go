package cables_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

func TestBatteriesSideBySideAreLinkedBoughtAndComparedFirst(t *testing.T) {
	for _, several := range []bool{false, true} {
		in := charged(cables.Sun, cables.Load{ID: "panel", Watts: 100, Volts: 20})
		if several {
			in.Banks[0].Batteries = append(in.Banks[0].Batteries[:1:1], in.Banks[0].Batteries[0])
			in.Sources[0].Is = append(in.Sources[0].Is, in.Sources[0].Is[0])
		}
		in.Rows = map[string]cables.Row{"battery-link": {Unit: "piece", Price: 7}, "connector-solar-branch": {Unit: "piece", Price: 8}}
		r := cables.Work(in)
		bought := func(words string) bool {
			return slices.ContainsFunc(r.Bill, func(i cables.Item) bool { return strings.Contains(i.Words, words) && i.Count == 1 && i.Price > 0 })
		}
		compared := slices.ContainsFunc(r.Tests, func(one cables.Test) bool { return strings.Contains(one.Expect, "0.1 V between any two") })
		if bought("red link") != several || bought("black link") != several || bought("branch plugs") != several || compared != several {
			t.Errorf("several %v: links %v and %v, branch plugs %v, compared %v", several, bought("red link"), bought("black link"), bought("branch plugs"), compared)
		}
	}
}
