package cables_test

import (
	"math"
	"slices"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// charged is a van with a lamp, a main fuse and one source of a kind, with something done to it.
func charged(kind cables.SourceKind, is cables.Load, more ...func(*cables.Source)) cables.Inputs {
	in := van(circuit("lamp", cables.Light, 3, 4, section(1.5), fuse(5)))
	in.Banks[0].MainFuse = cables.Fuse{Said: true, Amps: 100, Kind: cables.ClassT, Away: -1, About: "/power/batteries/house/main-fuse"}
	about := "/power/sources/one"
	s := cables.Source{Way: cables.Way{ID: "one", About: about, Title: "source", Section: 6, Length: cables.Length{MM: 4000, Known: cables.Measured},
		Fuse: cables.Fuse{Said: true, Amps: 40, Away: -1, About: about + "/fuse"}}, Is: []cables.Load{is}, To: "house", Kind: kind, Both: "both"}
	s.Lead = cables.Way{ID: "one", About: about + "/lead", Section: 10, Length: cables.Length{MM: 600, Known: cables.Measured}, Fuse: cables.Fuse{Away: -1, About: about}}
	for _, do := range more {
		do(&s)
	}
	in.Sources = []cables.Source{s}
	return in
}

func lineAndLead(t *testing.T, r cables.Result) (line, lead cables.Cable) {
	t.Helper()
	i := slices.IndexFunc(r.Cables, func(c cables.Cable) bool { return c.Role == cables.Charge })
	if i < 0 || r.Cables[i+1].Role != cables.Lead {
		t.Fatalf("a source has not a line and a lead: %+v", r.Cables)
	}
	return r.Cables[i], r.Cables[i+1]
}

// IEC 60228 class 5 at 20 °C: 3.30 Ω/km of 6 mm2, 1.91 of 10 mm2; copper of 30 °C has 3.93 % more.
func TestALeadLosesWhatItsCopperSays(t *testing.T) {
	const warm = 1 + 0.00393*10
	panel := cables.Load{ID: "panel", Watts: 180, Volts: 20}
	for _, tt := range []struct {
		name             string
		in               cables.Inputs
		amps, own, whole float64 // A and V of the lead; V with what is lost before it
	}{
		{"a controller turns the volts of 180 W into more amperes: 9 A at 20 V are 14.06 at 12.8 V", charged(cables.Sun, panel, func(s *cables.Source) { s.Most, s.Volts = 9, 20 }),
			9 * 20 / 12.8, 9 * 20 / 12.8 * 1.2 * 1.91e-3 * warm, 9 * 20 / 12.8 * 1.2 * 1.91e-3 * warm},
		{"no more than it is made for", charged(cables.Sun, panel, func(s *cables.Source) { s.Most, s.Volts, s.By = 9, 20, cables.Part{ID: "controller", Amps: 10} }),
			10, 10 * 1.2 * 1.91e-3 * warm, 10 * 1.2 * 1.91e-3 * warm},
		{"a plain one passes them on", charged(cables.Sun, panel, func(s *cables.Source) { s.Most, s.Volts, s.Plain = 9, 20, true }), 9, 9 * 1.2 * 1.91e-3 * warm, 9 * 1.2 * 1.91e-3 * warm},
		{"what converts gives what it is made for", charged(cables.Engine, cables.Load{ID: "converter", Amps: 30}, func(s *cables.Source) { s.Most = 36 }), 30, 30 * 1.2 * 1.91e-3 * warm, 30 * 1.2 * 1.91e-3 * warm},
		{"a relay adds what is lost before it", charged(cables.Split, cables.Load{ID: "relay", Amps: 140}, func(s *cables.Source) { s.Most = 25 }), 25, 25 * 1.2 * 1.91e-3 * warm, 25 * warm * (1.2*1.91e-3 + 8*3.30e-3)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, lead := lineAndLead(t, cables.Work(tt.in))
			source := "ΔU = 2·l·r·I by hand, r of IEC 60228 class 5 and 0.393 %/K"
			proof.Check(t, proof.Case{Name: "current in a lead: " + tt.name, Source: "power over voltage, by hand", Inputs: "as named", Expected: tt.amps, Got: lead.Current, Tolerance: 1e-9, Unit: "A"})
			proof.Check(t, proof.Case{Name: "lost in a lead: " + tt.name, Source: source, Inputs: "0.6 m of 10 mm2", Expected: tt.own, Got: lead.Drop.Own, Tolerance: 1e-9, Unit: "V"})
			proof.Check(t, proof.Case{Name: "lost in all that counts for a lead: " + tt.name, Source: source, Inputs: "4 m of 6 mm2 before it", Expected: tt.whole, Got: lead.Drop.Cables(), Tolerance: 1e-9, Unit: "V"})
		})
	}
}

func TestPanelsNeedNoFuseAndTheirControllerDoes(t *testing.T) {
	in := charged(cables.Sun, cables.Load{ID: "panel", Watts: 180, Volts: 20})
	line, lead := lineAndLead(t, cables.Work(in))
	if !line.Fuse.Needless || line.Fuse.Amps > 0 || line.Fault[0] > 2*line.Current {
		t.Errorf("the panels' line has a fuse of %g A and meets %g A", line.Fuse.Amps, line.Fault[0])
	}
	if lead.Fuse.Amps != 40 || lead.Fuse.Meets < 1000 || !lead.Fuse.Backed || lead.FedBy != line.Number {
		t.Errorf("the lead's fuse is %+v", lead.Fuse)
	}
}

// A blade fuse on the board breaks 1000 A; a short there draws more. Only a main fuse that breaks all of it makes up for that.
func TestTheFuseOfALeadMustBreakWhatTheBoardGives(t *testing.T) {
	for main, want := range map[cables.Kind]bool{cables.ClassT: false, cables.Maxi: true} {
		in := charged(cables.Sun, cables.Load{ID: "panel", Watts: 180, Volts: 20}, func(s *cables.Source) { s.Lead.Fuse.Kind = cables.Blade })
		in.Banks[0].MainFuse.Kind = main
		found := false
		for _, f := range cables.Work(in).Findings() {
			found = found || f.Code == "power.fuse.breaking" && f.About[0] == "/power/sources/one/fuse"
		}
		if found != want {
			t.Errorf("behind a main fuse of the kind %s it is found: %v", main, found)
		}
	}
}

func TestALineBetweenBatteriesHasItsFusesWhereTheyAreSaidToBe(t *testing.T) {
	for _, tt := range []struct {
		said       string
		line, lead float64
		atLead     float64 // written there
	}{
		{said: "both", line: 40, lead: 40}, {said: "house", lead: 40}, {said: "source", line: 40}, {said: "", line: 40, lead: 40},
		{said: "", atLead: 30, line: 40, lead: 30},
	} {
		r := cables.Work(charged(cables.Engine, cables.Load{ID: "converter", Amps: 20}, func(s *cables.Source) {
			s.Both = tt.said
			if tt.atLead > 0 {
				s.Lead.Fuse = cables.Fuse{Said: true, Amps: tt.atLead, Away: -1, About: s.Lead.About + "/fuse"}
			}
		}))
		line, lead := lineAndLead(t, r)
		if line.Fuse.Amps != tt.line || lead.Fuse.Amps != tt.lead {
			t.Errorf("%q: %g A at the starter battery, %g A at the board", tt.said, line.Fuse.Amps, lead.Fuse.Amps)
		}
		ends := slices.ContainsFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.fuse.ends" })
		if want := tt.said != "both" && tt.atLead == 0; ends != want {
			t.Errorf("%q, %g A written at the lead: power.fuse.ends is found: %v", tt.said, tt.atLead, ends)
		}
	}
}

// A main cable is cut by its fuse and its isolator, its negative by the shunt: three pieces and two, ten lugs.
func TestTheEndsOfTheMainCableAreCounted(t *testing.T) {
	for _, tt := range []struct {
		name string
		do   func(*cables.Bank)
		want int
	}{
		{"with a main fuse only: post to fuse, fuse to board; post to busbar", func(*cables.Bank) {}, 6},
		{"with a fuse that sits on the post", func(b *cables.Bank) { b.MainFuse.Kind = cables.Block }, 4},
		{"with an isolator", func(b *cables.Bank) { b.Isolator = &cables.Part{} }, 8},
		{"with an isolator and a shunt", func(b *cables.Bank) { b.Isolator, b.Shunt = &cables.Part{}, &cables.Part{} }, 10},
	} {
		t.Run(tt.name, func(t *testing.T) {
			in := charged(cables.Shore, cables.Load{ID: "charger", Amps: 20})
			tt.do(&in.Banks[0])
			r := cables.Work(in)
			lugs, same, billed := 0, 0, 0.0
			for _, c := range r.Cables {
				for _, one := range c.Terminals {
					if c.Number == "W1" {
						lugs += one.Count
					}
					if one.Words == r.Cables[0].Terminals[0].Words {
						same += one.Count
					}
				}
			}
			for _, i := range r.Bill {
				if i.Words == r.Cables[0].Terminals[0].Words {
					billed += i.Count
				}
			}
			if lugs != tt.want || billed != float64(same) || same < lugs {
				t.Errorf("W1 has %d ends to crimp, not %d; of %d such lugs %g are in the bill", lugs, tt.want, same, billed)
			}
		})
	}
}

func TestEveryLeadIsLabelledBoughtAndTested(t *testing.T) {
	for _, kind := range []cables.SourceKind{cables.Engine, cables.Split, cables.Sun} {
		r := cables.Work(charged(kind, cables.Load{ID: "one", Amps: 20, Watts: 180}))
		_, lead := lineAndLead(t, r)
		tests, bought := map[cables.TestKind]bool{}, false
		for _, one := range r.Tests {
			tests[one.Kind] = tests[one.Kind] || one.Cable == lead.Number
		}
		for _, i := range r.Bill {
			bought = bought || i.Unit == "m" && slices.Contains(i.Cables, lead.Number)
		}
		if !tests[cables.TestContinuity] || !tests[cables.TestCharge] || !tests[cables.TestInsulation] || !tests[cables.TestWarmth] || !bought || lead.Cut <= 600 || len(lead.Terminals) == 0 {
			t.Errorf("%s: tests %v, bought %v, cut %g mm, %v", kind, tests, bought, lead.Cut, lead.Terminals)
		}
	}
}

// By hand: 400 W at 36 V are 11.1 A; rounded up to 15 A and times 36 V they would be 540 W. The battery of 12.8 V gets 400/12.8 = 31.25 A.
func TestALeadCarriesNoMoreThanTheWattsOfItsPanels(t *testing.T) {
	for _, tt := range []struct{ most, volts, want float64 }{{15, 36, 31.25}, {10, 36, 28.125}, {0, 36, 1.25 * 31.25}} {
		_, lead := lineAndLead(t, cables.Work(charged(cables.Sun, cables.Load{ID: "panel", Watts: 400, Volts: tt.volts}, func(s *cables.Source) { s.Most, s.Volts = tt.most, tt.volts })))
		if math.Abs(lead.Current-tt.want) > 1e-9 {
			t.Errorf("%g A at %g V written: the lead carries %g A, want %g", tt.most, tt.volts, lead.Current, tt.want)
		}
	}
}
