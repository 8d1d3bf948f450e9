package solid_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"tumblehome/internal/golden"
	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/solid"
)

// body is a prism as the golden file has it.
type body struct {
	Outline [][2]float64 `json:"outline"`
	Low     float64      `json:"low"`
	High    float64      `json:"high"`
}

// pair is two bodies and what is expected of them. Axis is the unit direction in which a leaves b by going depth.
type pair struct {
	A       body       `json:"a"`
	B       body       `json:"b"`
	Overlap bool       `json:"overlap"`
	Depth   float64    `json:"depth"`
	Axis    [3]float64 `json:"axis"`
}

func (b body) prism() solid.Prism {
	p := solid.Prism{Low: b.Low, High: b.High}
	for _, v := range b.Outline {
		p.Outline = append(p.Outline, solid.Point{X: v[0], Y: v[1]})
	}
	return p
}

// The browser's separating axes are tested on the same file.
func TestTheGoldenPairsAreTheSeededOnes(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 20))
	var text bytes.Buffer
	for i := range 500 {
		one := pair{A: randomBody(random), B: randomBody(random)}
		if w, overlaps := solid.Overlap(one.A.prism(), one.B.prism()); overlaps {
			one.Overlap, one.Depth, one.Axis = true, round6(w.Depth), [3]float64{round6(w.X), round6(w.Y), round6(w.Z)}
		}
		line, err := json.Marshal(one)
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&text, "%s%s", map[bool]string{true: "[", false: ",\n"}[i == 0], line)
	}
	text.WriteString("]\n")
	golden.Equal(t, "testdata/pairs.json", text.Bytes())
}

func TestShapelyAgreesOn500RandomConvexPairs(t *testing.T) {
	text, err := os.ReadFile("testdata/pairs.json")
	if err != nil {
		t.Fatal(err)
	}
	var pairs []pair
	if err := json.Unmarshal(text, &pairs); err != nil {
		t.Fatal(err)
	}
	var answers [][3]float64 // distance, shared volume, depth
	oracle.Decode(t, oracle.Python, "testdata/pairs.py", &answers, "testdata/pairs.json")
	if len(answers) != 500 || len(pairs) != 500 {
		t.Fatalf("%d pairs, %d answers, want 500", len(pairs), len(answers))
	}
	worst, overlapping := [3]float64{}, 0
	for i, one := range pairs {
		a, b, want := one.A.prism(), one.B.prism(), answers[i]
		way, overlaps := solid.Overlap(a, b)
		if overlaps != (want[2] > 0) {
			t.Errorf("pair %d: overlap %v, shapely's depth %g", i, overlaps, want[2])
		}
		if overlaps {
			overlapping++
			if after, still := solid.Overlap(a.Moved(way.X*way.Depth, way.Y*way.Depth, way.Z*way.Depth), b); still && after.Depth > 1e-9 {
				t.Errorf("pair %d: gone %g along the axis, still %g deep", i, way.Depth, after.Depth)
			}
		}
		worst[0] = max(worst[0], math.Abs(solid.Distance(a, b)-want[0]))
		worst[1] = max(worst[1], math.Abs(solid.SharedVolume(a, b)-want[1])/max(want[1], 1))
		worst[2] = max(worst[2], math.Abs(way.Depth-want[2]))
	}
	if overlapping < 150 || overlapping > 350 {
		t.Errorf("%d of 500 pairs overlap: not a fair sample", overlapping)
	}
	source, inputs := "shapely 1.8, testdata/pairs.py", "500 seeded convex pairs of 30 to 900 mm, testdata/pairs.json"
	proof.Check(t, proof.Case{Name: "greatest difference in distance of two prisms", Source: source, Inputs: inputs, Got: worst[0], Tolerance: 0.01, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest relative difference in shared volume", Source: source, Inputs: inputs, Got: worst[1], Tolerance: 0.001, Unit: "1"})
	proof.Check(t, proof.Case{Name: "greatest difference in depth of overlap, by Minkowski difference", Source: source, Inputs: inputs, Got: worst[2], Tolerance: 0.01, Unit: "mm"})
}

// randomBody is a box turned, one time in two, else the hull of some points; coordinates in whole hundredths.
func randomBody(r *rand.Rand) body {
	span := 30 + 420*r.Float64()
	cx, cy, low := 500*r.Float64(), 500*r.Float64(), 300*r.Float64()
	var points [][2]float64
	if r.IntN(2) == 0 {
		half, wide, sin, cos := span, 15+span*r.Float64(), 0.0, 1.0
		if r.IntN(3) > 0 {
			sin, cos = math.Sincos(2 * math.Pi * r.Float64())
		}
		for _, c := range [4][2]float64{{-half, -wide}, {half, -wide}, {half, wide}, {-half, wide}} {
			points = append(points, [2]float64{round2(cx + cos*c[0] - sin*c[1]), round2(cy + sin*c[0] + cos*c[1])})
		}
	} else {
		for range 4 + r.IntN(12) {
			points = append(points, [2]float64{round2(cx + span*(2*r.Float64()-1)), round2(cy + span*(2*r.Float64()-1))})
		}
	}
	return body{Outline: hull(points), Low: round2(low), High: round2(low + 20 + 500*r.Float64())}
}

func round2(v float64) float64 { return math.Round(v*100) / 100 }

// round6 also turns -0 into 0.
func round6(v float64) float64 { return math.Round(v*1e6)/1e6 + 0 }

// hull is Andrew's monotone chain (1979), counter-clockwise.
func hull(points [][2]float64) [][2]float64 {
	slices.SortFunc(points, func(a, b [2]float64) int { return slices.Compare(a[:], b[:]) })
	chain := func() (c [][2]float64) {
		for _, p := range points {
			for len(c) > 1 && cross(c[len(c)-2], c[len(c)-1], p) <= 0 {
				c = c[:len(c)-1]
			}
			c = append(c, p)
		}
		return c[:len(c)-1]
	}
	lower := chain()
	slices.Reverse(points)
	return append(lower, chain()...)
}

func cross(o, a, b [2]float64) float64 {
	return (a[0]-o[0])*(b[1]-o[1]) - (a[1]-o[1])*(b[0]-o[0])
}
