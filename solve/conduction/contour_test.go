package conduction_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/conduction"
)

func TestIsothermsPassThroughPointsOfTheirTemperature(t *testing.T) {
	each(t, 20, func(_ conduction.Section, r conduction.Result) {
		level := 0.4*r.Cold + 0.6*r.Warm
		for _, line := range r.Field.Isotherms(level) {
			for _, p := range line {
				near(t, "temperature on the isotherm", at(t, r, p), level, 1e-9*(r.Warm-r.Cold)+1e-9)
			}
		}
	})
}

func TestIsothermsOfAPlainWallAreStraightAcross(t *testing.T) {
	r := solve(t, light().Section(0.3, 0, 20), conduction.Accuracy{Coupling: 0.01})
	u := light().Transmittance()
	lines := r.Field.Isotherms(10)
	if len(lines) != 1 {
		t.Fatalf("%d lines, want one", len(lines))
	}
	y := 0.001 + 0.035*(10/(20*u)-0.04-0.001/50)
	for _, p := range lines[0] {
		near(t, "height of the isotherm, m", p.Y, y, 1e-9)
	}
	first, last := lines[0][0], lines[0][len(lines[0])-1]
	near(t, "its length, m", math.Abs(last.X-first.X), 0.3, 1e-12)
}

func TestHeatLinesCutThePlainWallIntoEqualParts(t *testing.T) {
	r := solve(t, light().Section(0.3, 0, 20), conduction.Accuracy{Coupling: 0.01})
	lines := r.Field.HeatLines(5)
	if len(lines) != 5 {
		t.Fatalf("%d lines, want five", len(lines))
	}
	var at []float64
	for _, line := range lines {
		at = append(at, line[0].X)
		near(t, "drift along the line, m", line[len(line)-1].X, line[0].X, 1e-9)
	}
	for k := range at {
		near(t, "distance from an edge, m", math.Min(math.Abs(at[k]-0.03-0.06*float64(k)), math.Abs(0.3-at[k]-0.03-0.06*float64(k))), 0, 1e-9)
	}
}

// What flows between two points of a surface is the difference of the stream function, whichever way one goes.
func TestTheStreamFunctionRisesByTheHeatOfEachBoundary(t *testing.T) {
	src := rand.New(rand.NewPCG(1, 2))
	for range 12 {
		s := random(src)
		r := solve(t, s, conduction.Accuracy{Coupling: 0.004})
		nx := len(r.Field.X)
		for k, b := range s.Boundaries[:2] { // along the bottom and the top
			row := 0
			if b.Y0 > 0 {
				row = len(r.Field.Y) - 1
			}
			left, right := r.Field.Stream[row*nx], r.Field.Stream[row*nx+nx-1]
			upward := left - right
			if row > 0 {
				upward = -upward
			}
			near(t, "heat entering, as a share", upward/r.Surfaces[k].Heat, 1, 0.02)
		}
	}
}

// A square hole inside: an isotherm ends on it, none crosses it, and points in it have no temperature.
func TestAHoleHasNoTemperatureAndNoLines(t *testing.T) {
	s := conduction.Section{
		Regions: []conduction.Region{
			rectangle(0, 0, 30, 10, 1), rectangle(0, 20, 30, 30, 1), rectangle(0, 10, 10, 20, 1), rectangle(20, 10, 30, 20, 1)},
		Boundaries: []conduction.Boundary{{Y1: 0.03, Temperature: 1}, {X0: 0.03, X1: 0.03, Y1: 0.03}},
	}
	r := solve(t, s, conduction.Accuracy{Coupling: 0.01})
	if _, ok := r.Field.At(conduction.Point{X: 0.015, Y: 0.015}); ok {
		t.Error("the middle of the hole has a temperature")
	}
	near(t, "temperature at the corner of the hole", at(t, r, conduction.Point{X: 0.01, Y: 0.01})+at(t, r, conduction.Point{X: 0.02, Y: 0.01}), 1, 1e-9)
	if lines := r.Field.Isotherms(0.501); len(lines) != 2 {
		t.Errorf("%d isotherms in the middle, want one below and one above the hole", len(lines))
	}
}

// A cavity whose wall is warmed from within: surroundings may also lie inside.
func TestAWarmedHoleGivesAllThatTheOutsideTakes(t *testing.T) {
	s := conduction.Section{
		Regions: []conduction.Region{
			rectangle(0, 0, 30, 10, 1), rectangle(0, 20, 30, 30, 1), rectangle(0, 10, 10, 20, 1), rectangle(20, 10, 30, 20, 1)},
		Boundaries: []conduction.Boundary{
			{X1: 0.03, Resistance: 0.04},
			{X0: 0.01, Y0: 0.01, X1: 0.02, Y1: 0.01, Temperature: 20, Resistance: 0.13},
			{X0: 0.01, Y0: 0.02, X1: 0.02, Y1: 0.02, Temperature: 20, Resistance: 0.13}},
	}
	r := solve(t, s, conduction.Accuracy{Coupling: 0.01})
	near(t, "heat left over", r.Surfaces[0].Heat+r.Surfaces[1].Heat+r.Surfaces[2].Heat, 0, 1e-9)
	if !(r.Surfaces[1].Heat > r.Surfaces[2].Heat && r.Surfaces[2].Heat > 0) {
		t.Errorf("the near side gives %g, the far side %g W/m", r.Surfaces[1].Heat, r.Surfaces[2].Heat)
	}
}
