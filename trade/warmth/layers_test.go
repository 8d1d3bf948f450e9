package warmth_test

import (
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
	"tumblehome/trade/warmth"
)

// layer is a layer of one material: thickness in m over conductivity.
func layer(thick, conducts float64) warmth.Mixed {
	return warmth.Mixed{{Share: 1, Resistance: thick / conducts}}
}

func resists(r float64) warmth.Mixed { return warmth.Mixed{{Share: 1, Resistance: r}} }

func mixed(thick, a, share, b float64) warmth.Mixed {
	return warmth.Mixed{{Share: 1 - share, Resistance: thick / a}, {Share: share, Resistance: thick / b}}
}

const scottish = "Scottish building standards, annex 6.B, as quoted by a public test suite"

func TestTheCombinedMethodGivesTheWorkedExamples(t *testing.T) {
	timber := []warmth.Mixed{layer(0.102, 0.77), resists(0.18), layer(0.009, 0.13), mixed(0.140, 0.04, 0.15, 0.12), layer(0.0125, 0.21)}
	double := []warmth.Mixed{layer(0.102, 0.77), resists(0.18), mixed(0.125, 0.11, 0.067, 0.88), mixed(0.089, 0.038, 0.118, 0.13), layer(0.0125, 0.21)}
	plain := []warmth.Mixed{layer(0.110, 0.667), layer(0.010, 0.41), layer(0.030, 0.0375), layer(0.030, 0.445), layer(0.010, 0.57)}
	batten := []warmth.Mixed{layer(0.001, 50), mixed(0.040, 0.035, 40.0/600, 0.13), layer(0.004, 0.17)}
	for _, c := range []struct {
		name, source                 string
		layers                       []warmth.Mixed
		total, upper, lower, within_ float64
	}{
		{"timber frame wall", scottish + ", example 1", timber, 0, 3.435, 3.304, 0.0006},
		{"wall bridged twice", scottish + ", example 2 (published 3.617 and 3.136)", double, 0, 3.617, 3.136, 0.002},
		{"plain layers", "a public condensation-check suite (Spanish code, ISO 13788)", plain, 1.24426738, 0, 0, 1e-8},
		{"van wall with a batten", "own recalculation by an independent script, upper and lower limit", batten, 0, 1.2028, 1.1613, 0.0001},
	} {
		total, upper, lower := warmth.Combined(c.layers, 0.13, 0.04)
		for _, f := range []struct {
			name      string
			want, got float64
		}{{"R", c.total, total}, {"upper limit R'", c.upper, upper}, {"lower limit R''", c.lower, lower}} {
			if f.want != 0 {
				proof.Check(t, proof.Case{Name: f.name + " of a " + c.name, Source: c.source, Inputs: "layers as in the test", Expected: f.want, Got: f.got, Tolerance: c.within_, Unit: "m2K/W"})
			}
		}
	}
	total, _, _ := warmth.Combined(timber, 0.13, 0.04)
	proof.Check(t, proof.Case{Name: "U of the timber frame wall", Source: scottish + ", example 1", Inputs: "R of the same", Expected: 0.297, Got: 1 / total, Tolerance: 0.0005, Unit: "W/m2K"})
	total, _, _ = warmth.Combined(batten, 0.13, 0.04)
	proof.Check(t, proof.Case{Name: "U of the van wall with a batten", Source: "own recalculation by an independent script", Inputs: "R of the same", Expected: 0.8460, Got: 1 / total, Tolerance: 0.0001, Unit: "W/m2K"})
}

// wall is one bay of a side with a rib, as the reckoning would give it.
func wall(depth, flange float64, courses ...warmth.Course) warmth.Inputs {
	f := warmth.Field{Group: warmth.Sides, Bay: "left-1", About: "/lining/sides/0", Area: 2, Width: 600, Courses: courses}
	if depth > 0 {
		f.Ribs = []warmth.Rib{{Depth: depth, Flange: flange, Halves: 2}}
	}
	in := warmth.Inputs{Skin: 0.8, Fields: []warmth.Field{f}, Volume: 10, Plan: 4.5, Top: 1800, AirAbout: "/air", Place: "nowhere"}
	for i := range in.Months {
		in.Months[i] = month(0, 0.9)
	}
	return in
}

func month(outside, humidity float64) warmth.Month {
	m := warmth.Month{Mean: outside, Nights: 8}
	for h := range m.Usual.Outside {
		m.Usual.Outside[h], m.Cold.Outside[h] = outside, outside-5
	}
	m.Usual.Vapour = humidity * 611
	m.Cold.Vapour = humidity * 401
	return m
}

func of(conducts, vapour float64) warmth.Material {
	return warmth.Material{ID: "stuff", Name: "stuff", Conducts: conducts, Vapour: vapour, Density: 400, Capacity: 1600}
}

func course(of warmth.Material, bayFrom, bayTo, ribFrom, ribTo float64) warmth.Course {
	return warmth.Course{Pointer: "/lining/sides/0", Of: of, InBay: [2]float64{bayFrom, bayTo}, OnRib: [2]float64{ribFrom, ribTo}, Share: 1}
}

func TestAHatUnderABoardAgreesWithFiniteVolumes(t *testing.T) {
	var want struct{ Coupling, Factor float64 }
	oracle.Decode(t, oracle.Python, "testdata/hat.py", &want)
	in := wall(45, 50, course(of(0.04, 1), 0, 40, 45, 45), course(of(0.13, 70), 65, 70.5, 65, 70.5))
	r := warmth.Work(in)
	d := r.Details[0]
	proof.Check(t, proof.Case{Name: "heat through half a rib and 250 mm of bay", Source: "finite volumes by scipy, testdata/hat.py", Inputs: "hat 45 x 50 of 0.8 mm, wool 40, air, board 5.5",
		Expected: want.Coupling, Got: d.Solved.Coupling, Tolerance: 0.006 * want.Coupling, Unit: "W/mK"})
	proof.Check(t, proof.Case{Name: "coldest spot over a rib", Source: "finite volumes by scipy, testdata/hat.py", Inputs: "the same", Expected: want.Factor, Got: d.Factor, Tolerance: 0.012, Unit: "1"})
}

// The sections of a van's wall that were worked out beforehand with another program: a web with a flange under the lining. Here they show that the
// accuracy asked of a detail is kept.
func TestVanWallsWithAWebAsAnotherProgramFindsThem(t *testing.T) {
	const source = "own finite elements of the project's reference, bilinear, converged to 0.0005 (an independent script)"
	web := func(strip, lining float64) conduction.Section {
		s := conduction.Section{}
		put := func(x0, y0, x1, y1, k float64) {
			s.Regions = append(s.Regions, conduction.Region{X0: x0 / 1000, Y0: y0 / 1000, X1: x1 / 1000, Y1: y1 / 1000, Conductivity: k})
		}
		put(0, 0, 300, 1, 50)
		put(0, 1, 300, 41+strip, 0.035)
		put(0, 1, 0.5, 41, 50)
		put(0, 40, 15, 41, 50)
		top := 41 + strip + lining
		if lining > 0 {
			put(0, 41+strip, 300, top, 0.17)
		}
		face := func(y, temperature, r float64) {
			s.Boundaries = append(s.Boundaries, conduction.Boundary{X0: 0, Y0: y / 1000, X1: 0.3, Y1: y / 1000, Temperature: temperature, Resistance: r})
		}
		face(0, 0, 0.04)
		face(top, 20, 0.13)
		return s
	}
	for _, c := range []struct {
		name          string
		strip, lining float64
		u, factor     float64
	}{{"flange under 4 mm of plywood", 0, 4, 1.055, 0.401}, {"10 mm more over the flange", 10, 4, 0.732, 0.766}, {"flange bare to the cabin", 0, 0, 1.060, 0.278}} {
		r, err := conduction.Solve(web(c.strip, c.lining), conduction.Accuracy{Coupling: 0.0005, Temperature: 0.002})
		if err != nil {
			t.Fatal(err)
		}
		proof.Check(t, proof.Case{Name: "U of a van's wall, " + c.name, Source: source, Inputs: "steel 1, wool 40, web every 600 mm", Expected: c.u, Got: r.Coupling / 0.3, Tolerance: 0.0015, Unit: "W/m2K"})
		proof.Check(t, proof.Case{Name: "coldest inside spot, " + c.name, Source: source, Inputs: "the same", Expected: c.factor, Got: r.Factor(r.Surfaces[1]), Tolerance: 0.004, Unit: "1"})
	}
}

func TestPlainWallsAreThoseOfTheTable(t *testing.T) {
	for _, c := range []struct {
		name    string
		courses []warmth.Course
		want    float64
	}{
		{"wool 40, plywood 4", []warmth.Course{course(of(0.04, 1), 0, 40, 0, 40), course(of(0.13, 200), 40, 44, 40, 44)}, 0.833},
		{"XPS 30, plywood 4", []warmth.Course{course(of(0.034, 100), 0, 30, 0, 30), course(of(0.13, 200), 30, 34, 30, 34)}, 0.923},
		{"bonded PE foam 20", []warmth.Course{course(of(0.037, 7000), 0, 20, 0, 20)}, 1.407},
		{"bonded elastomeric 19", []warmth.Course{course(of(0.036, 10000), 0, 19, 0, 19)}, 1.433},
	} {
		r := warmth.Work(wall(0, 0, c.courses...))
		proof.Check(t, proof.Case{Name: "U of a van's wall, " + c.name, Source: "own recalculation of the project's reference by an independent script", Inputs: "Rsi 0.13, Rse 0.04, steel counts for nothing",
			Expected: c.want, Got: r.Surfaces[0].U, Tolerance: 0.0006, Unit: "W/m2K"})
	}
	bare := warmth.Work(wall(0, 0))
	proof.Check(t, proof.Case{Name: "U of bare steel", Source: "ISO 6946: 1/(0.13 + 0.04)", Inputs: "nothing is laid", Expected: 1 / 0.17, Got: bare.Surfaces[0].U, Tolerance: 1e-9, Unit: "W/m2K"})
}

func TestAStripOverTheRibSavesHeatAndKeepsTheBoardWarm(t *testing.T) {
	free := warmth.Work(wall(40, 50, course(of(0.04, 1), 0, 40, 40, 40), course(of(0.17, 90), 40, 44, 40, 44)))
	strip := warmth.Work(wall(40, 50, course(of(0.04, 1), 0, 50, 40, 50), course(of(0.17, 90), 50, 54, 50, 54)))
	without := warmth.Work(wall(0, 0, course(of(0.04, 1), 0, 40, 40, 40), course(of(0.17, 90), 40, 44, 40, 44)))
	if !(free.Surfaces[0].U > 1.15*without.Surfaces[0].U) {
		t.Errorf("a rib adds little: %.3f with it, %.3f without", free.Surfaces[0].U, without.Surfaces[0].U)
	}
	if !(strip.Surfaces[0].U < 0.85*free.Surfaces[0].U && strip.Details[0].Factor > free.Details[0].Factor+0.25) {
		t.Errorf("with a strip U %.3f and fRsi %.3f, without %.3f and %.3f", strip.Surfaces[0].U, strip.Details[0].Factor, free.Surfaces[0].U, free.Details[0].Factor)
	}
}

func TestAFilledRibLosesLessThanAnEmptyOne(t *testing.T) {
	empty := course(of(0.04, 1), 0, 40, 40, 40)
	filled := empty
	filled.Filled = true
	board := course(of(0.17, 90), 40, 44, 40, 44)
	a, b := warmth.Work(wall(40, 60, empty, board)), warmth.Work(wall(40, 60, filled, board))
	if !(b.Details[0].Excess < a.Details[0].Excess) {
		t.Errorf("filled %.4f W/mK, empty %.4f", b.Details[0].Excess, a.Details[0].Excess)
	}
}

func TestRibsOfTheSameSectionAreWorkedOutOnce(t *testing.T) {
	in := wall(40, 50, course(of(0.04, 1), 0, 40, 40, 40), course(of(0.17, 90), 40, 44, 40, 44))
	again := in.Fields[0]
	again.Bay, again.Area, again.Width = "left-2", 1, 700
	in.Fields = append(in.Fields, again)
	solved := 0
	in.Solve = func(s conduction.Section, a conduction.Accuracy) (conduction.Result, error) {
		solved++
		return conduction.Solve(s, a)
	}
	r := warmth.Work(in)
	if solved != 1 || len(r.Details) != 1 || len(r.Details[0].Fields) != 2 {
		t.Errorf("solved %d times, %d details", solved, len(r.Details))
	}
	if math.Abs(r.Lost[0].U-r.Lost[1].U) < 1e-6 {
		t.Error("ribs closer together do not lose more")
	}
}

func TestEveryLinedFieldIsDrawnWithItsIsotherms(t *testing.T) {
	in := wall(40, 50, course(of(0.04, 1), 0, 40, 40, 40), course(of(0.17, 90), 40, 44, 40, 44))
	floor := warmth.Field{Group: warmth.Floor, Bay: "floor", About: "/lining/floor/0", Area: 4, Flow: conduction.Downward, Courses: []warmth.Course{course(of(0.035, 100), 0, 20, 0, 20)}}
	in.Fields = append(in.Fields, floor)
	drawn := map[int]bool{}
	for _, d := range warmth.Work(in).Details {
		for _, f := range d.Fields {
			drawn[f] = true
		}
		if len(d.Materials) != len(d.Section.Regions) || len(d.Solved.Field.Isotherms(10)) == 0 || len(d.Solved.Field.HeatLines(8)) == 0 {
			t.Errorf("%s: %d regions, %d materials, and no lines in it", d.Name, len(d.Section.Regions), len(d.Materials))
		}
	}
	if !drawn[0] || !drawn[1] {
		t.Errorf("drawn are %v", drawn)
	}
}
