package power_test

import (
	"encoding/json"
	"fmt"
	"os"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/power"
)

// place is what testdata/yields.py found in an hourly year.
type place struct {
	Place                       string
	Latitude, Longitude, Offset float64
	Mean, Low, High, Spread     [12]float64
	Sun, Wh                     [12]float64
}

func places(t testing.TB) (all []place) {
	t.Helper()
	text, err := os.ReadFile("testdata/yields.answer.json")
	if err == nil {
		err = json.Unmarshal(text, &all)
	}
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func (p place) climate() power.Climate {
	return power.Climate{Latitude: p.Latitude, Longitude: p.Longitude, Offset: p.Offset, Mean: p.Mean, Low: p.Low, High: p.High, Spread: p.Spread, Sun: p.Sun}
}

// The yield of drawn years beside that of the hourly year from whose months they were drawn. One year of hours is itself one draw: what is left
// over is the light that comes in other hours than it did that year, and a beam that Erbs takes for sky.
func TestTheYieldOfAFlatPanelAsHourlyYearsHaveIt(t *testing.T) {
	for _, p := range places(t) {
		in := power.Inputs{Climate: p.climate(), Years: 100, Seed: 3, Battery: &power.Battery{Chemistry: power.Lithium, Rated: 100},
			Sources: []power.Source{{Kind: power.Sun, Watts: 100, Panels: 1}}}
		r := power.Work(in)
		for m, month := range r.Months {
			near := 0.04 * p.Wh[m]
			switch sun := p.Sun[m]; {
			case sun < 0.1:
				continue // polar night
			case sun < 0.2: // the sun stands under 6° all day
				near = 0.2 * p.Wh[m]
			case sun < 1.5:
				near = 0.08 * p.Wh[m]
			}
			proof.Check(t, proof.Case{Name: fmt.Sprintf("100 W flat in %s, month %d", p.Place, m+1), Source: "testdata/yields.py on the hourly year, its own split of beam and sky", Inputs: "months of the same year",
				Expected: p.Wh[m], Got: month.Yield, Tolerance: near, Unit: "Wh"})
		}
	}
}
