package reckon_test

import (
	"strings"
	"testing"

	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/working"
)

func patched(t testing.TB, text string) tree.Patch {
	t.Helper()
	patch, err := tree.ParsePatch([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return patch
}

func reading(t testing.TB, r *reckon.Reckoning, code string) float64 {
	t.Helper()
	f, ok := r.Figure(code)
	if !ok {
		t.Fatalf("there is no %s", code)
	}
	return f.Value
}

func TestDoublingTheVentsInACopyFreshensTheAirAndCostsHeat(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	once := m.Reckon(doc, quantity.Date{})
	twice := m.Reckon(applied(t, doc, patched(t, `{"shell": {"openings": {"low-vent": {"free-area": "0.008 m2"}, "mushroom": {"free-area": "0.0156 m2"}, "fan": {"free-area": "0.04 m2"}}}}`)), quantity.Date{})
	for _, c := range []struct {
		code string
		sign float64
	}{{"warmth.co2.peak", -1}, {"warmth.condensed", -1}, {"warmth.heater", 1}, {"warmth.loss", 1}} {
		if a, b := reading(t, once, c.code), reading(t, twice, c.code); c.sign*(b-a) <= 0.01*a {
			t.Errorf("%s goes from %.4g to %.4g", c.code, a, b)
		}
	}
	flow := func(r *reckon.Reckoning) float64 {
		w, _ := r.Working("warmth.co2.peak")
		for _, l := range w.Lines {
			if l.Symbol == "Q" {
				return l.Value
			}
		}
		return 0
	}
	if a, b := flow(once), flow(twice); b < 1.5*a || a <= 0 {
		t.Errorf("the working tells of %.3g m3/h, then of %.3g", a, b)
	}
}

func TestMovingAFittingLeavesTheNightsAsTheyWere(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	before := m.Reckon(doc, quantity.Date{})
	patch, ok := before.MovePatch(reckon.Move{Fitting: "table", DX: 50})
	if !ok {
		t.Fatal("the table cannot be moved")
	}
	for _, f := range m.AtHand(applied(t, doc, patch), quantity.Date{}, before).Figures {
		if strings.HasPrefix(f.Code, "warmth.") && (f.State == working.Older || f.Value != reading(t, before, f.Code)) {
			t.Errorf("%s is %s after a table was moved", f.Code, f.State)
		}
	}
}

func TestAGlanceAtAnotherLiningTellsOfTheOlderNights(t *testing.T) {
	m := reckon.NewMachine()
	doc := demo(t, "dipper")
	before := m.Reckon(doc, quantity.Date{})
	after := applied(t, doc, patched(t, `{"lining": {"roof": [{"lay": "ply-poplar-3-6"}]}}`))
	glance := m.AtHand(after, quantity.Date{}, before)
	f, _ := glance.Figure("warmth.u.roof")
	if f.State != working.Older || f.Value != reading(t, before, "warmth.u.roof") {
		t.Errorf("at a glance %.3g, %s", f.Value, f.State)
	}
	if now := reading(t, m.Reckon(after, quantity.Date{}), "warmth.u.roof"); now < 2*f.Value {
		t.Errorf("worked out it is %.3g", now)
	}
	if f, _ := m.AtHand(after, quantity.Date{}, before).Figure("warmth.u.roof"); f.State != working.Current {
		t.Errorf("once worked out a glance still says %s", f.State)
	}
}

// A beginner has enough to read.
func TestNoStartingArrangementDrownsABeginnerInWarmth(t *testing.T) {
	all, err := others()
	if err != nil {
		t.Fatal(err)
	}
	for _, b := range all {
		notes := 0
		for _, f := range b.Findings {
			if strings.HasPrefix(f.Code, "warmth.") {
				notes++
			}
		}
		if b.doc.Use.Climate == "" && notes > 2 {
			t.Errorf("%s: %d notes of warmth", b.name, notes)
		}
	}
}
