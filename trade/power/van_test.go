package power_test

import "tumblehome/trade/power"

// highland is a place at 57° N, about the middle of the Scottish Highlands (SAP 2012 table U for the region, rounded).
func highland() power.Climate {
	return power.Climate{Latitude: 57.2, Longitude: -4.6, Offset: 0,
		Mean:   [12]float64{2.6, 2.9, 4.4, 6.6, 9.3, 11.9, 13.9, 13.8, 11.6, 8.2, 5.0, 2.5},
		Low:    [12]float64{0, 0, 1, 2, 5, 8, 10, 10, 8, 5, 2, 0},
		High:   [12]float64{5, 6, 8, 11, 14, 16, 18, 18, 15, 11, 8, 5},
		Spread: [12]float64{3, 3, 3, 3, 3, 3, 2.5, 2.5, 2.5, 3, 3, 3},
		Sun:    [12]float64{0.46, 1.15, 2.2, 3.6, 4.7, 4.7, 4.4, 3.6, 2.5, 1.3, 0.6, 0.33}}
}

// weekday is a day of two people: up at seven, at the wheel for two hours and a half, out until four, to bed at ten.
func weekday(driving float64) (day [24]power.Hour) {
	for h := range day {
		switch {
		case h < 7 || h >= 22:
			day[h] = power.Hour{Asleep: 2}
		case h == 7 || h >= 16:
			day[h] = power.Hour{Awake: 2}
		}
		if left := driving - float64(h-8); h >= 8 && left > 0 {
			day[h] = power.Hour{Driving: min(1, left)}
		}
	}
	day[7].Cooking, day[18].Cooking = 0.25, 0.5
	return day
}

// walkers is a van in winter: two weekends a month from November to March and two weeks in June.
func walkers() power.Inputs {
	in := power.Inputs{Habit: "frugal", Climate: highland(), HeaterPower: 2000, Years: 200, Seed: 1,
		Battery: &power.Battery{About: "/power/batteries/house", Row: "battery-lfp-100ah", Chemistry: power.Lithium, Rated: 100, Usable: 0.9, Count: 1, CutOff: true},
		Sources: []power.Source{
			{ID: "sun", About: "/power/sources/sun", Kind: power.Sun, Watts: 180, Panels: 1, PanelVolts: 18, Amps: 20},
			{ID: "engine", About: "/power/sources/engine", Kind: power.Engine, Amps: 30, Most: 30}},
		Things: []power.Thing{
			{ID: "strip", Name: "light strip", Kind: power.Lamp, Watts: 30, Circuit: "lights"},
			{ID: "box", Name: "coolbox", Kind: power.Fridge, Watts: 45, Litres: 35, Circuit: "box"},
			{ID: "heater", Name: "heater", Kind: power.AirHeater, Watts: 16, Circuit: "heater"},
			{ID: "fan", Name: "roof fan", Kind: power.RoofFan, Watts: 40, Circuit: "fan"},
			{ID: "usb", Name: "sockets", Kind: power.USB, Circuit: "usb"},
			{ID: "pump", Name: "pump", Kind: power.Pump, Watts: 45, Circuit: "pump"}}}
	for m := range in.Cabin {
		for h := range 24 {
			in.Cabin[m][h] = in.Climate.Mean[m] + 4
			if m < 4 || m > 8 {
				if h < 8 || h >= 18 {
					in.Cabin[m][h], in.Heater[m][h] = 14, 500
				}
			}
		}
	}
	weekends := power.Journey{ID: "hills", Nights: 2}
	for _, m := range []int{1, 2, 3, 11, 12} {
		weekends.Months = append(weekends.Months, power.Month{Number: m, Trips: 2, Up: 7, Day: weekday(2.5)})
	}
	in.Journeys = []power.Journey{weekends, {ID: "summer", Nights: 14, Months: []power.Month{{Number: 6, Trips: 1, Up: 7, Day: weekday(1)}}}}
	return in
}
