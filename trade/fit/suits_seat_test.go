package fit_test

import (
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/fit"
)

// cellsOf are the cells of one row of whom the van suits.
func cellsOf(t *testing.T, r fit.Result, does, what string) []fit.Cell {
	t.Helper()
	for _, row := range r.Suits.Rows {
		if row.Does == does && row.What == what {
			return row.Cells
		}
	}
	t.Fatalf("no row %s, %s", does, what)
	return nil
}

func TestASeatIsJudgedAgainstTheLowerLegs(t *testing.T) {
	sits := func(top float64) []fit.Cell {
		v := in(high).person("a", 1300).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 40+top))
		return cellsOf(t, fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in), "sit", "height of the seat")
	}
	const source = "hollow of the knee of the US Army survey of 2012, from its public records (430 for the middling man, 471 for the large, 350 for the small woman), and 25 of shoes"
	middling, large, small := sits(430)[5], sits(430)[6], sits(480)[1]
	for _, c := range []struct {
		name   string
		cell   fit.Cell
		expect float64
	}{{"middling man", middling, 455}, {"large man", large, 496}, {"small woman", small, 375}} {
		proof.Check(t, proof.Case{Name: "height of seat that suits the " + c.name, Source: source, Inputs: "standard body", Expected: c.expect, Got: c.cell.Need, Tolerance: 0.5, Unit: "mm"})
	}
	if middling.Fits != "ok" || small.How != "feet hang" || sits(300)[6].How != "low, knees high" || sits(430)[0].How == "" {
		t.Errorf("middling %+v, small on 480 %+v, large on 300 %+v, child %+v", middling, small, sits(300)[6], sits(430)[0])
	}
}

func TestHowOneSitsInALowVan(t *testing.T) {
	for _, c := range []struct {
		name string
		roof float64
		how  string // of a middling man: upright takes 918 + 35, leaning back half way 918 x 0.7071 + 35 = 684
	}{
		{"there is room to sit upright", 440 + 960, ""},
		{"one leans back", 440 + 690, "leaning back"},
		{"one sits on the floor", 40 + 1000, "only on the floor"},
		{"one only lies", 40 + 800, "not at all, only lying"},
	} {
		low := room{half: 900, roof: c.roof, floor: 40, rear: 2900}
		v := doors(in(low).person("a", 1755)).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 440))
		r := fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in)
		if got := cellsOf(t, r, "sit", "headroom")[5]; got.How != c.how {
			t.Errorf("%s: %+v", c.name, got)
		}
	}
}

func TestTheMiddleOfATableMayBeOutOfReach(t *testing.T) {
	v := in(high).person("a", 1756).put(fit.Fitting{ID: "seat", Make: "bench", Rests: true}, box(1000, 2800, 300, 880, 40, 470)).
		put(fit.Fitting{ID: "table", Make: "table", Aside: true}, box(1200, 2000, -800, 250, 720, 745))
	r := fit.Work(v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "seat"}).in)
	cells := cellsOf(t, r, "sit", "from its back to the middle of the table")
	if cells[1].How != "out of reach" || cells[1].Room < 900 {
		t.Errorf("small woman %+v", cells[1])
	}
}
