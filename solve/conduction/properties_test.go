package conduction_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/conduction"
)

// random is a section of a few rectangles over a base, with conductivities from foam to metal, that solves.
func random(src *rand.Rand) conduction.Section {
	for {
		s := draw(src)
		if _, err := conduction.Solve(s, conduction.Accuracy{Coupling: 1}); err == nil {
			return s
		}
	}
}

func draw(src *rand.Rand) conduction.Section {
	const width, height = 0.2, 0.06
	conductivity := func() float64 { return 0.02 * math.Pow(1e4, src.Float64()) }
	s := conduction.Section{Regions: []conduction.Region{{X1: width, Y1: height, Conductivity: conductivity()}}}
	for range 1 + src.IntN(5) {
		x, y := width*src.Float64(), height*src.Float64()
		s.Regions = append(s.Regions, conduction.Region{X0: x, Y0: y,
			X1: x + (width-x)*src.Float64(), Y1: y + (height-y)*src.Float64(), Conductivity: conductivity()})
	}
	resistance := func() float64 { return []float64{0, 0.04, 0.13, src.Float64() + 0.01}[src.IntN(4)] }
	s.Boundaries = []conduction.Boundary{
		{X1: width, Temperature: 30*src.Float64() - 20, Resistance: resistance()},
		{Y0: height, X1: width, Y1: height, Temperature: 20, Resistance: resistance()},
	}
	if src.IntN(2) == 0 { // a third temperature on a part of one side, clear of the corners
		s.Boundaries = append(s.Boundaries, conduction.Boundary{Y0: height / 3, Y1: height / 2, Temperature: 5, Resistance: 0.1})
	}
	return s
}

// each solves random sections at a few per cent.
func each(t *testing.T, times int, see func(s conduction.Section, r conduction.Result)) {
	t.Helper()
	src := rand.New(rand.NewPCG(7, 11))
	for range times {
		s := random(src)
		see(s, solve(t, s, conduction.Accuracy{Coupling: 0.03}))
		if t.Failed() {
			t.Fatalf("in %+v", s)
		}
	}
}

func TestHeatInIsHeatOut(t *testing.T) {
	each(t, 60, func(_ conduction.Section, r conduction.Result) {
		var sum, size float64
		for _, s := range r.Surfaces {
			sum += s.Heat
			size = max(size, math.Abs(s.Heat))
		}
		near(t, "heat left over as a share of the greatest", sum/size, 0, 1e-9)
	})
}

func TestNoPointIsWarmerOrColderThanItsSurroundings(t *testing.T) {
	each(t, 60, func(_ conduction.Section, r conduction.Result) {
		for _, v := range r.Field.Temperature {
			if v < r.Cold-1e-9 || v > r.Warm+1e-9 {
				t.Errorf("%.12g °C between surroundings of %g and %g °C", v, r.Cold, r.Warm)
			}
		}
	})
}

func TestEvenSurroundingsLeaveEverythingEven(t *testing.T) {
	s := hat(t)
	s.Boundaries[0].Temperature = 20
	r := solve(t, s, conduction.Accuracy{Coupling: 0.01, Temperature: 0.01})
	for _, v := range r.Field.Temperature {
		near(t, "temperature", v, 20, 1e-9)
	}
	near(t, "heat", r.Surfaces[0].Heat, 0, 1e-9)
	near(t, "factor, by definition", r.Factor(r.Surfaces[0]), 1, 0)
}

func TestASectionSeenInAMirrorOrFromTheSideIsTheSame(t *testing.T) {
	each(t, 30, func(s conduction.Section, r conduction.Result) {
		mirror, turn := s, s
		mirror.Regions, mirror.Boundaries, turn.Regions, turn.Boundaries = nil, nil, nil, nil
		for _, a := range s.Regions {
			mirror.Regions = append(mirror.Regions, conduction.Region{X0: -a.X1, Y0: a.Y0, X1: -a.X0, Y1: a.Y1, Conductivity: a.Conductivity})
			turn.Regions = append(turn.Regions, conduction.Region{X0: a.Y0, Y0: a.X0, X1: a.Y1, Y1: a.X1, Conductivity: a.Conductivity})
		}
		for _, b := range s.Boundaries {
			m, u := b, b
			m.X0, m.X1 = -b.X1, -b.X0
			u.X0, u.Y0, u.X1, u.Y1 = b.Y0, b.X0, b.Y1, b.X1
			mirror.Boundaries, turn.Boundaries = append(mirror.Boundaries, m), append(turn.Boundaries, u)
		}
		for _, other := range []conduction.Section{mirror, turn} {
			o := solve(t, other, conduction.Accuracy{Coupling: 0.03})
			for k := range r.Surfaces {
				size := math.Abs(r.Surfaces[k].Heat)
				near(t, "heat of a boundary, relative", (o.Surfaces[k].Heat-r.Surfaces[k].Heat)/size, 0, 1e-7)
			}
		}
	})
}

func TestExchangedTemperaturesTurnTheHeatRound(t *testing.T) {
	each(t, 30, func(s conduction.Section, r conduction.Result) {
		if r.Coupling == 0 {
			return
		}
		swapped := s
		swapped.Boundaries = append([]conduction.Boundary(nil), s.Boundaries...)
		for k := range swapped.Boundaries {
			swapped.Boundaries[k].Temperature = r.Cold + r.Warm - s.Boundaries[k].Temperature
		}
		o := solve(t, swapped, conduction.Accuracy{Coupling: 0.03})
		near(t, "coupling, relative", o.Coupling/r.Coupling, 1, 1e-9)
	})
}

func TestTheBracketHoldsTheAnswerOfAFinerMesh(t *testing.T) {
	each(t, 25, func(s conduction.Section, r conduction.Result) {
		if r.Coupling == 0 {
			return
		}
		fine := solve(t, s, conduction.Accuracy{Coupling: 0.002})
		slack := r.CouplingError + fine.CouplingError
		near(t, "coupling of the finer mesh, relative", fine.Coupling/r.Coupling, 1, slack)
	})
}

func TestABetterConductorNeverPassesLessHeat(t *testing.T) {
	each(t, 25, func(s conduction.Section, r conduction.Result) {
		better := s
		better.Regions = append([]conduction.Region(nil), s.Regions...)
		better.Regions[len(better.Regions)-1].Conductivity *= 3
		o := solve(t, better, conduction.Accuracy{Coupling: 0.03})
		if o.Coupling*(1+o.CouplingError) < r.Coupling*(1-r.CouplingError) {
			t.Errorf("coupling fell from %g to %g", r.Coupling, o.Coupling)
		}
	})
}
