package climate

import "tumblehome/quantity"

// The pattern of Great Britain and Northern Ireland, January first, taken for every region: the mean difference between a day's highest
// and lowest temperature [K], relative humidity, and the standard deviation of daily means [K]. From memory of national averages
// 1981-2010; uplands and coasts differ from it by up to 2 K and 5 %.
var (
	britishRange    = [12]float64{5.5, 5.9, 6.8, 8.0, 8.7, 8.5, 8.5, 8.3, 7.7, 6.6, 5.8, 5.6}
	britishHumidity = [12]quantity.Share{0.86, 0.84, 0.81, 0.78, 0.77, 0.78, 0.79, 0.80, 0.82, 0.85, 0.86, 0.87}
	britishSpread   = [12]float64{3.2, 3.2, 2.9, 2.7, 2.6, 2.5, 2.3, 2.3, 2.4, 2.8, 3.0, 3.3}
)

// britain adds the pattern to months that have means and irradiation only. The mean lies in the middle of the day's range.
func britain(months *[12]Month) {
	for m := range months {
		half := quantity.Temperature(britishRange[m] / 2)
		months[m].Low, months[m].High = months[m].Mean-half, months[m].Mean+half
		months[m].Humidity, months[m].Spread = britishHumidity[m], britishSpread[m]
	}
}
