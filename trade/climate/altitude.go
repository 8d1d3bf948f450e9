package climate

import (
	places "tumblehome/catalogue/climate"
	"tumblehome/quantity"
)

// lapse is how much colder the standard atmosphere grows with height: 6.5 K a kilometre up to 11 km (ISO 2533, ICAO Doc 7488).
// Mean months follow it within 1 K a kilometre in the open; winter valleys do not, where cold air lies.
const lapse = 0.0065 // K/m

// lifted is a month as far above its place [m]. All three temperatures move alike. Its vapour pressure stays as it is, so the air grows
// damper on the way up, until it is saturated; there it loses what it cannot hold. Sunshine is left as it is: thinner air adds to it, cloud
// on the hill takes it away.
func lifted(m places.Month, up float64) places.Month {
	vapour := pressure(m.Mean, m.Humidity)
	colder := quantity.Temperature(lapse * up)
	m.Mean, m.Low, m.High = m.Mean-colder, m.Low-colder, m.High-colder
	m.Humidity = humidity(m.Mean, vapour)
	return m
}
