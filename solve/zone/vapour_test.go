package zone_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/zone"
)

func TestSaturationIsThatOfISO13788(t *testing.T) {
	for _, tt := range []struct{ temperature, own, steam float64 }{ // Pa; the second by IAPWS, ice below nought
		{-20, 102.74, 103.24}, {-10, 259.33, 259.87}, {-5, 401.18, 401.74}, {0, 610.50, 611.15}, {5, 871.86, 872.53}, {10, 1227.31, 1228.11},
		{15, 1704.41, 1705.68}, {20, 2336.95, 2339.19}, {25, 3165.92, 3169.82}, {30, 4240.51, 4246.92}, {40, 7370.93, 7385.11},
	} {
		got := zone.Saturation(tt.temperature)
		inputs := fmt.Sprintf("%g °C", tt.temperature)
		proof.Check(t, proof.Case{Name: "saturation pressure, formula", Source: "ISO 13788 formula, recomputed independently", Inputs: inputs,
			Expected: tt.own, Got: got, Tolerance: 0.006, Unit: "Pa"})
		proof.Check(t, proof.Case{Name: "saturation pressure, steam tables", Source: "IAPWS formulation", Inputs: inputs,
			Expected: tt.steam, Got: got, Tolerance: 0.006 * tt.steam, Unit: "Pa"})
		near(t, "dew point of saturated air", zone.DewPoint(got), tt.temperature, 1e-9)
	}
	proof.Check(t, proof.Case{Name: "vapour pressure", Source: "a public condensation code's test of ISO 13788", Inputs: "20 °C, 55 %",
		Expected: 1285.32312909, Got: zone.Pressure(20, zone.Vapour(20, 0.55)), Tolerance: 1e-6, Unit: "Pa"})
}

func TestDewPointsAgreeWithALibraryOfMoistAir(t *testing.T) {
	for _, tt := range []struct{ temperature, humidity, dew float64 }{
		{20, 0.50, 9.272}, {18, 0.70, 12.453}, {15, 0.80, 11.582}, {10, 0.90, 8.437}, {25, 0.60, 16.701}, {5, 0.90, 3.498}, {0, 0.90, -1.273}, {-5, 0.85, -6.888}, {-10, 0.85, -11.818},
	} {
		v := zone.Vapour(tt.temperature, tt.humidity)
		near(t, "humidity there and back", zone.Humidity(tt.temperature, v), tt.humidity, 1e-12)
		proof.Check(t, proof.Case{Name: "dew or frost point", Source: "psychrolib 1.1.1 (npm)", Inputs: fmt.Sprintf("%g °C, %g %%", tt.temperature, 100*tt.humidity),
			Expected: tt.dew, Got: zone.DewPoint(zone.Pressure(tt.temperature, v)), Tolerance: 0.03, Unit: "°C"})
	}
}
