package reckon_test

import (
	"strings"
	"testing"

	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func TestMovingAFittingLeavesThePowerAsItWas(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	before := m.Reckon(doc, quantity.Date{})
	patch, ok := before.MovePatch(reckon.Move{Fitting: "table", DX: 50})
	if !ok {
		t.Fatal("the table cannot be moved")
	}
	for _, f := range m.AtHand(applied(t, doc, patch), quantity.Date{}, before).Figures {
		if strings.HasPrefix(f.Code, "power.") && (f.State == working.Older || f.Value != reading(t, before, f.Code)) {
			t.Errorf("%s is %s after a table was moved", f.Code, f.State)
		}
	}
}

func TestAGlanceTellsOfTheOlderPowerWhereUseOrWarmthChanged(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	before := m.Reckon(doc, quantity.Date{})
	for name, patch := range map[string]string{
		"brighter lights":              `{"catalogue": {"strip-2000": {"watts": 60}}}`,
		"a colder cabin by its lining": `{"lining": {"roof": [{"lay": "ply-poplar-3-6"}]}}`,
	} {
		after := applied(t, doc, patched(t, patch))
		f, _ := m.AtHand(after, quantity.Date{}, before).Figure("power.daily-use")
		if f.State != working.Older || f.Value != reading(t, before, "power.daily-use") {
			t.Errorf("%s: daily use is %g and %s at a glance", name, f.Value, f.State)
		}
		m.Reckon(after, quantity.Date{})
		if f, _ := m.AtHand(after, quantity.Date{}, before).Figure("power.daily-use"); f.State != working.Current {
			t.Errorf("%s: daily use is %s after it was worked out", name, f.State)
		}
	}
}

func TestTheBuildersOwnReadingsMoveWhatIsUncertain(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	before := m.Reckon(doc, quantity.Date{})
	january := before.Power.Months[0].Use[before.Power.Habit]
	after := m.Reckon(applied(t, doc, patched(t, `{"power": {"read": {"new-year": {"date": "2026-01-03", "took": "60 Ah/day"}}}}`)), quantity.Date{})
	if got, want := after.Power.Months[0].Use[after.Power.Habit], 60*12.8; got < want-1e-6 || got > want+1e-6 || january > 700 {
		t.Errorf("January takes %g Wh a day after a reading of 60 Ah at 12.8 V, %g before", got, january)
	}
	if a, b := reading(t, before, "power.daily-use"), reading(t, after, "power.daily-use"); b < 1.2*a {
		t.Errorf("the year goes from %g to %g Wh a day", a, b)
	}
}

func TestWhatALampTakesIsTheRowsOwn(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	lamp := func(r *reckon.Reckoning) float64 {
		for _, u := range r.Power.Uses {
			if u.About == "/fittings/strip-left" {
				return u.Mean[0]
			}
		}
		return 0
	}
	once := lamp(m.Reckon(doc, quantity.Date{}))
	twice := lamp(m.Reckon(applied(t, doc, patched(t, `{"catalogue": {"strip-2000": {"watts": 30}}}`)), quantity.Date{}))
	if once <= 0 || twice < 1.999*once || twice > 2.001*once {
		t.Errorf("a strip takes %g Wh a day, one of twice the power %g", once, twice)
	}
}

func TestTheChartOfABuildHasTheBuildInIt(t *testing.T) {
	for _, name := range []string{"dipper", "twite"} {
		r := reckon.NewMachine().Reckon(demo(t, name), quantity.Date{})
		last := 0
		c := r.PowerChart(func(done, of int) { last = max(last, done) })
		if last < 144 || c.Own[0] != r.Power.Battery.Holds || c.OwnShare != r.Power.Flat.Share || c.Kit == nil {
			t.Errorf("%s: %d steps, %v, %g, %+v", name, last, c.Own, c.OwnShare, c.Kit)
		}
	}
}

func TestWhatOverloadsTheEngineGivesWayToTheLargestChargerThatItBears(t *testing.T) {
	m := reckon.NewMachine()
	overload := func(r *reckon.Reckoning) *finding.Finding {
		for i := range r.Findings {
			if r.Findings[i].Code == "power.engine.overload" {
				return &r.Findings[i]
			}
		}
		return nil
	}
	for name, tt := range map[string]struct {
		patch string
		buys  string // "" where the catalogue has none so small
	}{
		"a charger of 50 A for an engine of 30 A": {`{"fittings": {"charger-engine": {"buy": "dcdc-50a"}}}`, "dcdc-30a"},
		"a switch for an engine of 30 A":          {`{"fittings": {"charger-engine": {"buy": "relay-split-140a"}}}`, "dcdc-30a"},
		"an engine of 25 A":                       {`{"power": {"sources": {"engine": {"most": 25}}}}`, "dcdc-20a"},
		"an engine of 10 A":                       {`{"power": {"sources": {"engine": {"most": 10}}}}`, ""},
	} {
		doc := applied(t, demo(t, "dipper"), patched(t, tt.patch))
		f := overload(m.Reckon(doc, quantity.Date{}))
		if f == nil {
			t.Fatalf("%s: nothing is overloaded", name)
		}
		wanted := 0 // one to buy, and a setting of what is no switch
		if tt.buys != "" {
			wanted++
		}
		if name != "a switch for an engine of 30 A" {
			wanted++
		}
		if len(f.Proposals) != wanted {
			t.Errorf("%s: %d proposals, want %d", name, len(f.Proposals), wanted)
			continue
		}
		for _, p := range f.Proposals {
			if left := overload(m.Reckon(applied(t, doc, patched(t, string(p.Patch))), quantity.Date{})); left != nil {
				t.Errorf("%s: after %q there is still %v", name, p.Words, left)
			}
		}
		if tt.buys == "" {
			continue
		}
		after := applied(t, doc, patched(t, string(f.Proposals[0].Patch)))
		if left := overload(m.Reckon(after, quantity.Date{})); left != nil || after.Fittings["charger-engine"].Buy != tt.buys {
			t.Errorf("%s: with %s there is still %v", name, after.Fittings["charger-engine"].Buy, left)
		}
	}
}
