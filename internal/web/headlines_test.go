package web

import (
	"testing"

	"tumblehome/trade/working"
)

func TestTemperaturesAreJudgedByTheirDifference(t *testing.T) {
	for _, c := range []struct {
		name         string
		value, limit float64
		least        bool
		word         string
	}{
		{"a thermostat that swings by a tenth keeps what is wanted", 13.9, 14, true, ""},
		{"a degree short is felt", 13, 14, true, "too little"},
		{"below nought a share would mean nothing", -6, -4, true, "too little"},
		{"as cold as allowed is no fault where less is better", 5.2, 5, false, ""},
		{"a degree above the most", 6, 5, false, "too much"},
	} {
		t.Run(c.name, func(t *testing.T) {
			limit := c.limit
			if word, _ := verdict(working.Figure{Value: c.value, Unit: "°C", Limit: &limit, Least: c.least}); word != c.word {
				t.Errorf("%q, want %q", word, c.word)
			}
		})
	}
}

func TestWhatWarmsUsIsChangedOnItsPage(t *testing.T) {
	for pointer, want := range map[string]string{
		"/use/climate": "/warmth", "/use/trips/winter/keep": "/warmth", "/air/asleep/fan": "/warmth", "/use/gear/food": "/weight", "/use": "/weight",
	} {
		if got := addressOf(pointer); got != want {
			t.Errorf("%s is changed on %s, want %s", pointer, got, want)
		}
	}
}
