package weather

import (
	"fmt"
	"math"
)

// Days and Hours of a year.
const (
	Days  = 365
	Hours = 24 * Days
)

var monthDays = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// A Climate is what is known of a place.
type Climate struct {
	Outside     []float64   // irradiance of a level plane outside the atmosphere, mean of each of the Hours, W/m²
	Sunlight    [12]float64 // global irradiance on a level plane, mean of all hours of the month, W/m²
	Temperature [12]float64 // mean of the month, °C
	Range       [12]float64 // from a day's lowest to its highest hour, mean of the month, K
	Spread      [12]float64 // standard deviation of the daily means within one month, K
	Steady      bool        // every month of every year has the Sunlight, not only the mean of many years
}

// A Fault is a climate from which no weather can be made, with the place of what is wrong.
type Fault struct{ Place, Says string }

func (f *Fault) Error() string { return f.Place + ": " + f.Says }

// Most of the light outside that a month, and a day, can have.
const (
	clearestMonth = 0.8
	clearestDay   = 0.85
)

// twilight is the irradiance outside, W/m², under which a month's clearness says little: 0.3 kWh/m² a day.
const twilight = 12.5

// most is more than any irradiance, W/m², and any temperature, °C, can be.
const most = 1500

// New makes ready to draw years. The error is a *Fault.
func New(c Climate) (*Maker, error) {
	if len(c.Outside) != Hours {
		return nil, &Fault{"outside", fmt.Sprintf("%d hours are given, a year has %d", len(c.Outside), Hours)}
	}
	for h, o := range c.Outside {
		if !(o >= 0 && o <= most) {
			return nil, &Fault{fmt.Sprintf("outside, hour %d", h), fmt.Sprintf("%g W/m² is not between 0 and %d", o, most)}
		}
	}
	for m := range monthDays {
		if err := c.checkMonth(m); err != nil {
			return nil, err
		}
	}
	k := &Maker{days: sunDays(c.Outside), steady: c.Steady}
	day := 0
	for m, n := range monthDays {
		k.months[m] = monthOf(k.days[day:day+n], c.Sunlight[m])
		if k.months[m].clearness > clearestMonth {
			return nil, &Fault{fmt.Sprintf("month %d", m+1), fmt.Sprintf("%g W/m² of sunlight are more than %g of the light outside", c.Sunlight[m], clearestMonth)}
		}
		day += n
	}
	k.course, k.noise = temperatures(c, k.days)
	return k, nil
}

func (c Climate) checkMonth(m int) error {
	for _, v := range []struct {
		name            string
		value, low, top float64
	}{
		{"sunlight", c.Sunlight[m], 0, most},
		{"temperature", c.Temperature[m], -100, 100},
		{"range", c.Range[m], 0, 100},
		{"spread", c.Spread[m], 0, 50},
	} {
		if !(v.value >= v.low && v.value <= v.top) {
			return &Fault{fmt.Sprintf("month %d, %s", m+1, v.name), fmt.Sprintf("%g is not between %g and %g", v.value, v.low, v.top)}
		}
	}
	return nil
}

// A month as the days are drawn in it.
type month struct {
	days      []day   // empty of light where it is polar night
	light     float64 // outside, sum over its days
	clearness float64 // of the month
	factor    float64 // brings the days of the class to it
	class     *class
}

// A day of the climate's sun.
type day struct {
	outside []float64 // its 24 hours, W/m²
	light   float64   // their sum
	noon    float64   // middle of the light, hours after midnight
	half    float64   // half the hours with light
}

func sunDays(outside []float64) []day {
	days := make([]day, Days)
	for i := range days {
		d := day{outside: append([]float64(nil), outside[24*i:24*i+24]...), noon: 12}
		var moment float64
		for h, o := range d.outside {
			d.light += o
			moment += o * (float64(h) + 0.5)
			if o > 0 {
				d.half += 0.5
			}
		}
		if d.light > 0 {
			d.noon = moment / d.light
		}
		days[i] = d
	}
	return days
}

// monthOf finds the clearness that gives the sunlight, W/m², and the class that serves it.
func monthOf(days []day, sunlight float64) month {
	m := month{days: days}
	for _, d := range days {
		m.light += d.light
	}
	hours := float64(24 * len(days))
	if m.light > 0 {
		m.clearness = sunlight * hours / m.light
	}
	if m.light < twilight*hours {
		m.clearness = math.Min(m.clearness, clearestMonth)
	}
	m.class = &classes[len(classes)-1]
	for i := range classes {
		if m.clearness <= classes[i].under {
			m.class = &classes[i]
			break
		}
	}
	m.findFactor()
	return m
}
