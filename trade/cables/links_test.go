package cables_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
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

// What has no number stands with its cable all the same, and is looked at and put in on the test sheet.
func TestFusesBranchPlugsAndLinksStandWithTheirCable(t *testing.T) {
	in := charged(cables.Sun, cables.Load{ID: "panel", Watts: 100, Volts: 18}, func(s *cables.Source) {
		s.Is = slices.Repeat(s.Is, 4)
		s.String = cables.Fuse{Said: true, Amps: 10, About: s.About + "/string-fuse"}
	})
	in.Banks[0].Batteries = slices.Repeat(in.Banks[0].Batteries[:1], 3)
	for _, row := range []bool{false, true} {
		in.Sources[0].InRow = row
		r := cables.Work(in)
		said := ""
		for i := range r.Cables {
			for _, p := range r.Pieces(&r.Cables[i]) {
				said += p.Words + "\n"
			}
		}
		for _, one := range r.Tests {
			said += one.How + "\n"
		}
		for words, inRow := range map[string]bool{"Each of the 4 panels has its fuse of 10 A in its plus": false, "3 pairs of branch plugs": false, "Look at each of the 4 panels": false, "Put the 4 fuses of 10 A in": false, "2 × red, 2 × black": true} {
			if want := inRow || !row; strings.Contains(said, words) != want {
				t.Errorf("in a row %v, %q said: %v", row, words, !want)
			}
		}
	}
}

// Plugs of panels are made for 2.5 to 6 mm², from memory: a way of 0.3 m with 5 A would do with 1 mm² by every other rule.
func TestThePlugsOfPanelsDecideHowThinTheirCableMayBe(t *testing.T) {
	for _, tt := range []struct {
		kind cables.SourceKind
		said float64
		want float64
		rule cables.Rule
		told bool
	}{
		{cables.Sun, 0, 2.5, cables.RulePlugs, false},
		{cables.Sun, 1.5, 1.5, cables.RulePlugs, true},
		{cables.Sun, 2.5, 2.5, cables.RulePlugs, false},
	} {
		r := cables.Work(charged(tt.kind, cables.Load{ID: "panel", Watts: 60, Volts: 18}, func(s *cables.Source) { s.Length.MM, s.Section = 300, tt.said }))
		line, _ := lineAndLead(t, r)
		told := slices.ContainsFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.cable.strand" && len(f.Proposals) == 1 })
		if line.Section.MM2 != tt.want || line.Section.Rule != tt.rule || told != tt.told {
			t.Errorf("%g written: %g mm² by %s, told %v", tt.said, line.Section.MM2, line.Section.Rule, told)
		}
	}
}
