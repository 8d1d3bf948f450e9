package solid_test

import (
	"encoding/json"
	"math"
	"os"
	"testing"

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

func TestShapelyAgreesOn200RandomUnions(t *testing.T) {
	text, err := os.ReadFile("testdata/unions.json") // stars in two storeys, cut into convex pieces, at random
	if err != nil {
		t.Fatal(err)
	}
	var unions []union
	if err := json.Unmarshal(text, &unions); err != nil {
		t.Fatal(err)
	}
	var answers [][4]float64 // distance, shared volume, depth, shortest way along an axis
	oracle.Decode(t, oracle.Python, "testdata/unions.py", &answers, "testdata/unions.json")
	if len(answers) != len(unions) {
		t.Fatalf("%d answers, want %d", len(answers), len(unions))
	}
	var worst [4]float64
	overlapping := 0
	for i, one := range unions {
		a, b, want := whole(one.A), whole(one.B), answers[i]
		deepest, overlaps := a.Deepest(b)
		if overlaps {
			overlapping++
		}
		way := a.WayOut(b)
		if after, still := a.Moved(way.X*way.Depth, way.Y*way.Depth, way.Z*way.Depth).Deepest(b); still && after.Depth > 1e-6 {
			t.Errorf("unions %d: gone %+v, still %g deep", i, way, after.Depth)
		}
		worst[0] = max(worst[0], math.Abs(a.Distance(b)-want[0]))
		worst[1] = max(worst[1], math.Abs(a.SharedVolume(b)-want[1])/max(want[1], 1e5))
		worst[2] = max(worst[2], math.Abs(deepest.Depth-want[2]))
		worst[3] = max(worst[3], math.Abs(way.Depth-want[3]))
	}
	if len(unions) != 200 || overlapping < 60 || overlapping > 150 {
		t.Errorf("%d of %d overlap: not a fair sample", overlapping, len(unions))
	}
	source, inputs := "shapely 1.8, testdata/unions.py", "200 pairs of unions of 4 to 16 prisms, testdata/unions.json"
	proof.Check(t, proof.Case{Name: "greatest difference in distance of two unions", Source: source, Inputs: inputs, Got: worst[0], Tolerance: 0.01, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest difference in shared volume of two unions, of it or of 100 000 mm3", Source: source, Inputs: inputs, Got: worst[1], Tolerance: 0.001, Unit: "1"})
	proof.Check(t, proof.Case{Name: "greatest difference in depth of two unions, by Minkowski differences", Source: source, Inputs: inputs, Got: worst[2], Tolerance: 0.1, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "greatest difference in the way out along an axis, by rays through Minkowski differences", Source: source, Inputs: inputs, Got: worst[3], Tolerance: 0.1, Unit: "mm"})
}
