package climate

import (
	"tumblehome/quantity"
	"tumblehome/solve/zone"
)

// pressure is the vapour pressure of air of a relative humidity, by the saturation pressure of ISO 13788 [Pa].
func pressure(t quantity.Temperature, humid quantity.Share) float64 {
	return float64(humid) * zone.Saturation(float64(t))
}

// humidity is the relative humidity of air with a vapour pressure [Pa]; what would be beyond saturation has fallen as dew or fog.
func humidity(t quantity.Temperature, vapour float64) quantity.Share {
	return quantity.Share(min(1, vapour/zone.Saturation(float64(t))))
}

// Humidity is the relative humidity in each hour of a day.
func (d Day) Humidity() [24]quantity.Share {
	var out [24]quantity.Share
	for h, t := range d.Course() {
		out[h] = humidity(t, d.Vapour)
	}
	return out
}
