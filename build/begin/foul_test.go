package begin_test

import (
	"math/bits"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// Whatever is wished for, and however tall the two who sleep there are, nothing of a starting arrangement stands in another thing, through a
// side of the van, or before its side door; and nobody's bed becomes one for one.
func TestNothingStandsInAnotherWhateverIsWishedFor(t *testing.T) {
	wrong := map[string]bool{"fit.foul": true, "fit.sticks-out": true, "fit.out-of-host": true}
	wishes, machine := begin.Wishes(), reckon.NewMachine()
	before := machine.Reckon(document(t, begin.Answers{Body: begin.Bodies()[0].ID}), quantity.Date{}) // nights and power are not asked about
	for _, b := range begin.Bodies() {
		for _, o := range begin.Offers(begin.Answers{Body: b.ID}) {
			for set := range 1 << len(wishes) {
				if n := bits.OnesCount(uint(set)); n > 1 && n < len(wishes) {
					continue
				}
				a := begin.Answers{Body: b.ID, Arrangement: o.ID, Rules: "gb"}
				for i, w := range wishes {
					if set>>i&1 == 1 {
						a.Wishes = append(a.Wishes, w.ID)
					}
				}
				for _, stature := range []quantity.Length{1500, 1950} {
					a.Sleepers = []begin.Sleeper{{ID: "one", Stature: stature}, {ID: "two", Stature: stature}}
					for _, f := range machine.AtHand(document(t, a), quantity.Date{}, before).Findings {
						if wrong[f.Code] && f.Severity >= finding.Close || f.Severity >= finding.Fault && f.Code != "fit.headroom.sit" {
							t.Errorf("%s %s, %v, %v: %s", b.ID, o.ID, a.Wishes, stature, f.Title)
						}
					}
				}
			}
		}
	}
}
