package fit_test

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
	"tumblehome/trade/fit"
)

// crowded is a flat van of 2900 by 1800 with a side door and boxes, some turned, and one to get to.
type crowded struct {
	Door  [2]float64      `json:"door"`
	Goal  [4]float64      `json:"goal"` // x from, to, y from, to
	Boxes [][4][2]float64 `json:"boxes"`
}

func crowdedVans() []crowded {
	random := rand.New(rand.NewPCG(11, 4))
	between := func(low, high float64) float64 { return math.Round(low + (high-low)*random.Float64()) }
	var all []crowded
	for range 60 {
		at := between(100, 900)
		v := crowded{Door: [2]float64{at, at + between(600, 1100)}}
		x, y := between(2000, 2400), between(-800, 300)
		v.Goal = [4]float64{x, x + 400, y, y + 450}
		for range 3 + random.IntN(4) {
			x, y, l, b := between(300, 2600), between(-700, 700), between(75, 350), between(75, 300)
			sin, cos := 0.0, 1.0
			if random.IntN(2) == 0 {
				sin, cos = math.Sincos(math.Pi * random.Float64())
			}
			var box [4][2]float64
			for k, c := range [4][2]float64{{-l, -b}, {l, -b}, {l, b}, {-l, b}} {
				box[k] = [2]float64{math.Round(x + cos*c[0] - sin*c[1]), math.Round(y + sin*c[0] + cos*c[1])}
			}
			v.Boxes = append(v.Boxes, box)
		}
		all = append(all, v)
	}
	return all
}

func (c crowded) van() *van {
	v := in(high).person("a", 1700).put(fit.Fitting{ID: "goal", Rests: true}, box(c.Goal[0], c.Goal[1], c.Goal[2], c.Goal[3], 40, 500))
	for k := range c.Boxes {
		v.put(fit.Fitting{ID: fmt.Sprint("box", k)}, solid.Bounds{})
	}
	v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "goal"})
	for k, b := range c.Boxes {
		p := solid.Prism{Low: 40, High: 900}
		for _, at := range b {
			p.Outline = append(p.Outline, solid.Point{X: at[0], Y: at[1]})
		}
		v.in.Modes[0].Standings[k+1] = fit.Standing{Solid: solid.Solid{p}, Box: p.Bounds()}
	}
	v.in.Openings = []fit.Opening{{ID: "side", Through: "left", X: c.Door, Z: [2]float64{0, 1600}, Door: true}}
	return v
}

// Shapely shrinks the free floor by half a width and asks whether the door and the fitting are still joined, halving the doubt until it
// is below 0.05 mm.
func TestShapelyFindsTheSameWidestWays(t *testing.T) {
	var text bytes.Buffer
	vans := crowdedVans()
	for k, v := range vans {
		line, err := json.Marshal(v)
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&text, "%s%s", map[bool]string{true: "[", false: ",\n"}[k == 0], line)
	}
	text.WriteString("]\n")
	golden.Equal(t, "testdata/crowded.json", text.Bytes())
	var want []float64
	oracle.Decode(t, oracle.Python, "testdata/crowded.py", &want, "testdata/crowded.json")
	passed, near, over, under := 0, 0, 0.0, 0.0
	for k, v := range vans {
		got := figure(t, fit.Work(v.van().in), "fit.walkway").Value
		if want[k] > 0 {
			passed++
		}
		if math.Abs(got-want[k]) <= 1 {
			near++
		}
		over, under = max(over, got-want[k]), max(under, want[k]-got)
	}
	if passed < 30 {
		t.Errorf("in only %d of %d vans is there a way: not a fair sample", passed, len(vans))
	}
	source, inputs := "shapely 1.8, testdata/crowded.py", "60 seeded vans of 3 to 6 boxes, testdata/crowded.json"
	// Of two ways that differ by less than a cell and a half the grid may take the narrower.
	proof.Check(t, proof.Case{Name: "most by which the widest way comes out too wide", Source: source, Inputs: inputs, Got: over, Tolerance: 1, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "most by which it comes out too narrow", Source: source, Inputs: inputs, Got: under, Tolerance: 1.5 * 25, Unit: "mm"})
	proof.Check(t, proof.Case{Name: "vans of 60 in which it is right to 1 mm", Source: source, Inputs: inputs, Expected: 60, Got: float64(near), Tolerance: 6, Unit: "1"})
}

// Known closed shapes: what a round body passes between posts, corners and walls is plain geometry.
func TestTheWidestWayThroughKnownShapes(t *testing.T) {
	goal := box(2300, 2700, -800, 800, 40, 500)
	through := func(boxes ...solid.Bounds) fit.Inputs {
		v := in(high).person("a", 1700).put(fit.Fitting{ID: "goal", Rests: true}, goal)
		for k, b := range boxes {
			v.put(fit.Fitting{ID: fmt.Sprint("box", k)}, b)
		}
		v.mode("day", nil, fit.Pose{Person: "a", Does: "sits", At: "goal"})
		v.in.Openings = []fit.Opening{{ID: "side", Through: "left", X: [2]float64{100, 900}, Z: [2]float64{0, 1600}, Door: true}}
		return v.in
	}
	for _, c := range []struct {
		name  string
		in    fit.Inputs
		width float64
	}{
		{"only the door is narrow", through(), 800},
		{"a straight gap between two boxes", through(box(1200, 1600, -900, -107, 40, 900), box(1200, 1600, 326, 900, 40, 900)), 433},
		{"two corners set off from one another: the slant between them", through(box(1200, 1300, -900, 0, 40, 900), box(1600, 1700, 400, 900, 40, 900), box(1600, 1700, -900, -500, 40, 900)), 500},
		{"swerving round a box that a straight look would call shut", through(box(1200, 1300, -900, 300, 40, 900), box(1800, 1900, -300, 900, 40, 900)), 500},
		{"no way", through(box(1200, 1300, -900, 900, 40, 900)), 0},
		{"what is above shoulders or below the knee is no matter", through(box(1200, 1300, -900, 900, 1500, 1600), box(1400, 1500, -900, 900, 40, 130)), 800},
	} {
		proof.Check(t, proof.Case{Name: "widest way: " + c.name, Source: "plain geometry: distances of edges and corners", Inputs: "flat room of 2900 by 1800, side door of 800",
			Expected: c.width, Got: figure(t, fit.Work(c.in), "fit.walkway").Value, Tolerance: 0.5, Unit: "mm"})
	}
}

// The distance transform against scipy's, cell by cell.
func TestDistancesAreScipys(t *testing.T) {
	r := fit.Work(crowdedVans()[0].van().in)
	f := r.Floors[0]
	var text bytes.Buffer
	fmt.Fprintf(&text, "%d %d\n", f.NX, f.NY)
	for c, free := range f.Free {
		text.WriteString(map[bool]string{true: ".", false: "#"}[free])
		if c%f.NY == f.NY-1 {
			text.WriteString("\n")
		}
	}
	golden.Equal(t, "testdata/floor.txt", text.Bytes())
	var want []float64
	oracle.Decode(t, oracle.Python, "testdata/floor.py", &want, "testdata/floor.txt")
	worst := 0.0
	for c, d := range f.Clearance {
		worst = max(worst, math.Abs(float64(d)-min(1600, want[c])))
	}
	proof.Check(t, proof.Case{Name: "greatest difference in squared distance over a floor", Source: "scipy 1.10, ndimage.distance_transform_edt, testdata/floor.py", Inputs: "testdata/floor.txt, up to 40 cells",
		Got: worst, Tolerance: 0, Unit: "1"})
}
