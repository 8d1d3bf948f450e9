package begin_test

import (
	"strings"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// A bed is born as long and as wide as its sleepers want it, or short of that by what one can see: never by a rounding.
func TestNoBedIsBornAFewMillimetresShort(t *testing.T) {
	const few = 10 // mm
	for _, b := range begin.Bodies() {
		for _, two := range [][2]quantity.Length{{1750, 1640}, {1800, 1800}, {1683, 1721}, {1905, 1577}} {
			a := begin.Answers{Body: b.ID, Sleepers: []begin.Sleeper{{ID: "ann", Stature: two[0]}, {ID: "tom", Stature: two[1]}}}
			for _, o := range begin.Offers(a) {
				a.Arrangement = o.ID
				for _, f := range reckon.NewMachine().Reckon(document(t, a), quantity.Date{}).Findings {
					if short := "fit.bed."; strings.HasPrefix(f.Code, short) && f.Limit != nil && f.Measured != nil && f.Limit.Value-f.Measured.Value < few {
						t.Errorf("%s %s, %v and %v: %s: %s", b.ID, o.ID, two[0], two[1], f.Title, f.Words)
					}
				}
			}
		}
	}
}
