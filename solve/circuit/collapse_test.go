package circuit_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/circuit"
)

// line is one load at the end of one conductor.
func line(volts, inside, along float64, l circuit.Load) circuit.Network {
	l.From, l.To = "far", "zero"
	return circuit.Network{Reference: "zero",
		Sources:    []circuit.Source{{Name: "battery", From: "zero", To: "near", Voltage: volts, Resistance: inside}},
		Conductors: []circuit.Conductor{{Name: "wire", From: "near", To: "far", Resistance: along}},
		Loads:      []circuit.Load{l}}
}

func collapseOf(t *testing.T, n circuit.Network) *circuit.Collapse {
	t.Helper()
	_, err := circuit.Solve(n)
	var c *circuit.Collapse
	if !errors.As(err, &c) {
		t.Fatalf("got %v, want a collapse", err)
	}
	return c
}

func TestAConstantPowerHasTheUpperVoltageOfTheClosedForm(t *testing.T) {
	const e, r = 12.8, 0.011712
	limit := e * e / (4 * r)
	for _, p := range []float64{-5000, -100, 1, 440, 2000, 3000, 3400, 0.9999 * limit, 0.99999999 * limit} {
		got, _ := solve(t, line(e, 0.005, r-0.005, circuit.Load{Power: p})).Voltage("far")
		proof.Check(t, proof.Case{Name: "constant power at the end of a line: its voltage", Source: "closed form, (E + √(E² − 4RP))/2",
			Inputs: fmt.Sprintf("E 12.8 V, R 11.712 mΩ, P %.10g W", p), Expected: (e + math.Sqrt(e*e-4*r*p)) / 2, Got: got, Tolerance: 1e-8, Unit: "V"})
	}
}

func TestMorePowerThanALineCarriesIsACollapseThatSaysTheMost(t *testing.T) {
	for _, p := range []float64{3497.27, 4000, 1e6} {
		c := collapseOf(t, line(12.8, 0.005, 0.006712, circuit.Load{Name: "inverter", Power: p}))
		proof.Check(t, proof.Case{Name: "most power at the end of a line", Source: "closed form, E²/(4R)", Inputs: fmt.Sprintf("E 12.8 V, R 11.712 mΩ, %g W asked", p),
			Expected: 3497.267760, Got: c.Alone, Tolerance: 1e-3 * p / 4000, Unit: "W"})
		near(t, "share", c.Share, 3497.2677596/p, 1e-9)
		if c.Name != "inverter" || c.Asked != p || c.Unit != "W" {
			t.Errorf("got %+v", c)
		}
	}
}

// Behind E and R a load that draws P/u + I + u/G finds u from (1 + R/G)·u² − (E − R·I)·u + R·P = 0.
func TestAMixedLoadHasTheVoltageOfItsQuadratic(t *testing.T) {
	const e, r, p, i, g = 12.8, 0.05, 200., 8., 3.
	a, b := 1+r/g, e-r*i
	l := circuit.Load{Power: p, Current: i, Resistance: g}
	got, _ := solve(t, line(e, 0.02, 0.03, l)).Voltage("far")
	proof.Check(t, proof.Case{Name: "power, current and resistance in one load: its voltage", Source: "closed form, a quadratic",
		Inputs: "E 12.8 V, R 50 mΩ, 200 W + 8 A + 3 Ω", Expected: (b + math.Sqrt(b*b-4*a*r*p)) / (2 * a), Got: got, Tolerance: 1e-9, Unit: "V"})

	l.Power = 4000 // the share s that is carried makes (E − R·s·I)² equal to 4·a·R·s·P
	c := collapseOf(t, line(e, 0.02, 0.03, l))
	s := c.Share
	near(t, "discriminant at the limit, V²", (e-r*s*i)*(e-r*s*i)-4*a*r*s*l.Power, 0, 1e-6)
}

func TestAConstantCurrentIsCarriedUntilNoVoltageIsLeft(t *testing.T) {
	if got, _ := solve(t, line(12, 0.05, 0.05, circuit.Load{Current: 119.9})).Voltage("far"); math.Abs(got-0.01) > 1e-9 {
		t.Errorf("got %g V, want 12 V less 119.9 A in 0.1 Ω", got)
	}
	c := collapseOf(t, line(12, 0.05, 0.05, circuit.Load{Name: "lamp", Current: 150}))
	near(t, "most current, A", c.Alone, 120, 1e-6)
	if c.Unit != "A" || c.Asked != 150 {
		t.Errorf("got %+v", c)
	}
}

func TestTheLoadThatTipsIsNamedAndNotTheSmallOneBehindIt(t *testing.T) {
	n := line(12.8, 0.005, 0.006712, circuit.Load{Name: "heavy", Power: 4000})
	n.Conductors = append(n.Conductors, circuit.Conductor{Name: "thin", From: "far", To: "end", Resistance: 0.2}, circuit.Conductor{Name: "other", From: "near", To: "side", Resistance: 0.1})
	n.Loads = append(n.Loads, circuit.Load{Name: "small", From: "end", To: "zero", Power: 2}, circuit.Load{Name: "apart", From: "side", To: "zero", Power: 50})
	c := collapseOf(t, n)
	if c.Load != 0 || c.Name != "heavy" || c.Alone <= 3000 || c.Alone >= 3497.3 {
		t.Errorf("got %+v, want the heavy load to tip it at a little less than 3497 W", c)
	}
	n.Loads[0].Power = 0.999999 * c.Alone
	solve(t, n)
	n.Loads[0].Power = 1.000001 * c.Alone
	if again := collapseOf(t, n); !strings.Contains(again.Error(), "loads[0] (heavy) tips it") || !strings.Contains(again.Error(), "W") {
		t.Errorf("got %v", again)
	}
}

func TestASmallLoadOnAThinWireTipsBeforeALargeOneOnAThickWire(t *testing.T) {
	for _, small := range []circuit.Load{{Power: 100}, {Current: 30}} {
		n := line(12, 0.001, 0.002, circuit.Load{Name: "large", Power: 1500})
		small.Name, small.From, small.To = "small", "end", "zero"
		n.Conductors = append(n.Conductors, circuit.Conductor{Name: "thin", From: "near", To: "end", Resistance: 1})
		n.Loads = append(n.Loads, small)
		if c := collapseOf(t, n); c.Load != 1 || c.Name != "small" || c.Alone < 11 || c.Alone > 36 {
			t.Errorf("got %+v, want the small load to tip it", c)
		}
	}
}

func TestWhenTheOthersAloneAreTooMuchNothingIsLeft(t *testing.T) {
	n := line(12.8, 0.005, 0.006712, circuit.Load{Name: "first", Power: 4000})
	n.Loads = append(n.Loads, circuit.Load{Name: "second", From: "far", To: "zero", Power: 3999})
	if c := collapseOf(t, n); c.Alone != 0 || !strings.Contains(c.Error(), "others alone") {
		t.Errorf("got %+v: %v", c, c)
	}
}

// What puts power in counts as it is; without it the same load could not be carried.
func TestPowerThatIsPutInHelpsToCarry(t *testing.T) {
	n := line(12.8, 0.005, 0.006712, circuit.Load{Name: "inverter", Power: 4000})
	n.Loads = append(n.Loads, circuit.Load{Name: "charger", From: "far", To: "zero", Power: -600})
	got, _ := solve(t, n).Voltage("far")
	near(t, "voltage with 3400 W net", got, (12.8+math.Sqrt(12.8*12.8-4*0.011712*3400))/2, 1e-9)
	n.Loads[0].Power = 5000
	near(t, "most with the charger, W", collapseOf(t, n).Alone, 12.8*12.8/4/0.011712+600, 1e-3)
}
