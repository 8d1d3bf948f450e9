package remedy_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

// wild are copies of the demos in which some fittings were dragged by 300 mm or stretched, each from the same seed.
func wild(t *testing.T, copies int) map[string]*reckon.Reckoning {
	t.Helper()
	out := map[string]*reckon.Reckoning{}
	random := rand.New(rand.NewPCG(7, 11))
	for _, name := range []string{"dipper", "godwit", "twite"} {
		text, err := examples.Document(name)
		if err != nil {
			t.Fatal(err)
		}
		doc, _, err := build.Decode(name, text, catalogue.Builtin())
		if err != nil {
			t.Fatal(err)
		}
		machine := reckon.NewMachine()
		start := machine.Reckon(doc, quantity.Date{})
		ids := build.SortedKeys(doc.Fittings)
		for i := range copies {
			m := reckon.Move{Fitting: ids[random.IntN(len(ids))]}
			switch by := float64(300 - 600*random.IntN(2)); random.IntN(4) {
			case 0:
				m.DX = by
			case 1:
				m.DY = by
			case 2:
				m.DZ = by
			default:
				face := []string{"front", "rear", "left", "right", "top"}[random.IntN(5)]
				m.Stretch = []reckon.Stretch{{Face: face, By: by}}
			}
			patch, ok := start.MovePatch(m)
			if start.WhyNot(m) != "" || !ok {
				continue
			}
			moved, err := build.Apply(doc, patch, catalogue.Builtin())
			if err != nil {
				continue
			}
			out[fmt.Sprintf("%s %02d: %+v", name, i, m)] = machine.Reckon(moved, quantity.Date{})
		}
	}
	return out
}

// triedInFit are the findings whose proposals trade/fit has looked at with the thing moved before it makes them. What is folded away or pulled out in
// another mode it leaves where it is: of a table (fit.table) it does not know how it stands folded after a move.
var triedInFit = []string{"fit.opens", "fit.headroom.sit", "fit.headroom.stand", "fit.way-out", "fit.way-out.blocked", "fit.upon", "fit.pull-out.leg"}

// What is said to help brings no danger and no fault besides, in any mode, unless its words say so.
func TestWhatIsSaidToHelpDoesNoHarmUntold(t *testing.T) {
	const copies = 8
	looked := 0
	for name, r := range wild(t, copies) {
		w := remedy.Worker{Reckon: reckon.NewMachine().Reckon, Rows: catalogue.Builtin()}
		for _, f := range r.Findings {
			if f.Severity < finding.Close && !slices.Contains(triedInFit, f.Code) {
				continue
			}
			for _, tried := range w.Try(r, f) {
				for _, g := range tried.Brings {
					if g.Severity >= finding.Fault && (g.Code == "fit.foul" || g.Code == "fit.sticks-out") && slices.Contains(triedInFit, f.Code) {
						t.Errorf("%s: for %q (%s) it is proposed to %s; then: %q %s", name, f.Title, f.Mode, tried.Words, g.Title, g.Mode)
					}
				}
				if !tried.Clears && !tried.Eases {
					continue
				}
				looked++
				after := w.Reckon(applied(t, r.Document, tried.Patch), quantity.Date{})
				for _, g := range after.Findings {
					if g.Severity < finding.Fault || slices.ContainsFunc(r.Findings, func(h finding.Finding) bool {
						return h.Key() == g.Key() && h.Mode == g.Mode && h.Severity >= g.Severity
					}) {
						continue
					}
					if !strings.Contains(tried.Words, g.Title) {
						t.Errorf("%s: for %q (%s, %s) to %s helps; then: %s %q %s", name, f.Title, f.Severity, f.Mode, tried.Words, g.Severity, g.Title, g.Mode)
					}
				}
			}
		}
	}
	if looked < 20 {
		t.Errorf("only %d proposals were looked at", looked)
	}
}

func applied(t *testing.T, doc *build.Document, raw []byte) *build.Document {
	t.Helper()
	patch, err := tree.ParsePatch(raw)
	if err != nil {
		t.Fatal(err)
	}
	out, err := build.Apply(doc, patch, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return out
}
