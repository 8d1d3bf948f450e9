package climate

import "tumblehome/quantity"

// coldTenth is how many standard deviations below its mean one value in ten of a normal distribution lies.
const coldTenth = 1.2816

// Usual is the mean day of a month, by its number 1 to 12.
func (w *Weather) Usual(month int) Day { return w.day(month, 0) }

// Cold is the day of a month whose night is colder than nine in ten. Daily lows are taken to be spread about their mean as the days' means
// are about theirs, normally: the whole day lies 1.28 standard deviations below the usual one, at the same relative humidity. Within
// 1 K for places with ordinary winters; deep winters inland have a longer cold tail, and a Lapland January is 2 to 5 K colder still.
func (w *Weather) Cold(month int) Day { return w.day(month, coldTenth*w.month(month).Spread) }

func (w *Weather) day(number int, colder float64) Day {
	m, less := w.month(number), quantity.Temperature(colder)
	rise, noon := sunrise(w.Place, (number+11)%12)
	return Day{Low: m.Low - less, High: m.High - less, Vapour: pressure(m.Mean-less, m.Humidity), Sunrise: rise, Noon: noon}
}
