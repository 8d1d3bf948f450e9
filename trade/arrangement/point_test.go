package arrangement_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/trade/arrangement"
)

func rule(t *testing.T, text string) build.AxisRule {
	t.Helper()
	r, err := build.ParseAxisRule(text)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestACornerOfARunIsARuleWithoutASize(t *testing.T) {
	r := room{}
	crate := thing(place(t, "500", "mid 0", "100"), 200, 300, 400)
	lost := thing(&build.Place{Undecided: true}, 200, 300, 400)
	result := work(r, map[string]arrangement.Thing{"crate": crate, "lost": lost})
	b := result.Find("crate").Box
	for _, c := range []struct {
		name, x, y, z string
		want          [3]float64
	}{
		{"lengths count from the tape", "700", "-200", "300", [3]float64{700, -200, 300}},
		{"a face of the room is the finished surface there", "1000", "right", "900", [3]float64{1000, r.Right(1000, 900), 900}},
		{"behind it lies what is led behind the boards", "1000", "right + 15", "900", [3]float64{1000, r.Right(1000, 900) + 15, 900}},
		{"the roof is that over the place", "1000", "mid 350", "roof", [3]float64{1000, 350, r.Roof(1000, 350)}},
		{"the floor with a length", "rear - 50", "left", "floor + 60", [3]float64{r.Rear() - 50, r.Left(r.Rear()-50, r.Floor()+60), r.Floor() + 60}},
		{"a face of a fitting", "crate.rear + 10", "crate.left", "crate.top", [3]float64{b.MaxX + 10, b.MinY, b.MaxZ}},
	} {
		got, ok := result.PointAt(build.Point3{X: rule(t, c.x), Y: rule(t, c.y), Z: rule(t, c.z)}, r)
		for axis := range got {
			if !ok || math.Abs(got[axis]-c.want[axis]) > 1e-9 {
				t.Errorf("%s: at %v, want %v", c.name, got, c.want)
				break
			}
		}
	}
	got, ok := result.PointAt(build.Point3{At: build.Point{Of: "crate", Face: "front"}}, r)
	if want := [3]float64{b.MinX, (b.MinY + b.MaxY) / 2, (b.MinZ + b.MaxZ) / 2}; !ok || got != want {
		t.Errorf("the front of the crate is at %v, want %v", got, want)
	}
	for _, of := range []string{"lost", "nobody"} {
		if _, ok := result.PointAt(build.Point3{At: build.Point{Of: of, Face: "front"}}, r); ok {
			t.Errorf("%s has no place, but its front has", of)
		}
		if _, ok := result.PointAt(build.Point3{X: rule(t, of+".front"), Y: rule(t, "0"), Z: rule(t, "0")}, r); ok {
			t.Errorf("%s has no place, but a corner at its front has", of)
		}
	}
}
