package solid_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/solve/solid"
)

func TestRoundOutlinesKeepTheirSideAndTolerance(t *testing.T) {
	middle := solid.Point{X: 300, Y: -40}
	for _, radius := range []float64{1, 60, 150, 900} {
		for _, tolerance := range []float64{0.1, 2, 10, 2000} {
			bowl := solid.Circle(middle, radius, tolerance, solid.Within)
			about := solid.Circle(middle, radius, tolerance, solid.Outside)
			for _, outline := range [][]solid.Point{bowl, about} {
				if !(solid.Prism{Outline: outline}).IsConvex() || len(outline) < 6 {
					t.Fatalf("radius %g, tolerance %g: %v", radius, tolerance, outline)
				}
			}
			least, most := distances(middle, bowl)
			if math.Abs(most-radius) > 1e-9 || least < radius-tolerance-1e-9 {
				t.Errorf("within radius %g, tolerance %g: from %g to %g", radius, tolerance, least, most)
			}
			least, most = distances(middle, about)
			if math.Abs(least-radius) > 1e-9 || most > radius+tolerance+1e-9 {
				t.Errorf("outside radius %g, tolerance %g: from %g to %g", radius, tolerance, least, most)
			}
		}
	}
}

// distances are the least and the greatest distance of an outline from its middle.
func distances(middle solid.Point, outline []solid.Point) (least, most float64) {
	least = math.Inf(1)
	last := outline[len(outline)-1]
	for _, p := range outline {
		half := solid.Point{X: (p.X + last.X) / 2, Y: (p.Y + last.Y) / 2}
		least = min(least, math.Hypot(half.X-middle.X, half.Y-middle.Y))
		most = max(most, math.Hypot(p.X-middle.X, p.Y-middle.Y))
		last = p
	}
	return least, most
}

func TestArcsBeginAndEndOnTheCircle(t *testing.T) {
	for _, lies := range []solid.Lies{solid.Within, solid.Outside} {
		chain := solid.Arc(solid.Point{}, 100, math.Pi/2, -math.Pi/2, 1, lies)
		if chain[0] != (solid.Point{X: 0, Y: 100}) || chain[len(chain)-1] != (solid.Point{X: 100, Y: 0}) {
			t.Errorf("%v: a quarter clockwise goes from %v to %v", lies, chain[0], chain[len(chain)-1])
		}
	}
	if n := len(solid.Circle(solid.Point{}, 100, 0, solid.Within)); n != 720 {
		t.Errorf("no tolerance gives %d edges, want the most, 720", n)
	}
	if n := len(solid.Circle(solid.Point{}, 0, 1, solid.Outside)); n != 6 {
		t.Errorf("no radius gives %d corners, want 6", n)
	}
}

// A sink with a bowl of 180 mm radius, flattened to 2 mm: the chords' sagitta r(1 - cos(s/2)) allows steps of 17.1 degrees.
func ExampleCircle() {
	bowl := solid.Circle(solid.Point{X: 250, Y: 200}, 180, 2, solid.Within)
	fmt.Println(len(bowl), "edges")
	// Output: 22 edges
}
