package zone_test

import (
	"fmt"

	"tumblehome/solve/zone"
)

// Ten cubic metres, two people asleep, a window of 2 m², eight hours at freezing outside.
func ExampleZone_Begin() {
	z := zone.Zone{Volume: 10, Loss: 5, Bodies: []zone.Body{
		{Name: "walls", Capacity: 150e3, ToAir: 120, ToOutside: 20},
		{Name: "window", Capacity: 14e3, ToAir: 15, ToOutside: 24, Area: 2, Transfer: 0.0025},
	}}
	r, err := z.Begin(z.Even(15, zone.Vapour(15, 0.6), 420e-6), 60)
	if err != nil {
		fmt.Println(err)
		return
	}
	for range 8 * 60 {
		r.Step(zone.Drive{Outside: 0, OutsideVapour: zone.Vapour(0, 0.9), OutsideCO2: 420e-6,
			Ventilation: 20. / 3600, Heat: 144 + 400, Vapour: 80 / 3.6e6, CO2: 22 / 3.6e6})
	}
	s := r.State()
	fmt.Printf("air %.1f °C, %.0f %%, %.0f ppm; %.0f g on the window\n",
		s.Temperature, 100*zone.Humidity(s.Temperature, s.Vapour), 1e6*s.CO2, 1000*s.Bodies[1].Water)
	// Output:
	// air 14.3 °C, 63 %, 1520 ppm; 87 g on the window
}
