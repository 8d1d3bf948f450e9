package cables_test

import (
	"slices"
	"testing"

	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// The fuse is written once, for a line of 10 mm² that stands it and a lead of 1.5 mm² that does not.
func TestAFaultMarksTheCableItIsAbout(t *testing.T) {
	r := cables.Work(charged(cables.Engine, cables.Load{ID: "converter", Amps: 20}, func(s *cables.Source) { s.Section, s.Lead.Section = 10, 1.5 }))
	_, lead := lineAndLead(t, r)
	i := slices.IndexFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.fuse.great" })
	if i < 0 {
		t.Fatal("no fuse is too great")
	}
	if marks := r.Marks(r.Findings()[i]); !slices.Equal(marks, []string{lead.Number}) {
		t.Errorf("it marks %v, and the thin cable is %s", marks, lead.Number)
	}
}
