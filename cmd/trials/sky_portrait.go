package main

import (
	"math"
	"slices"

	"tumblehome/solve/weather"
)

// A figure is one statistic of a year.
type figure struct {
	name  string
	value float64
}

// months of a year by first and last day.
var monthEnds = [13]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365}

// climateOf is what the months of a year tell of it.
func climateOf(y weather.Year, outside []float64) weather.Climate {
	c := weather.Climate{Outside: outside}
	mean, span := daily(y.Temperature)
	for m := range 12 {
		from, to := monthEnds[m], monthEnds[m+1]
		c.Sunlight[m] = average(y.Sunlight[24*from : 24*to])
		c.Temperature[m] = average(mean[from:to])
		c.Range[m] = average(span[from:to])
		c.Spread[m] = deviation(mean[from:to])
	}
	return c
}

// portraitOf is the statistics by which a drawn year and a found one are compared. Those of clearness leave out months
// with under 12.5 W/m² outside; those within months are means over months.
func portraitOf(y weather.Year, outside []float64) []figure {
	light, _ := daily(y.Sunlight)
	above, _ := daily(outside)
	mean, span := daily(y.Temperature)
	clearness := make([]float64, weather.Days)
	for i := range clearness {
		if above[i] > 0 {
			clearness[i] = light[i] / above[i]
		}
	}
	var sunny, dull, lit, spread, follow, tSpread, tFollow float64
	for m := range 12 {
		from, to := monthEnds[m], monthEnds[m+1]
		tSpread += deviation(mean[from:to]) / 12
		tFollow += following(mean[from:to]) / 12
		if average(above[from:to]) < 12.5 {
			continue
		}
		sunny++
		spread += deviation(clearness[from:to])
		follow += following(clearness[from:to])
		for _, k := range clearness[from:to] {
			lit++
			if k <= 0.2 {
				dull++
			}
		}
	}
	hourSpread, hourFollow := withinDays(y.Sunlight, outside, clearness)
	sorted := slices.Sorted(slices.Values(y.Temperature))
	return []figure{
		{"sunlight, kWh/m² in the year", average(y.Sunlight) * 8.76},
		{"clearness of days, deviation in a month", spread / sunny},
		{"clearness of days, correlation with the day before", follow / sunny},
		{"days of clearness 0.2 or less, share", dull / lit},
		{"least sun of 7 days in a row, share of the usual in its months", leanest(light)},
		{"clearness of hours, deviation about the day's", hourSpread},
		{"clearness of hours, correlation with the hour before", hourFollow},
		{"temperature, °C in the year", average(y.Temperature)},
		{"temperature of days, deviation in a month, K", tSpread},
		{"temperature of days, correlation with the day before", tFollow},
		{"temperature, range in a day, K", average(span)},
		{"temperature, one hour in a hundred is under, °C", sorted[weather.Hours/100]},
		{"temperature, one hour in a hundred is over, °C", sorted[weather.Hours-weather.Hours/100]},
	}
}

// daily is the mean and the range of every day.
func daily(hours []float64) (mean, span []float64) {
	for d := range weather.Days {
		day := hours[24*d : 24*d+24]
		mean = append(mean, average(day))
		span = append(span, slices.Max(day)-slices.Min(day))
	}
	return mean, span
}

// withinDays is how the clearness of hours with a sun well up differs from that of the day, and how that lasts.
func withinDays(light, outside, clearness []float64) (spread, follow float64) {
	var squares, products, n, pairs, before float64
	for h, o := range outside {
		if o < 200 {
			before = math.NaN()
			continue
		}
		off := light[h]/o - clearness[h/24]
		squares += off * off
		n++
		if !math.IsNaN(before) {
			products += off * before
			pairs++
		}
		before = off
	}
	return math.Sqrt(squares / n), products / pairs / (squares / n)
}

// leanest is the least sun of any seven days, against the mean of the 61 days about them, from March to October.
func leanest(light []float64) float64 {
	least := math.Inf(1)
	for d := monthEnds[2]; d+7 <= monthEnds[10]; d++ {
		least = min(least, average(light[d:d+7])/average(light[d-27:d+34]))
	}
	return least
}

func average(v []float64) float64 {
	var sum float64
	for _, x := range v {
		sum += x
	}
	return sum / float64(len(v))
}

func deviation(v []float64) float64 {
	mean, squares := average(v), 0.
	for _, x := range v {
		squares += (x - mean) * (x - mean)
	}
	return math.Sqrt(squares / float64(len(v)-1))
}

// following is the correlation of each with the one before.
func following(v []float64) float64 {
	mean := average(v)
	var squares, products float64
	for i, x := range v {
		squares += (x - mean) * (x - mean)
		if i > 0 {
			products += (x - mean) * (v[i-1] - mean)
		}
	}
	return products / squares
}
