package label_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/label"
)

// random makes labels about random places of an A3 sheet whose boxes together cover a share of
// the free area, with a few obstacles among them.
func random(seed uint64, share float64) label.Problem {
	r := rand.New(rand.NewPCG(seed, 7))
	p := label.Problem{Bounds: draw.A3.Rect().Inset(10), Gap: 1}
	free := p.Bounds.Width() * p.Bounds.Height()
	for range r.IntN(6) {
		o := draw.Box(20+r.Float64()*300, 20+r.Float64()*200, 20+r.Float64()*60, 15+r.Float64()*40)
		p.Obstacles = append(p.Obstacles, o)
		free -= (o.Width() + 2) * (o.Height() + 2)
	}
	n := 5 + r.IntN(36)
	crowd := r.Float64() // places all over the sheet, or all in one corner
	covered := 0.0
	for range n {
		l := label.Label{
			Place: draw.Pt(15+r.Float64()*390*crowd, 15+r.Float64()*267*crowd),
			Width: 8 + r.Float64()*40, Height: 4 + r.Float64()*10,
		}
		if covered += (l.Width + 1) * (l.Height + 1); covered > share*free {
			break
		}
		p.Labels = append(p.Labels, l)
	}
	return p
}

func checkSound(t *testing.T, name string, p label.Problem, got []label.Placed) {
	t.Helper()
	for i, a := range got {
		l := p.Labels[i]
		if !a.Fits {
			t.Errorf("%s: no room found for label %d of %d", name, i, len(got))
		}
		if w, h := a.Box.Width(), a.Box.Height(); w < l.Width-1e-9 || w > l.Width+1e-9 || h < l.Height-1e-9 || h > l.Height+1e-9 {
			t.Errorf("%s: label %d changed its size to %g × %g", name, i, w, h)
		}
		if !a.Box.Inset(1e-6).Within(p.Bounds) {
			t.Errorf("%s: label %d lies at %v, outside %v", name, i, a.Box, p.Bounds)
		}
		for _, o := range p.Obstacles {
			if a.Box.Overlaps(o) {
				t.Errorf("%s: label %d covers an obstacle", name, i)
			}
		}
		for j, b := range got[:i] {
			if a.Box.Inset(-p.Gap + 1e-6).Overlaps(b.Box) {
				t.Errorf("%s: labels %d and %d overlap or lie closer than the gap", name, j, i)
			}
		}
		if n := len(a.Leader); n != 0 && a.Leader[n-1] != l.Place {
			t.Errorf("%s: the leader of label %d does not end on its place", name, i)
		}
	}
}

func crossings(placed []label.Placed) int {
	n := 0
	for i, a := range placed {
		for _, b := range placed[:i] {
			if len(a.Leader) == 2 && len(b.Leader) == 2 && label.Cross(a.Leader[0], a.Leader[1], b.Leader[0], b.Leader[1]) {
				n++
			}
		}
	}
	return n
}

func TestLabelsNeverOverlapWhileThereIsRoom(t *testing.T) {
	for seed := range uint64(60) {
		p := random(seed, 0.45)
		checkSound(t, fmt.Sprint("seed ", seed), p, label.Place(p))
	}
}

func TestFortyLabelsInACornerStillFindRoom(t *testing.T) {
	p := label.Problem{Bounds: draw.Box(0, 0, 100, 100), Gap: 1}
	for i := range 40 { // 40 × 21 × 8 = 6 720 of about 10 000 mm²
		p.Labels = append(p.Labels, label.Label{Place: draw.Pt(5+float64(i%5), 5+float64(i/5)), Width: 20, Height: 7})
	}
	checkSound(t, "corner", p, label.Place(p))
}

func TestLeadersCrossSeldom(t *testing.T) {
	crossed, leaders := 0, 0
	for seed := range uint64(40) {
		got := label.Place(random(seed, 0.2))
		crossed += crossings(got)
		for _, g := range got {
			if len(g.Leader) > 0 {
				leaders++
			}
		}
	}
	t.Logf("%d crossings of %d leaders", crossed, leaders)
	if crossed*50 > leaders {
		t.Errorf("%d crossings of %d leaders, want at most one in fifty", crossed, leaders)
	}
}

func TestFlagsAboutADrawingCrossNoLeaders(t *testing.T) {
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 8))
		plan := draw.Box(60, 60, 200, 90)
		p := label.Problem{Bounds: draw.A3.Rect().Inset(12), Gap: 1, Obstacles: []draw.Rect{plan}}
		for range 5 + r.IntN(11) {
			p.Labels = append(p.Labels, label.Label{Place: draw.Pt(60+r.Float64()*200, 60+r.Float64()*90),
				Width: draw.FlagSize, Height: draw.FlagSize, FromCentre: true, Reach: 3})
		}
		got := label.Place(p)
		checkSound(t, fmt.Sprint("seed ", seed), p, got)
		if n := crossings(got); n > 0 {
			t.Errorf("seed %d: %d leaders of %d flags cross", seed, n, len(got))
		}
	}
}

func TestALabelPrefersWhereItIsAskedToGo(t *testing.T) {
	p := label.Problem{Bounds: draw.A4.Rect(), Labels: []label.Label{
		{Place: draw.Pt(100, 100), Width: 20, Height: 5},
		{Place: draw.Pt(200, 100), Width: 20, Height: 5, Tries: []draw.Point{draw.Pt(200, 103)}},
		{Place: draw.Pt(50, 50), Width: 8, Height: 8, Reach: 6, FromCentre: true},
	}}
	got := label.Place(p)
	if c := got[0].Box.Centre(); c != draw.Pt(100, 100) || got[0].Leader != nil {
		t.Errorf("a free label lies at %v with leader %v, want it on its place without one", c, got[0].Leader)
	}
	if c := got[1].Box.Centre(); c.Distance(draw.Pt(200, 103)) > 1e-9 && c != draw.Pt(200, 100) {
		t.Errorf("a label with a wish lies at %v", c)
	}
	if len(got[2].Leader) != 2 || got[2].Box.Inset(-5.9).Holds(draw.Pt(50, 50)) && got[2].Box.Inset(-3).Holds(draw.Pt(50, 50)) {
		t.Errorf("a flag lies at %v, nearer than its reach", got[2].Box)
	}
}

func TestWhatCannotFitSaysSoAndStaysOnTheSheet(t *testing.T) {
	p := label.Problem{Bounds: draw.Box(0, 0, 30, 30), Labels: []label.Label{
		{Place: draw.Pt(28, 28), Width: 25, Height: 25}, {Place: draw.Pt(15, 15), Width: 25, Height: 25},
	}}
	got := label.Place(p)
	if got[0].Fits == got[1].Fits {
		t.Errorf("want exactly one of two to fit, got %+v", got)
	}
	for i, g := range got {
		if !g.Box.Within(p.Bounds) {
			t.Errorf("label %d lies at %v, outside the bounds", i, g.Box)
		}
	}
}

func TestTheSameLabelsGoToTheSamePlaces(t *testing.T) {
	p := random(11, 0.4)
	if a, b := label.Place(p), label.Place(p); !reflect.DeepEqual(a, b) {
		t.Errorf("two runs differ:\n%v\n%v", a, b)
	}
}

func TestAColumnOfNotesKeepsApartWithinItsRoom(t *testing.T) {
	for seed := range uint64(200) {
		r := rand.New(rand.NewPCG(seed, 9))
		p := label.Problem{Bounds: draw.Box(340, 20, 60, 250)}
		for range 1 + r.IntN(15) {
			p.Labels = append(p.Labels, label.Label{Place: draw.Pt(60+r.Float64()*200, 30+r.Float64()*220), Width: 40, Height: 14})
		}
		got := label.Column(p.Labels, 370, 20, 270, 2)
		checkSound(t, fmt.Sprint("seed ", seed), p, got)
		for i, a := range got {
			for j, b := range got[:i] {
				if label.Cross(a.Box.Centre(), p.Labels[i].Place, b.Box.Centre(), p.Labels[j].Place) {
					t.Errorf("seed %d: leaders %d and %d cross", seed, j, i)
				}
			}
		}
	}
}

func TestAColumnTooLongSaysWhatDoesNotFit(t *testing.T) {
	labels := make([]label.Label, 5)
	for i := range labels {
		labels[i] = label.Label{Place: draw.Pt(0, 50), Width: 10, Height: 30}
	}
	fit := 0
	for _, g := range label.Column(labels, 100, 0, 100, 0) {
		if g.Fits {
			fit++
		}
	}
	if fit != 3 {
		t.Errorf("%d of five notes of 30 mm fit into 100 mm, want 3", fit)
	}
}

func ExamplePlace() {
	name := draw.Lettering{Text: "cool box", Size: draw.SizeSmall}
	placed := label.Place(label.Problem{
		Bounds:    draw.A4.Rect(),
		Obstacles: []draw.Rect{draw.Box(40, 40, 30, 20)},
		Labels:    []label.Label{{Place: draw.Pt(69, 50), Width: name.Bounds().Width(), Height: name.Bounds().Height()}},
	})
	fmt.Printf("centre %.0f, %.0f; fits %v\n", placed[0].Box.Centre().X, placed[0].Box.Centre().Y, placed[0].Fits)
	// Output: centre 77, 52; fits true
}

func BenchmarkFortyLabels(b *testing.B) {
	p := random(3, 0.45)
	for b.Loop() {
		label.Place(p)
	}
}
