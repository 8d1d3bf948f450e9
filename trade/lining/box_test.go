package lining_test

import (
	"testing"

	"tumblehome/trade/lining"
)

// box is a bare van of flat sheets, 3000 by 1800 by 1700, in which everything
// can be worked out by hand.
type box struct{}

func (box) Start() float64                         { return 0 }
func (box) End() float64                           { return 3000 }
func (box) Floor() float64                         { return 0 }
func (box) Eaves() float64                         { return 1700 }
func (box) Readings() (along, up []float64)        { return nil, nil }
func (box) Half(x, z float64) float64              { return 900 }
func (box) HalfInside(x, z, depth float64) float64 { return 900 - depth }
func (box) RoofInside(x, y, depth float64) float64 { return 1700 - depth }
func (box) Net(s string, x0, x1, lo, hi float64) (float64, [3]float64) {
	x0, x1 = max(x0, 0), min(x1, 3000)
	switch s {
	case lining.Floor, lining.Roof:
		z := map[string]float64{lining.Floor: 0, lining.Roof: 1700}[s]
		lo, hi = max(lo, -900), min(hi, 900)
		return (x1 - x0) * (hi - lo) / 1e6, [3]float64{(x0 + x1) / 2, (lo + hi) / 2, z}
	case lining.Front:
		lo, hi = max(lo, 0), min(hi, 1700)
		return 1800 * (hi - lo) / 1e6, [3]float64{0, 0, (lo + hi) / 2}
	}
	y := 900.0
	if s == lining.Left {
		y = -900
	}
	lo, hi = max(lo, 0), min(hi, 1700)
	return (x1 - x0) * (hi - lo) / 1e6, [3]float64{(x0 + x1) / 2, y, (lo + hi) / 2}
}

// boxInputs is the box with two bays a side and on the roof, an arch on the
// right, a side door on the left and rear doors.
func boxInputs(layers map[string][]lining.Layer) lining.Inputs {
	in := lining.Inputs{Body: box{}, Layers: layers}
	for _, s := range []struct {
		surface string
		depth   float64
	}{{lining.Left, 40}, {lining.Right, 40}, {lining.Roof, 30}} {
		in.Bays = append(in.Bays,
			lining.Bay{ID: s.surface + "-1", Surface: s.surface, From: 0, To: 1000, Depth: s.depth, Steel: 50},
			lining.Bay{ID: s.surface + "-2", Surface: s.surface, From: 1000, To: 3000, Depth: s.depth, Steel: 50})
	}
	in.Arches = []lining.Arch{{ID: "arch", Side: lining.Right, From: 2000, To: 2700, Face: 700, Up: 300, Area: 0.47, Centre: [3]float64{2350, 765, 194}}}
	in.Doors = []lining.Door{
		{ID: "side", Surface: lining.Left, From: 200, To: 900, Low: 0, Up: 1400, Net: 0.9, Centre: [3]float64{550, -900, 650}},
		{ID: "rear", Surface: "rear", From: -800, To: 800, Low: 0, Up: 1500, Net: 2, Centre: [3]float64{3000, 0, 750}},
	}
	return in
}

// pointed gives layers their pointers.
func pointed(surface string, layers ...lining.Layer) []lining.Layer {
	for i := range layers {
		layers[i].Pointer = "/lining/" + surface + "/" + string(rune('0'+i))
	}
	return layers
}

// sides lines both sides alike.
func sides(layers ...lining.Layer) map[string][]lining.Layer {
	both := pointed("sides", layers...)
	return map[string][]lining.Layer{lining.Left: both, lining.Right: both}
}

// figure reads one figure.
func figure(t testing.TB, r lining.Result, code string) float64 {
	t.Helper()
	for _, f := range r.Figures {
		if f.Code == code {
			return f.Value
		}
	}
	t.Fatalf("no figure %s", code)
	return 0
}
