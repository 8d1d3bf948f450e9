package cables_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
)

const (
	rhoCommon = 0.01785 // Ω·mm2/m, of a how-to article
	rho50     = 0.01989 // Ω·mm2/m, copper at 50 °C as EN 1648-2 is quoted
	rho20     = 1.0 / 58
)

// Worked examples as they were printed, each by the formula of its source.
func TestWorkedExamplesOfOthersComeOut(t *testing.T) {
	for _, c := range []proof.Case{
		{Name: "V1: cable that loses what the article says", Source: "a how-to article: 1.3 mm2, 20 m route, 1 A, 0.549 V", Inputs: "ρ 0.01785, return counted", Expected: 1.3,
			Got: cables.SectionFor(20000, 1, 0.549, rhoCommon), Tolerance: 0.001, Unit: "mm2"},
		{Name: "V2: bilge pump, circular mils", Source: "a marine supplier: CM = 10.75·I·L/E", Inputs: "10 A, 21 ft in all, 3 % of 12 V", Expected: 6271,
			Got: circularMils(cables.SectionFor(10.5*304.8, 10, 0.36, ohmMilFoot)), Tolerance: 1, Unit: "cmil"},
		{Name: "V3: one conductor of 1.5 mm2 at 0.0127 Ω/m", Source: "a cable-size guide: 50 W at 12 V over 5 m lose 0.265 V", Inputs: "one core counted: half of ours", Expected: 1.5,
			Got: cables.SectionFor(5000, 50.0/12, 0.265, 0.0127*1.5/2), Tolerance: 0.003, Unit: "mm2"},
		{Name: "V4: 1.0 mm2 at 38 mV/A/m, there and back", Source: "an article: 50 W over 12 m lose 3.802 V both ways", Inputs: "38 mV/A/m for one way", Expected: 1,
			Got: cables.SectionFor(12000, 50.0/12, 3.802, 0.038), Tolerance: 0.001, Unit: "mm2"},
		{Name: "V5: section for 24.13 A over 5 m at 0.8 V", Source: "EN 1648-2 as an owner quotes it: 6 mm2, about 24 A", Inputs: "ρ 0.01989", Expected: 6, Got: cables.SectionFor(5000, 24.13, 0.8, rho50), Tolerance: 0.01, Unit: "mm2"},
		{Name: "V6: section for 60 A over 5 m at 0.2 V", Source: "EN 1648-2 as an owner quotes it: 60 mm2 (computes to 59.67)", Inputs: "ρ 0.01989", Expected: 59.67, Got: cables.SectionFor(5000, 60, 0.2, rho50), Tolerance: 0.005, Unit: "mm2"},
		{Name: "section for 10 A over 5 m at 3 % of 12 V", Source: "IEC 60028 copper, worked out by hand", Inputs: "ρ 1/58", Expected: 4.7893, Got: cables.SectionFor(5000, 10, 0.36, rho20), Tolerance: 1e-4, Unit: "mm2"},
		{Name: "loss in 6 mm2 at 20 °C", Source: "IEC 60228 class 5, worked out by hand", Inputs: "10 A, 5 m", Expected: 0.330, Got: cables.Loss(5000, 6, 10, 20), Tolerance: 1e-9, Unit: "V"},
		{Name: "loss in 6 mm2 at 50 °C", Source: "IEC 60228 class 5 and 0.393 %/K, worked out by hand", Inputs: "10 A, 5 m", Expected: 0.3689, Got: cables.Loss(5000, 6, 10, 50), Tolerance: 5e-5, Unit: "V"},
	} {
		proof.Check(t, c)
	}
}

// ohmMilFoot is 10.75 Ω·cmil/ft in Ω·mm2/m.
const (
	squareMil  = 5.067075e-4 // mm2 of a circular mil
	ohmMilFoot = 10.75 * squareMil / 0.3048
)

func circularMils(mm2 float64) float64 { return mm2 / squareMil }

func TestGaugesHaveTheAreasOfTheirFormula(t *testing.T) {
	want := map[int]float64{18: 0.823, 16: 1.309, 14: 2.081, 12: 3.309, 10: 5.261, 8: 8.366, 6: 13.302, 4: 21.151, 3: 26.671, 2: 33.631, 1: 42.408, 0: 53.475, -1: 67.431, -2: 85.029, -3: 107.219}
	for n, area := range want {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("American gauge %d", n), Source: "AWG conversion page (10 is 5.261 mm2), the rest by its formula", Inputs: fmt.Sprintf("n = %d", n),
			Expected: area, Got: cables.Gauge(n), Tolerance: 1e-3, Unit: "mm2"})
	}
}

func TestWarmAirLeavesWhatPrintedFactorsSay(t *testing.T) {
	for _, c := range []struct{ insulation, air, want, off float64 }{
		{60, 50, 0.58, 0.005}, {75, 50, 0.75, 0.005}, {90, 50, 0.82, 0.005}, {105, 50, 0.86, 0.005}, {125, 50, 0.89, 0.005}, {200, 50, 0.94, 0.005},
		{70, 40, 0.866, 5e-4}, {70, 60, 0.5, 5e-4}, {90, 70, 0.577, 5e-4}, {105, 60, 0.775, 5e-4}, {105, 40, 0.931, 5e-4}, {125, 60, 0.827, 5e-4},
	} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("insulation for %.0f °C in air of %.0f °C", c.insulation, c.air), Source: "Canadian code, open data file, 50 °C; else √((Ti − Ta)/(Ti − 30)) by hand",
			Inputs: "rating at 30 °C is 1", Expected: c.want, Got: cables.AmbientFactor(c.insulation, c.air), Tolerance: c.off, Unit: "1"})
	}
	if got := cables.AmbientFactor(70, 70); got != 0 {
		t.Errorf("air as warm as the insulation may be leaves %g", got)
	}
}

func TestCablesSideBySideCarryLess(t *testing.T) {
	for cores, want := range map[int]float64{1: 1, 2: 1, 3: 0.7, 4: 0.6, 6: 0.6, 7: 0.5, 24: 0.5, 25: 0.4, 80: 0.4} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("%d loaded cores in one bundle", cores), Source: "bundling factors as a marine cable catalogue prints them", Inputs: "rating alone is 1",
			Expected: want, Got: cables.BundleFactor(cores), Tolerance: 0, Unit: "1"})
	}
}

func TestACableLivesThroughAShort(t *testing.T) {
	for area, want := range map[float64]float64{0.75: 7439, 1: 13225, 1.5: 29756, 2.5: 82656, 4: 211600, 6: 476100, 10: 1.3225e6, 16: 3.3856e6, 25: 8.2656e6, 35: 1.6201e7, 50: 3.3063e7} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("k²S² of %g mm2", area), Source: "IEC 60364-4-43, k = 115, worked out by hand", Inputs: "PVC on copper", Expected: want, Got: cables.Withstands(area), Tolerance: want * 6e-5, Unit: "A2s"})
	}
}

func TestBothTablesOfCurrentRise(t *testing.T) {
	insulations := []float64{60, 75, 90, 105, 125, 200}
	for _, insulation := range insulations {
		before := 0.0
		for _, area := range []float64{0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120} {
			amps := cables.TableRating(area, insulation)
			if amps < before {
				t.Errorf("%g mm2 at %g °C carries %g A, less than the one before", area, insulation, amps)
			}
			before = amps
		}
	}
	for _, c := range []struct{ area, insulation, want float64 }{{2.5, 105, 35}, {16, 105, 120}, {10, 105, 80}, {35, 105, 210}, {1, 105, 20}, {6, 75, 40}} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("%g mm2 with insulation for %g °C", c.area, c.insulation), Source: "33 CFR 183.425 table 5 (read) and ISO 10133 table A.1 (from memory): the lower",
			Inputs: "single, 30 °C", Expected: c.want, Got: cables.TableRating(c.area, c.insulation), Tolerance: 0, Unit: "A"})
	}
	if got := cables.TableRating(0.5, 105); math.Abs(got-16*0.5/0.75) > 1e-9 {
		t.Errorf("half a square millimetre carries %g A", got)
	}
}
