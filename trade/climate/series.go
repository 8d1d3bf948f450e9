package climate

import (
	"fmt"
	"math"

	places "tumblehome/catalogue/climate"
	"tumblehome/quantity"
)

// A Series is one year of hours, as a builder may bring it.
type Series struct {
	File     string
	Name     string // of the place; "" if the file has none
	Lat, Lon quantity.Angle
	Height   float64 // above the sea [m]
	Offset   float64 // of the hours from UTC [h]
	Moment   float64 // when within the hour the irradiances are measured, from its middle [h]; 0 for means
	Hours    []Hour  // 8760 or 8784, in the order of the file
}

// An Hour is the weather of one hour. Irradiances are means over it [W/m2].
type Hour struct {
	Month, Day, Hour      int // 1 to 12, 1 to 31, 0 to 23: the hour that begins then
	Temperature           quantity.Temperature
	Humidity              quantity.Share
	Global, Beam, Diffuse float64 // on level ground; straight at the sun; from the sky on level ground
}

// complete refuses a year that is not whole.
func (s *Series) complete() error {
	if n := len(s.Hours); n != 8760 && n != 8784 {
		return fmt.Errorf("%s has %d hours; expected a year of 8760 or 8784", s.File, n)
	}
	var hours [12][32]int
	for _, h := range s.Hours {
		hours[h.Month-1][h.Day]++
	}
	for m, days := range hours {
		whole := 0
		for _, n := range days {
			if n == 24 {
				whole++
			}
		}
		if whole < 28 {
			return fmt.Errorf("%s has only %d whole days of %s; expected at least 28", s.File, whole, monthNames[m])
		}
	}
	return nil
}

// Place is the series as a place with its months. Days are those of the file's own clock.
func (s *Series) Place(id string) places.Place {
	p := places.Place{ID: id, Name: s.Name, Kind: places.Station, Lat: s.Lat, Lon: s.Lon, Height: s.Height, Offset: s.Offset, Source: "hours of " + s.File}
	if p.Name == "" {
		p.Name = id
	}
	for m := range p.Months {
		p.Months[m] = s.month(m + 1)
	}
	return p
}

// month sums up the days of one month; it is nothing where there are not two of them.
func (s *Series) month(number int) places.Month {
	var days [32]daySum
	for _, h := range s.Hours {
		if h.Month == number {
			days[h.Day].add(h)
		}
	}
	return monthOf(days[:])
}

// daySum gathers the hours of one day.
type daySum struct {
	hours, warmth, humidity, sun, low, high float64
}

func (d *daySum) add(h Hour) {
	t := float64(h.Temperature)
	if d.hours == 0 {
		d.low, d.high = t, t
	}
	d.hours++
	d.warmth += t
	d.humidity += float64(h.Humidity)
	d.sun += h.Global / 1000
	d.low, d.high = min(d.low, t), max(d.high, t)
}

func monthOf(days []daySum) places.Month {
	var n, hours, warmth, humidity, sun, low, high, means, squares float64
	for _, d := range days {
		if d.hours == 0 {
			continue
		}
		n++
		hours, warmth, humidity, sun = hours+d.hours, warmth+d.warmth, humidity+d.humidity, sun+d.sun
		low, high = low+d.low, high+d.high
		mean := d.warmth / d.hours
		means, squares = means+mean, squares+mean*mean
	}
	if n < 2 {
		return places.Month{}
	}
	return places.Month{
		Mean: quantity.Temperature(warmth / hours), Low: quantity.Temperature(low / n), High: quantity.Temperature(high / n),
		Humidity: quantity.Share(humidity / hours), Sun: sun / hours * 24,
		Spread: math.Sqrt(max(0, squares-means*means/n) / (n - 1)),
	}
}
