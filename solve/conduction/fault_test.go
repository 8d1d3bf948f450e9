package conduction_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"tumblehome/solve/conduction"
)

func TestBadSectionsAreRefusedWithTheirPlace(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(*conduction.Section)
		says  string
	}{
		{"nothing is wrong", func(*conduction.Section) {}, ""},
		{"no region", func(s *conduction.Section) { s.Regions = nil }, "section: no region"},
		{"no boundary", func(s *conduction.Section) { s.Boundaries = nil }, "section: no boundary"},
		{"no thickness", func(s *conduction.Section) { s.Regions[1].Y1 = s.Regions[1].Y0 }, "regions[1] (foam): no height"},
		{"corners exchanged", func(s *conduction.Section) { s.Regions[3].X0, s.Regions[3].X1 = 0.02, 0 }, "regions[3] (hat): no width"},
		{"thinner than dust", func(s *conduction.Section) { s.Regions[3].X1 = 1e-8 }, "regions[3] (hat): its sides 1e-08"},
		{"negative conductivity", func(s *conduction.Section) { s.Regions[2].Conductivity = -1 }, "regions[2] (board): conductivity -1"},
		{"conductivity that is no number", func(s *conduction.Section) { s.Regions[2].Conductivity = math.NaN() }, "regions[2] (board): conductivity NaN"},
		{"a corner that is no number", func(s *conduction.Section) { s.Regions[0].X1 = math.Inf(1) }, "regions[0] (sheet): its corners"},
		{"a slanting boundary", func(s *conduction.Section) { s.Boundaries[0].Y1 = 0.01 }, "boundaries[0] (outer): it runs neither"},
		{"a boundary without length", func(s *conduction.Section) { s.Boundaries[0].X1 = 0 }, "boundaries[0] (outer): its length 0"},
		{"a boundary as short as dust on a long section", func(s *conduction.Section) { s.Regions[0].X1, s.Boundaries[0].X1 = 1000, 2e-6 }, "boundaries[0] (outer): too short"},
		{"an endless temperature", func(s *conduction.Section) { s.Boundaries[1].Temperature = math.Inf(1) }, "boundaries[1] (inner): temperature"},
		{"a negative surface resistance", func(s *conduction.Section) { s.Boundaries[1].Resistance = -0.1 }, "boundaries[1] (inner): surface resistance -0.1"},
		{"a boundary inside the material", func(s *conduction.Section) { s.Boundaries[1].Y0, s.Boundaries[1].Y1 = 0.02, 0.02 }, "boundaries[1] (inner): at (0, 0.02) it is not on a surface"},
		{"a boundary that goes beyond the material", func(s *conduction.Section) { s.Boundaries[1].X1 = 0.4 }, "boundaries[1] (inner): at (0.3, 0.045) it is not on a surface"},
		{"two boundaries on one surface", func(s *conduction.Section) { s.Boundaries = append(s.Boundaries, s.Boundaries[0]) }, "boundaries[2] (outer): at (0, 0) it lies on boundaries[0]"},
		{"a region hidden by one listed after it", func(s *conduction.Section) { s.Regions[3].Y0, s.Regions[4] = 0.002, s.Regions[1] }, "regions[1] (foam): later regions hide all of it"},
		{"more edges than a mesh has lines", func(s *conduction.Section) {
			for k := range 90 {
				x, y := 0.001+0.003*float64(k), 0.041+4e-5*float64(k)
				s.Regions = append(s.Regions, conduction.Region{X0: x, Y0: y, X1: x + 0.001, Y1: y + 2e-5, Conductivity: 1})
			}
		}, "section: its edges cross"},
		{"a region that hangs in the air", func(s *conduction.Section) { s.Regions[3].Y0, s.Regions[3].Y1 = 0.1, 0.2 }, "regions[3] (hat): no boundary is joined to it"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := hat(t)
			tt.spoil(&s)
			_, err := conduction.Solve(s, conduction.Accuracy{Coupling: 0.05})
			var fault *conduction.Fault
			if (tt.says == "") != (err == nil) || (err != nil && !(errors.As(err, &fault) && strings.HasPrefix(err.Error(), tt.says))) {
				t.Errorf("got %v, want a fault that begins %q", err, tt.says)
			}
		})
	}
}

func TestAnAccuracyIsAskedForAndWithinReach(t *testing.T) {
	_, err := conduction.Solve(hat(t), conduction.Accuracy{})
	if err == nil || !strings.Contains(err.Error(), "section: no accuracy") {
		t.Errorf("got %v, want a fault about the accuracy", err)
	}
	_, err = conduction.Solve(column(), conduction.Accuracy{Coupling: 0.01})
	if err == nil || !strings.HasPrefix(err.Error(), "boundaries[1] (left): at (0, 2) it meets boundaries[0], held at another temperature") {
		t.Errorf("got %v, want a fault about the corner where 20 °C meets 0 °C", err)
	}
	r, err := conduction.Solve(hat(t), conduction.Accuracy{Coupling: 1e-6})
	var missed *conduction.Missed
	if !errors.As(err, &missed) || missed.Coupling != r.CouplingError || r.CouplingError < 1e-6 || r.CouplingError > 1e-3 {
		t.Errorf("got %v with an error of %g, want it missed after coming near", err, r.CouplingError)
	}
}

// FuzzSolve throws any section at the solver: it must answer with a result that balances, or with a fault or a miss.
func FuzzSolve(f *testing.F) {
	for _, s := range []conduction.Section{hat(f), readCases(f)[1].Section, column(), {}} {
		text, err := json.Marshal(s)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Add([]byte(`{"Regions":[{"X1":1,"Y1":1,"Conductivity":1}],"Boundaries":[{"X1":1,"Resistance":1}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var s conduction.Section
		if json.Unmarshal(text, &s) != nil || len(s.Regions)+len(s.Boundaries) > 20 {
			return
		}
		r, err := conduction.Solve(s, conduction.Accuracy{Coupling: 0.2 * float64(len(text)%2), Temperature: 0.1})
		var fault *conduction.Fault
		var missed *conduction.Missed
		if errors.As(err, &fault) || errors.As(err, &missed) {
			return
		}
		if err != nil {
			t.Fatalf("neither fault nor miss: %v", err)
		}
		var sum, size float64
		for _, p := range r.Surfaces {
			sum, size = sum+p.Heat, size+math.Abs(p.Heat)
		}
		if !(math.Abs(sum) <= 1e-6*size+1e-9*(r.Warm-r.Cold)) {
			t.Fatalf("heat left over: %g of %g", sum, size)
		}
	})
}
