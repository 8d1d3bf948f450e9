package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

// Under a roof that falls to the sides the most headroom over the free floor is one figure: in the table of whom the van suits, in what is told of one
// who stoops, and on the drawing.
func TestTheMostHeadroomIsOneFigure(t *testing.T) {
	v := in(room{half: 900, roof: 1805, drop: 300, floor: 40, rear: 2900}).person("a", 1900).
		put(fit.Fitting{ID: "chest", Make: "box"}, box(0, 2900, -300, 300, 40, 500))
	r := fit.Work(v.mode("day", nil).in)
	_, onDrawing := r.Floors[0].Most()
	inTable := cellsOf(t, r, "stand", "most headroom over the free floor")[0].Room
	figured := figure(t, r, "fit.headroom.stand.a").Value
	if onDrawing != inTable || figured != inTable {
		t.Errorf("the drawing has %g, the table %g, the figure %g", onDrawing, inTable, figured)
	}
	if highest := 1765.0; !(figured > 1600 && figured < highest) {
		t.Errorf("beside the chest there are %g, less than the %g in the middle", figured, highest)
	}
	for _, f := range r.Findings {
		if f.Code == "fit.headroom.stand" && !strings.HasPrefix(f.Words, "Over the free floor a head has at most ") {
			t.Errorf("told: %s", f.Words)
		}
	}
}
