package cables_test

import (
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

// van has one lithium battery of 100 Ah and the circuits given.
func van(circuits ...cables.Circuit) cables.Inputs {
	return cables.Inputs{
		Banks: []cables.Bank{{ID: "house", About: "/power/batteries/house", MainFuse: cables.Fuse{Away: -1, About: "/power/batteries/house"},
			Batteries: []cables.Battery{{ID: "battery", Name: "battery", About: "/fittings/battery", Chemistry: cables.Lithium, AmpHours: 100}}}},
		Circuits: circuits,
	}
}

// circuit is one of which only the load and the length are known, with something done to it.
func circuit(id string, kind cables.Appliance, amps, metres float64, more ...func(*cables.Circuit)) cables.Circuit {
	about := "/power/circuits/" + id
	c := cables.Circuit{From: "house", Current: amps, Loads: []cables.Load{{ID: id, Name: id, About: "/fittings/" + id, Kind: kind}}}
	c.Way = cables.Way{ID: id, About: about, Title: id, Length: cables.Length{MM: 1000 * metres, Known: cables.Measured, About: about + "/route"}, Fuse: cables.Fuse{Away: -1, About: about}}
	for _, do := range more {
		do(&c)
	}
	return c
}

func section(mm2 float64) func(*cables.Circuit) {
	return func(c *cables.Circuit) { c.Section = mm2 }
}

func fuse(amps float64) func(*cables.Circuit) {
	return func(c *cables.Circuit) {
		c.Fuse = cables.Fuse{Said: true, Amps: amps, Away: -1, About: c.About + "/fuse"}
	}
}

func cable(t *testing.T, r cables.Result, id string) cables.Cable {
	t.Helper()
	for _, c := range r.Cables {
		if c.ID == id && c.Role == cables.Feed {
			return c
		}
	}
	t.Fatalf("there is no cable of %s", id)
	return cables.Cable{}
}

func TestTheRuleThatAsksForMostDecides(t *testing.T) {
	for _, tt := range []struct {
		name string
		is   cables.Circuit
		mm2  float64
		rule cables.Rule
		fuse float64
	}{
		{"a short cable of a lamp is as thick as it must be to last", circuit("lamp", cables.Light, 0.5, 1), 1, cables.RuleMechanical, 1},
		{"a fridge far away is ruled by its voltage", circuit("fridge", cables.Fridge, 6, 7.4), 6, cables.RuleDrop, 7.5},
		{"a short thick one by what it carries", circuit("step", cables.Other, 39, 0.5), 6, cables.RuleFuse, 50},
		{"one with a large fuse by that fuse", circuit("socket", cables.Socket, 5, 1, fuse(40)), 4, cables.RuleFuse, 40},
		{"insulation all round asks for more copper", circuit("step", cables.Other, 39, 0.5, func(c *cables.Circuit) { c.Surrounded = true }), 16, cables.RuleCurrent, 50},
		{"so do neighbours", circuit("step", cables.Other, 39, 0.5, func(c *cables.Circuit) { c.Bundled = 6 }), 16, cables.RuleFuse, 50},
		{"and an engine beside insulation for 75 °C", circuit("step", cables.Other, 20, 0.5, func(c *cables.Circuit) { c.Hot, c.Insulation = true, 75 }), 10, cables.RuleFuse, 25},
		{"a wish is a rule", circuit("lamp", cables.Light, 2.5, 7.2, func(c *cables.Circuit) { c.Wanted = 0.02 }), 4, cables.RuleDrop, 5},
	} {
		t.Run(tt.name, func(t *testing.T) {
			c := cable(t, cables.Work(van(tt.is)), tt.is.ID)
			if c.Section.MM2 != tt.mm2 || c.Section.Rule != tt.rule || c.Fuse.Amps != tt.fuse {
				t.Errorf("got %g mm2 by the rule %s and a fuse of %g A, want %g by %s and %g", c.Section.MM2, c.Section.Rule, c.Fuse.Amps, tt.mm2, tt.rule, tt.fuse)
			}
			if c.Fuse.Amps > c.Rating.Amps {
				t.Errorf("a fuse of %g A was chosen for a cable that stands %g", c.Fuse.Amps, c.Rating.Amps)
			}
		})
	}
}

// What the program chooses must pass its own judgement.
func TestWhatIsChosenHasNothingAgainstIt(t *testing.T) {
	kinds := []cables.Appliance{cables.Fridge, cables.Pump, cables.Fan, cables.Heater, cables.Light, cables.Socket, cables.Inverter, cables.Other}
	for _, kind := range kinds {
		for _, amps := range []float64{0.2, 1, 4, 5, 9, 16, 31} {
			for _, metres := range []float64{0.3, 2, 5, 9} {
				r := cables.Work(van(circuit("one", kind, amps, metres), circuit("two", cables.Light, 3, 4)))
				for _, f := range r.Findings() {
					if f.Code != "power.cable.unchosen" && f.Code != "power.fuse.main" {
						t.Errorf("%s, %g A over %g m: %s: %s", kind, amps, metres, f.Code, f.Words)
					}
				}
			}
		}
	}
}

// Twice the voltage wants half the current and loses a quarter of the share.
func TestASystemOf24VoltsIsReckonedAsOne(t *testing.T) {
	with := func(volts float64) cables.Result {
		in := van(circuit("fridge", cables.Fridge, 0, 6, section(2.5), fuse(10)))
		in.Circuits[0].Loads[0].Watts = 64
		in.Banks[0].Batteries[0].Volts = volts
		return cables.Work(in)
	}
	one, two := with(12.8), with(25.6)
	if a, b := cable(t, one, "fridge"), cable(t, two, "fridge"); a.Current != 2*b.Current || a.Drop.Cables()/a.Volts < 3.8*b.Drop.Cables()/b.Volts || b.Volts != 25.6 {
		t.Errorf("got %g and %g A, %g and %g V lost", a.Current, b.Current, a.Drop.Cables(), b.Drop.Cables())
	}
	if a, b := one.Supplies[0].Fault, two.Supplies[0].Fault; a != b {
		t.Errorf("into a short %g and %g A: both voltage and resistance double", a, b)
	}
}

func TestWhatIsWrittenIsCheckedAndNotChanged(t *testing.T) {
	c := cable(t, cables.Work(van(circuit("fridge", cables.Fridge, 6, 7.4, section(2.5), fuse(10)))), "fridge")
	if c.Section.MM2 != 2.5 || !c.Section.Said || c.Section.Need != 6 || c.Fuse.Amps != 10 || !c.Fuse.Said {
		t.Errorf("got %g mm2 (need %g) and %g A", c.Section.MM2, c.Section.Need, c.Fuse.Amps)
	}
}

func TestTheMainFuseLetsThoseBehindItGoFirst(t *testing.T) {
	r := cables.Work(van(circuit("step", cables.Other, 30, 1), circuit("lamp", cables.Light, 2, 3)))
	main := r.Cables[0]
	if main.Role != cables.Trunk || main.Fuse.Amps < 80 || main.Rating.Amps < main.Fuse.Amps || main.Fuse.Breaking < main.Fuse.Meets {
		t.Errorf("got %s for %g A, the cable stands %.0f A, and a short draws %.0f A", main.Fuse.Words(), main.Current, main.Rating.Amps, main.Fuse.Meets)
	}
	for _, c := range r.Cables[1:3] {
		if c.Fuse.Kind != cables.Blade || !c.Fuse.Backed {
			t.Errorf("behind it %s has %s, backed: %v", c.ID, c.Fuse.Words(), c.Fuse.Backed)
		}
	}
}

// A thin cable that goes on from a thick one needs no fuse of its own where the one above protects it.
func TestAThinCableMayGoOnWithoutAFuseBehindASmallOne(t *testing.T) {
	none := func(c *cables.Circuit) {
		c.From, c.Fuse = "pump", cables.Fuse{Said: true, None: true, Away: -1, About: c.About + "/fuse"}
	}
	for above, want := range map[float64]bool{10: false, 30: true} {
		r := cables.Work(van(circuit("pump", cables.Pump, 5, 5, section(6), fuse(above)), circuit("fan", cables.Fan, 1.4, 2, section(1.5), none)))
		found := false
		for _, f := range r.Findings() {
			found = found || f.Code == "power.fuse.none"
		}
		if found != want {
			t.Errorf("behind %g A a cable of 1.5 mm2 without a fuse is found: %v", above, found)
		}
		if c := cable(t, r, "pump"); c.Current != 6.4 {
			t.Errorf("the pump's cable carries %g A, not its own and the fan's", c.Current)
		}
	}
}

func TestOpeningTimesAreInOrder(t *testing.T) {
	for _, k := range []cables.Kind{cables.Blade, cables.Maxi, cables.SF30, cables.SF51, cables.Block, cables.ClassT} {
		shares, least, most := cables.TimesOf(k)
		for i := range shares {
			if least[i] >= most[i] || i > 0 && (shares[i] <= shares[i-1] || least[i] >= least[i-1] || most[i] >= most[i-1]) {
				t.Errorf("%s at %g of its rating: %g to %g s", k, shares[i], least[i], most[i])
			}
		}
	}
}

func TestWithoutCircuitsThereIsNothingToSay(t *testing.T) {
	for _, in := range []cables.Inputs{{}, van()} {
		if r := cables.Work(in); len(r.Cables)+len(r.Findings())+len(r.Figures())+len(r.Tests)+len(r.Bill) > 0 {
			t.Errorf("got %+v", r)
		}
	}
}

func TestTheTestSheetTellsWhatAMeterShows(t *testing.T) {
	r := cables.Work(van(circuit("fridge", cables.Fridge, 6, 7.4, section(6), fuse(10))))
	kinds := map[cables.TestKind]int{}
	for _, one := range r.Tests {
		kinds[one.Kind]++
		if one.Kind == cables.TestVoltage && (one.Low < 12 || one.High != 12.8 || !strings.Contains(one.Expect, "at the battery")) {
			t.Errorf("got %+v", one)
		}
	}
	for _, k := range []cables.TestKind{cables.TestEye, cables.TestPolarity, cables.TestInsulation, cables.TestFirst, cables.TestVoltage, cables.TestPull, cables.TestWarmth} {
		if kinds[k] == 0 {
			t.Errorf("there is no test of the kind %s", k)
		}
	}
}

// A fuel heater runs on little and is lit with ten amperes: its fuse and its cable must bear that.
func TestAHeaterIsFusedForItsStart(t *testing.T) {
	in := van(circuit("heater", cables.Heater, 0, 4))
	in.Circuits[0].Loads[0].Watts = 16
	if c := cable(t, cables.Work(in), "heater"); c.Current < 9 || c.Fuse.Amps < 10 || c.Section.MM2 < 2.5 {
		t.Errorf("%g A, a fuse of %g A and %g mm2", c.Current, c.Fuse.Amps, c.Section.MM2)
	}
}

// What charges goes through the main fuse too, though nothing draws as much.
func TestTheMainFuseBearsWhatCharges(t *testing.T) {
	in := van(circuit("lamp", cables.Light, 3, 4))
	in.Sources = []cables.Source{{Way: cables.Way{ID: "engine", About: "/power/sources/engine"}, To: in.Banks[0].ID, Kind: cables.Engine, Most: 30}}
	r := cables.Work(in)
	if trunk := r.Cables[0]; trunk.Role != cables.Trunk || trunk.Current < 30 {
		t.Errorf("%s bears %g A", trunk.Role, trunk.Current)
	}
}
