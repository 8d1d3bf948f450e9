package web

import (
	"math"
	"slices"
	"testing"

	"tumblehome/reckon"
	"tumblehome/trade/takeoff"
)

func TestColumnsOfThingsNoVanHolds(t *testing.T) {
	line := func(x, mass float64) takeoff.Line { return takeoff.Line{At: [3]float64{x, 0, 0}, Mass: mass} }
	for name, c := range map[string]struct {
		lines []takeoff.Line
		want  []column
	}{
		"nothing is put in":                        {nil, nil},
		"things in two stretches":                  {[]takeoff.Line{line(10, 3), line(240, 4), line(-1, 5)}, []column{{-250, 5}, {0, 7}}},
		"what was taken out lightens its stretch":  {[]takeoff.Line{line(10, 3), line(20, -1)}, []column{{0, 2}}},
		"a middle that is no number is left out":   {[]takeoff.Line{line(math.NaN(), 3), line(10, 4)}, []column{{0, 4}}},
		"a middle without end is left out":         {[]takeoff.Line{line(math.Inf(1), 3), line(math.Inf(-1), 3), line(1e300, 3), line(10, 4)}, []column{{0, 4}}},
		"a mass that is no number is left out":     {[]takeoff.Line{line(10, math.NaN()), line(10, 4)}, []column{{0, 4}}},
		"only middles that are no numbers":         {[]takeoff.Line{line(math.NaN(), 3)}, nil},
		"things a kilometre apart are not drawn":   {[]takeoff.Line{line(0, 1), line(1e6, 1)}, nil},
		"things at both ends of what can be named": {[]takeoff.Line{line(-2e9, 1), line(2e9, 1)}, nil},
	} {
		t.Run(name, func(t *testing.T) {
			got := columnsOf(view{state: &state{Reckoning: &reckon.Reckoning{Results: reckon.Results{Lines: c.lines}}}})
			if !slices.Equal(got, c.want) {
				t.Errorf("columns %v, want %v", got, c.want)
			}
		})
	}
}
