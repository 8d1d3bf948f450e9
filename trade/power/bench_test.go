package power_test

import (
	"testing"

	"tumblehome/trade/power"
)

// Goal: 200 years of weather in 0.8 s on one core.
func BenchmarkTwoHundredYearsOfWeather(b *testing.B) {
	for b.Loop() {
		if _, err := power.NewSky(highland(), 200, 1); err != nil {
			b.Fatal(err)
		}
	}
}

// Goal: one battery and panel through 200 years of weather in 0.1 s on one core.
func BenchmarkOneVanThroughTwoHundredYears(b *testing.B) {
	in := walkers()
	sky, err := power.NewSky(in.Climate, 200, 1)
	if err != nil {
		b.Fatal(err)
	}
	in.Sky = func(power.Climate, int, uint64) (*power.Sky, error) { return sky, nil }
	for b.Loop() {
		power.Work(in)
	}
}
