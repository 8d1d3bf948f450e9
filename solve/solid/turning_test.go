package solid_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/internal/golden"
	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/solid"
)

// turning is a convex outline that turns, and the cover that was worked out for it.
type turning struct {
	Outline [][2]float64   `json:"outline"`
	About   [2]float64     `json:"about"`
	Angle   float64        `json:"angle"`
	Cover   [][][2]float64 `json:"cover"`
}

// randomTurning is a body that swings, or one time in two a box that tips, with what covers it on the way.
func randomTurning(r *rand.Rand, tips bool, tolerance float64) turning {
	one := randomBody(r)
	p, about, angle := one.prism(), solid.Point{X: round2(900*r.Float64() - 200), Y: round2(900*r.Float64() - 200)}, round2(4*(2*r.Float64()-1))
	if r.IntN(3) == 0 {
		about = p.Outline[0]
	}
	if !tips {
		out := turning{Outline: one.Outline, About: [2]float64{about.X, about.Y}, Angle: angle}
		for _, piece := range (solid.Solid{p}).Swung(about, angle, tolerance) {
			out.Cover = append(out.Cover, rounded(piece.Outline))
		}
		return out
	}
	b := p.Bounds()
	e := solid.Edge{Along: 1, H: about.X, Z: about.Y, Away: float64(1 - 2*r.IntN(2)), Upward: float64(1 - 2*r.IntN(2))}
	out := turning{Outline: section(b), About: [2]float64{e.H, e.Z}, Angle: e.Away * e.Upward * angle}
	for _, piece := range b.Tipped(e, angle, tolerance) {
		out.Cover = append(out.Cover, rounded(pointsOf(section(piece.Bounds()))))
	}
	return out
}

// section is a box seen along y: x and z.
func section(b solid.Bounds) [][2]float64 {
	return [][2]float64{{b.MinX, b.MinZ}, {b.MaxX, b.MinZ}, {b.MaxX, b.MaxZ}, {b.MinX, b.MaxZ}}
}

func pointsOf(pairs [][2]float64) (outline []solid.Point) {
	for _, p := range pairs {
		outline = append(outline, solid.Point{X: p[0], Y: p[1]})
	}
	return outline
}

func rounded(outline []solid.Point) (out [][2]float64) {
	for _, p := range outline {
		out = append(out, [2]float64{round6(p.X), round6(p.Y)})
	}
	return out
}

func TestShapelyFindsSweepsCoveredWithinTheirTolerance(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	var cases []turning
	var tolerances []float64
	for i := range 40 {
		tolerances = append(tolerances, 6+12*r.Float64())
		cases = append(cases, randomTurning(r, i%2 == 1, tolerances[i]))
	}
	golden.Equal(t, "testdata/sweeps.json", lines(t, cases))
	var answers [][3]float64 // area not covered, excess, reach
	oracle.Decode(t, oracle.Python, "testdata/sweeps.py", &answers, "testdata/sweeps.json")
	if len(answers) != len(cases) {
		t.Fatalf("%d answers, want %d", len(answers), len(cases))
	}
	missing, excess, most := 0.0, 0.0, 0.0
	for i, one := range answers {
		missing = max(missing, one[0])
		allowed := math.Sqrt(tolerances[i]*tolerances[i] + 9*(1+tolerances[i]/one[2])) // the copies are 6 mm apart
		excess = max(excess, one[1]-allowed)
		most = max(most, one[1]/tolerances[i])
	}
	if most < 0.3 {
		t.Errorf("no sweep uses more than %g of its tolerance: the excess is not seen", most)
	}
	source, inputs := "shapely 1.8, testdata/sweeps.py", "20 swung outlines and 20 tipped boxes of 30 to 900 mm, angles to 4 rad, tolerances 6 to 18 mm, testdata/sweeps.json"
	proof.Check(t, proof.Case{Name: "greatest area passed over that a sweep leaves uncovered", Source: source, Inputs: inputs, Got: missing, Tolerance: 0.01, Unit: "mm2"})
	proof.Check(t, proof.Case{Name: "greatest excess of a sweep over its tolerance", Source: source, Inputs: inputs, Got: excess, Tolerance: 0.001, Unit: "mm"})
}

// lines is a list as JSON, an item a line.
func lines[T any](t *testing.T, list []T) []byte {
	t.Helper()
	var text bytes.Buffer
	for i, one := range list {
		line, err := json.Marshal(one)
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&text, "%s%s", map[bool]string{true: "[", false: ",\n"}[i == 0], line)
	}
	text.WriteString("]\n")
	return text.Bytes()
}
