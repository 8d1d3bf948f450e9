package sheet_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/trade/cables"
)

// charged is a bank that a source charges through its line W2 and lead W3.
func charged(kind cables.SourceKind, body bool) cables.Result {
	end := cables.End{Symbol: cables.SymbolBoard}
	if kind == cables.Split {
		end.Symbol = cables.SymbolBattery
	}
	out := cables.Result{Supplies: []cables.Supply{{Bank: cables.Bank{ID: "house", Batteries: []cables.Battery{{ID: "b", Name: "battery", AmpHours: 100}}}}}}
	out.Cables = []cables.Cable{
		{Number: "W1", Bank: "house", Role: cables.Trunk},
		{Number: "W2", Bank: "house", Role: cables.Charge, Source: kind, Body: body, Loads: []cables.Load{{ID: "c", Name: "what charges"}}},
		{Number: "W3", Bank: "house", Role: cables.Lead, Source: kind, Body: body, FedBy: "W2", To: end},
		{Number: "W4", Bank: "house", Role: cables.Feed, FedBy: "W1", Title: "lamp"},
	}
	return out
}

func TestTheDiagramHasTheMinusThatTheListHas(t *testing.T) {
	for _, c := range []struct {
		name  string
		kind  cables.SourceKind
		body  bool
		pairs []string // drawn as two strokes
	}{
		{"the line of a charger has its minus beside it, its lead a drawn one", cables.Engine, false, []string{"2"}},
		{"the line of panels likewise", cables.Sun, false, []string{"2"}},
		{"a relay with a minus has it on both", cables.Split, false, []string{"2", "3"}},
		{"a relay whose minus is the body has none", cables.Split, true, nil},
		{"nor has a charger whose minus is the body", cables.Engine, true, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			res := charged(c.kind, c.body)
			w := sheet.WiringOf(&res)[0]
			clean(t, c.name, w)
			var pairs []string
			bodies := 0
			for _, s := range w.Symbols {
				if n, ok := strings.CutPrefix(s.ID, "circuit-pair-"); ok {
					pairs = append(pairs, n)
				}
				if s.Title == "body" {
					bodies++
				}
			}
			if strings.Join(pairs, " ") != strings.Join(c.pairs, " ") {
				t.Errorf("two strokes at %v, not %v", pairs, c.pairs)
			}
			if want := c.kind == cables.Engine && c.body; (bodies == 2) != want {
				t.Errorf("%d signs of the body", bodies)
			}
			if coil := strings.Contains(letters(w.Scene), "own sheet"); coil != (c.kind == cables.Split) {
				t.Errorf("the wire of a coil is named: %t", coil)
			}
		})
	}
}

// The lead of a relay ends at the battery's post, and its fuse stands there.
func TestALeadToTheBatteryMeetsItBelowItsMainFuse(t *testing.T) {
	res := charged(cables.Split, true)
	w := sheet.WiringOf(&res)[0]
	all := found(w.Scene)
	fuse, main, relay := middleOf(t, all["circuit-F3"]), middleOf(t, all["circuit-F1"]), middleOf(t, all["circuit-control-2"])
	if fuse.Y != main.Y || fuse.X >= main.X || fuse.X <= relay.X {
		t.Errorf("its fuse stands at %v, the main fuse at %v, the relay at %v", fuse, main, relay)
	}
	for _, one := range w.Wires {
		if one[0].X == relay.X && min(one[0].Y, one[1].Y) <= w.Plus+0.1 {
			t.Error("the relay leads to the busbar")
		}
	}
}

// middleOf a symbol is the middle of its first mark.
func middleOf(t *testing.T, g draw.Group) draw.Point {
	t.Helper()
	if len(g.Marks) == 0 {
		t.Fatal("there is no such symbol")
	}
	return g.Marks[0].(draw.Shape).Path.Bounds().Centre()
}

func TestTheDiagramHasTheSignsOfItsCablesAndTheFirstCaution(t *testing.T) {
	r := changed(t, "dipper", `{"power": {"circuits": {"lights": {"fuse": "none"}}}}`)
	s := sheet.Circuit(r, "", "")[0]
	flawless(t, s)
	if text := letters(s); !strings.Contains(text, cables.Cautions[0]) || !strings.Contains(text, "Danger, an octagon") {
		t.Error("the foot says neither what endangers nor what its sign is")
	}
	if g := found(s)["table-signs"]; len(g.Marks) == 0 {
		t.Error("no sign stands in the table")
	}
	low := draw.Frame{Size: s.Size, Heading: " ", Subheading: " ", Cells: []draw.Cell{{}}}.Field().Max.Y
	for _, m := range found(s)["foot"].Marks {
		if b := m.(draw.Lettering).Bounds(); b.Min.Y < low {
			t.Errorf("the foot at %v touches the table, which ends at %.1f", b, low)
		}
	}
	sound := sheet.Circuit(demo(t, "dipper"), "", "")[0]
	if strings.Contains(letters(sound), "an octagon") {
		t.Error("a sound van has the sign of danger explained")
	}
}

func TestSignsAtEveryCableOverlapNothing(t *testing.T) {
	for _, kind := range []cables.SourceKind{cables.Engine, cables.Split, cables.Sun, cables.Shore} {
		res := charged(kind, false)
		res.Cables = append(res.Cables, cables.Cable{Number: "W5", Bank: "house", Role: cables.Bond})
		for _, w := range sheet.SignedWiringOf(&res, func(*cables.Cable) draw.Severity { return draw.Danger }) {
			clean(t, string(kind), w)
			boxes := w.Scene.Letters()
			n := 0
			for _, s := range w.Symbols {
				if s.Title != string(draw.Danger) {
					continue
				}
				n++
				at := s.Marks[0].(draw.Shape).Path.Bounds()
				for _, b := range boxes {
					if b.Overlaps(at) {
						t.Errorf("%v: the sign at %v lies on lettering", kind, at)
					}
				}
				for _, one := range w.Wires {
					if through(one, at) {
						t.Errorf("%v: a wire runs through the sign at %v", kind, at)
					}
				}
			}
			if n != 5 {
				t.Errorf("%v: %d signs for five cables", kind, n)
			}
		}
	}
}

func TestTheDayInATitleBlockIsWrittenOut(t *testing.T) {
	r := demo(t, "dipper")
	for _, s := range []draw.Scene{sheet.Circuit(r, "", "")[0], sheet.WiringPlan(r, "drive", ""), sheet.Arrangement(r, sheet.View{})} {
		if day := r.Today; !strings.Contains(letters(s), fmt.Sprintf("\n%d %s %d\n", day.Day, time.Month(day.Month), day.Year)) {
			t.Errorf("%s has no day in words", s.Title)
		}
	}
}
