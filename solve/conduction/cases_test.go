package conduction_test

import (
	"encoding/json"
	"fmt"
	"os"
	"reflect"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

// testCase is one section of testdata/cases.json with the figures that others found for it.
type testCase struct {
	Name     string
	Section  conduction.Section
	Accuracy conduction.Accuracy
	Figures  []figure
}

type figure struct {
	What            string // "temperature" at (X, Y), or "heat", "transmittance", "factor" of a boundary
	X, Y            float64
	Boundary        int
	Want, Tolerance float64
	Source          string
}

func read(t testing.TB, path string, v any) {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, v); err != nil {
		t.Fatalf("%s: %v", path, err)
	}
}

func readCases(t testing.TB) (all []testCase) {
	t.Helper()
	read(t, "testdata/cases.json", &all)
	return all
}

func (f figure) of(t testing.TB, r conduction.Result) (got float64, name, unit string) {
	t.Helper()
	s := r.Surfaces[f.Boundary]
	switch f.What {
	case "temperature":
		return at(t, r, conduction.Point{X: f.X, Y: f.Y}), fmt.Sprintf("temperature at (%g, %g) m", f.X, f.Y), "°C"
	case "heat":
		return s.Heat, "heat through the boundary " + s.Name, "W/m"
	case "transmittance":
		return r.Coupling / s.Length, "transmittance", "W/m2K"
	case "factor":
		return r.Factor(s), "temperature factor of the boundary " + s.Name, "1"
	}
	t.Fatalf("no figure is called %q", f.What)
	return 0, "", ""
}

func TestSectionsHaveTheFiguresOfTablesAndOtherPrograms(t *testing.T) {
	for _, c := range readCases(t) {
		r := solve(t, c.Section, c.Accuracy)
		for _, f := range c.Figures {
			got, name, unit := f.of(t, r)
			proof.Check(t, proof.Case{Name: name + ", " + c.Name, Source: f.Source, Inputs: c.Name + " in testdata/cases.json",
				Expected: f.Want, Got: got, Tolerance: f.Tolerance, Unit: unit})
		}
	}
}

func solve(t testing.TB, s conduction.Section, want conduction.Accuracy) conduction.Result {
	t.Helper()
	r, err := conduction.Solve(s, want)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func at(t testing.TB, r conduction.Result, p conduction.Point) float64 {
	t.Helper()
	v, ok := r.Field.At(p)
	if !ok {
		t.Fatalf("(%g, %g) is not in the material", p.X, p.Y)
	}
	return v
}

func TestErrorsOfTemperatureAreNoGreaterThanAsked(t *testing.T) {
	for _, c := range readCases(t)[1:] {
		want := conduction.Accuracy{Temperature: 0.0005}
		fine := solve(t, c.Section, want)
		for _, asked := range []float64{0.02, 0.005} {
			r := solve(t, c.Section, conduction.Accuracy{Temperature: asked})
			for k, s := range r.Surfaces {
				slack := (asked + want.Temperature) * (r.Warm - r.Cold)
				near(t, c.Name+", coldest spot of "+s.Name, s.Lowest.Temperature, fine.Surfaces[k].Lowest.Temperature, slack)
				near(t, c.Name+", warmest spot of "+s.Name, s.Highest.Temperature, fine.Surfaces[k].Highest.Temperature, slack)
			}
		}
	}
}

func TestAResultIsTheSameEachTimeAndCanBeKeptAsJSON(t *testing.T) {
	for _, c := range readCases(t) {
		one, two := solve(t, c.Section, c.Accuracy), solve(t, c.Section, c.Accuracy)
		text, err := json.Marshal(one)
		if err != nil {
			t.Fatal(err)
		}
		var back conduction.Result
		if err := json.Unmarshal(text, &back); err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(one, two) || !reflect.DeepEqual(one, back) {
			t.Errorf("%s: two answers or what was kept differ", c.Name)
		}
	}
}
