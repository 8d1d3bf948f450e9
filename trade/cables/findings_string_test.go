package cables_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// IEC 62548 (from memory): a fuse in every string where (n − 1)·Isc is more than the module's maximum series fuse; In of 1.5·Isc at least. By hand, with
// Isc = 1.06·P/U: 100 W at 18 V give 5.89 A, 180 W 10.6 A, 425 W at 32 V 14.1 A.
func TestPanelsSideBySideNeedAFuseEachFromSoManyOn(t *testing.T) {
	small, middle, large := cables.Load{Watts: 100, Volts: 18}, cables.Load{Watts: 180, Volts: 18}, cables.Load{Watts: 425, Volts: 32}
	for _, tt := range []struct {
		name    string
		panel   cables.Load
		n       int
		fuse    float64 // that is written; 0 for none
		most    float64 // that is written
		finds   string  // the beginning of a severity; "" for nothing
		reverse float64 // A
		takes   float64 // A that are proposed
	}{
		{"one panel", small, 1, 0, 0, "", 0, 0},
		{"two of 100 W: 5.9 A of 15", small, 2, 0, 0, "", 0, 0},
		{"three of 100 W: 11.8 A of 15", small, 3, 0, 0, "", 0, 0},
		{"four of 100 W: 17.7 A of 15", small, 4, 0, 0, "fault", 3 * 1.06 * 100 / 18, 10},
		{"three of 100 W whose label allows 10 A", small, 3, 0, 10, "fault", 2 * 1.06 * 100 / 18, 10},
		{"two of 180 W", middle, 2, 0, 0, "", 0, 0},
		{"three of 180 W: 21.2 A of 20", middle, 3, 0, 0, "fault", 2 * 1.06 * 180 / 18, 20},
		{"three of 425 W: 28.2 A of 25", large, 3, 0, 0, "fault", 2 * 1.06 * 425 / 32, 25},
		{"four of 100 W with the right fuses", small, 4, 10, 0, "", 0, 0},
		{"four of 100 W with fuses beyond the label", small, 4, 20, 15, "fault", 20, 10},
		{"four of 100 W with fuses that blow in the sun", small, 4, 6, 15, "close", 6, 10},
		{"a label that allows less than any fuse carries, and a fuse as the label has it", small, 4, 8, 8, "close", 8, 0},
		{"a label that allows less than any fuse carries", small, 4, 0, 8, "fault", 3 * 1.06 * 100 / 18, 0},
	} {
		in := charged(cables.Sun, tt.panel, func(s *cables.Source) {
			s.Is = slices.Repeat(s.Is, tt.n)
			s.String = cables.Fuse{Said: tt.fuse > 0, Amps: tt.fuse, About: s.About + "/string-fuse"}
			s.StringMost = tt.most
		})
		found := finding.Finding{}
		for _, f := range cables.Work(in).Findings() {
			if f.Code == "power.fuse.string" {
				found = f
			}
		}
		if (found.Code != "") != (tt.finds != "") || tt.finds != "" && !strings.HasPrefix(found.Severity.String(), tt.finds) {
			t.Errorf("%s: %v %q", tt.name, found.Severity, found.Title)
			continue
		}
		if tt.finds == "" {
			continue
		}
		proof.Check(t, proof.Case{Name: "panels side by side: " + tt.name, Source: "IEC 62548, from memory; (n − 1)·Isc by hand", Inputs: "Isc = 1.06·P/U", Expected: tt.reverse, Got: found.Measured.Value, Tolerance: 1e-9, Unit: "A"})
		if none := tt.takes == 0; strings.Contains(found.Words, "A fuse of at least") == none || strings.Contains(found.Title+found.Words, "No fuse helps") != none {
			t.Errorf("%s: advice that cannot be followed: %s: %s", tt.name, found.Title, found.Words)
		}
		if got := proposedString(t, found); got != tt.takes {
			t.Errorf("%s: fuses of %g A are proposed, not of %g", tt.name, got, tt.takes)
		}
	}
}

func proposedString(t *testing.T, f finding.Finding) float64 {
	t.Helper()
	if len(f.Proposals) == 0 {
		return 0
	}
	var patch struct {
		Power struct {
			Sources map[string]map[string]float64
		}
	}
	if err := json.Unmarshal(f.Proposals[0].Patch, &patch); err != nil {
		t.Fatal(err)
	}
	return patch.Power.Sources["one"]["string-fuse"]
}

func TestFusesOfPanelsAreBought(t *testing.T) {
	in := charged(cables.Sun, cables.Load{ID: "panel", Watts: 100, Volts: 18}, func(s *cables.Source) {
		s.Is = slices.Repeat(s.Is, 4)
		s.String = cables.Fuse{Said: true, Amps: 10, About: s.About + "/string-fuse"}
	})
	in.Rows = map[string]cables.Row{"fuse-solar-inline": {Unit: "piece", Price: 8}}
	if !slices.ContainsFunc(cables.Work(in).Bill, func(i cables.Item) bool {
		return strings.Contains(i.Words, "solar strings of 10 A") && i.Count == 4 && i.Price == 32
	}) {
		t.Error("four fuses at 8 each are not in the bill")
	}
}

// By hand: three panels of 180 W at 18 V send 30 A side by side, and 10 A at 54 V in a row; beside bright clouds a quarter more.
func TestPanelsInARowAddVoltsAndNotCurrent(t *testing.T) {
	panel := cables.Load{ID: "panel", Watts: 180, Volts: 18}
	for _, tt := range []struct {
		name        string
		inRow       bool
		volts, most float64 // of the source
		amps        float64
		low         bool // what is written is told to be too little
	}{
		{"side by side, and what was written for two", false, 18, 17, 37.5, true},
		{"side by side, and what is written is enough", false, 18, 30, 30, false},
		{"in a row, and what is written for one", true, 54, 10, 10, false},
		{"in a row, and nothing is written", true, 54, 0, 12.5, false},
	} {
		r := cables.Work(charged(cables.Sun, panel, func(s *cables.Source) {
			s.Is, s.InRow, s.Volts, s.Most = slices.Repeat(s.Is, 3), tt.inRow, tt.volts, tt.most
		}))
		line, _ := lineAndLead(t, r)
		if line.Current != tt.amps || line.Volts != tt.volts {
			t.Errorf("%s: %g A at %g V, want %g A at %g V", tt.name, line.Current, line.Volts, tt.amps, tt.volts)
		}
		found := map[string]bool{}
		for _, f := range r.Findings() {
			found[f.Code] = true
		}
		if found["power.current.low"] != tt.low || found["power.fuse.string"] == tt.inRow {
			t.Errorf("%s: %v", tt.name, found)
		}
	}
}
