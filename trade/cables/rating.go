package cables

import (
	"math"

	"tumblehome/trade/finding"
)

const (
	usualInsulation = 105.0 // °C that thin-wall vehicle cable stands (ISO 6722 class B in trade language, from memory)
	usualAir        = 40.0  // °C in furniture; common practice
	hotAir          = 60.0  // °C beside an engine or under a dark roof; common practice
	tableAir        = 30.0  // °C of both tables
	wrappedFactor   = 0.5   // in thermal insulation for more than half a metre (BS 7671 regulation 523.9, from memory)
)

var (
	ambientSource = finding.Source{Text: "heat balance, √((Ti − Ta)/(Ti − 30)); gives the factors printed with 33 CFR 183.425 and the Canadian code", Sure: finding.Computed}
	bundleSource  = finding.Source{Text: "bundling factors printed with 33 CFR 183.425 and in a cable maker's table; the law asks for them from 50 V on, here they always count", Sure: finding.Read}
)

// AmbientFactor is what is left of a rating at 30 °C in warmer air, by what the insulation stands: both in °C.
//
//	f = √((Ti − Ta)/(Ti − 30))
//
// Nothing is left where the air is as warm as the insulation may be.
func AmbientFactor(insulation, air float64) float64 {
	if insulation <= air || insulation <= tableAir {
		return 0
	}
	return math.Sqrt((insulation - air) / (insulation - tableAir))
}

// BundleFactor is what is left where so many loaded cores lie side by side.
func BundleFactor(cores int) float64 {
	switch {
	case cores <= 2:
		return 1
	case cores == 3:
		return 0.7
	case cores <= 6:
		return 0.6
	case cores <= 24:
		return 0.5
	}
	return 0.4
}

// rating is what a cross-section carries where the way lies.
func (w Way) rating(area float64) Rating {
	insulation := w.Insulation
	if insulation == 0 {
		insulation = usualInsulation
	}
	r := Rating{Air: usualAir, Cores: max(w.Bundled, 2), Wrapped: 1}
	if w.Hot {
		r.Air = hotAir
	}
	if w.Surrounded {
		r.Wrapped = wrappedFactor
	}
	table, source := tableRating(area, insulation)
	r.Table, r.From, r.Insulation = table, source, insulation
	r.Ambient, r.Bundle = AmbientFactor(insulation, r.Air), BundleFactor(r.Cores)
	r.Amps = r.Table * r.Ambient * r.Bundle * r.Wrapped
	return r
}
