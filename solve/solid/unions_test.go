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

// union is two unions as the recorded file has them.
type union struct {
	A []body `json:"a"`
	B []body `json:"b"`
}

func whole(bodies []body) (s solid.Solid) {
	for _, b := range bodies {
		s = append(s, b.prism())
	}
	return s
}

// randomUnion is a star cut into pieces, with another upon it.
func randomUnion(t *testing.T, r *rand.Rand) (bodies []body) {
	x, y, low, reach := 500*r.Float64(), 500*r.Float64(), round2(300*r.Float64()), 100+250*r.Float64()
	for range 2 {
		high := round2(low + 30 + 250*r.Float64())
		s, err := solid.Extruded(star(r, x, y, reach), low, high)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range s {
			bodies = append(bodies, body{Outline: pairsOf(p.Outline), Low: p.Low, High: p.High})
		}
		low = high
	}
	return bodies
}

func pairsOf(outline []solid.Point) (out [][2]float64) {
	for _, p := range outline {
		out = append(out, [2]float64{p.X, p.Y})
	}
	return out
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

func TestShapelyAgreesOn200RandomUnions(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 5))
	var unions []union
	for range 200 {
		unions = append(unions, union{A: randomUnion(t, r), B: randomUnion(t, r)})
	}
	golden.Equal(t, "testdata/unions.json", lines(t, unions))
	var answers [][5]float64 // distance, shared volume, depth, shortest way along an axis, and along any normal
	oracle.Decode(t, oracle.Python, "testdata/unions.py", &answers, "testdata/unions.json")
	if len(answers) != len(unions) {
		t.Fatalf("%d answers, want %d", len(answers), len(unions))
	}
	var worst [5]float64
	overlapping, shorter := 0, 0
	for i, one := range unions {
		a, b, want := whole(one.A), whole(one.B), answers[i]
		deepest, overlaps := a.Deepest(b)
		if overlaps {
			overlapping++
		}
		way, shortest := a.WayOut(b), a.Shortest(b)
		if after, still := a.Moved(way.X*way.Depth, way.Y*way.Depth, way.Z*way.Depth).Deepest(b); still && after.Depth > 1e-6 {
			t.Errorf("unions %d: gone %+v, still %g deep", i, way, after.Depth)
		}
		if after, still := a.Moved(shortest.X*shortest.Depth, shortest.Y*shortest.Depth, shortest.Z*shortest.Depth).Deepest(b); still && after.Depth > 1e-6 {
			t.Errorf("unions %d: gone %+v, still %g deep", i, shortest, after.Depth)
		}
		worst[0] = max(worst[0], math.Abs(a.Distance(b)-want[0]))
		worst[1] = max(worst[1], math.Abs(a.SharedVolume(b)-want[1])/max(want[1], 1e5))
		worst[2] = max(worst[2], math.Abs(deepest.Depth-want[2]))
		worst[3] = max(worst[3], math.Abs(way.Depth-want[3]))
		if want[4] >= 0 {
			worst[4] = max(worst[4], math.Abs(shortest.Depth-want[4]))
			if want[4] < want[3]-1 {
				shorter++
			}
		}
	}
	if overlapping < 60 || overlapping > 150 || shorter < 5 {
		t.Errorf("%d of 200 overlap, %d ways are shorter along a normal: not a fair sample", overlapping, shorter)
	}
	source, inputs := "shapely 1.8, testdata/unions.py", "200 seeded pairs of unions of 4 to 16 prisms, testdata/unions.json"
	proof.Check(t, proof.Case{Name: "greatest difference in distance of two unions", Source: source, Inputs: inputs, Got: worst[0], Tolerance: 0.01, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest difference in shared volume of two unions, of it or of 100 000 mm3", Source: source, Inputs: inputs, Got: worst[1], Tolerance: 0.001, Unit: "1"})
	proof.Check(t, proof.Case{Name: "greatest difference in depth of two unions, by Minkowski differences", Source: source, Inputs: inputs, Got: worst[2], Tolerance: 0.1, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest difference in the way out along an axis, by rays through Minkowski differences", Source: source, Inputs: inputs, Got: worst[3], Tolerance: 0.1, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest difference in the shortest way out, every fifth pair", Source: source, Inputs: inputs, Got: worst[4], Tolerance: 0.1, Unit: "mm"})
}
