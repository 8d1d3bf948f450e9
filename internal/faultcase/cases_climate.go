package faultcase

// weekends is a trip of which everything is said, in a place that is known.
const weekends = `"climate": "gb-highland", "trips": {"hills": {"months": [11, 2], "often": "2 /month", "nights": 2, "aboard": ["ada", "ben"], "driving": "5 h/trip"`

var climateCases = []Case{
	{
		Name:  "The place of the weather is misspelt",
		Patch: `{"use": {"climate": "gb-higland"}}`,
		Finds: []string{"close climate.unknown /use/climate"},
	}, {
		Name:  "Nobody says where the trips go",
		Patch: `{"use": {"trips": {"hills": {"months": [11, 2], "often": "2 /month", "nights": 2, "aboard": ["ada"], "driving": "5 h/trip"}}}}`,
		Finds: []string{"note climate.unsaid /use/trips"},
	}, {
		Name:  "The camp lies on an alp and the weather is that of the plain",
		Patch: `{"use": {"climate": "lyon", "altitude": 1900}}`,
		Finds: []string{"note climate.height /use/altitude"},
	}, {
		Name: "The camp lies on an alp far above a hut whose weather somebody wrote down",
		Patch: `{"use": {"altitude": 2600, "climate": "hut", "weather": {"hut": {"lat": "46.1°", "lon": "7.2°", "altitude": 1400,
			"mean": [-3, -2, 1, 4, 9, 12, 14, 14, 11, 7, 1, -2], "low": [-6, -6, -3, 0, 4, 7, 9, 9, 6, 3, -2, -5], "high": [1, 2, 5, 9, 14, 17, 20, 19, 16, 11, 5, 2],
			"humidity": ["70 %", "70 %", "68 %", "66 %", "68 %", "70 %", "68 %", "72 %", "74 %", "74 %", "74 %", "72 %"],
			"sun": [1.5, 2.4, 3.7, 4.7, 5.2, 5.7, 6, 5.2, 4.1, 2.7, 1.6, 1.2]}}}}`,
		Finds: []string{"note climate.height /use/altitude"},
	}, {
		Name:  "Two nights far away mean long days at the wheel",
		Patch: `{"use": {` + weekends + `}, "far": {"months": [6], "often": "1 /year", "nights": 2, "aboard": ["ada"], "driving": "24 h/trip"}}}}`,
		Finds: []string{"close trips.driving /use/trips/far", "close warmth.heater.none /use/trips"},
	}, {
		Name:  "February has fewer nights than its trips",
		Patch: `{"use": {` + weekends + `}, "work": {"months": [2], "often": "1 /year", "nights": 26, "aboard": ["ben"], "driving": "0 h/day"}}}}`,
		Finds: []string{"fault trips.nights /use/trips/hills", "close warmth.heater.none /use/trips"},
	}, {
		Name:  "A trip does not say how often it is made",
		Patch: `{"use": {` + weekends + `}, "sea": {"months": [7], "nights": 3, "aboard": ["ada", "ben"], "driving": "2 h/day"}}}}`,
		Finds: []string{"note trips.unsaid /use/trips/sea", "close warmth.heater.none /use/trips"},
	}, {
		Name:  "A trip that leaves all open is told once",
		Patch: `{"use": {` + weekends + `}, "sea": {"note": "some day"}}}}`,
		Finds: []string{"note trips.unsaid /use/trips/sea", "close warmth.heater.none /use/trips"},
	},
}
