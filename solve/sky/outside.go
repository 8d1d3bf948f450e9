package sky

import "math"

// SolarConstant is the irradiance outside the atmosphere at the mean distance of the sun, W/m² (WMO 1981).
const SolarConstant = 1367.0

// Normal is the irradiance of a plane that faces the sun outside the atmosphere, W/m².
func (s Sun) Normal() float64 { return SolarConstant / (s.Distance * s.Distance) }

// SunsetAngle is the hour angle, 0 to π, at which the middle of the sun passes a level horizon without air: π where it
// never sets, 0 where it never rises.
func SunsetAngle(latitude, declination float64) float64 {
	sinP, cosP := math.Sincos(latitude)
	sinD, cosD := math.Sincos(declination)
	a, b := sinP*sinD, cosP*cosD // its height is a + b·cos ω, and b is not below nought
	switch {
	case a >= b:
		return math.Pi
	case a <= -b:
		return 0
	}
	return math.Acos(-a / b)
}

// Daily is the irradiation of a level plane outside the atmosphere in a day, J/m²; normal in W/m². Duffie and Beckman,
// Solar Engineering of Thermal Processes, 1.10.3.
func Daily(normal, latitude, declination float64) float64 {
	ws := SunsetAngle(latitude, declination)
	return normal * 86400 / (2 * math.Pi) * risen(latitude, declination, -ws, ws)
}

// Outside is the mean irradiance of a level plane outside the atmosphere, W/m², over span seconds of which the sun
// is given in the middle; span between 0 and a day. Exact but for the sun's own motion within the span.
func (s Sun) Outside(latitude, longitude, span float64) float64 {
	middle, half := s.HourAngle(longitude), span*math.Pi/86400
	ws := SunsetAngle(latitude, s.Declination)
	var sum float64
	for _, round := range []float64{-2 * math.Pi, 0, 2 * math.Pi} { // a span over midnight meets two days
		from, to := max(middle-half, round-ws), min(middle+half, round+ws)
		if from < to {
			sum += risen(latitude, s.Declination, from, to)
		}
	}
	if half == 0 {
		return 0
	}
	return max(0, s.Normal()*sum/(2*half))
}

// risen is the integral of the sine of the elevation from one hour angle to another.
func risen(latitude, declination, from, to float64) float64 {
	sinP, cosP := math.Sincos(latitude)
	sinD, cosD := math.Sincos(declination)
	return max(0, (to-from)*sinP*sinD+(math.Sin(to)-math.Sin(from))*cosP*cosD)
}

// AirMass is how many times more air the light passes than from straight above at the same height; elevation is the
// apparent one. Below the horizon it is that of the horizon, about 38. Kasten and Young 1989.
func AirMass(elevation float64) float64 {
	e := max(0, elevation)
	return 1 / (math.Sin(e) + 0.50572*math.Pow(e*180/math.Pi+6.07995, -1.6364))
}
