package solid_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/solid"
)

func TestPiecesOfOutlines(t *testing.T) {
	tests := []struct {
		name    string
		outline []solid.Point
		pieces  int // at most; 0 if it is refused
		area    float64
	}{
		{"a square is one piece", []solid.Point{{0, 0}, {2, 0}, {2, 2}, {0, 2}}, 1, 4},
		{"a square the other way round too", []solid.Point{{0, 0}, {0, 2}, {2, 2}, {2, 0}}, 1, 4},
		{"corners in a row and given twice are dropped", []solid.Point{{0, 0}, {1, 0}, {2, 0}, {2, 0}, {2, 2}, {0, 2}}, 1, 4},
		{"an ell is two", []solid.Point{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}, 2, 5},
		{"a tee is three", []solid.Point{{1, 0}, {2, 0}, {2, 2}, {3, 2}, {3, 3}, {0, 3}, {0, 2}, {1, 2}}, 3, 5},
		{"a comb of three teeth", []solid.Point{{0, 0}, {5, 0}, {5, 2}, {4, 2}, {4, 1}, {3, 1}, {3, 2}, {2, 2}, {2, 1}, {1, 1}, {1, 2}, {0, 2}}, 5, 8},
		{"a bow tie is refused", []solid.Point{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, 0, 0},
		{"an outline that touches itself is refused", []solid.Point{{0, 0}, {4, 0}, {4, 2}, {2, 0}, {0, 2}}, 0, 0},
		{"a line is refused", []solid.Point{{0, 0}, {1, 1}, {2, 2}, {3, 3}}, 0, 0},
		{"one point many times is refused", []solid.Point{{1, 1}, {1, 1}, {1, 1}, {1, 1}}, 0, 0},
		{"nothing is refused", nil, 0, 0},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, err := solid.Extruded(tt.outline, 0, 1)
			if (err != nil) != (tt.pieces == 0) || len(s) > tt.pieces {
				t.Fatalf("%d pieces, %v; want at most %d", len(s), err, tt.pieces)
			}
			if math.Abs(s.Volume()-tt.area) > 1e-12 {
				t.Errorf("area %g, want %g", s.Volume(), tt.area)
			}
		})
	}
}

// star is a simple outline about a place, with whole hundredths.
func star(r *rand.Rand, x, y, reach float64) []solid.Point {
	n := 5 + r.IntN(6)
	outline := make([]solid.Point, n)
	for i := range outline {
		sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.8*r.Float64()) / float64(n))
		far := reach * (0.25 + 0.75*r.Float64())
		outline[i] = solid.Point{X: round2(x + far*cos), Y: round2(y + far*sin)}
	}
	return outline
}

func TestPiecesFillTheOutlineWithoutOverlap(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	for range 200 {
		outline := star(r, 0, 0, 500)
		s, err := solid.Extruded(outline, 0, 1)
		if err != nil {
			t.Fatalf("%v: %v", outline, err)
		}
		if want := (solid.Prism{Outline: outline}).Area(); math.Abs(s.Volume()-want) > 1e-6 {
			t.Errorf("%v: pieces of %g, outline of %g", outline, s.Volume(), want)
		}
		for i, p := range s {
			if !p.IsConvex() {
				t.Errorf("%v: piece %v is not convex", outline, p.Outline)
			}
			for _, q := range s[i+1:] {
				if solid.SharedArea(p.Outline, q.Outline) > 1e-6 {
					t.Errorf("%v: pieces overlap", outline)
				}
			}
		}
	}
}

// FuzzPieces: whatever the points, pieces are convex and fill the outline, or the outline is refused.
func FuzzPieces(f *testing.F) {
	f.Add([]byte{0, 0, 4, 0, 4, 4, 0, 4})
	f.Add([]byte{0, 0, 3, 0, 3, 1, 1, 1, 1, 3, 0, 3})
	f.Add([]byte{0, 0, 2, 2, 2, 0, 0, 2, 0, 0})
	f.Add([]byte{5, 5, 5, 5, 9, 5, 9, 5, 9, 9})
	f.Fuzz(func(t *testing.T, text []byte) {
		var outline []solid.Point
		for i := 0; i+1 < min(len(text), 40); i += 2 {
			outline = append(outline, solid.Point{X: float64(text[i]), Y: float64(text[i+1])})
		}
		s, err := solid.Extruded(outline, 0, 1)
		if err != nil {
			return
		}
		if want := math.Abs((solid.Prism{Outline: outline}).Area()); math.Abs(s.Volume()-want) > 1e-9*want {
			t.Errorf("%v: pieces of %g, outline of %g", outline, s.Volume(), want)
		}
		sweep := s.Swung(solid.Point{X: 3, Y: 7}, 1, 0)
		for _, p := range append(s, sweep...) {
			if !p.IsConvex() {
				t.Errorf("%v: piece %v is not convex", outline, p.Outline)
			}
		}
		way := s.WayOut(s)
		if sum := way.X + way.Y + way.Z + way.Depth + s.Distance(sweep) + s.SharedVolume(s); math.IsNaN(sum) || math.IsInf(sum, 0) {
			t.Errorf("%v: way %v, distance %g, shared %g", outline, way, s.Distance(sweep), s.SharedVolume(s))
		}
	})
}

func ExamplePieces() {
	pieces, err := solid.Pieces([]solid.Point{{X: 0, Y: 0}, {X: 3, Y: 0}, {X: 3, Y: 1}, {X: 1, Y: 1}, {X: 1, Y: 3}, {X: 0, Y: 3}})
	fmt.Println(len(pieces), err)
	// Output: 2 <nil>
}
