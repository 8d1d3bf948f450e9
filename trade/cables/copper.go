package cables

import (
	"slices"

	"tumblehome/solve/circuit"
	"tumblehome/trade/finding"
)

// standard are the cross-sections that are sold [mm2].
var standard = []float64{0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120}

const warmCopper = 30.0 // °C at which losses are told

var copperSource = finding.Source{Text: "IEC 60228 class 5, largest resistance at 20 °C, with 0.393 % more for each K", Sure: finding.Read}

// perMetre is the largest resistance of one flexible core [Ω/m] at a copper temperature [°C]. A cross-section that is in no table has that of the next
// smaller one that is, in proportion.
func perMetre(area, celsius float64) float64 {
	if r, err := circuit.PerMetre(circuit.Flexible, area, celsius); err == nil {
		return r
	}
	below := 0.5
	for _, s := range standard {
		if s <= area {
			below = s
		}
	}
	r, err := circuit.PerMetre(circuit.Flexible, below, celsius)
	if err != nil { // a temperature that no cable has
		return 0
	}
	return r * below / area
}

// pair is the resistance of a positive and a negative of copper [Ω] along a way [mm].
func pair(length, area, celsius float64) float64 { return 2 * length / 1000 * perMetre(area, celsius) }

// Loss is what two cores of flexible copper lose [V] along a way [mm] with a current [A].
//
//	ΔU = 2·l·r·I
func Loss(length, area, amps, celsius float64) float64 { return pair(length, area, celsius) * amps }

// SectionFor is the cross-section [mm2] at which two cores lose no more than a voltage [V], by copper's resistivity [Ω·mm2/m]:
//
//	A = ρ·2·l·I/ΔU
func SectionFor(length, amps, loss, resistivity float64) float64 {
	return resistivity * 2 * length / 1000 * amps / loss
}

// nextStandard is the smallest standard cross-section that passes; false where none does.
func nextStandard(passes func(float64) bool) (float64, bool) {
	i := slices.IndexFunc(standard, passes)
	if i < 0 {
		return 0, false
	}
	return standard[i], true
}
