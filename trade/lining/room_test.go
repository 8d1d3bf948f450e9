package lining_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/lining"
)

func Example() {
	r := lining.Work(dipper())
	fmt.Printf("headroom in the middle %.0f mm\n", r.Room.Headroom(r.Room.Middle(), 0))
	fmt.Printf("right side at x 2000, z 800: %.0f; over the wheel arch, z 200: %.0f\n", r.Room.Right(2000, 800), r.Room.Right(2000, 200))
	courses, depth, _ := r.Section(lining.Roof, "roof-3", 0)
	for _, c := range courses {
		fmt.Printf("%s: %.4g to %.4g on the bow\n", c.Material, c.OnRib[0], c.OnRib[1])
	}
	fmt.Printf("finished %.4g under the skin\n", depth)
	// Output:
	// headroom in the middle 1686 mm
	// right side at x 2000, z 800: 849; over the wheel arch, z 200: 660
	// sound-butyl-2mm: 32 to 32 on the bow
	// foam-xlpe-20: 32 to 32 on the bow
	// foam-xlpe-5: 32 to 37 on the bow
	// pse-19x38: 37 to 56 on the bow
	// ply-poplar-3-6: 56 to 59.6 on the bow
	// finished 59.6 under the skin
}

// The box with 10 of foam and 4 of ply all round: by hand.
func TestTheRoomInABoxByHand(t *testing.T) {
	four := lining.Material{ID: "ply-4", Kind: lining.Board, Thick: 4}
	layers := sides(lining.Layer{Of: foam10}, lining.Layer{Of: four})
	layers[lining.Floor] = pointed("floor", lining.Layer{Of: xps20}, lining.Layer{Of: ply15})
	layers[lining.Roof] = pointed("roof", lining.Layer{Of: foam10}, lining.Layer{Of: four})
	layers[lining.Doors] = pointed("doors", lining.Layer{Of: foam10, Times: 6}, lining.Layer{Of: four})
	layers[lining.Front] = pointed("front", lining.Layer{Of: four})
	r := lining.Work(boxInputs(layers))
	room := r.Room
	// floor 35, sides 44, side door 64, roof 34, rear 64, front 4; the arch 200 deep and 300 high wears 10 of foam
	arch := 720.0 * (900 - 44 - 690)
	door := 700.0 * 20
	for _, c := range []struct {
		name      string
		got, want float64
		unit      string
	}{
		{"floor", room.Floor(), 35, "mm"}, {"front", room.Front(), 4, "mm"}, {"rear", room.Rear(), 2936, "mm"},
		{"roof", room.Roof(1500, 0), 1666, "mm"}, {"roof at the side", room.Roof(1500, 850), 1666, "mm"}, {"roof over nothing", room.Roof(1500, 880), 35, "mm"},
		{"right", room.Right(1500, 800), 856, "mm"}, {"left", room.Left(1500, 800), -856, "mm"},
		{"side door", room.Left(500, 800), -836, "mm"}, {"above the side door", room.Left(500, 1500), -856, "mm"},
		{"arch", room.Right(2300, 200), 690, "mm"}, {"just before the arch", room.Right(1989, 200), 856, "mm"}, {"foam over the arch", room.Right(2300, 309), 690, "mm"},
		{"above the arch", room.Right(2300, 311), 856, "mm"}, {"no arch on the left", room.Left(2300, 200), -856, "mm"},
		{"headroom", figure(t, r, "shell.headroom"), 1631, "mm"},
		{"floor area", figure(t, r, "lining.floor-area"), (2932*1712 - arch - door) / 1e6, "m2"},
		{"volume", figure(t, r, "lining.volume"), (2932*1712*1631 - arch*275 - door*1365) / 1e9, "m3"},
		{"section", room.SectionArea(1500), 1712 * 1631 / 1e6, "m2"},
		{"floor thickness", figure(t, r, "lining.floor-thickness"), 35, "mm"},
		{"side thickness", figure(t, r, "lining.side-thickness"), 44, "mm"},
		{"roof thickness", figure(t, r, "lining.roof-thickness"), 34, "mm"},
	} {
		proof.Check(t, proof.Case{Name: "lined box: " + c.name, Source: "by hand, sides of a box", Inputs: "TestTheRoomInABoxByHand", Got: c.got, Expected: c.want, Tolerance: 1e-9, Unit: c.unit})
	}
}

// What the notes of two invented vans say of their finished room.
func TestRoomsAgainstTheNotes(t *testing.T) {
	d := lining.Work(dipper())
	skin := lining.Material{ID: "foam-13", Kind: lining.Fill, Thick: 13}
	g := lining.Work(inputs(godwitBody(), sides(lining.Layer{Of: skin}, lining.Layer{Of: fleece50}, lining.Layer{Of: poplar4}))).Room
	notes := "own notes on the invented van, rounded to 5 to 10 mm"
	for _, c := range []proof.Case{
		{Name: "dipper: finished headroom in the middle", Got: figure(t, d, "shell.headroom"), Expected: 1680, Tolerance: 10, Unit: "mm"},
		{Name: "dipper: roof lining", Got: figure(t, d, "lining.roof-thickness"), Expected: 61, Tolerance: 2, Unit: "mm"},
		{Name: "dipper: floor lining", Got: figure(t, d, "lining.floor-thickness"), Expected: 42, Tolerance: 5, Unit: "mm"},
		{Name: "dipper: mass of the floor", Got: figure(t, d, "lining.mass-floor"), Expected: 67, Tolerance: 2, Unit: "kg"},
		{Name: "godwit: between the linings over the bunk at x 3000", Got: g.Right(3000, 1060) - g.Left(3000, 1060), Expected: 1808, Tolerance: 5, Unit: "mm"},
		{Name: "godwit: between the linings over the bunk at x 3960", Got: g.Right(3960, 1060) - g.Left(3960, 1060), Expected: 1695, Tolerance: 5, Unit: "mm"},
	} {
		c.Source, c.Inputs = notes, "demos_test.go"
		proof.Check(t, c)
	}
}

func TestASectionIsAsLargeAsItsOutline(t *testing.T) {
	room := lining.Work(dipper()).Room
	for _, x := range []float64{300, 1000, 1900, 2600, 2900} {
		line := room.Outline(x)
		area := 0.0
		for i, p := range line {
			q := line[(i+1)%len(line)]
			area += p[0]*q[1] - q[0]*p[1]
		}
		area = math.Abs(area) / 2e6
		if want := room.SectionArea(x); math.Abs(area-want) > 0.003*want {
			t.Errorf("x %g: the outline holds %.4f m2, the section is %.4f", x, area, want)
		}
	}
}

func TestRoofAndSidesCloseTheSameRoom(t *testing.T) {
	room, bare := lining.Work(dipper()).Room, dipperBody()
	rng := rand.New(rand.NewPCG(5, 6))
	for range 20000 {
		x := room.Front() + rng.Float64()*(room.Rear()-room.Front())
		y, z := (2*rng.Float64()-1)*950, room.Floor()+rng.Float64()*1750
		inside := room.Inside(x, y, z)
		top := room.Roof(x, y)
		if inside && top < z-0.2 {
			t.Fatalf("(%.1f, %.1f, %.1f) is in the room, but the roof over it is at %.1f", x, y, z, top)
		}
		if inside && (math.Abs(y) > bare.Half(x, z) || z > bare.Top(x, y)) {
			t.Fatalf("(%.1f, %.1f, %.1f) is in the room but outside the skin", x, y, z)
		}
		if near := top - 0.2; near > room.Floor()+1 && !room.Inside(x, y, near) && room.Inside(x, y, near-3) {
			t.Fatalf("just under the roof at (%.1f, %.1f, %.2f) is not in the room", x, y, near)
		}
	}
}

func TestAnotherLayerNeverMakesTheRoomLarger(t *testing.T) {
	for _, of := range []lining.Material{butyl, foam10, wool50, batten20, poplar4, carpet, ply15} {
		for _, surface := range []string{lining.Floor, lining.Left, lining.Roof, lining.Doors, lining.Front} {
			in := dipper()
			before := lining.Work(in)
			in.Layers[surface] = append(in.Layers[surface], lining.Layer{Pointer: "/lining/more", Of: of})
			after := lining.Work(in)
			if after.Room.Volume() > before.Room.Volume()+1e-9 {
				t.Errorf("%s on the %s: room %g after %g", of.ID, surface, after.Room.Volume(), before.Room.Volume())
			}
			if figure(t, after, "lining.mass") <= figure(t, before, "lining.mass") && surface != lining.Front {
				t.Errorf("%s on the %s weighs nothing", of.ID, surface)
			}
		}
	}
}

func TestQueriesOfTheRoomTakeNoMemory(t *testing.T) {
	room := lining.Work(dipper()).Room
	if n := testing.AllocsPerRun(100, func() { room.Right(1000, 700); room.Left(1000, 1690); room.Roof(900, 400); room.Roof(900, 830) }); n != 0 {
		t.Errorf("a query allocates %g times", n)
	}
}

func BenchmarkRight(b *testing.B) {
	room := lining.Work(dipper()).Room
	for i := 0; b.Loop(); i++ {
		room.Right(float64(i%2950), float64(i%1600))
	}
}

func BenchmarkRoof(b *testing.B) {
	room := lining.Work(dipper()).Room
	for i := 0; b.Loop(); i++ {
		room.Roof(float64(i%2950), float64(i%1400)-700)
	}
}

func BenchmarkWork(b *testing.B) {
	in := dipper()
	for b.Loop() {
		lining.Work(in)
	}
}
