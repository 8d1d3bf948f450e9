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
		Name:  "Two nights far away mean long days at the wheel",
		Patch: `{"use": {` + weekends + `}, "far": {"months": [6], "often": "1 /year", "nights": 2, "aboard": ["ada"], "driving": "24 h/trip"}}}}`,
		Finds: []string{"close trips.driving /use/trips/far"},
	}, {
		Name:  "February has fewer nights than its trips",
		Patch: `{"use": {` + weekends + `}, "work": {"months": [2], "often": "1 /year", "nights": 26, "aboard": ["ben"], "driving": "0 h/day"}}}}`,
		Finds: []string{"fault trips.nights /use/trips/hills"},
	}, {
		Name:  "A trip does not say how often it is made",
		Patch: `{"use": {` + weekends + `}, "sea": {"months": [7], "nights": 3, "aboard": ["ada", "ben"], "driving": "2 h/day"}}}}`,
		Finds: []string{"note trips.unsaid /use/trips/sea"},
	}, {
		Name:  "A trip that leaves all open is told once",
		Patch: `{"use": {` + weekends + `}, "sea": {"note": "some day"}}}}`,
		Finds: []string{"note trips.unsaid /use/trips/sea"},
	},
}
