package offsets_test

import (
	"math"
	"testing"

	"tumblehome/solve/offsets"
)

func TestAFormScalesEachWayByItself(t *testing.T) {
	f := offsets.Form{Heights: []float64{0, 0.5, 1}, Stations: []float64{0, 1}, Half: [][]float64{{0.9, 1, 0.8}, {0.85, 0.95, 0.7}}, Crown: []float64{1.05, 1.04}, Doubt: 0.03}
	got := f.Scale(3000, 1600, 900, 5)
	s := must(t, got)
	for what, pair := range map[string][2]float64{
		"length": {s.End(), 3000}, "top row": {s.TopRow(), 1600}, "waist at the start": {s.Half(0, 800), 900},
		"foot at the end": {s.Half(3000, 0), 765}, "crown": {s.Crown(0), 1680}, "doubt": {got.Form, 27}, "reading": {got.Reading, 5},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-9 {
			t.Errorf("%s: got %g, want %g", what, pair[0], pair[1])
		}
	}
}
