package offsets_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/solve/offsets"
)

// van is a table like those that builders measure.
func van() offsets.Table {
	return offsets.Table{
		Reading: 4,
		Heights: []float64{0, 300, 600, 900, 1200, 1500, 1680},
		Stations: []offsets.Station{
			{X: 0, Half: []float64{896, 921, 931, 926, 902, 842, 744}, Crown: 1758},
			{X: 700, Half: []float64{902, 927, 937, 932, 908, 849, 752}, Crown: 1776},
			{X: 1475, Half: []float64{904, 929, 939, 934, 910, 851, 755}, Crown: 1784},
			{X: 2250, Half: []float64{898, 923, 933, 928, 904, 844, 746}, Crown: 1774},
			{X: 2950, Half: []float64{846, 874, 884, 878, 852, 790, 690}, Crown: 1734},
		},
	}
}

func Example() {
	s, err := offsets.New(van())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("half-breadth at x 1000, z 750: %.0f ± %.0f\n", s.Half(1000, 750), s.Spread(1000, 750))
	fmt.Printf("height over x 1000, y 400: %.0f\n", s.Top(1000, 400))
	fmt.Printf("room: %.2f m3, girth in the middle %.2f m\n", s.Volume(s.Start(), s.End())/1e9, s.Girth(1475)/1e3)
	// Output:
	// half-breadth at x 1000, z 750: 937 ± 4
	// height over x 1000, y 400: 1766
	// room: 9.25 m3, girth in the middle 4.99 m
}

func TestReadingsAreMetExactly(t *testing.T) {
	read := van()
	s := must(t, read)
	for _, st := range read.Stations {
		for j, z := range read.Heights {
			if got := s.Half(st.X, z); math.Abs(got-st.Half[j]) > 1e-9 {
				t.Errorf("at x %g z %g: got %g, read %g", st.X, z, got, st.Half[j])
			}
		}
		if got := s.Top(st.X, 0); math.Abs(got-st.Crown) > 1e-9 {
			t.Errorf("crown at %g: got %g, read %g", st.X, got, st.Crown)
		}
	}
}

func TestHalfAndTopAreEachOthersInverse(t *testing.T) {
	s := must(t, van())
	rng := rand.New(rand.NewPCG(3, 4))
	for range 2000 {
		x := rng.Float64() * 2950
		z := 950 + rng.Float64()*780 // above the waist, where there is one height to a breadth
		if z >= s.Crown(x)-1 {
			continue
		}
		y := s.Half(x, z)
		if back := s.Top(x, y); math.Abs(back-z) > 0.05 {
			t.Fatalf("at x %.1f the half-breadth at z %.3f is %.3f, but the top over it is %.3f", x, z, y, back)
		}
	}
}

func TestTheSurfaceIsSmoothAcrossStationsAndHeights(t *testing.T) {
	s := must(t, van())
	for _, x := range []float64{700, 1475, 2250} {
		for _, z := range []float64{150, 300, 820, 1500, 1600} {
			a, b := s.Normal(x-1e-6, z), s.Normal(x+1e-6, z)
			for k := range 3 {
				if math.Abs(a[k]-b[k]) > 1e-6 {
					t.Errorf("the normal breaks at x %g, z %g: %v, %v", x, z, a, b)
				}
			}
		}
	}
	for _, z := range []float64{300, 900, 1500} {
		a, b := s.Normal(333, z-1e-6), s.Normal(333, z+1e-6)
		for k := range 3 {
			if math.Abs(a[k]-b[k]) > 1e-6 {
				t.Errorf("the normal breaks at z %g: %v, %v", z, a, b)
			}
		}
	}
}

func TestPartsSumToTheWhole(t *testing.T) {
	s := must(t, van())
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-4*want {
			t.Errorf("%s: the parts make %g, the whole is %g", what, got, want)
		}
	}
	side, roof, floor, volume := 0.0, 0.0, 0.0, 0.0
	cuts := []float64{0, 80, 760, 1440, 2080, 2680, 2950}
	for i := range len(cuts) - 1 {
		side += s.Side(cuts[i], cuts[i+1], 0, 1000).Area + s.Side(cuts[i], cuts[i+1], 1000, 1680).Area
		roof += s.Roof(cuts[i], cuts[i+1], -9999, 100).Area + s.Roof(cuts[i], cuts[i+1], 100, 9999).Area
		floor += s.Level(cuts[i], cuts[i+1], -9999, -300, 0).Area + s.Level(cuts[i], cuts[i+1], -300, 9999, 0).Area
		volume += s.Volume(cuts[i], cuts[i+1])
	}
	near("side", side, s.Side(0, 2950, 0, 1680).Area)
	near("roof", roof, s.Roof(0, 2950, -9999, 9999).Area)
	near("floor", floor, s.Level(0, 2950, -9999, 9999, 0).Area)
	near("volume", volume, s.Volume(0, 2950))
	near("a section cut level by level", s.Across(400, -9999, 9999, 0, 9999).Area, s.SectionArea(400))
}

func TestAMirroredPieceOfRoofHasAMirroredCentre(t *testing.T) {
	s := must(t, van())
	r, l := s.Roof(100, 900, 200, 600), s.Roof(100, 900, -600, -200)
	if math.Abs(r.Area-l.Area) > 1e-6 || math.Abs(r.Y+l.Y) > 1e-9 || r.Y < 200 || r.Y > 600 {
		t.Errorf("right %+v, left %+v", r, l)
	}
}

func TestOutlinesFollowTheSurface(t *testing.T) {
	s := must(t, van())
	section := s.Section(1000, 12)
	length := 0.0
	for i, p := range section {
		if i > 0 {
			length += 2 * math.Hypot(p.A-section[i-1].A, p.B-section[i-1].B)
		}
	}
	if girth := s.Girth(1000); math.Abs(length-girth) > 0.001*girth {
		t.Errorf("the outline is %g long, the girth %g", length, girth)
	}
	if first, last := section[0], section[len(section)-1]; first.B != 0 || last.A != 0 || last.B != s.Crown(1000) {
		t.Errorf("a section runs from the base to the crown: got %v to %v", first, last)
	}
	for _, p := range s.Plan(600, 5) {
		if math.Abs(p.B-s.Half(p.A, 600)) > 1e-9 {
			t.Errorf("plan at %g: %g, surface %g", p.A, p.B, s.Half(p.A, 600))
		}
	}
}

func TestTablesThatAreNoTable(t *testing.T) {
	for name, c := range map[string]struct {
		spoil func(*offsets.Table)
		want  string
	}{
		"one station":               {func(t *offsets.Table) { t.Stations = t.Stations[:1] }, "table of offsets: needs at least two stations"},
		"one height":                {func(t *offsets.Table) { t.Heights = t.Heights[:1] }, "table of offsets: needs at least two heights"},
		"heights out of order":      {func(t *offsets.Table) { t.Heights[2] = 100 }, "table of offsets, height 3: heights must be numbers in ascending order"},
		"two stations at one place": {func(t *offsets.Table) { t.Stations[1].X = 0 }, "table of offsets, station 2: stations must stand at numbers in ascending order"},
		"a reading short":           {func(t *offsets.Table) { t.Stations[3].Half = t.Stations[3].Half[:6] }, "table of offsets, station 4: has 6 half-breadths for 7 heights"},
		"a reading below zero":      {func(t *offsets.Table) { t.Stations[0].Half[1] = -3 }, "table of offsets, station 1, height 2: a half-breadth must be a number not below zero"},
		"a reading that is none":    {func(t *offsets.Table) { t.Stations[0].Half[1] = math.NaN() }, "table of offsets, station 1, height 2: a half-breadth must be a number not below zero"},
		"a crown below the sides":   {func(t *offsets.Table) { t.Stations[4].Crown = 1600 }, "table of offsets, station 5: the crown must not lie below the last height"},
		"an endless error":          {func(t *offsets.Table) { t.Reading = math.Inf(1) }, "table of offsets: the errors stated must not be below zero"},
	} {
		read := van()
		c.spoil(&read)
		_, err := offsets.New(read)
		var fault *offsets.TableError
		if !errors.As(err, &fault) || err.Error() != c.want {
			t.Errorf("%s: got %v, want %s", name, err, c.want)
		}
	}
}

// FuzzSurface holds that no table that New takes gives an endless number anywhere.
func FuzzSurface(f *testing.F) {
	f.Add(896.0, 744.0, 1758.0, 4.0, 1000.0, 800.0)
	f.Add(0.0, 0.0, 1680.0, 0.0, -1.0, 1680.0)
	f.Fuzz(func(t *testing.T, low, high, crown, reading, x, z float64) {
		read := van()
		read.Reading = reading
		read.Stations[0].Half[0], read.Stations[2].Half[6], read.Stations[1].Crown = low, high, crown
		s, err := offsets.New(read)
		if err != nil || math.Max(math.Max(low, high), math.Max(crown, reading)) > 1e6 {
			return
		}
		for _, v := range []float64{s.Half(x, z), s.Top(x, z), s.Spread(x, z), s.Girth(x), s.Volume(0, 2950), s.Roof(0, 2950, -900, 900).X, s.Side(0, 2950, 0, 1680).Z} {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("got %v", v)
			}
		}
	})
}

func TestQueriesTakeNoMemory(t *testing.T) {
	s := must(t, van())
	if n := testing.AllocsPerRun(100, func() { s.Half(1000, 700); s.Half(1000, 1720); s.Top(900, 400); s.Spread(1, 2) }); n != 0 {
		t.Errorf("a query allocates %g times", n)
	}
}

func BenchmarkHalf(b *testing.B) {
	s := must(b, van())
	for i := 0; b.Loop(); i++ {
		s.Half(float64(i%2950), float64(i%1680))
	}
}

func BenchmarkTop(b *testing.B) {
	s := must(b, van())
	for i := 0; b.Loop(); i++ {
		s.Top(float64(i%2950), float64(i%900))
	}
}

func BenchmarkSurfaceAndIntegrals(b *testing.B) {
	for b.Loop() {
		s := must(b, van())
		s.Volume(0, 2950)
		s.Side(0, 2950, 0, 1680)
		s.Roof(0, 2950, -9999, 9999)
		s.Level(0, 2950, -9999, 9999, 0)
		s.Girth(1475)
	}
}
