package remedy_test

import (
	"encoding/json"
	"slices"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

func reckoned(t *testing.T, name string) (remedy.Worker, *reckon.Reckoning) {
	t.Helper()
	text, err := examples.Document(name)
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	w := remedy.Worker{Reckon: reckon.NewMachine().Reckon, Rows: catalogue.Builtin(), Today: quantity.Date{}}
	return w, w.Reckon(doc, w.Today)
}

func found(t *testing.T, r *reckon.Reckoning, code string) finding.Finding {
	t.Helper()
	for _, f := range r.Findings {
		if f.Code == code {
			return f
		}
	}
	t.Fatalf("%s is not found in this build", code)
	return finding.Finding{}
}

func TestProposalsForTheOverloadedRearAxle(t *testing.T) {
	w, r := reckoned(t, "godwit")
	tried := w.Try(r, found(t, r, "weight.rear-axle.over"))
	tests := []struct {
		name, words    string
		clears, brings bool
	}{
		{"less water takes the axle below its plate, though it stays close", "Travel with fresh 90 % full", true, true},
		{"a bunk moved into the galley fouls it, so that is no way out", "Move the lower bunk 1\u202f200 mm forward", false, true},
		{"what stays at home takes the axle below its plate", "Leave at home: toilet", true, true},
	}
	if len(tried) != len(tests) {
		t.Fatalf("%d proposals were tried, want %d", len(tried), len(tests))
	}
	for i, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := tried[i]
			if got.Words != tt.words || got.Clears != tt.clears || (len(got.Brings) > 0) != tt.brings {
				t.Errorf("%q clears %v, brings %d findings; want %q, %v, %v", got.Words, got.Clears, len(got.Brings), tt.words, tt.clears, tt.brings)
			}
			if !moves(got, "weight.rear-axle") {
				t.Error("the rear axle did not move")
			}
		})
	}
}

func moves(t remedy.Tried, code string) bool {
	return slices.ContainsFunc(t.Moves, func(c reckon.Change) bool { return c.Code == code })
}

func TestTryingLeavesTheBuildAsItWas(t *testing.T) {
	w, r := reckoned(t, "godwit")
	before := string(build.WriteYAML(r.Document))
	w.Try(r, found(t, r, "weight.rear-axle.over"))
	if after := string(build.WriteYAML(r.Document)); after != before {
		t.Error("trying a proposal changed the document")
	}
}

func TestAProposalThatMakesNoSoundDocumentIsLeftOut(t *testing.T) {
	w, r := reckoned(t, "twite")
	f := finding.Finding{Code: "none", Proposals: []finding.Proposal{
		{Words: "no patch at all", Patch: json.RawMessage(`[`)},
		{Words: "no such fitting", Patch: json.RawMessage(`{"modes":{"day":{"take":{"ghost":"rest"}}}}`)},
	}}
	if tried := w.Try(r, f); len(tried) != 0 {
		t.Errorf("%d unsound proposals were tried", len(tried))
	}
}

// A danger may be worth a fault, but whoever takes the one for the other is told.
func TestAFaultThatComesInsteadOfADangerIsTold(t *testing.T) {
	w, r := reckoned(t, "dipper")
	danger := finding.Finding{Code: "some.danger", Severity: finding.Danger, Proposals: []finding.Proposal{{Words: "do this", Patch: json.RawMessage(`{"build": {"note": "done"}}`)}}}
	fault := finding.Finding{Code: "some.fault", Severity: finding.Fault, Title: "The door does not open"}
	w.Reckon = func(*build.Document, quantity.Date) *reckon.Reckoning {
		after := *r
		after.Findings = append([]finding.Finding{fault}, r.Findings...)
		return &after
	}
	tried := w.Try(r, danger)
	if len(tried) != 1 || !tried[0].Clears || tried[0].Words != "do this; then: The door does not open" {
		t.Errorf("it says %+v", tried)
	}
}
