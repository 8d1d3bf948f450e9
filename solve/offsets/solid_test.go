package offsets_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/offsets"
)

// table reads a body off half(x, z) and crown(x).
func table(xs, zs []float64, half func(x, z float64) float64, crown func(x float64) float64) offsets.Table {
	t := offsets.Table{Heights: zs}
	for _, x := range xs {
		s := offsets.Station{X: x, Crown: crown(x)}
		for _, z := range zs {
			s.Half = append(s.Half, half(x, z))
		}
		t.Stations = append(t.Stations, s)
	}
	return t
}

func must(t testing.TB, table offsets.Table) *offsets.Surface {
	t.Helper()
	s, err := offsets.New(table)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// steps returns n+1 even places from a to b.
func steps(a, b float64, n int) []float64 {
	out := make([]float64, n+1)
	for i := range out {
		out[i] = a + (b-a)*float64(i)/float64(n)
	}
	return out
}

// A box 2000 by 1600 by 1700, a cylinder of radius 900 lying on its axis, a frustum 1000 and 850 in radius at the ends and the middle of an
// ellipsoid. The tops of the round ones are read to sin 80° and more of the radius; the rest is the roof's round.
func TestSolidsOfKnownSize(t *testing.T) {
	turned := make([]float64, 15) // heights of a circle of radius 1, even in angle, to 84°
	for i := range turned {
		turned[i] = math.Sin(float64(i) * 6 * math.Pi / 180)
	}
	scaled := func(r float64) []float64 {
		out := make([]float64, len(turned))
		for i, z := range turned {
			out[i] = z * r
		}
		return out
	}
	circle := func(r, z float64) float64 { return math.Sqrt(math.Max(0, r*r-z*z)) }

	box := must(t, table([]float64{0, 500, 2000}, []float64{0, 400, 1700}, func(x, z float64) float64 { return 800 }, func(x float64) float64 { return 1700 }))
	cylinder := must(t, table([]float64{0, 1000, 3000}, scaled(900), func(x, z float64) float64 { return circle(900, z) }, func(x float64) float64 { return 900 }))
	radius := func(x float64) float64 { return 1000 - 150*x/2000 }
	frustum := must(t, table(steps(0, 2000, 10), steps(0, 840, 14), func(x, z float64) float64 { return circle(radius(x), z) }, radius))
	a, b := 3000.0, 900.0 // ellipsoid of revolution, x from -1000 to 1000
	ring := func(x float64) float64 { return b * math.Sqrt(1-x*x/(a*a)) }
	ellipsoid := must(t, table(steps(-1000, 1000, 10), scaled(0.99*ring(1000)), func(x, z float64) float64 { return circle(ring(x), z) }, ring))

	ends := func(s *offsets.Surface) (area float64) {
		x0, x1, top := s.Start(), s.End(), s.TopRow()
		return 2*s.Side(x0, x1, s.Base(), top).Area + s.Roof(x0, x1, -9999, 9999).Area
	}
	slant := math.Hypot(2000, 150)
	belly := math.Pi * b * b * (2000 - 2*math.Pow(1000, 3)/(3*a*a)) / 2
	for _, c := range []struct {
		name      string
		got, want float64
		unit      string
	}{
		{"section of a box", box.SectionArea(700), 1600 * 1700, "mm2"},
		{"girth of a box without its floor", box.Girth(700), 1600 + 2*1700, "mm"},
		{"volume of a box", box.Volume(0, 2000), 2000 * 1600 * 1700, "mm3"},
		{"skin of a box without floor and ends", ends(box), 2000 * (1600 + 2*1700), "mm2"},
		{"floor of a box between two lines", box.Level(100, 300, -9999, 200, 0).Area, 200 * 1000, "mm2"},
		{"section of a half cylinder", cylinder.SectionArea(1234), math.Pi * 900 * 900 / 2, "mm2"},
		{"girth of a half cylinder", cylinder.Girth(1234), math.Pi * 900, "mm"},
		{"volume of a half cylinder", cylinder.Volume(0, 3000), math.Pi * 900 * 900 / 2 * 3000, "mm3"},
		{"skin of a half cylinder", ends(cylinder), math.Pi * 900 * 3000, "mm2"},
		{"end of a half cylinder", cylinder.Across(0, -9999, 9999, 0, 9999).Area, math.Pi * 900 * 900 / 2, "mm2"},
		{"centre of the end of a half cylinder", cylinder.Across(0, -9999, 9999, 0, 9999).Z, 4 * 900 / (3 * math.Pi), "mm"},
		{"centre of the skin of a half cylinder", centre(cylinder), 2 * 900 / math.Pi, "mm"},
		{"volume of half a frustum", frustum.Volume(0, 2000), math.Pi * 2000 / 3 * (1e6 + 85e4 + 7225e2) / 2, "mm3"},
		{"skin of half a frustum", ends(frustum), math.Pi * 1850 * slant / 2, "mm2"},
		{"girth of half a frustum in the middle", frustum.Girth(1000), math.Pi * 925, "mm"},
		{"volume of the middle of half an ellipsoid", ellipsoid.Volume(-1000, 1000), belly, "mm3"},
		{"section of half an ellipsoid", ellipsoid.SectionArea(300), math.Pi * ring(300) * ring(300) / 2, "mm2"},
		{"skin of the middle of half an ellipsoid", ends(ellipsoid), ellipsoidBelt(a, b, 1000) / 2, "mm2"},
	} {
		proof.Check(t, proof.Case{Name: c.name, Source: "closed form, any handbook of mensuration", Inputs: "see TestSolidsOfKnownSize",
			Got: c.got, Expected: c.want, Tolerance: c.want * 0.001, Unit: c.unit})
	}
}

// centre returns the height of the centre of the skin, sides and roof together.
func centre(s *offsets.Surface) float64 {
	side, roof := s.Side(s.Start(), s.End(), s.Base(), s.TopRow()), s.Roof(s.Start(), s.End(), -9999, 9999)
	return (2*side.Area*side.Z + roof.Area*roof.Z) / (2*side.Area + roof.Area)
}

// ellipsoidBelt is the skin of an ellipsoid of revolution about its long half
// axis a between -x and x: 2π ∫ y √(1+y'²) dx in closed form.
func ellipsoidBelt(a, b, x float64) float64 {
	e := math.Sqrt(1 - b*b/(a*a))
	k := e * x / a
	return 2 * math.Pi * b * a / e * (k*math.Sqrt(1-k*k) + math.Asin(k))
}

func TestOddSectionsAgainstShapely(t *testing.T) {
	var want struct {
		Heights  []float64
		Sections []struct {
			Name                       string
			Half                       []float64
			Area, Side, Window, Centre float64
			Over                       [][2]float64
		}
	}
	oracle.Decode(t, oracle.Python, "testdata/sections.py", &want)
	for _, c := range want.Sections {
		flat := offsets.Table{Heights: want.Heights}
		for _, x := range []float64{0, 1000} {
			flat.Stations = append(flat.Stations, offsets.Station{X: x, Half: c.Half, Crown: want.Heights[len(want.Heights)-1]})
		}
		s := must(t, flat)
		top := s.TopRow()
		check := func(what string, got, expected float64, unit string) {
			proof.Check(t, proof.Case{Name: fmt.Sprintf("section of %s: %s", c.Name, what), Source: "shapely 1.8.5 and scipy 1.10.1",
				Inputs: "testdata/sections.py", Got: got, Expected: expected, Tolerance: math.Abs(expected) * 1e-4, Unit: unit})
		}
		check("area", s.SectionArea(400), c.Area, "mm2")
		check("length up one side", s.Side(0, 1000, 0, top).Area/1000, c.Side, "mm")
		check("length around", s.Girth(400), 2*c.Side+2*c.Half[len(c.Half)-1], "mm")
		check("part seen through a window", s.Across(400, -300, 650, 200, 1600).Area, c.Window, "mm2")
		check("height of its centre", s.Across(400, -9999, 9999, 0, top).Z, c.Centre, "mm")
		for _, o := range c.Over {
			check(fmt.Sprintf("height over y %g", o[0]), s.Top(400, o[0]), o[1], "mm")
			if a, b := s.Top(400, o[0]), s.Top(400, -o[0]); a != b {
				t.Errorf("%s: the sides differ at %g: %g and %g", c.Name, o[0], a, b)
			}
		}
	}
}
