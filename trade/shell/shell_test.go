package shell_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/trade/shell"
)

func Example() {
	r := shell.Work(dipper())
	for _, f := range r.Figures {
		fmt.Printf("%s: %.4g %s\n", f.Label, f.Value, f.Unit)
	}
	for _, bay := range r.Body.Bays(shell.Roof)[1:3] {
		fmt.Printf("%s: x %.0f to %.0f, %.2f m2, bow %.0f deep\n", bay.ID, bay.From, bay.To, bay.Net, bay.Depth)
	}
	// Output:
	// Bare length inside: 2950 mm
	// Bare width between the skins at its widest: 1878 mm
	// Bare height in the middle: 1784 mm
	// Bare floor between the wheel arches and skins: 4.927 m2
	// Bare room inside: 9.134 m3
	// roof-2: x 420 to 960, 0.84 m2, bow 32 deep
	// roof-3: x 960 to 1500, 0.68 m2, bow 32 deep
}

// A box van, 3000 by 1800 by 1700, with one arch, one door, a window in it and a fan: all by hand.
func box() shell.Inputs {
	level := []quantity.Length{900, 900, 900}
	return shell.Inputs{
		Table: table(0, []quantity.Length{0, 800, 1700}, row{"a", 0, level, 1700}, row{"b", 1500, level, 1700}, row{"c", 3000, level, 1700}),
		Ribs: []shell.Rib{{ID: "front-post", X: 100, On: sides, Depth: 60, Flange: 40}, {ID: "middle", X: 1400, On: sides, Depth: 40},
			{ID: "bow", X: 1000, On: roof, Depth: 30, Flange: 60}},
		Arches: []shell.Arch{{ID: "arch", On: sides, From: 2000, To: 2700, Inward: 200, Up: 300}},
		Openings: []shell.Opening{
			{ID: "door", Through: "right", X: span(200, 1200), Z: span(0, 1500), Door: "sliding", Glazed: 0.1},
			{ID: "pane", Through: "right", X: span(300, 800), Z: span(900, 1300), In: "door"},
			{ID: "fan", Through: "roof", X: span(1600, 2000), Y: span(-200, 200)},
			{ID: "rear", Through: "rear", Y: span(-800, 800), Z: span(0, 1500), Door: "two leaves"},
		},
	}
}

func TestABoxVanByHand(t *testing.T) {
	b := shell.Work(box()).Body
	for _, c := range []struct {
		name      string
		got, want float64
		unit      string
	}{
		{"volume less two arches", b.Volume(), 3*1.8*1.7 - 2*0.7*0.2*0.3, "m3"},
		{"floor less two arches", b.Areas(shell.Floor).Net, 3*1.8 - 2*0.7*0.2, "m2"},
		{"left side less the arch", b.Areas(shell.Left).Net, 3*1.7 - 0.7*0.3, "m2"},
		{"right side less arch and door, the pane in it not twice", b.Areas(shell.Right).Net, 3*1.7 - 0.7*0.3 - 1.5, "m2"},
		{"rear less its doors", b.Areas(shell.Rear).Net, 1.8*1.7 - 1.6*1.5, "m2"},
		{"front", b.Areas(shell.Front).Net, 1.8 * 1.7, "m2"},
		{"girth", b.Girth(700), 1800 + 2*1700, "mm"},
		{"inside of an arch", firstArch(b), 0.7*0.3 + 0.7*0.2 + 2*0.2*0.3, "m2"},
		{"door less its glass and the pane", b.Doors()[0].Net, 1.5 - 0.1 - 0.2, "m2"},
		{"rear doors", b.Doors()[1].Net, 2.4, "m2"},
	} {
		proof.Check(t, proof.Case{Name: "box van: " + c.name, Source: "by hand, sides of a box", Inputs: "box() in shell_test.go", Got: c.got, Expected: c.want, Tolerance: 1e-6, Unit: c.unit})
	}
	if roof := b.Areas(shell.Roof); roof.Gross != 3*1.8 && math.Abs(roof.Gross-5.4) > 1e-6 {
		t.Errorf("a flat roof at the eaves is the lid of the box: got %+v", roof)
	}
}

func firstArch(b *shell.Body) float64 {
	m2, _ := b.ArchArea(b.Arches()[0])
	return m2
}

func TestCentresOfABoxVanByHand(t *testing.T) {
	b := shell.Work(box()).Body
	// Right side from 2000 to 3000: 1.0 x 1.7 centred at 2500, 850, less 0.7 x 0.3 at 2350, 150.
	m2, at := b.Net(shell.Right, 2000, 3000, -1e6, 1e6)
	want := [3]float64{(1.7*2500 - 0.21*2350) / 1.49, 900, (1.7*850 - 0.21*150) / 1.49}
	if math.Abs(m2-1.49) > 1e-9 {
		t.Errorf("area: got %g, want 1.49", m2)
	}
	for k := range 3 {
		if math.Abs(at[k]-want[k]) > 1e-6 {
			t.Errorf("centre: got %v, want %v", at, want)
			break
		}
	}
	if _, left := b.Net(shell.Left, 2000, 3000, -1e6, 1e6); left[1] != -900 || math.Abs(left[0]-want[0]) > 1e-6 {
		t.Errorf("the left side mirrors the right: got %v", left)
	}
}

func TestBaysLieBetweenRibsAndShortEndsJoinTheirNeighbour(t *testing.T) {
	b := shell.Work(box()).Body
	bays := b.Bays(shell.Left)
	if len(bays) != 2 || bays[0].ID != "left-1" || bays[0].From != 0 || bays[0].To != 1400 || bays[1].To != 3000 {
		t.Fatalf("got %+v", bays)
	}
	if bays[0].Depth != 60 || bays[1].Depth != 40 {
		t.Errorf("a bay is as deep as its deepest rib: got %g and %g", bays[0].Depth, bays[1].Depth)
	}
	if bays[0].Steel != 40+25 {
		t.Errorf("the whole of the post and half of the rib at its end lie in the first bay: got %g mm of steel", bays[0].Steel)
	}
	if roof := b.Bays(shell.Roof); len(roof) != 2 || roof[0].To != 1000 {
		t.Errorf("got %+v", roof)
	}
	for _, surface := range []string{shell.Left, shell.Right, shell.Roof, shell.Floor, shell.Front, shell.Rear} {
		sum := 0.0
		for _, bay := range b.Bays(surface) {
			sum += bay.Net
		}
		if net := b.Areas(surface).Net; math.Abs(sum-net) > 1e-6 {
			t.Errorf("%s: the bays make %g m2, the surface %g", surface, sum, net)
		}
	}
}

// The three vans against what their builders' notes say of them.
func TestThreeVansAgainstTheirNotes(t *testing.T) {
	d := shell.Work(dipper())
	notes := "own notes on the invented van, rounded"
	for _, c := range []proof.Case{
		{Name: "dipper: floor", Got: figure(t, d, "shell.floor-area"), Expected: 4.9, Tolerance: 0.05, Unit: "m2"},
		{Name: "dipper: both sides net", Got: d.Body.Areas(shell.Left).Net + d.Body.Areas(shell.Right).Net, Expected: 8.3, Tolerance: 0.4, Unit: "m2"},
		{Name: "dipper: between the arches", Got: 2 * d.Body.Arches()[0].Face, Expected: 1340, Tolerance: 5, Unit: "mm"},
		{Name: "dipper: height in the middle", Got: figure(t, d, "shell.height"), Expected: 1784, Tolerance: 0.5, Unit: "mm"},
		{Name: "dipper: clear between the second and third bow", Got: clearBetween(d.Body, 1, 2), Expected: 480, Tolerance: 0.5, Unit: "mm"},
		{Name: "twite: between the arches", Got: 2 * shell.Work(twite()).Body.Arches()[0].Face, Expected: 1225, Tolerance: 5, Unit: "mm"},
		{Name: "godwit: between the arches", Got: 2 * shell.Work(godwit()).Body.Arches()[0].Face, Expected: 1418, Tolerance: 5, Unit: "mm"},
	} {
		c.Source, c.Inputs = notes, "vans_test.go"
		proof.Check(t, c)
	}
	for name, in := range map[string]shell.Inputs{"dipper": dipper(), "twite": twite(), "godwit": godwit()} {
		if found := shell.Work(in).Findings; len(found) > 0 {
			t.Errorf("%s is well measured, but: %v %s", name, codes(found), found[0].Words)
		}
	}
}

func clearBetween(b *shell.Body, i, j int) float64 {
	bows := b.Ribs(shell.Roof)
	return float64(bows[j].X-bows[i].X) - float64(bows[i].Flange+bows[j].Flange)/2
}

func TestEveryWorkingEndsInItsFigure(t *testing.T) {
	for name, in := range map[string]shell.Inputs{"dipper": dipper(), "a box": box(), "nothing read": {}} {
		r := shell.Work(in)
		for _, f := range r.Figures {
			w, ok := r.Body.Working(f.Code)
			if !ok || w.Last() != f.Value || w.Code != f.Code || w.Label != f.Label || w.Source.Text == "" {
				t.Errorf("%s, %s: figure %g, working %+v", name, f.Code, f.Value, w)
			}
		}
	}
	if _, ok := shell.Work(box()).Body.Working("shell.colour"); ok {
		t.Error("a working of nothing")
	}
}

func TestWorkLeavesItsInputsAsTheyWere(t *testing.T) {
	in := dipper()
	in.Ribs[0], in.Ribs[4] = in.Ribs[4], in.Ribs[0]
	first := in.Ribs[0].ID
	a, b := shell.Work(in), shell.Work(in)
	if in.Ribs[0].ID != first {
		t.Error("the ribs of the inputs were sorted")
	}
	if fmt.Sprint(a.Figures) != fmt.Sprint(b.Figures) || fmt.Sprint(a.Body.Bays("left")) != fmt.Sprint(b.Body.Bays("left")) {
		t.Error("the same inputs gave different results")
	}
}

func BenchmarkWork(b *testing.B) {
	in := dipper()
	for b.Loop() {
		r := shell.Work(in)
		for _, surface := range []string{shell.Left, shell.Right, shell.Roof, shell.Floor} {
			r.Body.Bays(surface)
		}
	}
}
