package conduction

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// cooled is a square warmed from the left and cooled above, without a corner that spoils smoothness.
func cooled() Section {
	return Section{
		Regions:    []Region{{X1: 1, Y1: 1, Conductivity: 1}},
		Boundaries: []Boundary{{Y1: 1, Temperature: 1, Resistance: 0.2}, {Y0: 1, X1: 1, Y1: 1, Resistance: 0.5}},
	}
}

// notched has a re-entrant corner of 270°, about which temperature varies as the power 2/3 of distance.
func notched() Section {
	return Section{
		Regions:    []Region{{X1: 1, Y1: 2, Conductivity: 1}, {X1: 2, Y1: 1, Conductivity: 1}},
		Boundaries: []Boundary{{Y0: 2, X1: 1, Y1: 2, Temperature: 1}, {X0: 2, X1: 2, Y1: 1}},
	}
}

// uniform solves on n by n cells.
func uniform(s Section, n int) Result {
	x, y := baseLines(s)
	return s.at(newMesh(s, atLeast(x, n), atLeast(y, n))).result
}

func TestErrorsFallInTheOrderThatTheoryGives(t *testing.T) {
	middle := func(r Result) float64 { v, _ := r.Field.At(Point{0.5, 0.5}); return v }
	bracket := func(r Result) float64 { return r.CouplingError }
	fine, finer := middle(uniform(cooled(), 48)), middle(uniform(cooled(), 96))
	tests := []struct {
		name        string
		section     Section
		of          func(Result) float64
		exact, want float64 // value, order of the error in the size of cells
	}{
		{"temperature inside a square", cooled(), middle, finer + (finer-fine)/3, 2},
		{"distance of the bounds of a square", cooled(), bracket, 0, 2},
		{"distance of the bounds at a re-entrant corner, twice 2/3", notched(), bracket, 0, 4.0 / 3},
	}
	for _, tt := range tests {
		coarse := math.Abs(tt.of(uniform(tt.section, 16)) - tt.exact)
		half := math.Abs(tt.of(uniform(tt.section, 32)) - tt.exact)
		if order := math.Log2(coarse / half); math.Abs(order-tt.want) > 0.12 {
			t.Errorf("%s: error %.3g, then %.3g, order %.2f, want %.2f", tt.name, coarse, half, order, tt.want)
		}
	}
}

// The corner of notched costs uniform cells more than twice the error of as many that stand closer there.
func TestRefiningWhereTheBoundsDifferRestoresTheOrder(t *testing.T) {
	r, err := Solve(notched(), Accuracy{Coupling: 0.002})
	if err != nil {
		t.Fatal(err)
	}
	even := uniform(notched(), int(math.Sqrt(float64(len(r.Field.Temperature))))+1)
	if even.CouplingError < 2*r.CouplingError {
		t.Errorf("uniform cells err by %.2g, refined ones by %.2g with as many points", even.CouplingError, r.CouplingError)
	}
}

func TestBoundsCloseInFromBothSides(t *testing.T) {
	s := cooled()
	x, y := baseLines(s)
	m := newMesh(s, atLeast(x, 4), atLeast(y, 4))
	lastUpper, lastLower := math.Inf(1), 0.0
	for range 5 {
		n := m.above(s)
		upper := m.entersAbove(s, n, n.solve())[0]
		lower := m.entersBelow(s, m.below(s).solve())[0]
		if !(upper < lastUpper && lower > lastLower && lower < upper) {
			t.Errorf("bounds %g to %g after %g to %g", lower, upper, lastLower, lastUpper)
		}
		lastUpper, lastLower, m = upper, lower, m.halved(s)
	}
}

func TestTheBandSolverAgreesWithALibrarys(t *testing.T) {
	src := rand.New(rand.NewPCG(3, 5))
	for _, size := range [][2]int{{1, 0}, {5, 1}, {12, 4}, {40, 9}} {
		n, width := size[0], size[1]
		ours, theirs := newBand(n, width), mat.NewSymBandDense(n, width, nil)
		for k := range n {
			for c := max(k-width, 0); c <= k; c++ {
				v := src.Float64() - 0.5
				if c == k {
					v += float64(width) + 1
				}
				ours.add(k, c, v)
				theirs.SetSymBand(k, c, v)
			}
		}
		b := make([]float64, n)
		for k := range b {
			b[k] = src.Float64()
		}
		var factor mat.BandCholesky
		var want mat.VecDense
		if !factor.Factorize(theirs) {
			t.Fatal("the library finds the matrix not positive definite")
		}
		if err := factor.SolveVecTo(&want, mat.NewVecDense(n, append([]float64(nil), b...))); err != nil {
			t.Fatal(err)
		}
		ours.factorise()
		ours.solve(b)
		for k := range b {
			if math.Abs(b[k]-want.AtVec(k)) > 1e-12 {
				t.Errorf("%d of width %d: unknown %d is %g, the library says %g", n, width, k, b[k], want.AtVec(k))
			}
		}
	}
}
