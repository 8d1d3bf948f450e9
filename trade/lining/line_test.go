package lining_test

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/lining"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/working"
)

// find sums the lines of a pointer on a surface (all bays where bay is empty).
func find(r lining.Result, pointer, surface, bay string) (net, mass float64, at [3]float64) {
	for _, l := range r.Lines {
		if l.Pointer == pointer && l.Surface == surface && (bay == "" || l.Bay == bay) {
			net, mass, at = net+l.Net, mass+l.Mass, l.At
		}
	}
	return net, mass, at
}

// Both sides of the box are 3.0 by 1.7 in bays of 1.0 and 2.0 m, 50 mm of steel in each.
func TestNetAreasByHand(t *testing.T) {
	layers := sides(
		lining.Layer{Of: butyl, Cover: 0.25},
		lining.Layer{Of: foam10},
		lining.Layer{Of: wool50, Ribs: lining.Bridged},
		lining.Layer{Of: xps20, Ribs: lining.Filled},
		lining.Layer{Of: batten20},
		lining.Layer{Of: poplar4, To: at(1000)},
		lining.Layer{Of: carpet, From: at(1000)},
		lining.Layer{Of: batten19, Cover: 0.1},
	)
	layers[lining.Floor] = pointed("floor", lining.Layer{Of: xps20, Between: &lining.Battens{Of: batten20, Every: 400}}, lining.Layer{Of: ply15, Times: 2})
	layers[lining.Doors] = pointed("doors", lining.Layer{Of: foam10}, lining.Layer{Of: poplar4, To: at(700)})
	r := lining.Work(boxInputs(layers))
	for _, c := range []struct {
		what, pointer, surface, bay string
		net                         float64
	}{
		{"a quarter patched", "/lining/sides/0", "left", "left-1", 1.7 * 0.25},
		{"foam stops at the ribs", "/lining/sides/1", "left", "left-1", 1.7 * 0.95},
		{"foam stops at the ribs, wider bay", "/lining/sides/1", "left", "left-2", 3.4 * 0.975},
		{"wool in the bay and a fifth of it over the steel", "/lining/sides/2", "right", "right-1", 1.7 * (0.95 + 0.05*0.2)},
		{"filled ribs count whole", "/lining/sides/3", "right", "right-2", 3.4},
		{"battens at 400, metres", "/lining/sides/4", "right", "right-2", 3.4 / 0.4},
		{"ply up to 1000", "/lining/sides/5", "right", "right-2", 2},
		{"carpet above", "/lining/sides/6", "right", "right-1", 0.7},
		{"battens covering a tenth, metres", "/lining/sides/7", "right", "right-1", 1.7 * 0.1 / 0.038},
		{"boards between battens", "/lining/floor/0", "floor", "floor", 5.4 * (1 - 0.044/0.4)},
		{"the battens, metres", "/lining/floor/0/between", "floor", "floor", 5.4 / 0.4},
		{"ply laid twice", "/lining/floor/1", "floor", "floor", 10.8},
		{"rear doors", "/lining/doors/0", "doors", "rear", 2},
		{"lower half of the side door", "/lining/doors/1", "doors", "side", 0.45},
		{"foam bends over the arch", "/lining/sides/1", "right", "arch", 0.47},
		{"ply does not", "/lining/sides/5", "right", "arch", 0},
		{"carpet above 1000 does not reach it", "/lining/sides/6", "right", "arch", 0},
	} {
		net, _, _ := find(r, c.pointer, c.surface, c.bay)
		if math.Abs(net-c.net) > 1e-9 {
			t.Errorf("%s: got %g, want %g", c.what, net, c.net)
		}
	}
}

func TestTheWholeIsTheSumOfItsLines(t *testing.T) {
	r := lining.Work(dipper())
	if sum := takeoff.Total(r.TakeOff()); math.Abs(sum-figure(t, r, "lining.mass")) > 1e-9 {
		t.Errorf("lines %g kg, figure %g", sum, figure(t, r, "lining.mass"))
	}
	parts := 0.0
	for _, g := range []string{"floor", "sides", "roof", "doors", "front"} {
		parts += figure(t, r, "lining.mass-"+g)
	}
	if math.Abs(parts-figure(t, r, "lining.mass")) > 1e-9 {
		t.Errorf("parts %g kg, figure %g", parts, figure(t, r, "lining.mass"))
	}
	for _, l := range r.Lines {
		if l.Pointer == "" || l.Of == "" || l.Error != l.Of || l.Group != "lining" || !(l.Net > 0) || !(l.Mass > 0) || !(l.Dev > 0) || l.Bay == "" {
			t.Errorf("an odd line: %+v", l)
		}
		if l.At[0] < -10 || l.At[0] > 2960 || math.Abs(l.At[1]) > 940 || l.At[2] < -1 || l.At[2] > 1790 {
			t.Errorf("a line outside the van: %+v", l)
		}
	}
}

func TestLinesLieAtTheDepthOfTheirLayer(t *testing.T) {
	layers := sides(lining.Layer{Of: foam10}, lining.Layer{Of: ply15})
	layers[lining.Roof] = pointed("roof", lining.Layer{Of: ply15})
	layers[lining.Floor] = pointed("floor", lining.Layer{Of: ply15})
	r := lining.Work(boxInputs(layers))
	for _, c := range []struct {
		pointer, surface, bay string
		want                  [3]float64
	}{
		{"/lining/sides/0", "right", "right-1", [3]float64{500, 895, 850}},
		{"/lining/sides/1", "right", "right-1", [3]float64{500, 852.5, 850}},
		{"/lining/sides/1", "left", "left-1", [3]float64{500, -852.5, 850}},
		{"/lining/roof/0", "roof", "roof-2", [3]float64{2000, 0, 1662.5}},
		{"/lining/floor/0", "floor", "floor", [3]float64{1500, 0, 7.5}},
	} {
		if _, _, at := find(r, c.pointer, c.surface, c.bay); at != c.want {
			t.Errorf("%s in %s lies at %v, want %v", c.pointer, c.bay, at, c.want)
		}
	}
}

func TestALayerThatWasWeighedWeighsThat(t *testing.T) {
	kg := quantity.Mass(31)
	layers := sides(lining.Layer{Of: foam10}, lining.Layer{Of: xps20, Between: &lining.Battens{Of: batten20, Every: 400}, Weighed: &kg})
	r := lining.Work(boxInputs(layers))
	sum := 0.0
	for _, l := range r.Lines {
		if strings.HasPrefix(l.Pointer, "/lining/sides/1") {
			sum += l.Mass
			if l.Dev != 0 {
				t.Errorf("what was weighed has no spread: %+v", l)
			}
		} else if l.Dev == 0 {
			t.Errorf("what was not weighed has one: %+v", l)
		}
	}
	if math.Abs(sum-31) > 1e-9 {
		t.Errorf("got %g kg on both sides, weighed 31", sum)
	}
}

func TestTheSameInputsGiveTheSameLines(t *testing.T) {
	a, b := lining.Work(dipper()), lining.Work(dipper())
	if !reflect.DeepEqual(a.Lines, b.Lines) || !reflect.DeepEqual(a.Figures, b.Figures) || !reflect.DeepEqual(a.Findings, b.Findings) {
		t.Error("two reckonings differ")
	}
}

func TestEveryWorkingEndsInItsFigure(t *testing.T) {
	for name, in := range map[string]lining.Inputs{"dipper": dipper(), "bare box": boxInputs(nil)} {
		r := lining.Work(in)
		for _, f := range r.Figures {
			w, ok := r.Working(f.Code)
			if !ok || w.Last() != f.Value || w.Formula == "" || w.Label != f.Label {
				t.Errorf("%s, %s: figure %g, working %+v", name, f.Code, f.Value, w)
			}
		}
	}
	if _, ok := lining.Work(boxInputs(nil)).Working("lining.colour"); ok {
		t.Error("a working of nothing")
	}
}

func TestFiguresOfAnAssumedBodyAreAssumed(t *testing.T) {
	in := boxInputs(nil)
	in.Assumed = true
	for _, f := range lining.Work(in).Figures {
		if f.State != working.Assumed {
			t.Errorf("%s is %s", f.Code, f.State)
		}
	}
}
