package cables_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// A relay has a plus stud on each side. A black cable with a lug on one of them is a dead short of a battery.
func TestARelayGetsNoMinus(t *testing.T) {
	r := cables.Work(charged(cables.Split, cables.Load{ID: "relay", Name: "relay", Amps: 140}, func(s *cables.Source) { s.Most, s.Section = 25, 10 }))
	line, lead := lineAndLead(t, r)
	for _, c := range []cables.Cable{line, lead} {
		lugs := 0
		for _, e := range c.Terminals {
			if strings.HasPrefix(e.Words, "ring lug") {
				lugs += e.Count
			}
		}
		if c.Negative != "" || !c.Body || c.Cores() != 1 || lugs != 2 { // the fuse sits on a battery's post
			t.Errorf("%s has a minus of %q, %d cores and %d lugs", c.Number, c.Negative, c.Cores(), lugs)
		}
	}
	for _, i := range r.Bill {
		if strings.HasPrefix(i.Words, "black") && (slices.Contains(i.Cables, line.Number) || slices.Contains(i.Cables, lead.Number)) {
			t.Errorf("the bill has %s for %v", i.Words, i.Cables)
		}
	}
	looked := false
	for _, one := range r.Tests {
		mine := one.Cable == line.Number || one.Cable == lead.Number
		looked = looked || mine && one.Kind == cables.TestEye
		if mine && (one.Kind == cables.TestContinuity && strings.Contains(one.How, "minus") || one.Kind == cables.TestInsulation && strings.Contains(one.How, "to minus")) {
			t.Errorf("a minus is tested that is not there: %s", one.How)
		}
	}
	if !looked || !slices.ContainsFunc(r.Assumed, func(a string) bool { return strings.Contains(a, "plus only") }) {
		t.Errorf("nobody says that the relay has no minus: looked at %v, %v", looked, r.Assumed)
	}
	if slices.ContainsFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.cable.body" }) {
		t.Error("a minus is asked for")
	}
}

func TestWhatConvertsHasItsMinus(t *testing.T) {
	line, lead := lineAndLead(t, cables.Work(charged(cables.Engine, cables.Load{ID: "converter", Amps: 20})))
	if line.Negative != "black" || lead.Negative != "black" || lead.Cores() != 2 {
		t.Errorf("%q and %q", line.Negative, lead.Negative)
	}
}

// The same copper has the same crimps, whether its fuses are written or chosen.
func TestEndsFollowTheCopperAndNotWhatIsWritten(t *testing.T) {
	ends := map[string][]cables.Terminal{}
	for _, said := range []string{"", "both"} {
		line, _ := lineAndLead(t, cables.Work(charged(cables.Engine, cables.Load{ID: "converter", Amps: 20}, func(s *cables.Source) { s.Both = said })))
		ends[said] = line.Terminals
	}
	if !slices.Equal(ends[""], ends["both"]) {
		t.Errorf("%v, and written %v", ends[""], ends["both"])
	}
}

// The finding tells what the figure tells.
func TestTheLineOfARelayIsToldWithItsLead(t *testing.T) {
	r := cables.Work(charged(cables.Split, cables.Load{ID: "relay", Name: "relay"}, func(s *cables.Source) { s.Most, s.Section, s.Length.MM = 40, 10, 6000 }))
	i := slices.IndexFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.drop" })
	if i < 0 {
		t.Fatal("nothing is lost")
	}
	f := r.Findings()[i]
	for _, worst := range r.Figures() {
		if worst.Code == "power.drop.worst" && worst.Value != f.Measured.Value {
			t.Errorf("the figure says %g %%, the finding %g %%", worst.Value, f.Measured.Value)
		}
	}
	if len(f.Proposals) != 2 || !strings.Contains(f.Words, "line and lead together") {
		t.Errorf("%s %v", f.Words, f.Proposals)
	}
}
