package remedy_test

import (
	"testing"

	"tumblehome/catalogue"
	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
)

// Whoever wires a first lamp, or a first panel, and has written nothing of it is helped by one click.
func TestEveryProposalForAFirstCircuitClearsWhatItIsFor(t *testing.T) {
	const lamp = `{"fittings": {"lamp": {"buy": "led-strip-5m-10w", "at": {"x": 500, "y": 0, "z": 1700}}, "charger": {"buy": "dcdc-20a", "at": {"x": 100, "y": -600, "z": 100}}}, "power": {"batteries": {"house": {"is": ["battery"]}},
		"circuits": {"lamp": {"from": "house", "loads": ["lamp"]}`
	for _, tt := range []struct {
		name, patch string
		findings    int // of its cables that propose something
	}{
		{"a battery and a lamp", lamp + `}}}`, 2},
		{"with the cable to the fuse board", lamp + `, "main": {"from": "house"}}}}`, 3},
		{"with a panel", lamp + `}, "sources": {"sun": {"is": ["panel"]}}}}`, 3},
		{"with a charger from the engine", lamp + `}, "sources": {"engine": {"is": ["charger"]}}}}`, 3},
	} {
		t.Run(tt.name, func(t *testing.T) {
			doc, err := faultcase.Case{Patch: tt.patch}.Document()
			if err != nil {
				t.Fatal(err)
			}
			w := remedy.Worker{Reckon: reckon.NewMachine().Reckon, Rows: catalogue.Builtin(), Today: quantity.Date{}}
			r := w.Reckon(doc, w.Today)
			n := 0
			for _, f := range r.Cables.Findings() {
				tried := w.Try(r, f)
				if len(tried) < len(f.Proposals) {
					t.Errorf("%s: a proposal makes no sound document", f.Code)
				}
				for _, one := range tried {
					n++
					if !one.Clears {
						t.Errorf("%s (%s) is not cleared by %q %s: that brings %v", f.Code, f.Words, one.Words, one.Patch, one.Brings)
					}
				}
			}
			if n != tt.findings {
				t.Errorf("%d proposals were tried, not %d", n, tt.findings)
			}
		})
	}
}
