package cables

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
)

// The branched network of testdata/branched.cir, laid out from lengths and cross-sections as Work lays out a van's; fuses and joints are the round
// figures of that file.
func branched(volts, inside, inverter, charge, celsius float64) tree {
	return tree{
		volts: volts, inside: inside, mainFuse: 0.0012, trunk: pair(1500, 25, celsius), charge: charge,
		legs: []leg{
			{id: "n1", fuse: 0.0178, cable: pair(6000, 1.5, celsius), watts: 18},
			{id: "n2", fuse: 0.0046, cable: pair(4500, 4, celsius), watts: 55},
			{id: "n3", fuse: 0.0074, cable: pair(5000, 2.5, celsius), ohms: 2.4},
			{id: "n3b", from: "n3", cable: pair(2000, 1.5, celsius), ohms: 9},
			{id: "n4", fuse: 0.0013, cable: pair(1200, 25, celsius), watts: inverter},
		},
	}
}

var branchedCases = map[string]tree{
	"A": branched(12.8, 0.005, 440, 0, 20), "B": branched(12.8, 0.005, 0, 0, 20), "C": branched(12.8, 0.005, 0, 20, 20),
	"D": branched(12.8, 0.005, 440, 0, 60), "E": branched(11.9, 0.025, 440, 0, 20),
}

// nodesOf are the names of our nodes for those of the netlist.
var nodesOf = map[string]string{"bat": posts, "mf": fused, "bus": board, "f1": before("n1"), "n1": "n1", "f2": before("n2"), "n2": "n2",
	"f3": before("n3"), "n3": "n3", "n3b": "n3b", "f4": before("n4"), "n4": "n4"}

func TestTheBranchedNetworkAgreesWithNgspice(t *testing.T) {
	cases := strings.Split(string(oracle.Ask(t, oracle.NGSpice, "testdata/branched.cir")), "CASE ")
	if len(cases) != 6 {
		t.Fatalf("ngspice tells of %d cases, not 5", len(cases)-1)
	}
	for _, told := range cases[1:] {
		name := told[:1]
		n := branchedCases[name].solve()
		used := 0
		for _, m := range regexp.MustCompile(`(?m)^v\((\w+)\) = (\S+)`).FindAllStringSubmatch(told, -1) {
			node, known := nodesOf[m[1]]
			if !known { // the pole behind the inner resistance is no node here
				continue
			}
			used++
			want, err := strconv.ParseFloat(m[2], 64)
			if err != nil {
				t.Fatal(err)
			}
			proof.Check(t, proof.Case{Name: "branched van network, case " + name + ", voltage at " + m[1], Source: "ngspice 39.3, testdata/branched.cir",
				Inputs: "cables from length and cross-section, IEC 60228 class 5", Expected: want, Got: n.at(node), Tolerance: 1e-6, Unit: "V"})
		}
		if used != len(nodesOf) {
			t.Errorf("case %s: %d voltages are compared, not %d", name, used, len(nodesOf))
		}
	}
}

// Losses from the battery's posts, and from the busbar alone: the shared leg must be counted.
func TestTheSharedLegIsCounted(t *testing.T) {
	n := branchedCases["A"].solve()
	for _, c := range []struct {
		node       string
		whole, own float64
	}{{"n1", 0.4336, 0.2633}, {"n2", 0.3924, 0.2222}, {"n3", 0.7147, 0.5445}, {"n4", 0.2839, 0.1137}} {
		proof.Check(t, proof.Case{Name: "lost from the battery's posts to " + c.node, Source: "ngspice 39.3, testdata/branched.cir, case A, difference of two nodes", Inputs: "case A",
			Expected: c.whole, Got: n.at(posts) - n.at(c.node), Tolerance: 6e-5, Unit: "V"})
		proof.Check(t, proof.Case{Name: "lost from the busbar to " + c.node, Source: "the same", Inputs: "case A",
			Expected: c.own, Got: n.at(board) - n.at(c.node), Tolerance: 6e-5, Unit: "V"})
	}
}

func TestShortsAreLimitedByAllThatLiesOnTheWay(t *testing.T) {
	b := branchedCases["A"]
	for _, c := range []struct {
		at   string
		ohms float64
		want float64
	}{
		{"the battery's posts", b.inside, 2560}, {"the busbar", b.toBoard(), 1498.829}, {"n1", b.toEnd("n1"), 68.839}, {"n2", b.toEnd("n2"), 221.876},
		{"n3", b.toEnd("n3"), 133.695}, {"n4", b.toEnd("n4"), 1092.896}, {"n3b", b.toEnd("n3b"), 85.941},
	} {
		proof.Check(t, proof.Case{Name: "short at " + c.at, Source: "12.8 V over the series resistances of testdata/branched.cir, worked out by hand", Inputs: "case A, no other load",
			Expected: c.want, Got: b.volts / c.ohms, Tolerance: 1e-3, Unit: "A"})
	}
}

func TestBeyondTheMostThatALineCarriesTheBreakdownIsTold(t *testing.T) {
	b := branched(12.8, 0.005, 4000, 0, 20)
	for i := range b.legs[:4] {
		b.legs[i].watts, b.legs[i].ohms = 0, 0
	}
	n := b.solve()
	if n.tipped == nil || n.tipped.Tips != "n4" {
		t.Fatalf("got %+v, want n4 to tip it", n.tipped)
	}
	proof.Check(t, proof.Case{Name: "most that the inverter's node can take", Source: "closed form, E²/(4R)", Inputs: "E 12.8 V, R 11.712 mΩ",
		Expected: 3497.268, Got: n.tipped.Alone, Tolerance: 0.01, Unit: "W"})
}

// A constant power behind E and R: U = (E + √(E² − 4RP))/2, I = P/U.
func TestAConstantPowerFindsItsVoltage(t *testing.T) {
	for _, c := range []struct{ e, r, p, u, i float64 }{
		{12.8, 0.1, 60, 12.312698, 4.873018}, {12, 0.02, 1000, 10, 100}, {25.6, 0.05, 300, 25, 12}, {12.8, 0.05, 300, 11.495096, 26.098086},
	} {
		one := tree{volts: c.e, inside: c.r - 6e-6, legs: []leg{{id: "load", watts: c.p}}} // three conductors of 2 µΩ beside it
		u, ok := one.alone("load")
		if !ok {
			t.Fatalf("%+v breaks down", c)
		}
		proof.Check(t, proof.Case{Name: "constant power, its voltage", Source: "closed form, worked out by hand", Inputs: "E, R, P as listed", Expected: c.u, Got: u, Tolerance: 1e-6, Unit: "V"})
		proof.Check(t, proof.Case{Name: "constant power, its current", Source: "closed form, worked out by hand", Inputs: "E, R, P as listed", Expected: c.i, Got: c.p / u, Tolerance: 1e-6, Unit: "A"})
	}
	if n := (tree{volts: 12.8, inside: 0.1, legs: []leg{{id: "load", watts: 410}}}).solve(); n.tipped == nil || math.Abs(n.tipped.Alone-409.6) > 0.1 {
		t.Errorf("got %+v, want 409.6 W at most", n.tipped)
	}
}
