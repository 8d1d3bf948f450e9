package power_test

import (
	"math"
	"testing"

	"tumblehome/trade/power"
)

func TestABatteryOfFewerVoltsGivesAsMuchLess(t *testing.T) {
	for _, tt := range []struct {
		name        string
		volts, mean float64
	}{
		{"nobody says", 0, 12.5},
		{"lead of 12 V", 12, 12.5},
		{"lead of 6 V is three of six cells", 6, 6.25},
		{"one cell of lead", 2, 12.5 / 6},
		{"a quarter of 12.8 V is one cell of lithium", 3.2, 12.5 / 4},
		{"24 V", 24, 25},
		{"25.6 V", 25.6, 25},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b := power.Battery{Chemistry: power.AGM, Volts: tt.volts}
			if got := b.MeanVolts(); math.Abs(got-tt.mean) > 1e-9 {
				t.Errorf("%g V reckons with %g V, want %g", tt.volts, got, tt.mean)
			}
		})
	}
}
