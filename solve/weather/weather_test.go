package weather_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"tumblehome/internal/proof"
	"tumblehome/solve/sky"
	"tumblehome/solve/weather"
)

var monthDays = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// outside is the light outside in each hour of 2025 by a clock so many hours ahead of UTC.
func outside(lat, lon, clock float64) []float64 {
	out := make([]float64, weather.Hours)
	middle := time.Date(2025, 1, 1, 0, 30, 0, 0, time.UTC).Add(-time.Duration(clock * float64(time.Hour)))
	for h := range out {
		out[h] = sky.At(middle.Add(time.Duration(h)*time.Hour)).Outside(lat*math.Pi/180, lon*math.Pi/180, 3600)
	}
	return out
}

// perDay turns kWh/m² a day into W/m².
func perDay(kwh ...float64) (w [12]float64) {
	for i, v := range kwh {
		w[i] = v * 1000 / 24
	}
	return w
}

func even(v float64) (m [12]float64) {
	for i := range m {
		m[i] = v
	}
	return m
}

// seattle: months of the typical year TMY3 727930, a work of the US government.
func seattle() weather.Climate {
	return weather.Climate{
		Outside:     outside(47.47, -122.32, -8),
		Sunlight:    perDay(1.01, 1.79, 2.82, 4.34, 5.47, 5.93, 6.23, 5.04, 3.68, 2.27, 1.17, 0.89),
		Temperature: [12]float64{4.5, 5.8, 8.3, 10.9, 13.0, 15.6, 17.7, 18.8, 15.1, 11.4, 8.1, 5.4},
		Range:       [12]float64{5.3, 6.3, 7.5, 9.2, 9.1, 8.9, 10.6, 10.9, 8.2, 6.6, 4.8, 5.8},
		Spread:      [12]float64{2.96, 3.95, 2.06, 2.92, 2.78, 2.13, 2.13, 2.77, 2.06, 1.91, 3.31, 2.23},
	}
}

// sodankyla: months of the test reference year 2020 of the Finnish Meteorological Institute; the sun stays down in
// December.
func sodankyla() weather.Climate {
	return weather.Climate{
		Outside:     outside(67.37, 26.63, 2),
		Sunlight:    perDay(0.06, 0.49, 1.87, 3.58, 4.41, 5.25, 4.62, 3.58, 1.64, 0.70, 0.11, 0.01),
		Temperature: [12]float64{-12.4, -12.5, -6.9, 0.1, 5.7, 10.9, 14.6, 12.5, 6.9, 0.3, -5.4, -9.0},
		Range:       [12]float64{9.8, 9.7, 11.2, 10.7, 9.8, 9.5, 9.7, 10, 7.6, 5.9, 5.7, 9.5},
		Spread:      [12]float64{8.55, 8.07, 5.00, 4.14, 3.24, 3.36, 3.06, 2.74, 2.95, 4.33, 6.02, 7.95},
	}
}

func ready(t testing.TB, c weather.Climate) *weather.Maker {
	t.Helper()
	k, err := weather.New(c)
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// means of every 24 hours.
func means(hours []float64) (days []float64) {
	for d := 0; d < len(hours); d += 24 {
		var sum float64
		for _, v := range hours[d : d+24] {
			sum += v
		}
		days = append(days, sum/24)
	}
	return days
}

func TestTheSameSeedAndNumberGiveTheSameYear(t *testing.T) {
	k := ready(t, seattle())
	a, b, other, seeded := k.Year(5, 3), k.Year(5, 3), k.Year(5, 4), k.Year(6, 3)
	var differ, differSeed int
	for h := range a.Sunlight {
		if a.Sunlight[h] != b.Sunlight[h] || a.Temperature[h] != b.Temperature[h] {
			t.Fatalf("hour %d differs between the same years", h)
		}
		if a.Temperature[h] != other.Temperature[h] {
			differ++
		}
		if a.Temperature[h] != seeded.Temperature[h] {
			differSeed++
		}
	}
	if differ < weather.Hours*9/10 || differSeed < weather.Hours*9/10 {
		t.Errorf("%d and %d hours differ between years that should be others", differ, differSeed)
	}
}

func TestSteadyMonthsHaveTheSunlightGivenInEveryYear(t *testing.T) {
	c := seattle()
	c.Steady = true
	k := ready(t, c)
	for n := range uint64(20) {
		days, first := means(k.Year(1, n).Sunlight), 0
		for m, length := range monthDays {
			var sum float64
			for _, d := range days[first : first+length] {
				sum += d
			}
			if got := sum / float64(length); math.Abs(got-c.Sunlight[m]) > 1e-6*c.Sunlight[m] {
				t.Errorf("year %d, month %d: %g W/m², want %g", n, m+1, got, c.Sunlight[m])
			}
			first += length
		}
	}
}

func TestThePolarNightIsDarkAndEveryHourIsANumber(t *testing.T) {
	c := sodankyla()
	k := ready(t, c)
	for n := range uint64(5) {
		y := k.Year(2, n)
		for h, g := range y.Sunlight {
			if !(g >= 0 && g <= c.Outside[h]) || math.IsNaN(y.Temperature[h]) {
				t.Fatalf("year %d, hour %d: %g W/m² of %g outside, %g °C", n, h, g, c.Outside[h], y.Temperature[h])
			}
		}
	}
}

func TestWhatCannotBeMadeIsToldWithItsPlace(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*weather.Climate)
		want  string
	}{
		{"a year of 8784 hours", func(c *weather.Climate) { c.Outside = append(c.Outside, make([]float64, 24)...) }, "outside: 8784 hours"},
		{"light outside below nought", func(c *weather.Climate) { c.Outside[17] = -1 }, "outside, hour 17: -1"},
		{"more light than comes in", func(c *weather.Climate) { c.Sunlight[5] = 420 }, "month 6: 420 W/m²"},
		{"a month that is no number", func(c *weather.Climate) { c.Temperature[2] = math.NaN() }, "month 3, temperature: NaN"},
		{"a spread below nought", func(c *weather.Climate) { c.Spread[11] = -2 }, "month 12, spread: -2"},
	} {
		climate := seattle()
		c.spoil(&climate)
		_, err := weather.New(climate)
		var fault *weather.Fault
		if !errors.As(err, &fault) || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v, want %q", c.name, err, c.want)
		}
	}
}

func FuzzAnyClimate(f *testing.F) {
	f.Add(45., 0.4, 10., 8., 3., true)
	f.Add(90., 0.79, -40., 0., 30., false)
	f.Add(-67.4, 0.001, 5., 30., 0., true)
	f.Fuzz(func(t *testing.T, lat, clearness, temperature, span, spread float64, steady bool) {
		if !(math.Abs(lat) <= 90) {
			t.Skip()
		}
		c := weather.Climate{Outside: outside(lat, 0, 0), Temperature: even(temperature), Range: even(span), Spread: even(spread), Steady: steady}
		hour := 0
		for m, n := range monthDays {
			for range 24 * n {
				c.Sunlight[m] += clearness * c.Outside[hour] / float64(24*n)
				hour++
			}
		}
		k, err := weather.New(c)
		if err != nil {
			return
		}
		y := k.Year(1, 1)
		light, above := means(y.Sunlight), means(c.Outside)
		for h, g := range y.Sunlight {
			if !(g >= 0 && g <= c.Outside[h]) || math.IsNaN(y.Temperature[h]) {
				t.Fatalf("hour %d: %g W/m² of %g outside, %g °C", h, g, c.Outside[h], y.Temperature[h])
			}
		}
		for d, g := range light {
			if g > 0.8500001*above[d] {
				t.Fatalf("day %d: clearness %g", d, g/above[d])
			}
		}
	})
}

// Every row of the matrices is used with its own sum, so that a slip of transcription would move these means.
func TestManyYearsHaveTheMeanGiven(t *testing.T) {
	c := seattle()
	k := ready(t, c)
	var sun, warmth [12]float64
	const years = 100
	for n := range uint64(years) {
		y, hour := k.Year(3, n), 0
		for m, days := range monthDays {
			for range 24 * days {
				sun[m] += y.Sunlight[hour] / float64(24*days*years)
				warmth[m] += y.Temperature[hour] / float64(24*days*years)
				hour++
			}
		}
	}
	for m := range monthDays {
		// One month varies by some 9 % and by 0.44 of its spread; three standard errors of a hundred.
		name := fmt.Sprintf("mean of 100 drawn years, month %d: ", m+1)
		proof.Check(t, proof.Case{Name: name + "sunlight", Source: "typical year TMY3 727930, Seattle-Tacoma", Inputs: "its monthly means",
			Expected: c.Sunlight[m], Got: sun[m], Tolerance: 0.027 * c.Sunlight[m], Unit: "W/m2"})
		proof.Check(t, proof.Case{Name: name + "temperature", Source: "typical year TMY3 727930, Seattle-Tacoma", Inputs: "its monthly means",
			Expected: c.Temperature[m], Got: warmth[m], Tolerance: 0.13 * c.Spread[m], Unit: "°C"})
	}
}
