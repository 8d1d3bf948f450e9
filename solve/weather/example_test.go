package weather_test

import (
	"fmt"
	"slices"
	"testing"

	"tumblehome/solve/weather"
)

// How little sun can a week of May have, in twenty years?
func Example() {
	maker, err := weather.New(seattle())
	if err != nil {
		fmt.Println(err)
		return
	}
	var weeks []float64
	for n := range uint64(20) {
		may := maker.Year(2026, n).Sunlight[24*120 : 24*151]
		least := 1e9
		for day := 0; day+7 <= 31; day++ {
			least = min(least, mean(may[24*day:24*day+24*7]))
		}
		weeks = append(weeks, least)
	}
	fmt.Printf("usual %.0f W/m²; the worst week of a usual May %.0f, of the worst %.0f\n",
		seattle().Sunlight[4], mean(weeks), slices.Min(weeks))
	// Output:
	// usual 228 W/m²; the worst week of a usual May 184, of the worst 129
}

func BenchmarkTwoHundredYears(b *testing.B) {
	k := ready(b, seattle())
	y := weather.Year{Sunlight: make([]float64, weather.Hours), Temperature: make([]float64, weather.Hours)}
	for b.Loop() {
		for n := range uint64(200) {
			k.Fill(y, 1, n)
		}
	}
}
