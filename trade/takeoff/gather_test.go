package takeoff_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/trade/takeoff"
)

var lines = []takeoff.Line{
	{Pointer: "/fittings/galley", Mass: 30, At: [3]float64{500, 600, 400}, Group: "fitting", Fitted: true, Unit: "piece", Net: 1},
	{Pointer: "/fittings/galley/of", Of: "ply", Mass: 10, At: [3]float64{900, 0, 0}, Group: "fitting", Unit: "m2", Net: 2},
	{Pointer: "/fittings/galley-top", Of: "ply", Mass: 6, At: [3]float64{500, 600, 890}, Group: "fitting", Unit: "m2", Net: 0.5},
	{Pointer: "/lining/floor/2", Of: "ply", Mass: 34, At: [3]float64{1475, 0, 20}, Group: "lining", Fitted: true, Unit: "m2", Net: 4.9},
	{Pointer: "/removed/racks", Mass: -36, At: [3]float64{1500, 0, 0}, Group: "removed"},
}

func TestTheWholeEqualsTheSumOfItsGroupsAndOfItsLines(t *testing.T) {
	var groups float64
	for _, g := range takeoff.ByGroup(lines) {
		if got := takeoff.Total(g.Of); got != g.Mass {
			t.Errorf("group %s: %g kg, its lines %g", g.Name, g.Mass, got)
		}
		groups += g.Mass
	}
	if total := takeoff.Total(lines); math.Abs(groups-total) > 1e-12 || total != 44 {
		t.Errorf("groups sum to %g, lines to %g, want 44", groups, total)
	}
}

func TestLinesAreAboutAThingAndWhatIsWithinItOnly(t *testing.T) {
	for _, c := range []struct {
		pointer string
		want    int
	}{{"/fittings/galley", 2}, {"/fittings", 3}, {"/fittings/galley-top", 1}, {"/lining/floor", 1}, {"/lining/flo", 0}} {
		if got := len(takeoff.About(lines, c.pointer)); got != c.want {
			t.Errorf("about %s: %d lines, want %d", c.pointer, got, c.want)
		}
	}
}

func TestTodayLeavesOutWhatIsPlanned(t *testing.T) {
	if got := takeoff.Total(takeoff.Today(lines)); got != 64 {
		t.Errorf("today %g kg, want 64", got)
	}
}

func TestTheCentreOfNothingIsTheOrigin(t *testing.T) {
	if mass, at := takeoff.Centre(nil); mass != 0 || at != [3]float64{} {
		t.Errorf("got %g kg at %v", mass, at)
	}
}

func TestMaterialsOfUnlikeUnitsHaveNoCommonQuantity(t *testing.T) {
	mixed := append(lines, takeoff.Line{Of: "ply", Unit: "m", Net: 3})
	for _, s := range takeoff.ByMaterial(mixed) {
		if s.Net != 0 || s.Unit != "" {
			t.Errorf("%s: %g %q, want no common quantity", s.Name, s.Net, s.Unit)
		}
	}
}

func ExampleByMaterial() {
	for _, s := range takeoff.ByMaterial(lines) {
		fmt.Printf("%s %.1f %s, %.0f kg\n", s.Name, s.Net, s.Unit, s.Mass)
	}
	// Output: ply 7.4 m2, 50 kg
}

func ExampleCentre() {
	mass, at := takeoff.Centre(lines[:2])
	fmt.Printf("%.0f kg, %.0f mm behind the datum\n", mass, at[0])
	// Output: 40 kg, 600 mm behind the datum
}
