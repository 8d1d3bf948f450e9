package reckon_test

import (
	"testing"

	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// He sleeps on his side in a bed that is a little short; that says nothing of one made shorter since.
func TestWhatHasGrownWorseIsNoLongerAccepted(t *testing.T) {
	for _, c := range []struct {
		name, patch string
		accepted    bool
	}{
		{"as it was", `{"build": {"title": "the same"}}`, true},
		{"the bed is 60 shorter", `{"fittings": {"settle": {"at": {"x": "995..2835"}}}}`, false},
		{"and that was accepted as a fault", `{"fittings": {"settle": {"at": {"x": "995..2835"}}}, "accepted": {"short-bed": {"as": "fault"}}}`, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			patch, err := tree.ParsePatch([]byte(c.patch))
			if err != nil {
				t.Fatal(err)
			}
			r := quick().Reckon(applied(t, demo(t, "dipper"), patch), quantity.Date{})
			for _, f := range r.Findings {
				if f.Code == "fit.bed.length" {
					if (f.Accepted != "") != c.accepted {
						t.Errorf("%s %q, accepted: %q", f.Severity, f.Title, f.Accepted)
					}
					if !c.accepted && (f.Severity != finding.Fault || len(f.Proposals) == 0) {
						t.Errorf("it is a %s with %d proposals", f.Severity, len(f.Proposals))
					}
					return
				}
			}
			t.Error("nothing was found")
		})
	}
}
