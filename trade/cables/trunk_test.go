package cables_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

// twoBoards is a van with a main cable and a second fuse board behind it, on a thin cable.
func twoBoards(more ...func(*cables.Circuit)) cables.Inputs {
	main := circuit("main", "", 60, 0.5, section(16), fuse(100))
	rear := circuit("rear-board", "", 0, 4, append([]func(*cables.Circuit){section(2.5), fuse(20)}, more...)...)
	main.Loads, rear.Loads = nil, nil
	fan := circuit("fan", cables.Fan, 3.5, 2, section(2.5), fuse(5))
	fan.From = "rear-board"
	in := van(main, rear, fan, circuit("heater", cables.Heater, 10, 3, section(4), fuse(15)), circuit("fridge", cables.Fridge, 12, 2, section(6), fuse(15)))
	in.Banks[0].MainFuse = cables.Fuse{Said: true, Amps: 100, Kind: cables.ClassT, Away: -1, About: "/power/batteries/house/main-fuse"}
	return in
}

func TestASecondFuseBoardDoesNotTakeOverAsTheMainCable(t *testing.T) {
	for name, change := range map[string]func(*cables.Inputs){
		"as it is": func(*cables.Inputs) {},
		"the main fuse stands at the battery only": func(in *cables.Inputs) { in.Circuits[0].Fuse = cables.Fuse{Away: -1} },
		"the main fuse stands at its circuit only": func(in *cables.Inputs) { in.Banks[0].MainFuse = cables.Fuse{Away: -1} },
		"nothing is written of the main cable":     func(in *cables.Inputs) { in.Circuits[0].Fuse, in.Circuits[0].Section = cables.Fuse{Away: -1}, 0 },
		"nothing is written of the main fuse at all": func(in *cables.Inputs) {
			in.Circuits[0].Fuse, in.Banks[0].MainFuse = cables.Fuse{Away: -1}, cables.Fuse{Away: -1}
		},
	} {
		t.Run(name, func(t *testing.T) {
			in := twoBoards()
			change(&in)
			r := cables.Work(in)
			if r.Cables[0].ID != "main" {
				t.Errorf("the main cable is %s", r.Cables[0].ID)
			}
			if fan, rear := cable(t, r, "fan"), cable(t, r, "rear-board"); fan.FedBy != rear.Number {
				t.Errorf("the fan is fed by %s, the second board by %s", fan.FedBy, rear.Number)
			}
		})
	}
}

func TestWithoutAMainCircuitASecondBoardIsNone(t *testing.T) {
	in := twoBoards()
	in.Circuits = in.Circuits[1:]
	if r := cables.Work(in); r.Cables[0].ID != "" {
		t.Errorf("all that hangs on the battery goes through %s", r.Cables[0].ID)
	}
}

// What is written for a circuit that only feeds others is what flows when all of them are on: no load beside them.
func TestWhatIsWrittenForASecondBoardIsNotAddedToWhatHangsOnIt(t *testing.T) {
	written := func(amps float64) func(*cables.Circuit) { return func(c *cables.Circuit) { c.Current = amps } }
	for amps, want := range map[float64]float64{0: 3.5, 15: 15, 2: 3.5} {
		r := cables.Work(twoBoards(written(amps)))
		if got := cable(t, r, "rear-board").Current; got != want {
			t.Errorf("with %g A written %g A are reckoned with, not %g", amps, got, want)
		}
		if without := cables.Work(twoBoards()); r.Supplies[0].Together != without.Supplies[0].Together {
			t.Errorf("with %g A written the battery gives %g A, else %g", amps, r.Supplies[0].Together, without.Supplies[0].Together)
		}
	}
}

func TestEveryBankIsTakenOffAndWokenByName(t *testing.T) {
	in := van(circuit("lamp", cables.Light, 2, 3, section(1.5), fuse(5)))
	second := in.Banks[0]
	second.ID, second.About = "second", "/power/batteries/second"
	in.Banks = append(in.Banks, second)
	for _, fed := range []bool{false, true} {
		if fed {
			in.Circuits[0].From = "second"
		}
		all := cables.Work(in).Tests
		for _, bank := range []string{"house", "second"} {
			place(t, all, cables.TestOff, "bank "+bank, "negative off first")
			place(t, all, cables.TestFirst, "bank "+bank, "plus first")
		}
	}
	place(t, cables.Work(in).Tests, cables.TestFirst, "Put the main fuse of the battery bank second in")
	in.Banks = in.Banks[:1]
	if slices.ContainsFunc(cables.Work(in).Tests, func(one cables.Test) bool { return strings.Contains(one.How, "bank") }) {
		t.Error("the only battery is called by the name of its bank")
	}
}

func TestWhatAConverterIsMadeForFlowsWhateverTheEngineMayGive(t *testing.T) {
	in := everySource()
	in.Sources[0].Most, in.Sources[0].Is[0].Amps = 25, 50
	for _, c := range cables.Work(in).Cables {
		if c.Source == cables.Engine && c.Current != 50 {
			t.Errorf("%s carries %g A", c.Title, c.Current)
		}
	}
}

func TestASmallFuseBehindTheMainFuseIsTold(t *testing.T) {
	r := cables.Work(twoBoards())
	w, _ := r.Working("power.drop.to.heater")
	if !slices.ContainsFunc(w.Notes, func(n string) bool {
		return strings.Contains(n, "its fuse breaks 1\u202f000 A") && strings.Contains(n, "class T")
	}) {
		t.Errorf("nothing is said of it: %q", w.Notes)
	}
}

// `from: house` is the bank even where a circuit is called so too: the language looks for a bank first.
func TestACircuitMayBeCalledAsItsBankIs(t *testing.T) {
	for name, loads := range map[string]bool{"one that feeds something": true, "one that feeds nothing": false} {
		t.Run(name, func(t *testing.T) {
			in := twoBoards()
			same := circuit("house", cables.Light, 2, 3, section(2.5), fuse(5))
			if !loads {
				same.Loads = nil
			}
			in.Circuits = append(in.Circuits, same)
			without, with := cables.Work(twoBoards()), cables.Work(in)
			if got := cable(t, with, "fan").FedBy; got != cable(t, with, "rear-board").Number {
				t.Errorf("the fan is fed by %s", got)
			}
			if got, want := cable(t, with, "heater").Current, cable(t, without, "heater").Current; got != want {
				t.Errorf("%g A flow to the heater, %g without that circuit", got, want)
			}
			if with.Cables[0].ID != "main" {
				t.Errorf("the main cable is %s", with.Cables[0].ID)
			}
		})
	}
}
