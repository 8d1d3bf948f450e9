package power

import (
	"math"
	"time"

	"tumblehome/solve/sky"
	"tumblehome/solve/weather"
)

// Sky is the light and the air of many years, kept small: 26 kB a year. It is not changed once made.
type Sky struct {
	Years int
	light []uint16 // on a level panel behind glass, lightStep W/m2, every hour
	air   []int8   // airStep K, every hour
	day   []int8   // mean of every day, likewise
	wh    []uint16 // light of every day, Wh/m2
}

const (
	lightStep = 0.025
	airStep   = 0.5
)

// NewSky makes years of the weather of a climate. The error is a *weather.Fault.
func NewSky(c Climate, years int, seed uint64) (*Sky, error) {
	s := &Sky{Years: years, light: make([]uint16, years*weather.Hours), air: make([]int8, years*weather.Hours), day: make([]int8, years*weather.Days),
		wh: make([]uint16, years*weather.Days)}
	sun := sunOf(c)
	maker, err := weather.New(c.weather(sun.outside))
	if err != nil {
		return nil, err
	}
	y := weather.Year{Sunlight: make([]float64, weather.Hours), Temperature: make([]float64, weather.Hours)}
	for n := range years {
		maker.Fill(y, seed, uint64(n))
		s.keep(n, y, sun)
	}
	return s, nil
}

// keep packs a year.
func (s *Sky) keep(n int, y weather.Year, sun suns) {
	for h, g := range y.Sunlight {
		s.light[n*weather.Hours+h] = uint16(min(math.Round(sun.behindGlass(h, g)/lightStep), math.MaxUint16))
		s.air[n*weather.Hours+h] = packed(y.Temperature[h])
	}
	for d := range weather.Days {
		warmth, light := 0.0, 0.0
		for h := 24 * d; h < 24*d+24; h++ {
			warmth += y.Temperature[h]
			light += float64(s.light[n*weather.Hours+h]) * lightStep
		}
		s.day[n*weather.Days+d] = packed(warmth / 24)
		s.wh[n*weather.Days+d] = uint16(light)
	}
}

func packed(t float64) int8 { return int8(math.Round(max(-63, min(63, t)) / airStep)) }

// suns is where the sun stands in every hour of a year.
type suns struct{ outside, beam []float64 }

// diffuseKept is what glass lets through of light from the whole sky, as of light at 60° (from memory).
var diffuseKept = Incidence(0.5)

// Incidence is the share of light that a panel takes, against light square to it, by the cosine of the angle between: 1 − 0.05 (1/cos i − 1). ASHRAE, Souka and
// Safwat 1966.
func Incidence(cosine float64) float64 {
	if cosine <= 0 {
		return 0
	}
	return max(0, 1-0.05*(1/cosine-1))
}

func sunOf(c Climate) suns {
	s := suns{make([]float64, weather.Hours), make([]float64, weather.Hours)}
	lat, lon := c.Latitude*math.Pi/180, c.Longitude*math.Pi/180
	first := time.Date(2025, 1, 1, 0, 30, 0, 0, time.UTC).Add(-time.Duration(c.Offset * float64(time.Hour)))
	for h := range s.outside {
		sun := sky.At(first.Add(time.Duration(h) * time.Hour))
		s.outside[h] = sun.Outside(lat, lon, 3600)
		s.beam[h] = Incidence(s.outside[h] / sun.Normal())
	}
	return s
}

// behindGlass is what a level panel takes [W/m2] of the light of an hour: the beam by the sun's height, the sky's light evenly. Parted by Erbs.
func (s suns) behindGlass(h int, global float64) float64 {
	if global <= 0 {
		return 0
	}
	share := sky.DiffuseShare(sky.Clearness(global, s.outside[h]))
	return global * (share*diffuseKept + (1-share)*s.beam[h])
}

// clearest is the most of the light outside that weather can be made for.
const clearest = 0.79

func (c Climate) weather(outside []float64) weather.Climate {
	w := weather.Climate{Outside: outside}
	first := 0
	for m, days := range monthDays {
		sum := 0.0
		for _, o := range outside[24*first : 24*(first+days)] {
			sum += o / float64(24*days)
		}
		first += days
		w.Sunlight[m] = max(0, min(c.Sun[m]*1000/24, clearest*sum))
		w.Temperature[m] = max(-60, min(60, c.Mean[m]))
		w.Range[m] = max(0, min(60, c.High[m]-c.Low[m]))
		w.Spread[m] = max(0, min(20, c.Spread[m]))
	}
	return w
}

var monthDays = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// monthOfDay is the month, 0 to 11, of each day of the year.
var monthOfDay = func() (of [weather.Days]int) {
	day := 0
	for m, days := range monthDays {
		for range days {
			of[day] = m
			day++
		}
	}
	return of
}()

// firstDay is the first day of a month, 0 to 11, of the year.
func firstDay(month int) int {
	first := 0
	for _, days := range monthDays[:month] {
		first += days
	}
	return first
}

// dark is whether people in the van want light in each hour of the middle of a month: the sun stands under 3°.
func (c Climate) dark(month int) (dark [24]bool) {
	lat, lon := c.Latitude*math.Pi/180, c.Longitude*math.Pi/180
	for h := range dark {
		t := time.Date(2025, time.Month(month), 15, h, 30, 0, 0, time.UTC).Add(-time.Duration(c.Offset * float64(time.Hour)))
		dark[h] = sky.At(t).From(lat, lon).Elevation < 3*math.Pi/180
	}
	return dark
}
