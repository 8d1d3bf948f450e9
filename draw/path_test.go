package draw_test

import (
	"math"
	"testing"

	"tumblehome/draw"
)

func TestPathsReadAsPathData(t *testing.T) {
	for _, c := range []struct {
		name string
		path draw.Path
		want string
	}{
		{"nothing is nothing", draw.Path{}, ""},
		{"a line", draw.Line(draw.Pt(1, 2), draw.Pt(3.005, -0.001)), "M1 2 L3.01 0"},
		{"a rectangle goes clockwise", draw.Rectangle(draw.Box(0, 0, 2, 1)), "M0 0 L2 0 L2 1 L0 1Z"},
		{"a circle is two arcs", draw.Circle(draw.Pt(5, 5), 2), "M3 5 A2 2 0 0 1 7 5 A2 2 0 0 1 3 5Z"},
		{"corners are rounded by no more than half the side", draw.Rounded(draw.Box(0, 0, 4, 2), 9),
			"M1 0 L3 0 A1 1 0 0 1 4 1 L4 1 A1 1 0 0 1 3 2 L1 2 A1 1 0 0 1 0 1 L0 1 A1 1 0 0 1 1 0Z"},
		{"a long arc says so", draw.ArcOf(draw.Pt(0, 0), 1, 0, 270), "M1 0 A1 1 0 1 1 0 -1"},
		{"an arc may turn left", draw.ArcOf(draw.Pt(0, 0), 1, 0, -90), "M1 0 A1 1 0 0 0 0 -1"},
		{"what is no number is written as nought", draw.Line(draw.Pt(math.NaN(), 1), draw.Pt(math.Inf(1), 1)), "M0 1 L0 1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := c.path.String(); got != c.want {
				t.Errorf("got %q, want %q", got, c.want)
			}
		})
	}
}

func TestArcsBecomeCurvesThatKeepTheirRadius(t *testing.T) {
	centre := draw.Pt(10, 20)
	for from := -350.0; from < 360; from += 35 {
		for sweep := -355.0; sweep < 360; sweep += 30 {
			for _, run := range draw.ArcOf(centre, 8, from, from+sweep).Flatten(0.001) {
				length := 0.0
				for i, p := range run {
					if d := p.Distance(centre); math.Abs(d-8) > 8*0.0003+0.001 {
						t.Fatalf("arc from %g by %g: %v is %g from the centre, want 8", from, sweep, p, d)
					}
					if i > 0 {
						length += p.Distance(run[i-1])
					}
				}
				if want := 8 * math.Abs(sweep) * math.Pi / 180; math.Abs(length-want) > 0.005*want {
					t.Fatalf("arc from %g by %g is %g long, want %g", from, sweep, length, want)
				}
			}
		}
	}
}

func TestFlatteningStaysWithinItsTolerance(t *testing.T) {
	// The middle of each chord of a circle lies r(1-cos(θ/2)) inside it.
	for _, tolerance := range []float64{0.5, 0.1, 0.01} {
		run := draw.Circle(draw.Pt(0, 0), 50).Flatten(tolerance)[0]
		for i := 1; i < len(run); i++ {
			if sag := 50 - run[i].Toward(run[i-1], 0.5).Length(); sag > tolerance+50*0.0003 {
				t.Errorf("tolerance %g: a chord lies %g off", tolerance, sag)
			}
		}
	}
}

func TestPathsGrownFromOneBeginningDoNotShareInk(t *testing.T) {
	stem := draw.From(draw.Pt(0, 0)).To(draw.Pt(1, 0))
	a, b := stem.To(draw.Pt(2, 0)), stem.To(draw.Pt(9, 9))
	if a.String() != "M0 0 L1 0 L2 0" || b.String() != "M0 0 L1 0 L9 9" {
		t.Errorf("got %q and %q", a, b)
	}
}

func TestBoundsHoldTheCurve(t *testing.T) {
	r := draw.Circle(draw.Pt(10, 10), 4).Bounds()
	for _, c := range []struct{ got, want float64 }{{r.Min.X, 6}, {r.Min.Y, 6}, {r.Max.X, 14}, {r.Max.Y, 14}} {
		if math.Abs(c.got-c.want) > 0.05 {
			t.Errorf("bounds %v, want 6 to 14 each way", r)
		}
	}
}
