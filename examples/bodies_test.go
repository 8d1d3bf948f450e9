package examples_test

import (
	"testing"

	"tumblehome/trade/fit"
)

// Columns of the standard bodies, after those of the crew: small, middling and large woman, small, middling and large man.
var ladders = [2][3]int{{0, 1, 2}, {3, 4, 5}}

func TestALargerBodyNeedsMoreAndFitsNoBetter(t *testing.T) {
	rank := map[string]int{"ok": 0, "close": 1, "short": 2}
	for _, demo := range demos {
		suits := reckoned(t, demo).Fit.Suits
		crew := len(suits.Bodies) - 6
		if len(suits.Rows) < 4 {
			t.Errorf("%s: only %d things are done in it", demo, len(suits.Rows))
		}
		for _, row := range suits.Rows {
			for _, ladder := range ladders {
				for k := range 2 {
					small, large := row.Cells[crew+ladder[k]], row.Cells[crew+ladder[k+1]]
					if large.Need < small.Need || large.Need == small.Need && row.Does != "pass" { // in a hurry all want the same width
						t.Errorf("%s: to %s, %s, %s needs %.0f and %s %.0f", demo, row.Does, row.What,
							suits.Bodies[crew+ladder[k]].Name, small.Need, suits.Bodies[crew+ladder[k+1]].Name, large.Need)
					}
					if onlyMoreHelps(row) && rank[large.Fits] < rank[small.Fits] {
						t.Errorf("%s: to %s, %s, the larger body fits better: %v, %v", demo, row.Does, row.What, small, large)
					}
				}
			}
		}
	}
}

// onlyMoreHelps says whether more room never does harm: a seat, a table or a reach may also be too great for the small.
func onlyMoreHelps(row fit.Suit) bool {
	return row.Does != "sit" || row.What == "headroom" || row.What == "room for knees"
}
