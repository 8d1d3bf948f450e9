package conduction

import "math"

// A Direction is that of the heat flow against gravity. Flow within 30° of level counts as level.
type Direction int

const (
	Level Direction = iota
	Upward
	Downward
)

func (d Direction) choose(level, upward, downward float64) float64 {
	switch d {
	case Upward:
		return upward
	case Downward:
		return downward
	}
	return level
}

const (
	stefanBoltzmann = 5.670374419e-8 // W/(m²·K⁴)
	stillAir        = 0.025          // W/(m·K), conductivity of air as ISO 6946 rounds it
	freezing        = 273.15         // K at 0 °C
)

// An AirLayer is an unventilated gap of air between two faces, or a small closed cavity.
type AirLayer struct {
	Thickness                float64   // m, along the heat flow, above 0 and up to 0.3
	Width                    float64   // m, across it; 0 stands for more than ten times Thickness
	EmissivityA, EmissivityB float64   // of the two faces, above 0 and up to 1
	Mean                     float64   // mean temperature, °C
	Flow                     Direction // of heat
}

// Resistance is the layer's thermal resistance, m²·K/W:
//
//	R = 1/(ha + E·hr0·(1 + √(1 + d²/b²) − d/b)/2),  E = 1/(1/ε1 + 1/ε2 − 1),  hr0 = 4·σ·Tm³
//
// with d the thickness and b the width, and ha, for a difference of not more than 5 K between the faces, the greater of
// 0.025/d and 1.25 (level), 1.95 (upward) or 0.12·d^−0.44 (downward). Source: ISO 6946, annex on airspaces (from
// memory; agrees with the standard's table of air layers within its rounding). Without width the bracket is 2.
//
// Doubtful: bright foil with heat flowing upward. A trade table gives 0.37 for 13 mm at 23 °C where this gives 0.45.
func (a AirLayer) Resistance() float64 {
	d := a.Thickness
	convective := a.Flow.choose(1.25, 1.95, 0.12*math.Pow(d, -0.44))
	shape := 1.0
	if a.Width > 0 {
		shape = (1 + math.Hypot(1, d/a.Width) - d/a.Width) / 2
	}
	exchange := 1 / (1/a.EmissivityA + 1/a.EmissivityB - 1)
	return 1 / (max(convective, stillAir/d) + exchange*shape*radiative(a.Mean))
}

// Conductivity is that of a solid which would resist as much along the heat flow, W/(m·K), for use in a Region.
func (a AirLayer) Conductivity() float64 { return a.Thickness / a.Resistance() }

// InnerSurface is the surface resistance Rsi in still room air, m²·K/W: 1/(hc + ε·hr0), hc 2.5 level, 5.0 upward, 0.7
// downward, at the mean temperature, °C, of surface and room. Source: ISO 6946, annex on surface resistances (from
// memory); with ε 0.9 and 20 °C it gives the standard's 0.13, 0.10 and 0.17.
func InnerSurface(flow Direction, emissivity, mean float64) float64 {
	return 1 / (flow.choose(2.5, 5, 0.7) + emissivity*radiative(mean))
}

// OuterSurface is the surface resistance Rse in a wind of v m/s, m²·K/W: 1/(4 + 4·v + ε·hr0). Source as InnerSurface.
func OuterSurface(v, emissivity, mean float64) float64 {
	return 1 / (4 + 4*v + emissivity*radiative(mean))
}

// radiative is hr0, the radiative coefficient of black faces at a mean temperature in °C, W/(m²·K).
func radiative(mean float64) float64 {
	t := mean + freezing
	return 4 * stefanBoltzmann * t * t * t
}
