package zone

import "math"

const (
	gas      = 461.5  // J/(kg·K), of water vapour
	freezing = 273.15 // K at 0 °C
)

// Saturation is the vapour pressure over water, below 0 °C over ice, at a temperature in °C, Pa. ISO 13788, annex:
// 610.5·exp(17.269·θ/(237.3 + θ)), below nought 610.5·exp(21.875·θ/(265.5 + θ)). Within 0.6 % of Hyland and Wexler
// between -20 and 40 °C.
func Saturation(temperature float64) float64 {
	if temperature < 0 {
		return 610.5 * math.Exp(21.875*temperature/(265.5+temperature))
	}
	return 610.5 * math.Exp(17.269*temperature/(237.3+temperature))
}

// DewPoint is the temperature, °C, at which a vapour pressure above nought, Pa, is saturated: the inverse of Saturation.
func DewPoint(pressure float64) float64 {
	k := math.Log(pressure / 610.5)
	if k < 0 {
		return 265.5 * k / (21.875 - k)
	}
	return 237.3 * k / (17.269 - k)
}

// Vapour is the density of vapour, kg/m³, in air of a temperature, °C, and a relative humidity from 0 to 1.
func Vapour(temperature, humidity float64) float64 {
	return humidity * Saturation(temperature) / (gas * (temperature + freezing))
}

// Humidity is the relative humidity, 1 when saturated, of air of a temperature, °C, that holds vapour, kg/m³.
func Humidity(temperature, vapour float64) float64 { return vapour / Vapour(temperature, 1) }

// Pressure is the vapour pressure, Pa, of air of a temperature, °C, that holds vapour, kg/m³.
func Pressure(temperature, vapour float64) float64 { return vapour * gas * (temperature + freezing) }
