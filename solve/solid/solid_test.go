package solid_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/solve/solid"
)

func box(x0, x1, y0, y1, z0, z1 float64) solid.Prism {
	return solid.Box(solid.Bounds{MinX: x0, MinY: y0, MinZ: z0, MaxX: x1, MaxY: y1, MaxZ: z1})
}

func TestOverlapNamesTheShortestWayOut(t *testing.T) {
	a := box(0, 100, 0, 100, 0, 100)
	quarter := math.Pi / 4
	tests := []struct {
		name string
		b    solid.Prism
		want solid.Way
		ok   bool
	}{
		{"a box that meets the right end drives it left", box(90, 200, 0, 100, 0, 100), solid.Way{X: -1, Depth: 10}, true},
		{"a box before it drives it right", box(-50, 5, 0, 100, 0, 100), solid.Way{X: 1, Depth: 5}, true},
		{"a box on its far side drives it back", box(0, 100, 80, 200, 0, 100), solid.Way{Y: -1, Depth: 20}, true},
		{"a lid that sinks in drives it down", box(0, 100, 0, 100, 97, 200), solid.Way{Z: -1, Depth: 3}, true},
		{"a box it sinks into drives it up", box(0, 100, 0, 100, -50, 1), solid.Way{Z: 1, Depth: 1}, true},
		{"touching is not overlapping", box(100, 200, 0, 100, 0, 100), solid.Way{}, false},
		{"a box inside is left by the nearest face", box(70, 80, 40, 60, 40, 60), solid.Way{X: -1, Depth: 30}, true},
		{"a corner turned by 45 degrees meets the face with its point",
			box(90, 110, 40, 60, 0, 100).Turned(solid.Point{X: 100, Y: 50}, quarter), solid.Way{X: -1, Depth: 10 * math.Sqrt2}, true},
		{"a body without height overlaps nothing", box(10, 20, 10, 20, 50, 50), solid.Way{}, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, ok := solid.Overlap(a, tt.b)
			if ok != tt.ok || math.Abs(got.X-tt.want.X)+math.Abs(got.Y-tt.want.Y)+math.Abs(got.Z-tt.want.Z)+math.Abs(got.Depth-tt.want.Depth) > 1e-9 {
				t.Errorf("got %+v %v, want %+v %v", got, ok, tt.want, tt.ok)
			}
		})
	}
}

func TestTheWayOutPassesEveryPieceOnIt(t *testing.T) {
	comb := solid.Solid{box(0, 10, 0, 500, 0, 10), box(20, 30, 0, 500, 0, 10), box(40, 50, 0, 500, 0, 10)}
	tooth := solid.Solid{box(8, 19, 245, 255, 0, 400)}
	// Rearwards the tooth (11 wide) fits into no gap of 10, so it must pass the last piece.
	if got := tooth.Exit(comb, 1, 0, 0); math.Abs(got-42) > 1e-6 {
		t.Errorf("rearwards out of the comb: %g, want 42", got)
	}
	if got := tooth.WayOut(comb); got != (solid.Way{Z: 1, Depth: 10}) {
		t.Errorf("way out %+v, want up by 10", got)
	}
	if got := tooth.Exit(comb, 0, 0, 0); got < 0 {
		t.Errorf("no direction: %g", got)
	}
}

func TestVolumeAndMiddleOfAnEll(t *testing.T) {
	ell := solid.Solid{box(0, 2, 0, 1, 0, 1), box(0, 1, 1, 3, 0, 1)}
	x, y, z := ell.Middle()
	if ell.Volume() != 4 || x != 0.75 || y != 1.25 || z != 0.5 {
		t.Errorf("volume %g, middle %g %g %g, want 4 at 0.75 1.25 0.5", ell.Volume(), x, y, z)
	}
	if got := ell.SharedVolume(solid.Solid{box(0.5, 3, 0.5, 3, -1, 0.5)}); math.Abs(got-(0.75+1)/2) > 1e-12 {
		t.Errorf("shared %g, want 0.875", got)
	}
	if got := ell.Distance(solid.Solid{box(4, 5, 0, 1, 2, 3)}); math.Abs(got-math.Sqrt(5)) > 1e-12 {
		t.Errorf("distance %g, want the diagonal of 2 by 1", got)
	}
}

func TestAQuarterTurnIsExact(t *testing.T) {
	got := box(0, 3, 0, 1, 0, 1).Turned(solid.Point{X: 1.5, Y: 0.5}, math.Pi/2).Bounds()
	if got != (solid.Bounds{MinX: 1, MinY: -1, MinZ: 0, MaxX: 2, MaxY: 2, MaxZ: 1}) {
		t.Errorf("turned bounds %+v", got)
	}
}

func TestIsConvexKnowsGoodOutlines(t *testing.T) {
	tests := []struct {
		name    string
		outline []solid.Point
		want    bool
	}{
		{"a square counter-clockwise is", []solid.Point{{0, 0}, {1, 0}, {1, 1}, {0, 1}}, true},
		{"a square clockwise is not", []solid.Point{{0, 0}, {0, 1}, {1, 1}, {1, 0}}, false},
		{"an arrowhead is not", []solid.Point{{0, 0}, {2, 1}, {0, 2}, {1, 1}}, false},
		{"a star that goes round twice is not", []solid.Point{{1, 0}, {-0.81, 0.59}, {0.31, -0.95}, {0.31, 0.95}, {-0.81, -0.59}}, false},
		{"two points are not", []solid.Point{{0, 0}, {1, 0}}, false},
	}
	for _, tt := range tests {
		if got := (solid.Prism{Outline: tt.outline, High: 1}).IsConvex(); got != tt.want {
			t.Errorf("%s: got %v", tt.name, got)
		}
	}
}

func TestHotPathsDoNotAllocate(t *testing.T) {
	a := box(0, 100, 0, 100, 0, 100).Turned(solid.Point{X: 50, Y: 50}, 0.3)
	b := box(80, 180, 20, 120, 50, 150).Turned(solid.Point{X: 130, Y: 70}, 0.7)
	c := a.Moved(400, 0, 0)
	room := hut{lean: 0.1}
	if n := testing.AllocsPerRun(50, func() {
		solid.Overlap(a, b)
		solid.SharedVolume(a, b)
		solid.Distance(a, c)
		solid.Exit(a, b, 1, 0, 0)
		a.ExcessAt(&room, solid.Right, 50)
	}); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func BenchmarkOverlap(b *testing.B) {
	p := box(0, 100, 0, 100, 0, 100).Turned(solid.Point{X: 50, Y: 50}, 0.3)
	q := box(80, 180, 20, 120, 50, 150).Turned(solid.Point{X: 130, Y: 70}, 0.7)
	for b.Loop() {
		solid.Overlap(p, q)
	}
}

func ExampleOverlap() {
	locker := solid.Box(solid.Bounds{MaxX: 400, MaxY: 300, MaxZ: 900})
	shelf := solid.Box(solid.Bounds{MinX: 380, MaxX: 900, MaxY: 300, MinZ: 500, MaxZ: 520})
	way, overlaps := solid.Overlap(locker, shelf)
	fmt.Println(overlaps, "go", way.Depth, "along x", way.X)
	// Output: true go 20 along x -1
}
