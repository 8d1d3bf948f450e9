package sky

import "math"

// A Plane is a surface: how far it is tipped from level, 0 to π, and where it then looks, from north through east.
type Plane struct{ Tilt, Azimuth float64 }

// CosIncidence is the cosine of the angle between the sun and the plane's normal; below nought the sun is behind it.
// Duffie and Beckman 1.6.3.
func (p Plane) CosIncidence(sun Place) float64 {
	sinB, cosB := math.Sincos(p.Tilt)
	sinE, cosE := math.Sincos(sun.Elevation)
	return sinE*cosB + cosE*sinB*math.Cos(sun.Azimuth-p.Azimuth)
}

// seesSky is the share of an even sky that the plane sees; the ground has the rest.
func (p Plane) seesSky() float64 { return (1 + math.Cos(p.Tilt)) / 2 }

// On is the light that falls on a plane, W/m².
type On struct {
	Beam   float64 // straight from the sun
	Halo   float64 // sky light from about the sun; 0 in the even sky
	Sky    float64 // the rest of the sky light
	Ground float64 // thrown up by the ground
}

// Total is all light on the plane, W/m².
func (o On) Total() float64 { return o.Beam + o.Halo + o.Sky + o.Ground }

// OnEven is the light on a plane under a sky as bright everywhere, by Liu and Jordan 1963: too little on planes that
// face the sun. Albedo is the share that the ground throws back: about 0.2 for grass, 0.7 for fresh snow (common
// values, no source).
func (l Light) OnEven(p Plane, sun Place, albedo float64) On {
	o := On{Sky: l.Diffuse * p.seesSky(), Ground: l.Global * albedo * (1 - p.seesSky())}
	if sun.Elevation > 0 {
		o.Beam = l.Beam * max(0, p.CosIncidence(sun))
	}
	return o
}

// haloFrom is the elevation, 1°, under which no part of the sky light is taken to come from about the sun.
const haloFrom = math.Pi / 180

// On is the light on a plane by Hay and Davies 1980: of the sky light, the share Beam/Normal comes from about the sun.
func (l Light) On(p Plane, sun Place, albedo float64) On {
	o := l.OnEven(p, sun, albedo)
	if sun.Elevation < haloFrom || l.Normal <= 0 {
		return o
	}
	share := min(1, l.Beam/l.Normal)
	o.Halo = l.Diffuse * share * max(0, p.CosIncidence(sun)) / math.Sin(sun.Elevation)
	o.Sky *= 1 - share
	return o
}
