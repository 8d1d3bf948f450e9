package warmth_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/warmth"
)

func TestStackFlowIsThatOfTheTable(t *testing.T) {
	const source = "own recalculation of BS 5925 and ASHRAE by an independent script: Q = Cd·A*·√(2gH·ΔT/Ti), Cd 0.6"
	for _, c := range []struct{ low, high, apart, in, out, q, neutral float64 }{
		{10, 75, 1.7, 18, 0, 3.07, 1.67}, {15, 100, 1.7, 18, 0, 4.60, 1.66}, {5, 15, 1.7, 18, 0, 1.47, 1.52}, {5, 30, 1.7, 18, 0, 1.53, 1.65},
		{15, 100, 1.7, 15, 10, 2.44, 1.66}, {100, 100, 1.5, 20, 5, 18.74, 0.75},
	} {
		f := warmth.NewFlow([]warmth.Vent{{Free: c.low / 1e4, Z: 0}, {Free: c.high / 1e4, Z: 1000 * c.apart}}, 0)
		f.Wind = 0
		inputs := fmt.Sprintf("%g cm2 low, %g cm2 high, %g m apart, %g inside, %g °C outside", c.low, c.high, c.apart, c.in, c.out)
		proof.Check(t, proof.Case{Name: "air by stack", Source: source, Inputs: inputs, Expected: c.q, Got: 3600 * f.At(c.in, c.out), Tolerance: 0.0051, Unit: "m3/h"})
		proof.Check(t, proof.Case{Name: "neutral level above the low opening", Source: source + " (with the same air inside and outside: 0.75 where the opening sizes are equal)", Inputs: inputs,
			Expected: c.neutral, Got: f.Neutral, Tolerance: 0.011, Unit: "m"})
	}
}

func TestWindAndStackAddByPressure(t *testing.T) {
	f := warmth.NewFlow([]warmth.Vent{{Free: 15e-4, Z: 0}, {Free: 100e-4, Z: 1700}}, 0)
	proof.Check(t, proof.Case{Name: "air by wind", Source: "own recalculation by an independent script: 6.8 m3/h at 3 m/s; half of it at 1.5", Inputs: "15 and 100 cm2 in series, ΔCp 0.5, Cd 0.6",
		Expected: 3.4, Got: 3600 * f.Wind, Tolerance: 0.05, Unit: "m3/h"})
	stack := f
	stack.Wind = 0
	if got, want := f.At(18, 0), math.Hypot(stack.At(18, 0), f.Wind); math.Abs(got-want) > 1e-12 {
		t.Errorf("%g, want %g", got, want)
	}
}

// night is the usual night of one sleeper or more in a plain van; vents may be given.
func night(in warmth.Inputs, people int, vents ...warmth.Vent) warmth.Night {
	for range people {
		in.Sleepers = append(in.Sleepers, warmth.Sleeper{Mass: 75})
	}
	in.Vents, in.AirSaid = vents, true
	r := warmth.Work(in)
	return r.Nights[r.Usual]
}

func lined() warmth.Inputs {
	return wall(0, 0, course(of(0.04, 1500), 0, 20, 0, 20), course(of(0.13, 70), 20, 24, 20, 24))
}

func TestCarbonDioxideFollowsTheClosedFormula(t *testing.T) {
	n := night(lined(), 2) // seals let 5 m3 through in an hour, of a room of 10 m3
	at := func(hour int) float64 {
		for _, h := range n.Hours {
			if h.Hour == hour {
				return h.CO2
			}
		}
		t.Fatalf("no hour %d", hour)
		return 0
	}
	const steady = 4820.0
	want := steady + (at(22)-steady)*math.Exp(-5.0/10*7)
	proof.Check(t, proof.Case{Name: "carbon dioxide seven hours on", Source: "C(t) = Ce + G/Q·(1 − e^(−Qt/V)) + (C0 − Ce)·e^(−Qt/V); steady 4820 ppm as tabled in the project's reference",
		Inputs: "two adults of 11 L/h, V 10 m3, Q 5 m3/h, from what it was at 23:00 to 6:00", Expected: want, Got: at(5), Tolerance: 1, Unit: "ppm"})
}

func TestTwiceTheVentsGiveFresherDrierAndColderAir(t *testing.T) {
	vents := func(times float64) []warmth.Vent {
		return []warmth.Vent{{Free: times * 20e-4, Z: 0, Fixed: true}, {Free: times * 40e-4, Z: 1700, Roof: true, Fixed: true}}
	}
	in := lined()
	in.Glass = []warmth.Glass{{About: "/shell/openings/rear", Area: 1}}
	in.Heater = &warmth.Heater{About: "/fittings/heater", Power: 2000, Flued: true}
	once, twice := night(in, 2, vents(1)...), night(in, 2, vents(2)...)
	if !(twice.CO2 < 0.8*once.CO2 && twice.Condensed() < once.Condensed() && twice.Heat > 1.05*once.Heat && twice.Ventilate > 1.5*once.Ventilate) {
		t.Errorf("once %.0f ppm, %.0f g, %.2f kWh; twice %.0f ppm, %.0f g, %.2f kWh", once.CO2, 1000*once.Condensed(), once.Heat, twice.CO2, 1000*twice.Condensed(), twice.Heat)
	}
}

func TestFixedAirIsAskedAsTheInspectorsQuoteIt(t *testing.T) {
	for _, c := range []struct {
		name      string
		plan      float64
		burner    bool
		high, low float64
	}{
		{"a small van with a flame", 4.9, true, 75, 10}, {"a larger van with a flame", 6, true, 100, 15}, {"no flame", 6, false, 15, 5},
	} {
		in := lined()
		in.Plan = c.plan
		in.Burners = []warmth.Burner{{About: "/fittings/hob", Power: 1800, Inside: c.burner}}
		f := warmth.Work(in).Fixed
		if f.WantHigh != c.high || f.WantLow != c.low {
			t.Errorf("%s: %g high and %g low are asked, want %g and %g", c.name, f.WantHigh, f.WantLow, c.high, c.low)
		}
	}
}

// A hole of 10 m2 in one place exchanges air by itself (BS 5925, one side: 0.025·A·v), however small the opening above it is.
func TestASmallVentDoesNotThrottleALargeHole(t *testing.T) {
	large := warmth.NewFlow([]warmth.Vent{{Free: 10, Z: 0}}, 0)
	both := warmth.NewFlow([]warmth.Vent{{Free: 10, Z: 0}, {Free: 78e-4, Z: 1800}}, 0)
	proof.Check(t, proof.Case{Name: "air by wind through one hole", Source: "BS 5925, one side, 0.025·A·v (from memory)", Inputs: "10 m2, 1.5 m/s; 78 cm2 high up besides",
		Expected: 0.025 * 10 * 1.5 * 3600, Got: 3600 * both.Wind, Tolerance: 1e-6, Unit: "m3/h"})
	if both.At(15, 0) < large.At(15, 0) {
		t.Errorf("%g m3/s with a vent more, %g without", both.At(15, 0), large.At(15, 0))
	}
}
