package solid_test

import (
	"math"
	"testing"

	"tumblehome/solve/solid"
)

// hut is a room whose right side leans inwards and has a step near the floor, and whose roof falls away from the middle.
type hut struct{ lean, step float64 }

func (h *hut) Left(x, z float64) float64 { return -900 }
func (h *hut) Right(x, z float64) float64 {
	if x >= 1000 && x <= 1500 && z <= 300 {
		return 900 - h.step
	}
	return 900 - h.lean*z
}
func (h *hut) Roof(x, y float64) float64 { return 1800 - y*y/4000 }
func (h *hut) Floor() float64            { return 40 }
func (h *hut) Front() float64            { return 0 }
func (h *hut) Rear() float64             { return 3000 }

func TestExcessAgainstEachSurface(t *testing.T) {
	tests := []struct {
		name string
		p    solid.Prism
		room hut
		side solid.Side
		want float64
	}{
		{"a box short of the front has that room", box(10, 500, 0, 100, 40, 100), hut{}, solid.Front, -10},
		{"a box through the rear stands out", box(2900, 3025, 0, 100, 40, 100), hut{}, solid.Rear, 25},
		{"a box sunk in the floor", box(0, 500, 0, 100, 35, 100), hut{}, solid.Floor, 5},
		{"a box against a flat side", box(0, 500, -900, 100, 40, 100), hut{}, solid.Left, 0},
		{"a leaning side is met by the top edge", box(0, 500, 0, 850, 40, 700), hut{lean: 0.1}, solid.Right, 20},
		{"a step is met by a box over it", box(700, 2000, 0, 750, 40, 900), hut{step: 200}, solid.Right, 50},
		{"a step is missed by a box above it", box(700, 2000, 0, 750, 301, 900), hut{step: 200}, solid.Right, -150},
		{"a step is met by a box that reaches it with its end", box(700, 1001, 0, 750, 40, 900), hut{step: 200}, solid.Right, 50},
		{"a falling roof is met by the outer edge", box(0, 500, 0, 400, 40, 1770), hut{}, solid.Roof, 10},
		{"a box under both falls is met in the outer one", box(0, 500, -600, 400, 40, 1770), hut{}, solid.Roof, 60},
		{"a turned box meets the side with its corner",
			box(1950, 2050, 700, 800, 40, 100).Turned(solid.Point{X: 2000, Y: 750}, math.Pi/4), hut{}, solid.Right, 750 + 50*math.Sqrt2 - 900},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.p.ExcessAt(&tt.room, tt.side, 150); math.Abs(got-tt.want) > 1e-9 {
				t.Errorf("got %g, want %g", got, tt.want)
			}
			if all := tt.p.Excess(&tt.room, 150); all[tt.side] != tt.p.ExcessAt(&tt.room, tt.side, 150) {
				t.Errorf("Excess and ExcessAt differ: %v", all)
			}
		})
	}
}

// stepped is a hut that tells where its step is.
type stepped struct{ hut }

func (*stepped) Steps() (along, up []float64) { return []float64{1000, 1500}, []float64{300} }

func TestAStepTheRegionTellsOfIsNotMissedBetweenPlacesLookedAt(t *testing.T) {
	wide := box(995, 2000, 0, 750, 40, 310) // of its even places only 996.7 and 1139.3 are near the step's ends
	if got := box(1495, 2000, 0, 750, 299, 301).ExcessAt(&stepped{hut{step: 200}}, solid.Right, 600); got != 50 {
		t.Errorf("got %g, want 50", got)
	}
	if got := wide.ExcessAt(&stepped{hut{step: 200}}, solid.Right, 2000); got != 50 {
		t.Errorf("got %g, want 50", got)
	}
}

func TestGreatestClimbsASmoothHill(t *testing.T) {
	got := solid.Greatest(solid.Places(nil, 0, 1000, 150, nil), solid.Places(nil, 0, 500, 150, nil), func(u, v float64) float64 {
		return 10 - math.Pow((u-333)/100, 2) - math.Pow((v-77)/100, 2)
	})
	if math.Abs(got-10) > 0.001 {
		t.Errorf("top %g, want 10 within 0.001", got)
	}
}
