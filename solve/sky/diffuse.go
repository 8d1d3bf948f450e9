package sky

import "math"

// Clearness is the share of the light outside the atmosphere that reaches the ground, both on a level plane in one
// unit; 0 where there is none outside.
func Clearness(global, outside float64) float64 {
	if outside <= 0 {
		return 0
	}
	return max(0, global/outside)
}

// DiffuseShare is the share of an hour's global light that comes from the sky rather than the sun, by the hour's
// clearness. Erbs, Klein and Duffie 1982, equation 1.
func DiffuseShare(clearness float64) float64 {
	k := clearness
	switch {
	case k <= 0.22:
		return 1 - 0.09*max(0, k)
	case k <= 0.80:
		return 0.9511 + k*(-0.1604+k*(4.388+k*(-16.638+k*12.336)))
	}
	return 0.165
}

// DailyDiffuseShare is the same for a whole day, by the day's clearness and its sunset hour angle; winter days, under
// 81.4°, have their own curve. Erbs, Klein and Duffie 1982; coefficients from memory.
func DailyDiffuseShare(clearness, sunset float64) float64 {
	k := max(0, clearness)
	switch winter := sunset <= radians(81.4); {
	case winter && k < 0.715:
		return 1 + k*(-0.2727+k*(2.4495+k*(-11.9514+k*9.3879)))
	case winter:
		return 0.143
	case k < 0.722:
		return 1 + k*(0.2832+k*(-2.5557+k*0.8448))
	}
	return 0.175
}

// A Light is what reaches the ground: Global = Diffuse + Beam · sin(elevation).
type Light struct {
	Global  float64 // on a level plane, W/m²
	Beam    float64 // straight from the sun on a plane that faces it, W/m²
	Diffuse float64 // from the sky on a level plane, W/m²
	Normal  float64 // outside the atmosphere on a plane that faces the sun, W/m²
}

// Split parts the global light of an hour, W/m², into sun and sky by Erbs; elevation is the hour's. The beam is held
// to what is left of the light outside, and light of a sun below the horizon is all from the sky.
func Split(global, normal, elevation float64) Light {
	global, up := max(0, global), math.Sin(elevation)
	l := Light{Global: global, Diffuse: global, Normal: normal}
	if up <= 0 || normal <= 0 {
		return l
	}
	share := DiffuseShare(Clearness(global, normal*up))
	l.Beam = min(global*(1-share)/up, normal)
	l.Diffuse = max(0, global-l.Beam*up)
	return l
}
