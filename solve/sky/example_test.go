package sky_test

import (
	"fmt"
	"math"
	"time"

	"tumblehome/solve/sky"
)

// A clear autumn noon over London, on a level plane and on one tipped to the south.
func Example() {
	const degree = math.Pi / 180
	sun := sky.At(time.Date(2026, 10, 1, 12, 0, 0, 0, time.UTC))
	place := sun.From(51.5*degree, -0.12*degree)
	light := sky.Split(500, sun.Normal(), place.Elevation)
	tipped := light.On(sky.Plane{Tilt: 40 * degree, Azimuth: 180 * degree}, place, 0.2)
	fmt.Printf("the sun is %.1f° up; %.0f W/m² from the sky\n", place.Elevation/degree, light.Diffuse)
	fmt.Printf("level %.0f W/m², tipped %.0f W/m²\n", light.Global, tipped.Total())
	// Output:
	// the sun is 35.2° up; 180 W/m² from the sky
	// level 500 W/m², tipped 766 W/m²
}

func ExampleDayOf() {
	const degree = math.Pi / 180
	for _, month := range []time.Month{time.June, time.December} {
		day := sky.DayOf(time.Date(2026, month, 21, 12, 0, 0, 0, time.UTC), 51.5*degree, -0.12*degree)
		fmt.Println(day.Rise.Format("15:04"), day.Set.Format("15:04"), day.Length().Round(time.Minute))
	}
	// Output:
	// 03:43 20:21 16h38m0s
	// 08:03 15:53 7h50m0s
}
