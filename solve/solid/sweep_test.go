package solid_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/solid"
)

// covers says whether a place is in the solid, or within a thousandth of it.
func covers(s solid.Solid, x, y, z float64) bool {
	at := box(x, x, y, y, z, z)
	for _, p := range s {
		if solid.Distance(at, p) < 1e-3 {
			return true
		}
	}
	return false
}

// within is a random place of a prism, as often as not on its upright faces.
func within(r *rand.Rand, p solid.Prism) (x, y, z float64) {
	mx, my, _ := p.Middle()
	i, f, g := r.IntN(len(p.Outline)), r.Float64(), min(1, 2*r.Float64())
	a, b := p.Outline[i], p.Outline[(i+1)%len(p.Outline)]
	return mx + g*(a.X+f*(b.X-a.X)-mx), my + g*(a.Y+f*(b.Y-a.Y)-my), p.Low + r.Float64()*(p.High-p.Low)
}

func TestSweepsHoldEveryPlaceOnTheWay(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 9))
	for i := range 120 {
		p := randomBody(r).prism()
		dx, dy, dz, share := 600*r.Float64()-300, 600*r.Float64()-300, float64(i%2)*200*(r.Float64()-0.5), r.Float64()
		slid := solid.Solid{p}.Slid(dx, dy, dz)
		pin, angle := solid.Point{X: 900*r.Float64() - 200, Y: 900*r.Float64() - 200}, 2*math.Pi*(2*r.Float64()-1)
		tolerance := 1 + 30*r.Float64()
		swung := solid.Solid{p}.Swung(pin, angle, tolerance)
		b := p.Bounds()
		e := solid.Edge{Along: i % 2, H: 900*r.Float64() - 200, Z: 400 * r.Float64(), Away: 1, Upward: float64(1 - 2*(i/2%2))}
		tipped := b.Tipped(e, angle, tolerance)
		for range 40 {
			x, y, z := within(r, p)
			if !covers(slid, x+share*dx, y+share*dy, z+share*dz) {
				t.Fatalf("body %d slid by %g %g %g is not covered at %g of the way", i, dx, dy, dz, share)
			}
			if at := (solid.Prism{Outline: []solid.Point{{X: x, Y: y}}}).Turned(pin, share*angle).Outline[0]; !covers(swung, at.X, at.Y, z) {
				t.Fatalf("body %d swung about %v by %g is not covered at %g of the way", i, pin, angle, share)
			}
			h, l := y, x
			if e.Along == 1 {
				h, l = x, y
			}
			sin, cos := math.Sincos(share * angle)
			u, v := h-e.H, (z-e.Z)*e.Upward
			h, z = e.H+u*cos-v*sin, e.Z+e.Upward*(u*sin+v*cos)
			if x, y = l, h; e.Along == 1 {
				x, y = h, l
			}
			if !covers(tipped, x, y, z) {
				t.Fatalf("box %d tipped about %+v by %g is not covered at %g of the way", i, e, angle, share)
			}
		}
		for _, s := range []solid.Solid{slid, swung} {
			for _, piece := range s {
				if !piece.IsConvex() {
					t.Fatalf("body %d: %v is no convex outline", i, piece.Outline)
				}
			}
		}
		for j, p := range tipped {
			for _, q := range tipped[j+1:] {
				if way, overlaps := solid.Overlap(p, q); overlaps && way.Depth > 1e-9 {
					t.Fatalf("box %d: slices of %+v overlap by %g", i, e, way.Depth)
				}
			}
		}
	}
}

func TestSweepsAreWhatTheyShouldBe(t *testing.T) {
	lid := solid.Bounds{MaxX: 400, MaxY: 600, MinZ: 700, MaxZ: 718}
	hinge := solid.Edge{Along: 0, H: 0, Z: 718, Away: 1, Upward: 1}
	plank := solid.Solid{box(0, 100, 0, 10, 0, 5)}
	tests := []struct {
		name      string
		s         solid.Solid
		want      solid.Bounds
		tolerance float64
		pieces    int // at most
	}{
		{"a slide along x is one longer box", plank.Slid(-50, 0, 0), solid.Bounds{MinX: -50, MaxX: 100, MaxY: 10, MaxZ: 5}, 0, 1},
		{"a lift is one higher box", plank.Slid(0, 0, 20), solid.Bounds{MaxX: 100, MaxY: 10, MaxZ: 25}, 0, 1},
		{"no slide is the thing itself", plank.Slid(0, 0, 0), plank.Bounds(), 0, 1},
		{"a quarter swing about a corner takes a quarter disc", plank.Swung(solid.Point{}, math.Pi/2, 1), solid.Bounds{MinX: -10, MaxX: 100.5, MaxY: 100.5, MaxZ: 5}, 1, 7},
		{"a full turn about its inside takes a disc", plank.Swung(solid.Point{X: 50, Y: 5}, 2*math.Pi, 1), solid.Bounds{MinX: -0.25, MinY: -45.25, MaxX: 100.25, MaxY: 55.25, MaxZ: 5}, 1, 1},
		{"a lid put up stands on its edge, exactly", lid.Tilted(hinge, math.Pi/2, 10), solid.Bounds{MaxX: 400, MinY: 0, MaxY: 18, MinZ: 718, MaxZ: 1318}, 0, 1},
		{"a lid tipped up takes a quarter disc", lid.Tipped(hinge, math.Pi/2, 10), solid.Bounds{MaxX: 400, MinY: 0, MaxY: math.Hypot(600, 18), MinZ: 700, MaxZ: 1318}, 0.1, 33},
		{"a flap let down takes a quarter disc below", lid.Tipped(solid.Edge{H: 0, Z: 700, Away: 1, Upward: 1}, -math.Pi/2, 10), solid.Bounds{MaxX: 400, MinY: 0, MaxY: math.Hypot(600, 18), MinZ: 100, MaxZ: 718}, 0.1, 33},
		{"a tilt of nothing is the box", lid.Tilted(hinge, 0, 10), lid, 0, 1},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := tt.s.Bounds()
			off := math.Abs(got.MinX-tt.want.MinX) + math.Abs(got.MinY-tt.want.MinY) + math.Abs(got.MinZ-tt.want.MinZ) +
				math.Abs(got.MaxX-tt.want.MaxX) + math.Abs(got.MaxY-tt.want.MaxY) + math.Abs(got.MaxZ-tt.want.MaxZ)
			if off > 2*tt.tolerance+1e-9 || len(tt.s) > tt.pieces {
				t.Errorf("%d pieces within %+v, want at most %d within %+v", len(tt.s), got, tt.pieces, tt.want)
			}
		})
	}
	if got := (solid.Bounds{}).Tipped(hinge, 1, 10); got != nil {
		t.Errorf("a box without inside takes up %v", got)
	}
}

func TestATiltedLidIsCutIntoUprightSlices(t *testing.T) {
	lid := solid.Bounds{MaxX: 400, MaxY: 600, MinZ: 700, MaxZ: 718}
	got := lid.Tilted(solid.Edge{Z: 718, Away: 1, Upward: 1}, math.Pi/6, 10)
	if len(got) != 32 || math.Abs(got.Volume()/(400*600*18)-1) > 0.02 {
		t.Errorf("%d slices, %g mm3, want 32 with the lid's volume", len(got), got.Volume())
	}
}

// FuzzSweeps: whatever the sizes, a sweep ends, has finite places and convex outlines, and holds the thing at rest.
func FuzzSweeps(f *testing.F) {
	f.Add(600.0, 18.0, 0.0, 18.0, 1.57, 10.0)
	f.Add(600.0, 300.0, 300.0, 150.0, -6.3, 0.0)
	f.Add(1e-6, 1e6, -50.0, 1e-9, 3.14159265358979, math.NaN())
	f.Add(100.0, 100.0, 50.0, 50.0, math.Inf(1), math.Inf(1))
	f.Add(math.Inf(1), 100.0, 50.0, 50.0, math.NaN(), -3.0)
	f.Fuzz(func(t *testing.T, wide, high, h, z, angle, tolerance float64) {
		b := solid.Bounds{MaxX: wide, MaxY: wide, MaxZ: high}
		e := solid.Edge{H: h, Z: z, Away: 1, Upward: -1}
		tipped, tilted := b.Tipped(e, angle, tolerance), b.Tilted(e, angle, tolerance)
		if far := max(math.Abs(wide), math.Abs(high), math.Abs(h), math.Abs(z)); b.Empty() || !(far < 1e7) || min(wide, high) < 1e-3 {
			return
		}
		swung := solid.Solid{solid.Box(b)}.Swung(solid.Point{X: h, Y: z}, angle, tolerance)
		for _, s := range []solid.Solid{tipped, swung, tilted} {
			for _, p := range s {
				if sum := p.Volume(); math.IsNaN(sum) || math.IsInf(sum, 0) {
					t.Errorf("piece %v has the volume %g", p, sum)
				}
			}
		}
		for _, s := range []solid.Solid{tipped, swung} {
			if got := s.Bounds(); got.MinX > 1e-3 || got.MaxX < wide-1e-3 || got.MinZ > 1e-3 || got.MaxZ < high-1e-3 {
				t.Errorf("%d pieces within %+v do not hold %+v", len(s), got, b)
			}
		}
	})
}

func BenchmarkTipped(b *testing.B) {
	lid := solid.Bounds{MaxX: 400, MaxY: 600, MinZ: 700, MaxZ: 718}
	for b.Loop() {
		lid.Tipped(solid.Edge{Z: 718, Away: 1, Upward: 1}, math.Pi/2, 10)
	}
}

func BenchmarkSwung(b *testing.B) {
	door := solid.Solid{box(0, 600, 0, 18, 0, 700)}
	for b.Loop() {
		door.Swung(solid.Point{}, math.Pi/2, 10)
	}
}

func ExampleSolid_Swung() {
	door := solid.Solid{solid.Box(solid.Bounds{MaxX: 600, MaxY: 18, MaxZ: 700})}
	sweep := door.Swung(solid.Point{}, math.Pi/2, 10)
	locker := solid.Solid{solid.Box(solid.Bounds{MinX: 480, MaxX: 900, MinY: 480, MaxY: 900, MaxZ: 700})}
	fmt.Printf("%d prisms; %.0f from the locker\n", len(sweep), sweep.Distance(locker))
	// Output: 5 prisms; 71 from the locker
}

func ExampleBounds_Tipped() {
	lid := solid.Bounds{MaxX: 400, MaxY: 600, MinZ: 700, MaxZ: 718}
	hinge := solid.Edge{Along: 0, H: 0, Z: 718, Away: 1, Upward: 1} // along x, at the lid's left upper edge; the far end goes up
	sweep := lid.Tipped(hinge, math.Pi/2, 20)
	shelf := solid.Solid{solid.Box(solid.Bounds{MaxX: 400, MinY: 300, MaxY: 600, MinZ: 1100, MaxZ: 1118})}
	_, strikes := sweep.Deepest(shelf)
	fmt.Println(len(sweep), "slices; strikes the shelf:", strikes)
	// Output: 17 slices; strikes the shelf: true
}
