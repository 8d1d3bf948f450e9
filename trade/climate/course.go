package climate

import (
	"math"

	"tumblehome/quantity"
)

// Coefficients of Parton and Logan for air 1.5 m above the ground.
const (
	peakLag  = 1.86 // how long after noon the air is warmest [h]
	nightly  = 2.20 // how fast it cools after sunset, over the length of the night
	earliest = 0.17 // how long before sunrise it is coldest [h]
)

// Course is the temperature in the middle of each hour, from midnight: a sine from the lowest about sunrise through the highest, cut off
// at sunset, and from there an exponential fall towards the lowest. Parton and Logan, Agricultural Meteorology 23 (1981) 205-216, model
// and coefficients for air at 1.5 m; from memory. By night the mean course of a month comes out within about 1 K, single hours within 2.5 K;
// a polar night, whose warm and cold hours follow passing weather instead of the sun, does not follow it.
func (d Day) Course() [24]quantity.Temperature {
	var out [24]quantity.Temperature
	for h := range out {
		out[h] = d.when(float64(h) + 0.5)
	}
	return out
}

// when is the temperature at an hour of the day.
func (d Day) when(hour float64) quantity.Temperature {
	since := math.Mod(hour-d.Sunrise+earliest+48, 24)
	light := 2*(d.Noon-d.Sunrise) + earliest // to sunset
	if since <= light {
		return d.byDay(since)
	}
	night := 24 - light
	return d.Low + (d.byDay(light)-d.Low)*quantity.Temperature(math.Exp(-nightly*(since-light)/night))
}

// byDay is the temperature so long after the coldest hour [h].
func (d Day) byDay(since float64) quantity.Temperature {
	long := 2 * (d.Noon - d.Sunrise + peakLag)
	return d.Low + (d.High-d.Low)*quantity.Temperature(math.Sin(math.Pi*since/long))
}

// Coldest is the hour, 0 to 23, in which the air is coldest.
func (d Day) Coldest() int { return int(math.Floor(math.Mod(d.Sunrise-earliest+24, 24))) }
