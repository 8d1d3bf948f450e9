package sky

import (
	"math"
	"time"
)

// A Sun is the apparent position of the sun as seen from the middle of the Earth, for the equinox of date.
type Sun struct {
	RightAscension float64 // 0 to 2π
	Declination    float64
	Distance       float64 // astronomical units
	Sidereal       float64 // apparent sidereal time at Greenwich, 0 to 2π
}

// Dynamical time is ahead of civil time by this, s: 69.2 in 2017 to 2025 (from memory), 64 in 2000.
const dynamicalAhead = 69

const (
	unixEpoch = 2440587.5 // Julian day of 1970-01-01 0 h
	epoch2000 = 2451545.0 // Julian day of 2000-01-01 12 h
)

// days since 2000-01-01 12 h UTC. Kept from that day, a microsecond is not lost in rounding.
func days(t time.Time) float64 {
	const shift = unixEpoch - epoch2000
	return shift + float64(t.Unix())/86400 + float64(t.Nanosecond())/86400e9
}

// At is the sun at an instant.
func At(t time.Time) Sun { return at(days(t)) }

// at follows Meeus, chapter 25; letters and order as there, angles in degrees until the end.
func at(d float64) Sun {
	t := (d + dynamicalAhead/86400.) / 36525 // Julian centuries of dynamical time
	l0 := 280.46646 + t*(36000.76983+t*0.0003032)
	m := radians(357.52911 + t*(35999.05029-t*0.0001537))
	e := 0.016708634 - t*(0.000042037+t*0.0000001267)
	sin1, cos1 := math.Sincos(m)
	sin2 := 2 * sin1 * cos1
	sin3 := sin1 * (3 - 4*sin1*sin1)
	c := (1.914602-t*(0.004817+t*0.000014))*sin1 + (0.019993-t*0.000101)*sin2 + 0.000289*sin3
	r := 1.000001018 * (1 - e*e) / (1 + e*math.Cos(m+radians(c)))
	sinNode, cosNode := math.Sincos(radians(125.04 - t*1934.136))
	lambda := radians(l0 + c - 0.00569 - 0.00478*sinNode)
	mean := 23.4392911 - t*(0.0130042+t*(1.64e-7-t*5.04e-7))
	epsilon := radians(mean + 0.00256*cosNode)
	sinL, cosL := math.Sincos(lambda)
	sinE, cosE := math.Sincos(epsilon)
	return Sun{
		RightAscension: turn(math.Atan2(cosE*sinL, cosL)),
		Declination:    math.Asin(sinE * sinL),
		Distance:       r,
		Sidereal:       turn(radians(sidereal(d) - 0.00478*sinNode*cosE)),
	}
}

// sidereal is mean sidereal time at Greenwich, degrees, d days of UT after 2000-01-01 12 h (Meeus 12.4).
func sidereal(d float64) float64 {
	t := d / 36525
	whole := math.Mod(d, 1) * 360 // keeps digits: 360.98 d = 360 d + 0.98 d
	return 280.46061837 + whole + 0.98564736629*d + t*t*(0.000387933-t/38710000)
}

func radians(degrees float64) float64 { return degrees * math.Pi / 180 }

// turn brings an angle between 0 and 2π.
func turn(a float64) float64 {
	a = math.Mod(a, 2*math.Pi)
	if a < 0 {
		a += 2 * math.Pi
	}
	return a
}

// A Place in the sky as an observer sees it.
type Place struct {
	Elevation float64 // of the disc's middle above the level horizon
	Azimuth   float64 // from north through east, 0 to 2π; at a pole by the given longitude
}

// HourAngle is how far the sun is past its noon at a longitude, −π to π.
func (s Sun) HourAngle(longitude float64) float64 {
	h := turn(s.Sidereal + longitude - s.RightAscension)
	if h > math.Pi {
		h -= 2 * math.Pi
	}
	return h
}

// From is where the sun stands for an observer at sea level, without refraction. Parallax lowers it by up to 0.0024°.
func (s Sun) From(latitude, longitude float64) Place {
	sinH, cosH := math.Sincos(s.HourAngle(longitude))
	sinP, cosP := math.Sincos(latitude)
	sinD, cosD := math.Sincos(s.Declination)
	up := sinP*sinD + cosP*cosD*cosH
	east, north := -cosD*sinH, cosP*sinD-sinP*cosD*cosH
	level := math.Hypot(east, north)
	parallax := radians(8.794/3600) / s.Distance * level
	return Place{Elevation: math.Atan2(up, level) - parallax, Azimuth: turn(math.Atan2(east, north))}
}

// Refraction is how much higher than it is the sun appears, by the air's pressure in Pa and temperature in °C. It is
// nought for a sun below −1°, where it can not be seen. Sæmundsson's formula, Meeus 16.4, as the SPA report has it.
func Refraction(elevation, pressure, temperature float64) float64 {
	e := elevation * 180 / math.Pi
	if e < -1 {
		return 0
	}
	air := pressure / 101000 * 283 / (273 + temperature)
	return max(0, radians(air*1.02/60/math.Tan(radians(e+10.3/(e+5.11)))))
}
