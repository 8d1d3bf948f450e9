package arrangement_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// room is a van whose sides lean in by lean for every mm of height above 600 and by fall for every mm rearwards, with wheel arches
// of depth step, and whose roof falls away from its middle; front, rear and all y can be shifted or mirrored.
type room struct {
	lean, fall, step, crown float64
	dx                      float64 // shift of everything rearwards
	mirror                  bool
}

func (r room) side(x, z float64) float64 {
	x -= r.dx
	half := 900 - r.fall*x - r.lean*math.Max(0, z-600)
	if x >= 1700 && x <= 2400 && z <= 310 {
		half = math.Min(half, 900-r.step)
	}
	return half
}

// The right side stands 20 further out than the left unless the van is mirrored.
func (r room) Right(x, z float64) float64 {
	if r.mirror {
		return r.side(x, z)
	}
	return r.side(x, z) + 20
}

func (r room) Left(x, z float64) float64 {
	if r.mirror {
		return -r.side(x, z) - 20
	}
	return -r.side(x, z)
}

func (r room) Roof(x, y float64) float64 {
	if r.mirror {
		y = -y
	}
	return 1700 - r.crown*(y-10)*(y-10)/1e6
}
func (r room) Floor() float64 { return 40 }
func (r room) Front() float64 { return r.dx }
func (r room) Rear() float64  { return 2900 + r.dx }

// skin is the outer skin: the room swollen by a hand.
type skin struct{ room }

func (s skin) Left(x, z float64) float64  { return s.room.Left(x, z) - 60 }
func (s skin) Right(x, z float64) float64 { return s.room.Right(x, z) + 60 }
func (s skin) Roof(x, y float64) float64  { return s.room.Roof(x, y) + 70 }
func (s skin) Floor() float64             { return -20 }
func (s skin) Front() float64             { return s.room.Front() - 1300 }
func (s skin) Rear() float64              { return s.room.Rear() + 50 }

func length(v float64) *quantity.Length { l := quantity.Length(v); return &l }

// place reads rules as they stand in a document; an empty one is left out.
func place(t testing.TB, x, y, z string) *build.Place {
	t.Helper()
	var p build.Place
	for _, one := range []struct {
		text string
		rule *build.AxisRule
	}{{x, &p.X}, {y, &p.Y}, {z, &p.Z}} {
		if one.text == "" {
			continue
		}
		rule, err := build.ParseAxisRule(one.text)
		if err != nil {
			t.Fatal(err)
		}
		*one.rule = rule
	}
	return &p
}

func thing(at *build.Place, x, y, z float64) arrangement.Thing {
	return arrangement.Thing{Fitting: build.Fitting{At: at}, Size: [3]float64{x, y, z}}
}

// work places things in a room.
func work(r room, things map[string]arrangement.Thing) arrangement.Result {
	return arrangement.Work(arrangement.Inputs{Room: r, Outside: skin{r}, Ground: -600, Things: each(things)})
}

// near fails unless two boxes agree within a tolerance.
func near(t *testing.T, got, want arrangement.Box, within float64) {
	t.Helper()
	g := []float64{got.MinX, got.MaxX, got.MinY, got.MaxY, got.MinZ, got.MaxZ}
	w := []float64{want.MinX, want.MaxX, want.MinY, want.MaxY, want.MinZ, want.MaxZ}
	for i := range g {
		if !(math.Abs(g[i]-w[i]) <= within) {
			t.Errorf("box x %.2f..%.2f y %.2f..%.2f z %.2f..%.2f, want x %.2f..%.2f y %.2f..%.2f z %.2f..%.2f",
				g[0], g[1], g[2], g[3], g[4], g[5], w[0], w[1], w[2], w[3], w[4], w[5])
			return
		}
	}
}

func box(x0, x1, y0, y1, z0, z1 float64) arrangement.Box {
	return arrangement.Box{MinX: x0, MaxX: x1, MinY: y0, MaxY: y1, MinZ: z0, MaxZ: z1}
}

// each is things as an arrangement takes them.
func each(things map[string]arrangement.Thing) map[string]*arrangement.Thing {
	out := make(map[string]*arrangement.Thing, len(things))
	for id, one := range things {
		out[id] = &one
	}
	return out
}
