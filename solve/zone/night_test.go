package zone_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/zone"
)

// night is the case of testdata/night.py.
func night() zone.Zone {
	return zone.Zone{Volume: 10, Loss: 6, Bodies: []zone.Body{
		{Name: "walls", Capacity: 180e3, ToAir: 150, ToOutside: 22},
		{Name: "pane", Capacity: 16e3, ToAir: 15.4, ToOutside: 24, Area: 2, Transfer: 0.0025},
		{Name: "frame", Capacity: 20e3, ToAir: 10, ToOutside: 9, Area: 0.8, Transfer: 0.004},
	}}
}

// hours is what drives it, hour by hour.
func hours() (drives []zone.Drive) {
	for _, h := range []struct{ out, humidity, heat, vent, vapour, co2, sun float64 }{
		{4, 0.90, 900, 20, 140, 33, 0}, {3, 0.90, 700, 20, 100, 30, 0}, {2, 0.90, 144, 15, 80, 22, 0}, {1, 0.90, 144, 15, 80, 22, 0},
		{0, 0.90, 144, 15, 80, 22, 0}, {-1, 0.90, 144, 15, 80, 22, 0}, {-2, 0.90, 744, 15, 80, 22, 0}, {-2, 0.90, 744, 20, 80, 22, 0},
		{-1, 0.90, 600, 30, 110, 30, 0}, {2, 0.75, 300, 120, 0, 0, 0}, {6, 0.60, 0, 200, 0, 0, 60}, {9, 0.50, 0, 200, 0, 0, 120},
	} {
		drives = append(drives, zone.Drive{Outside: h.out, OutsideVapour: zone.Vapour(h.out, h.humidity), OutsideCO2: 420e-6,
			Ventilation: h.vent / 3600, Heat: h.heat, BodyHeat: []float64{0, h.sun}, Vapour: h.vapour / 3.6e6, CO2: h.co2 / 3.6e6})
	}
	return drives
}

func begin(t testing.TB, z zone.Zone, s zone.State, step float64) *zone.Run {
	t.Helper()
	r, err := z.Begin(s, step)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestANightIsAsAnotherSolverFindsIt(t *testing.T) {
	var want []struct {
		Temperature, Humidity, CO2 float64
		Bodies, Water              []float64 // °C, g
	}
	oracle.Decode(t, oracle.Python, "testdata/night.py", &want)
	z := night()
	r := begin(t, z, z.Even(8, zone.Vapour(8, 0.6), 420e-6), 60)
	for k, w := range want { // every ten minutes
		for range 10 {
			r.Step(hours()[k/6])
		}
		s := r.State()
		check := func(name string, want, got, tolerance float64, unit string) {
			proof.Check(t, proof.Case{Name: name + " in the night", Source: "scipy's Runge-Kutta at 1e-8, testdata/night.py",
				Inputs: fmt.Sprintf("testdata/night.py after %d min", 10*(k+1)), Expected: want, Got: got, Tolerance: tolerance, Unit: unit})
		}
		check("air temperature", w.Temperature, s.Temperature, 0.02, "°C")
		check("relative humidity", 100*w.Humidity, 100*zone.Humidity(s.Temperature, s.Vapour), 0.5, "%")
		check("carbon dioxide", w.CO2, 1e6*s.CO2, 5, "ppm")
		for b := range z.Bodies {
			check("temperature of the "+z.Bodies[b].Name, w.Bodies[b], s.Bodies[b].Temperature, 0.02, "°C")
			check("water on the "+z.Bodies[b].Name, w.Water[b], 1000*s.Bodies[b].Water, 0.3, "g")
		}
	}
}

func TestStepsOfTenMinutesBlurTheNightLittle(t *testing.T) {
	z := night()
	first := z.Even(8, zone.Vapour(8, 0.6), 420e-6)
	fine, coarse := begin(t, z, first, 60), begin(t, z, first, 600)
	for _, d := range hours() {
		for range 6 {
			coarse.Step(d)
			for range 10 {
				fine.Step(d)
			}
		}
		f, c := fine.State(), coarse.State()
		near(t, "air", c.Temperature, f.Temperature, 0.01)
		for k := range f.Bodies {
			near(t, z.Bodies[k].Name, c.Bodies[k].Temperature, f.Bodies[k].Temperature, 0.01)
			near(t, "water on the "+z.Bodies[k].Name, c.Bodies[k].Water, f.Bodies[k].Water, 0.0005)
		}
	}
}

// The goal is a millisecond for a night.
func BenchmarkANight(b *testing.B) {
	z, drives := night(), hours()
	for b.Loop() {
		r := begin(b, z, z.Even(8, zone.Vapour(8, 0.6), 420e-6), 60)
		for k := range 60 * len(drives) {
			r.Step(drives[k/60])
		}
	}
}
