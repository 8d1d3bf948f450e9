package remedy_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

// The settle and the bed on it end where the lid would meet the worktop, so that the last centimetres cannot be had.
func TestABedSixtyMillimetresShortCarriesAWayOut(t *testing.T) {
	for _, x := range []string{"1055..2895", "995..2835"} {
		t.Run(x, func(t *testing.T) {
			w, r := reckoned(t, "dipper")
			patch, err := tree.ParsePatch([]byte(`{"fittings": {"settle": {"at": {"x": "` + x + `"}}}}`))
			if err != nil {
				t.Fatal(err)
			}
			doc, err := build.Apply(r.Document, patch, catalogue.Builtin())
			if err != nil {
				t.Fatal(err)
			}
			r = w.Reckon(doc, w.Today)
			f := found(t, r, "fit.bed.length")
			if f.Severity != finding.Fault || !slices.Contains(f.About, "/people/tall") {
				t.Errorf("the bed is %s about %v, not a fault about who is tall", f.Severity, f.About)
			}
			if !strings.Contains(f.Words, "pull-out bed is "+quantity.Parted(1840)+" mm") || math.Abs(f.Measured.Value-1840) > 0.5 || f.Limit.Value < 1840 {
				t.Errorf("%q, measured %v against %v, does not say how long the bed is", f.Words, f.Measured, f.Limit)
			}
			if !slices.ContainsFunc(w.Try(r, f), func(t remedy.Tried) bool { return t.Clears || t.Eases }) {
				t.Errorf("nothing of what is proposed helps: %v", f.Proposals)
			}
		})
	}
}
