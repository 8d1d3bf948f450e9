package power_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/power"
)

const (
	manual   = "battery monitor manual, Peukert chapter: percent of a 100 Ah (20 h) battery"
	pvwatts  = "NREL/TP-6A20-62641, default losses, as in the public source of pvlib"
	pvlib    = "published tests of pvlib-python (August 2026)"
	electric = "worked diary, by hand"
)

func TestPeukertAsABatteryMonitorsManualPrintsIt(t *testing.T) {
	currents := []float64{5, 10, 25, 50, 75, 100, 150, 200}
	for k, printed := range map[float64][]float64{
		1.10: {100, 93, 85, 79, 76, 74, 71, 69},
		1.20: {100, 87, 72, 63, 58, 55, 51, 48},
		1.25: {100, 84, 67, 56, 51, 47, 42, 40},
		1.30: {100, 81, 62, 50, 44, 41, 36, 33},
		1.40: {100, 76, 52, 40, 34, 30, 26, 23},
	} {
		for i, want := range printed {
			hours := power.RunTime(100, 20, currents[i], k)
			proof.Check(t, proof.Case{Name: fmt.Sprintf("k %.2f at %.0f A", k, currents[i]), Source: manual, Inputs: "t = H (C/(I H))^k",
				Expected: want, Got: hours * currents[i], Tolerance: 1, Unit: "%"}) // the print rounds both ways
		}
	}
	proof.Check(t, proof.Case{Name: "120 Ah, k 1.4, 120 A", Source: "tutoring page, prints 0.30 h", Inputs: "H 20", Expected: 0.301709, Got: power.RunTime(120, 20, 120, 1.4), Tolerance: 1e-6, Unit: "h"})
	proof.Check(t, proof.Case{Name: "100 Ah, k 1.2, 5 A: the rated hour, not C at 1 A (which some texts make 14.5 h)", Source: "definition of the rating", Inputs: "H 20", Expected: 20, Got: power.RunTime(100, 20, 5, 1.2), Tolerance: 1e-12, Unit: "h"})
}

func TestLossesOfPVWatts(t *testing.T) {
	all := []float64{0.02, 0.03, 0, 0.02, 0.02, 0.005, 0.015, 0.01, 0, 0.03}
	proof.Check(t, proof.Case{Name: "all default losses", Source: pvwatts, Inputs: "2 3 0 2 2 0.5 1.5 1 0 3 %", Expected: 14.0757, Got: 100 * (1 - power.Kept(all...)), Tolerance: 5e-5, Unit: "%"})
	all[8] = 0.01
	proof.Check(t, proof.Case{Name: "with one for age", Source: pvwatts, Inputs: "the same, age 1 %", Expected: 14.9349, Got: 100 * (1 - power.Kept(all...)), Tolerance: 5e-5, Unit: "%"})
}

func TestCellsGetWarmByTheLight(t *testing.T) {
	proof.Check(t, proof.Case{Name: "Ross with k 0.0375", Source: pvlib, Inputs: "G 1000, Ta 30, NOCT 50", Expected: 67.5, Got: power.CellTemperature(30, 1000, 50), Tolerance: 1e-9, Unit: "°C"})
	proof.Check(t, proof.Case{Name: "at the NOCT conditions themselves", Source: "definition of NOCT: 800 W/m2, 20 °C", Inputs: "NOCT 47", Expected: 47, Got: power.CellTemperature(20, 800, 47), Tolerance: 1e-9, Unit: "°C"})
}

func TestGlassTakesLessOfSlantingLight(t *testing.T) {
	for _, c := range []struct{ angle, want float64 }{{0, 1}, {60, 0.95}, {80, 0.762061}, {90, 0}} {
		got := power.Incidence(math.Cos(c.angle * math.Pi / 180))
		if c.angle == 90 {
			got = power.Incidence(0)
		}
		proof.Check(t, proof.Case{Name: fmt.Sprintf("at %.0f°", c.angle), Source: "ASHRAE form 1 − 0.05 (1/cos i − 1), Souka and Safwat 1966, by hand", Inputs: "b0 0.05", Expected: c.want, Got: got, Tolerance: 1e-6, Unit: "1"})
	}
}

func TestAnInverterOfAThousandWatts(t *testing.T) {
	for _, c := range []struct{ gives, want float64 }{{500, 90.9}, {13, 54.7}} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("efficiency at %.0f W", c.gives), Source: "10 + 1.06 P + 4e-5 P², common practice", Inputs: "1000 W", Expected: c.want, Got: 100 * c.gives / power.InverterInput(c.gives, 1000), Tolerance: 0.5, Unit: "%"})
	}
	proof.Check(t, proof.Case{Name: "an inverter of 60 W idle", Source: "measured idle of a 60 W unit 1.46 W (article); ours is within its scatter", Inputs: "60 W", Expected: 1.46, Got: power.InverterInput(0, 60), Tolerance: 0.9, Unit: "W"})
}

func TestAFridgeByTheWarmthAboutIt(t *testing.T) {
	proof.Check(t, proof.Case{Name: "25 °C about 5 °C", Source: "UA (Ta − Ti)/COP by hand", Inputs: "0.9 W/K, COP 1.3", Expected: 13.846, Got: power.FridgePower(0.9, 25, 5, 1.3), Tolerance: 1e-3, Unit: "W"})
	for _, c := range []struct{ room, low, high float64 }{{15, 15, 20}, {20, 20, 25}, {25, 28, 32}, {32, 38, 45}} {
		duty := 100 * power.FridgePower(0.9, c.room, 5, 1.3) / 45
		proof.Check(t, proof.Case{Name: fmt.Sprintf("duty of a 45 W chest at %.0f °C", c.room), Source: "typical duties of a 45 W chest at +5 °C, common practice", Inputs: "0.9 W/K, COP 1.3",
			Expected: (c.low + c.high) / 2, Got: duty, Tolerance: (c.high-c.low)/2 + 1, Unit: "%"})
	}
}

func TestWhatARelayLetsThrough(t *testing.T) {
	proof.Check(t, proof.Case{Name: "14.2 V on 12.4 V through 30 mΩ", Source: "I = (Ua − Ub)/R by hand", Inputs: "0.03 ohm", Expected: 60, Got: power.RelayCurrent(14.2, 12.4, 0.03), Tolerance: 1e-9, Unit: "A"})
}

func TestTheLastFifthOfAChargeTakesAsLongAsBatteriesTake(t *testing.T) {
	for _, c := range []struct {
		of        power.Chemistry
		low, high float64
	}{{power.Flooded, 3, 6}, {power.AGM, 1.5, 4}, {power.Gel, 2.5, 5}, {power.Lithium, 0, 0.7}} {
		proof.Check(t, proof.Case{Name: "last fifth of " + string(c.of), Source: "hours at absorption usual for the kind, common practice (2 to 4 h for lead: battery maker)", Inputs: "to 98 % of full",
			Expected: (c.low + c.high) / 2, Got: power.LastFifth(c.of), Tolerance: (c.high - c.low) / 2, Unit: "h"})
	}
}

func TestColdTakesOfABattery(t *testing.T) {
	for _, c := range []struct {
		of   power.Chemistry
		at   float64
		want float64
	}{{power.AGM, 25, 100}, {power.AGM, 10, 92}, {power.AGM, 0, 85}, {power.AGM, -10, 72.5}, {power.AGM, -40, 55}, {power.Lithium, 0, 85}, {power.Lithium, -20, 70}, {power.Lithium, 40, 100}} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("%s at %.0f °C", c.of, c.at), Source: "capacity at the 20 h rate, common practice; lithium between two makers", Inputs: "", Expected: c.want, Got: 100 * power.Capacity(c.of, c.at), Tolerance: 0.01, Unit: "%"})
	}
	for _, c := range []struct{ at, want float64 }{{-0.1, 0}, {0, 0.1}, {5, 0.2}, {10, 1}, {25, 0.75}, {50, 0.1}, {61, 0}} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("charge into lithium at %.1f °C", c.at), Source: "lithium telecom battery manual, table 4.3, fast", Inputs: "", Expected: c.want, Got: power.ColdCharge(c.at), Tolerance: 1e-12, Unit: "C"})
	}
}
