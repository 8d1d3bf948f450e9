package draw_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sort"
	"testing"

	"tumblehome/draw"
)

func sheet(marks ...draw.Mark) draw.Scene {
	return draw.Scene{Size: draw.A3, Title: "test", Marks: marks}
}

func TestADimensionIsDrawnAfterTheStandard(t *testing.T) {
	got := sheet(draw.Dimension(draw.Pt(50, 100), draw.Pt(90, 100), draw.Horizontal, 120, "800").Marks()...).String()
	want := `sheet 420 × 297 mm "test"
  dimension M50 120 L90 120 M50 101.2 L50 121.5 M90 101.2 L90 121.5
  on ink-2 M50 120 L52.4 119.65 L52.4 120.35Z M90 120 L87.6 119.65 L87.6 120.35Z
  "800" 2.5 at 70,119.1 middle
`
	if got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
}

func TestNoDimensionStandsOnItsHead(t *testing.T) {
	for angle := 0.0; angle < 360; angle += 7.5 {
		from := draw.Pt(200, 150)
		to := draw.Pt(260, 150).Turn(from, angle)
		for _, m := range draw.Dimension(from, to, draw.Aligned, 8, "1 200").Marks() {
			if l, ok := m.(draw.Lettering); ok && (l.Turn < -90.001 || l.Turn >= 90) {
				t.Errorf("towards %g° the text is turned by %g°", angle, l.Turn)
			}
		}
	}
}

func TestAVerticalDimensionIsReadFromTheRight(t *testing.T) {
	for _, m := range draw.Dimension(draw.Pt(50, 50), draw.Pt(50, 150), draw.Vertical, 40, "2 000").Marks() {
		if l, ok := m.(draw.Lettering); ok && (l.Turn != -90 || l.At.X >= 40) {
			t.Errorf("got %s, want it left of x = 40, turned -90", l)
		}
	}
}

func TestAShortPieceNeverLosesOrHidesItsFigure(t *testing.T) {
	for _, along := range []draw.Direction{draw.Horizontal, draw.Vertical, draw.Aligned} {
		for seed := range uint64(200) {
			r := rand.New(rand.NewPCG(seed, 1))
			at := 60 + r.Float64()*20
			c := draw.Chain{Along: along, At: 130}
			if along == draw.Aligned {
				c.At = 12
			}
			for i := range 2 + r.IntN(7) {
				p := draw.Pt(at, 140+r.Float64()*5)
				if along == draw.Vertical {
					p = draw.Pt(p.Y, p.X)
				}
				c.Stops = append(c.Stops, p)
				if i > 0 {
					c.Texts = append(c.Texts, fmt.Sprintf("%d", 5+r.IntN(3000)))
				}
				at += 0.5 + r.Float64()*r.Float64()*40
			}
			s := sheet(c.Marks()...)
			if flaws := s.Check(); flaws != nil {
				t.Fatalf("seed %d, direction %d: %v\n%s", seed, along, flaws, s)
			}
			if n := len(s.Letters()); n != len(c.Texts) {
				t.Fatalf("seed %d: %d figures for %d pieces", seed, n, len(c.Texts))
			}
		}
	}
}

func TestStopsMayComeInAnyOrder(t *testing.T) {
	a := draw.Chain{Stops: []draw.Point{{X: 10}, {X: 60}, {X: 90}}, Texts: []string{"left", "right"}, At: 20}
	b := draw.Chain{Stops: []draw.Point{{X: 90}, {X: 60}, {X: 10}}, Texts: []string{"right", "left"}, At: 20}
	if x, y := sheet(a.Marks()...).String(), sheet(b.Marks()...).String(); x != y {
		t.Errorf("got\n%swant\n%s", y, x)
	}
}

func TestAStackKeepsItsFiguresApartAndTheShortNear(t *testing.T) {
	for _, along := range []draw.Direction{draw.Horizontal, draw.Vertical} {
		for _, outward := range []bool{true, false} {
			for seed := range uint64(60) {
				r := rand.New(rand.NewPCG(seed, 2))
				var chains []draw.Chain
				for range 2 + r.IntN(5) {
					from, to := 80+r.Float64()*100, 80+r.Float64()*100
					p, q := draw.Pt(from, 150), draw.Pt(to, 150)
					if along == draw.Vertical {
						p, q = draw.Pt(150, from), draw.Pt(150, to)
					}
					chains = append(chains, draw.Dimension(p, q, along, 0, fmt.Sprintf("%.0f inside", math.Abs(to-from)*20)))
				}
				set, end := draw.Stack(150, outward, chains...)
				if (end > 150) != outward {
					t.Fatalf("the stack ends at %g, outward %v of 150", end, outward)
				}
				if flaws := sheet(draw.Dimensions(set...)...).Check(); flaws != nil {
					t.Fatalf("direction %d, outward %v, seed %d: %v", along, outward, seed, flaws)
				}
				for _, c := range set {
					b := c.Bounds()
					low, high := b.Min.Y, b.Max.Y
					if along == draw.Vertical {
						low, high = b.Min.X, b.Max.X
					}
					if outward && (low < 150 || high > end+0.01) || !outward && (high > 150.01 || low < end-0.01) {
						t.Fatalf("direction %d, outward %v, seed %d: line from %g to %g leaves the room between 150 and %g", along, outward, seed, low, high, end)
					}
				}
			}
		}
	}
}

func TestSpreadMovesAsLittleAsItMust(t *testing.T) {
	for _, c := range []struct {
		name            string
		at, width, want []float64
	}{
		{"what is apart stays", []float64{0, 10, 20}, []float64{5, 5, 5}, []float64{0, 10, 20}},
		{"two in one place part evenly", []float64{10, 10}, []float64{4, 4}, []float64{8, 12}},
		{"order of places is kept, not of mention", []float64{11, 10}, []float64{4, 4}, []float64{12.5, 8.5}},
		{"a pushed one pushes the next", []float64{0, 1, 5}, []float64{4, 4, 4}, []float64{-2, 2, 6}},
		{"nothing is nothing", nil, nil, []float64{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := draw.Spread(c.at, c.width)
			if fmt.Sprint(got) != fmt.Sprint(c.want) {
				t.Errorf("got %v, want %v", got, c.want)
			}
		})
	}
}

func TestSpreadNeverOverlaps(t *testing.T) {
	for seed := range uint64(300) {
		r := rand.New(rand.NewPCG(seed, 3))
		n := r.IntN(30)
		at, width := make([]float64, n), make([]float64, n)
		for i := range at {
			at[i], width[i] = r.Float64()*100, r.Float64()*20
		}
		got := draw.Spread(at, width)
		order := make([]int, n)
		for i := range order {
			order[i] = i
		}
		sort.Slice(order, func(a, b int) bool { return got[order[a]] < got[order[b]] })
		for k := 1; k < n; k++ {
			i, j := order[k-1], order[k]
			if got[j]-got[i] < (width[i]+width[j])/2-1e-9 || at[i] > at[j] {
				t.Fatalf("seed %d: %d and %d overlap or changed order", seed, i, j)
			}
		}
	}
}
