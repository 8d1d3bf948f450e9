package draw_test

import (
	"math"
	"testing"

	"tumblehome/draw"
)

// inkLength is how much line a path draws.
func inkLength(p draw.Path) float64 {
	sum := 0.0
	for _, run := range p.Flatten(0.01) {
		for i := 1; i < len(run); i++ {
			sum += run[i].Distance(run[i-1])
		}
	}
	return sum
}

// Cavalieri: parallel lines a spacing apart have together the length area / spacing.
func TestHatchLinesAreAsLongAsTheAreaAsks(t *testing.T) {
	ring := draw.Circle(draw.Pt(100, 100), 40).And(draw.Circle(draw.Pt(110, 95), 15))
	slot := draw.Polygon(draw.Pt(20, 20), draw.Pt(120, 30), draw.Pt(90, 140), draw.Pt(60, 50), draw.Pt(30, 130))
	for _, c := range []struct {
		name    string
		area    draw.Path
		hatch   draw.Hatching
		spacing float64
		want    float64
	}{
		{"a square at 45°", draw.Rectangle(draw.Box(10, 10, 60, 60)), draw.HatchRising, 1, 3600},
		{"a disc with a hole, falling", ring, draw.HatchFalling, 0.5, math.Pi * (1600 - 225) / 0.5},
		{"a disc with a hole, crossed", ring, draw.HatchCross, 1, 2 * math.Pi * (1600 - 225)},
		{"a disc with a hole, wood", ring, draw.HatchGrain, 1, math.Pi * (1600 - 225)},
		// Each zig climbs 0.6 of a spacing in half a spacing of length: √(1 + 1.2²) of the way along.
		{"a square of insulation", draw.Rectangle(draw.Box(10, 10, 60, 60)), draw.HatchZigzag, 2, 3600 / 2 * math.Sqrt(1+1.44)},
		{"a shape with a bay", slot, draw.HatchRising, 0.5, shoelace(slot) / 0.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := inkLength(draw.Hatch(c.area, c.hatch, c.spacing).Path)
			if math.Abs(got-c.want) > 0.02*c.want {
				t.Errorf("%.0f mm of line, want %.0f ± 2 %%", got, c.want)
			}
		})
	}
}

func shoelace(p draw.Path) float64 {
	run := p.Flatten(0.01)[0]
	sum := 0.0
	for i := 1; i < len(run); i++ {
		sum += run[i-1].Cross(run[i])
	}
	return math.Abs(sum) / 2
}

func TestAHatchOfNothingIsNothing(t *testing.T) {
	for _, p := range []draw.Path{{}, draw.Line(draw.Pt(0, 0), draw.Pt(5, 5)), draw.Rectangle(draw.Box(0, 0, math.Inf(1), 3)), draw.Rectangle(draw.Box(math.NaN(), 0, 1, 3))} {
		if got := draw.Hatch(p, draw.HatchRising, 0); !got.Path.Empty() && inkLength(got.Path) > 0.1 {
			t.Errorf("hatch of %s draws %s", p, got)
		}
	}
}

func TestAQuiltTouchesBothFacesInTurn(t *testing.T) {
	outer := []draw.Point{{X: 0, Y: 0}, {X: 30, Y: 0}}
	inner := []draw.Point{{X: 0, Y: 2}, {X: 30, Y: 2}}
	got := draw.Quilt(outer, inner, 10).Path.String()
	if want := "M0 0 L5 2 L10 0 L15 2 L20 0 L25 2 L30 0"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
