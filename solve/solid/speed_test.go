package solid_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/solid"
)

// ring is 20 posts in a circle.
func ring(x, y, z float64) (s solid.Solid) {
	for i := range 20 {
		s = append(s, box(x+170, x+230, y-30, y+30, z, z+400).Turned(solid.Point{X: x, Y: y}, float64(i)*math.Pi/10))
	}
	return s
}

func TestUnionsAreComparedWithoutAllocation(t *testing.T) {
	a, b := ring(0, 0, 0), ring(300, 50, 100)
	if n := testing.AllocsPerRun(20, func() {
		a.Deepest(b)
		a.WayOut(b)
		a.Distance(b)
	}); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func TestMovingBothChangesNothing(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 2))
	for i := range 100 {
		a, b := solid.Solid{randomBody(r).prism(), randomBody(r).prism()}, solid.Solid{randomBody(r).prism()}
		dx, dy, dz, angle := 4000*r.Float64(), -3000*r.Float64(), 900*r.Float64(), 7*r.Float64()
		elsewhere := func(s solid.Solid) solid.Solid {
			return s.Moved(dx, dy, dz).Turned(solid.Point{X: 100, Y: 50}, angle)
		}
		c, d := elsewhere(a), elsewhere(b)
		deep, in := a.Deepest(b)
		turned, still := c.Deepest(d)
		back, both := b.Deepest(a)
		if in != still || in != both || math.Abs(deep.Depth-turned.Depth)+math.Abs(deep.Depth-back.Depth) > 1e-7 {
			t.Errorf("pair %d: %g deep, turned %g, the other way round %g", i, deep.Depth, turned.Depth, back.Depth)
		}
		sin, cos := math.Sincos(angle)
		for _, way := range [][3]float64{{1, 0, 0}, {0, -1, 0}, {0, 0, 1}, {0.6, 0.8, 0}} {
			far := a.Exit(b, way[0], way[1], way[2])
			same := c.Exit(d, cos*way[0]-sin*way[1], sin*way[0]+cos*way[1], way[2])
			back := b.Exit(a, -way[0], -way[1], -way[2])
			if math.Abs(far-same)+math.Abs(far-back) > 1e-6 {
				t.Errorf("pair %d along %v: out after %g, turned %g, the other way round %g", i, way, far, same, back)
			}
			const more = 1e-6
			if _, in := a.Moved((far+more)*way[0], (far+more)*way[1], (far+more)*way[2]).Deepest(b); in {
				t.Errorf("pair %d along %v: not out after %g", i, way, far)
			}
		}
		if p, q := a.Distance(b), c.Distance(d); math.Abs(p-q) > 1e-7 || p != b.Distance(a) {
			t.Errorf("pair %d: %g apart, turned %g, the other way round %g", i, p, q, b.Distance(a))
		}
		if p, q := a.SharedVolume(b), c.SharedVolume(d); math.Abs(p-q) > 1e-3+1e-9*p || math.Abs(p-b.SharedVolume(a)) > 1e-3 {
			t.Errorf("pair %d: %g shared, turned %g, the other way round %g", i, p, q, b.SharedVolume(a))
		}
		if axis := a.WayOut(b); (axis.Depth > 0) != in {
			t.Errorf("pair %d: way along an axis %+v, overlap %v", i, axis, in)
		}
	}
}

func BenchmarkDeepest(b *testing.B) {
	one, other := ring(0, 0, 0), ring(300, 50, 100)
	for b.Loop() {
		one.Deepest(other)
	}
}

func BenchmarkWayOut(b *testing.B) {
	one, other := ring(0, 0, 0), ring(300, 50, 100)
	for b.Loop() {
		one.WayOut(other)
	}
}

func TestWhatIsAskedForManyIsWhatIsAskedForOne(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 21))
	met := 0
	for range 300 {
		a, b := solid.Solid{randomBody(r).prism(), randomBody(r).prism()}, solid.Solid{randomBody(r).prism(), randomBody(r).prism()}
		far := a.Exits(b)
		for i, d := range solid.Directions {
			if want := a.Exit(b, d[0], d[1], d[2]); far[i] != want {
				t.Fatalf("out along %v after %g, not %g", d, far[i], want)
			}
		}
		boxed := b.Boxed()
		way, in := a.Deepest(b)
		if got, gotIn := a.DeepestIn(boxed); got != way || gotIn != in || boxed.Bounds() != b.Bounds() {
			t.Fatalf("deepest %+v, not %+v", got, way)
		}
		if in {
			met++
		}
	}
	if met < 20 {
		t.Errorf("only %d met", met)
	}
}
