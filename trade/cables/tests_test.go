package cables_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
)

var kindsInOrder = []cables.TestKind{cables.TestOff, cables.TestEye, cables.TestContinuity, cables.TestInsulation, cables.TestResistance, cables.TestBond, cables.TestFirst,
	cables.TestPolarity, cables.TestPlug, cables.TestVoltage, cables.TestCharge, cables.TestPull, cables.TestWarmth, cables.TestAgain}

// everySource is a van with every kind of source, a circuit that hangs on another, and an inverter.
func everySource() cables.Inputs {
	in := van(circuit("lamp", cables.Light, 2, 9), circuit("fridge", cables.Fridge, 6, 7.4), circuit("inverter", cables.Inverter, 60, 1), circuit("reading", cables.Light, 0.5, 3))
	in.Circuits[3].From = "lamp"
	source := func(id string, kind cables.SourceKind, by string) cables.Source {
		s := cables.Source{To: "house", Kind: kind, By: cables.Part{ID: by}, Most: 20, Is: []cables.Load{{ID: id, Name: id + " thing", Watts: 180}}}
		s.Way = cables.Way{ID: id, About: "/power/sources/" + id, Title: id, Length: cables.Length{MM: 4000, Known: cables.Measured}, Fuse: cables.Fuse{Away: -1, About: "/power/sources/" + id}}
		return s
	}
	in.Sources = []cables.Source{source("engine", cables.Engine, ""), source("mains", cables.Shore, ""), source("sun", cables.Sun, "controller")}
	return in
}

// place is where the first line stands whose words hold all pieces.
func place(t *testing.T, all []cables.Test, kind cables.TestKind, pieces ...string) int {
	t.Helper()
	i := slices.IndexFunc(all, func(one cables.Test) bool {
		return one.Kind == kind && !slices.ContainsFunc(pieces, func(p string) bool { return !strings.Contains(one.How+" "+one.Expect, p) })
	})
	if i < 0 {
		t.Fatalf("no line of %q holds %q", kind, pieces)
	}
	return i
}

func TestAnInstallationIsWokenInASafeOrder(t *testing.T) {
	all := cables.Work(everySource()).Tests
	last := 0
	for _, one := range all {
		at := slices.Index(kindsInOrder, one.Kind)
		if at < last {
			t.Errorf("%q comes after %q: %s", one.Kind, kindsInOrder[last], one.How)
		}
		last = at
	}
	for _, steps := range [][]int{
		{place(t, all, cables.TestOff, "Engine off", "Mains lead"), place(t, all, cables.TestOff, "Cover sun thing", "plugs"), place(t, all, cables.TestOff, "negative off first"), place(t, all, cables.TestOff, "below 0.5 V")},
		{place(t, all, cables.TestFirst, "posts"), place(t, all, cables.TestFirst, "still out"), place(t, all, cables.TestFirst, "main fuse in")},
		{place(t, all, cables.TestPolarity, "fridge"), place(t, all, cables.TestPlug, "fridge"), place(t, all, cables.TestVoltage, "Fridge")},
		{place(t, all, cables.TestCharge, "open plug of engine thing towards the engine"), place(t, all, cables.TestCharge, "open plug of engine thing towards the house"),
			place(t, all, cables.TestCharge, "plug engine thing in"), place(t, all, cables.TestCharge, "engine running"), place(t, all, cables.TestCharge, "Engine off again")},
		{place(t, all, cables.TestCharge, "controller in on its battery side"), place(t, all, cables.TestCharge, "Uncover sun thing", "open plugs"), place(t, all, cables.TestCharge, "plug them in last")},
	} {
		if !slices.IsSorted(steps) {
			t.Errorf("these lines stand in the order %v", steps)
		}
	}
	if i := place(t, all, cables.TestCharge, "mains thing", "mains lead in"); !strings.Contains(all[i].How, "licensed electrician") {
		t.Errorf("the mains lead goes in without an electrician: %s", all[i].How)
	}
}

func TestEveryLineOfTheTestSheetSaysWhatToDoIfItIsNotSo(t *testing.T) {
	for _, one := range cables.Work(everySource()).Tests {
		p := one.Kind.Part()
		if one.How == "" || one.Expect == "" || p.Title == "" || p.How == "" || one.Otherwise+p.Otherwise == "" {
			t.Errorf("something is left unsaid: %+v %+v", one, p)
		}
		if one.Unit != "" && (one.Low > one.High && one.High != 0 || one.Low == 0 && one.High == 0) {
			t.Errorf("%s: from %g to %g %s", one.How, one.Low, one.High, one.Unit)
		}
	}
}

func TestPlusAndMinusAreMeasuredAtEveryPlugBeforeItIsPluggedIn(t *testing.T) {
	r := cables.Work(everySource())
	for _, c := range r.Cables {
		for kind, wanted := range map[cables.TestKind]bool{cables.TestContinuity: c.Role != cables.Bond, cables.TestInsulation: true, cables.TestPolarity: c.Role == cables.Feed,
			cables.TestPlug: c.Role == cables.Feed, cables.TestBond: c.Role == cables.Bond, cables.TestCharge: c.Role == cables.Charge || c.Role == cables.Lead} {
			if has := slices.ContainsFunc(r.Tests, func(one cables.Test) bool { return one.Cable == c.Number && one.Kind == kind }); has != wanted {
				t.Errorf("%s has a test of its %s: %v", c.Label(), kind, has)
			}
		}
	}
	if says := cables.TestPolarity.Part().Otherwise; !strings.Contains(says, "Swap them before you plug in") {
		t.Errorf("whoever reads a minus is told: %s", says)
	}
	reading := r.Tests[place(t, r.Tests, cables.TestPolarity, "reading")]
	if lamp := cable(t, r, "lamp"); !strings.Contains(reading.How, "that of "+lamp.Number+" in as well") {
		t.Errorf("the fuse of the circuit that feeds it is forgotten: %s", reading.How)
	}
}

func TestReadingsSuitTheKindOfBattery(t *testing.T) {
	rests := func(kind cables.Chemistry, volts float64) (first, high cables.Test) {
		in := everySource()
		in.Banks[0].Batteries[0].Chemistry, in.Banks[0].Batteries[0].Volts = kind, volts
		all := cables.Work(in).Tests
		return all[place(t, all, cables.TestFirst, "posts")], all[place(t, all, cables.TestCharge, "Engine running")]
	}
	lead, leadCharging := rests(cables.Flooded, 12)
	_, glass := rests(cables.AGM, 12)
	lithium, lithiumCharging := rests(cables.Lithium, 12.8)
	manual := "table of open-circuit voltage in a motor-home owner's manual: 12.7 V full, 12.2 half, 11.9 empty"
	for _, c := range []proof.Case{
		{Name: "an empty flooded battery at rest is still in the range of the test sheet", Source: manual, Inputs: "0 %", Expected: 11.9, Got: lead.Low, Tolerance: 0.05, Unit: "V"},
		{Name: "a full flooded battery at rest, with what is left from charging", Source: manual, Inputs: "100 %", Expected: 12.7, Got: lead.High, Tolerance: 0.25, Unit: "V"},
		{Name: "an AGM battery is charged to no more", Source: "a battery seller's sheet on AGM charging, 14.4 to 14.7 V", Inputs: "25 °C", Expected: 14.7, Got: glass.High, Tolerance: 0.05, Unit: "V"},
		{Name: "a lithium battery is charged to no more", Source: "a battery factory's page, 14.2 to 14.6 V", Inputs: "four cells", Expected: 14.6, Got: lithiumCharging.High, Tolerance: 0.05, Unit: "V"},
	} {
		proof.Check(t, c)
	}
	if lithium.Low <= lead.Low || leadCharging.High <= lithiumCharging.High {
		t.Error("lead and lithium have the same readings")
	}
	if twice, _ := rests(cables.Flooded, 24); twice.Low != 2*lead.Low || !strings.Contains(twice.Expect, "+23.8 to +25.8 V") {
		t.Errorf("a battery of 24 V: %+v", twice)
	}
}

func TestANameInAnyLettersBeginsASentence(t *testing.T) {
	r := cables.Work(van(circuit("öfchen", cables.Heater, 2, 9)))
	if one := r.Tests[place(t, r.Tests, cables.TestVoltage, "runs")]; !strings.HasPrefix(one.How, "Öfchen runs") {
		t.Error(one.How)
	}
}

func TestAReadingThatFollowsFromAnAssumedLengthSaysSo(t *testing.T) {
	for known, want := range map[cables.Known]bool{cables.Measured: false, cables.Straight: true, cables.Laid: true, cables.Assumed: true} {
		lamp := circuit("lamp", cables.Light, 2, 9)
		lamp.Length.Known = known
		r := cables.Work(van(lamp))
		for _, kind := range []cables.TestKind{cables.TestResistance, cables.TestVoltage} {
			if says := r.Tests[place(t, r.Tests, kind)].Expect; strings.Contains(says, "about 9.0 m, which nobody has measured") != want {
				t.Errorf("a length that is %s: %s", known, says)
			}
		}
	}
}

func TestAnOpenRelayIsNotTakenForABrokenCable(t *testing.T) {
	in := everySource()
	in.Sources[0].Kind = cables.Split
	for _, one := range cables.Work(in).Tests {
		measured := one.Kind == cables.TestContinuity || one.Kind == cables.TestResistance
		if measured && strings.Contains(one.How, "starter battery") && !strings.Contains(one.How, "engine thing") {
			t.Errorf("measured through the open relay: %s", one.How)
		}
	}
}

func TestPanelsThatCanHarmByTouchAreAnElectricians(t *testing.T) {
	in := everySource()
	for _, volts := range []float64{22, 45} {
		in.Sources[2].Volts = volts
		all := cables.Work(in).Tests
		if says := all[place(t, all, cables.TestCharge, "Uncover")].How; strings.Contains(says, "electrician") != (volts == 45) {
			t.Errorf("%g V: %s", volts, says)
		}
	}
}
