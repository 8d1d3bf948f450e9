package zone_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/zone"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.12g, want %.12g within %g", what, got, want, tolerance)
	}
}

var hourly = []float64{0.5, 1, 2, 4, 8}

func TestALumpCoolsAndWarmsAsTheExponential(t *testing.T) {
	tests := []struct {
		name        string
		start, heat float64
		want        [5]float64 // °C after 0.5, 1, 2, 4, 8 h
	}{
		{"cooling", 20, 0, [5]float64{13.9535, 9.7350, 4.7386, 1.1227, 0.0630}},
		{"warming", 5, 500, [5]float64{8.5271, 10.9879, 13.9025, 16.0118, 16.6299}},
	}
	for _, tt := range tests {
		air := zone.Zone{Volume: 150e3 / zone.AirHeat, Loss: 30}
		body := zone.Zone{Volume: 1, Bodies: []zone.Body{{Capacity: 150e3, ToOutside: 30}}}
		a, b := begin(t, air, air.Even(tt.start, 0, 0), 60), begin(t, body, body.Even(tt.start, 0, 0), 60)
		step := 0
		for k, h := range hourly {
			for ; step < int(60*h); step++ {
				a.Step(zone.Drive{Heat: tt.heat})
				b.Step(zone.Drive{BodyHeat: []float64{tt.heat}})
			}
			for name, got := range map[string]float64{"air": a.State().Temperature, "a body": b.State().Bodies[0].Temperature} {
				proof.Check(t, proof.Case{Name: tt.name + " of " + name, Source: "closed form, T∞ + (T0 − T∞)·exp(−t/τ), τ = C/UA",
					Inputs:   fmt.Sprintf("C 150 kJ/K, UA 30 W/K, from %g °C to 0 °C outside, %g W, after %g h", tt.start, tt.heat, h),
					Expected: tt.want[k], Got: got, Tolerance: 0.001, Unit: "°C"})
			}
		}
	}
}

func TestVapourAndCO2FollowTheirClosedForms(t *testing.T) {
	tests := []struct {
		vent        float64    // m³/h
		vapour, co2 [4]float64 // g/m³ and ppm after 1, 2, 4, 8 h
	}{
		{10, [4]float64{9.420, 11.281, 12.217, 12.361}, [4]float64{1810.7, 2322.3, 2579.7, 2619.3}},
		{20, [4]float64{7.822, 8.290, 8.362, 8.363}, [4]float64{1371.1, 1499.9, 1519.6, 1520.0}},
		{40, [4]float64{6.327, 6.363, 6.363, 6.363}, [4]float64{959.9, 969.8, 970.0, 970.0}},
	}
	for _, tt := range tests {
		z := zone.Zone{Volume: 10}
		r := begin(t, z, z.Even(15, 4.3634e-3, 420e-6), 60)
		step := 0
		for k, h := range hourly[1:] {
			for ; step < int(60*h); step++ {
				r.Step(zone.Drive{OutsideVapour: 4.3634e-3, OutsideCO2: 420e-6, Ventilation: tt.vent / 3600, Vapour: 80 / 3.6e6, CO2: 22 / 3.6e6})
			}
			inputs := fmt.Sprintf("10 m³, %g m³/h, 80 g/h and 22 L/h, after %g h", tt.vent, h)
			proof.Check(t, proof.Case{Name: "vapour without condensation", Source: "closed form of the single-zone balance", Inputs: inputs,
				Expected: tt.vapour[k], Got: 1000 * r.State().Vapour, Tolerance: 0.001, Unit: "g/m3"})
			proof.Check(t, proof.Case{Name: "carbon dioxide", Source: "closed form of the single-zone balance", Inputs: inputs,
				Expected: tt.co2[k], Got: 1e6 * r.State().CO2, Tolerance: 0.1, Unit: "ppm"})
		}
	}
}

func TestAColdPaneTakesWhatTheSteadyBalanceSays(t *testing.T) {
	for _, tt := range []struct{ vent, vapour, condensing float64 }{{10, 8.239, 41.24}, {20, 7.219, 22.88}, {40, 6.235, 5.16}} {
		z := zone.Zone{Volume: 10, Bodies: []zone.Body{{Capacity: 1e12, Area: 2, Transfer: 9.0 / 3600}}}
		s := z.Even(15, 4.3634e-3, 0)
		s.Bodies[0].Temperature = 3
		r := begin(t, z, s, 60)
		for range 24 * 60 {
			r.Step(zone.Drive{OutsideVapour: 4.3634e-3, Ventilation: tt.vent / 3600, Vapour: 80 / 3.6e6})
		}
		inputs := fmt.Sprintf("10 m³, %g m³/h, 80 g/h, pane 2 m² at 3 °C, β 9 m/h", tt.vent)
		const source = "closed form (Q·ve + βA·vs + G)/(Q + βA); saturation there by Hyland and Wexler, 0.1 % above ours"
		proof.Check(t, proof.Case{Name: "vapour beside a cold pane", Source: source, Inputs: inputs,
			Expected: tt.vapour, Got: 1000 * r.State().Vapour, Tolerance: 0.006, Unit: "g/m3"})
		proof.Check(t, proof.Case{Name: "condensing on a cold pane", Source: source, Inputs: inputs,
			Expected: tt.condensing, Got: 3.6e6 * r.Flow().Condensing, Tolerance: 0.15, Unit: "g/h"})
	}
}

func TestASteadyDriveEndsWhereTheBalanceOfHeatSays(t *testing.T) {
	z := night()
	d := zone.Drive{Outside: -3, Ventilation: 20. / 3600, Heat: 500}
	r := begin(t, z, z.Even(10, 0, 0), 600)
	for range 2000 {
		r.Step(d)
	}
	loss := z.Loss + zone.AirHeat*d.Ventilation
	for _, b := range z.Bodies {
		loss += b.ToAir * b.ToOutside / (b.ToAir + b.ToOutside)
	}
	near(t, "air temperature", r.State().Temperature, -3+500/loss, 1e-9)
}

// Random zones in random weather.
func TestHeatAndWaterBalanceInEveryStep(t *testing.T) {
	src := rand.New(rand.NewPCG(4, 9))
	for range 40 {
		z := zone.Zone{Volume: 2 + 20*src.Float64(), Loss: 10 * src.Float64()}
		for range src.IntN(5) {
			z.Bodies = append(z.Bodies, zone.Body{Capacity: 1e3 * math.Pow(10, 2*src.Float64()), ToAir: 50 * src.Float64(), ToOutside: 30 * src.Float64(),
				Area: float64(src.IntN(3)), Transfer: 0.004 * src.Float64()})
		}
		r := begin(t, z, z.Even(10, 0.006, 4e-4), 60)
		for range 200 {
			d := zone.Drive{Outside: 20*src.Float64() - 8, OutsideVapour: 0.004, OutsideCO2: 4e-4, Ventilation: 0.02 * src.Float64(),
				Heat: 1000 * src.Float64(), Vapour: 1e-4 * src.Float64() * float64(src.IntN(2)), BodyHeat: []float64{100}[:min(len(z.Bodies), 1)]}
			before := r.State()
			r.Step(d)
			checkBalance(t, z, d, before, r.State(), r.Flow())
		}
		if t.Failed() {
			t.Fatalf("in %+v", z)
		}
	}
}

func checkBalance(t *testing.T, z zone.Zone, d zone.Drive, before, after zone.State, f zone.Flow) {
	t.Helper()
	heat := zone.AirHeat * z.Volume * (after.Temperature - before.Temperature)
	water := z.Volume * (after.Vapour - before.Vapour)
	in := d.Heat + zone.Latent*f.Condensing - f.Loss - f.Ventilation - f.Bodies
	gross := d.Heat + 1000
	for k, b := range z.Bodies {
		heat += b.Capacity * (after.Bodies[k].Temperature - before.Bodies[k].Temperature)
		water += after.Bodies[k].Water - before.Bodies[k].Water
		if after.Bodies[k].Water < 0 {
			t.Errorf("%g kg of water on a body", after.Bodies[k].Water)
		}
		if k < len(d.BodyHeat) {
			in += d.BodyHeat[k]
		}
	}
	near(t, "heat stored less heat brought, as a share", (heat-60*in)/(60*gross), 0, 1e-9)
	near(t, "water stored less water brought, as a share", (water-60*(d.Vapour-f.VapourOut))/(60*1e-4), 0, 1e-9)
}

func TestAWetBodyDriesAndStaysDry(t *testing.T) {
	z := zone.Zone{Volume: 10, Bodies: []zone.Body{{Capacity: 1e5, ToAir: 20, Area: 1, Transfer: 0.003}}}
	s := z.Even(15, 0.004, 0)
	s.Bodies[0].Water = 0.020
	r := begin(t, z, s, 60)
	for range 600 {
		r.Step(zone.Drive{Outside: 15, OutsideVapour: 0.004, Ventilation: 0.01})
	}
	near(t, "water left", r.State().Bodies[0].Water, 0, 0)
	near(t, "vapour", r.State().Vapour, 0.004, 1e-9)
}

func TestBadZonesAreRefusedWithTheirPlace(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(*zone.Zone, *zone.State, *float64)
		says  string
	}{
		{"no volume", func(z *zone.Zone, _ *zone.State, _ *float64) { z.Volume = 0 }, "zone: volume 0 is not between 0.001 and 1e6 m³"},
		{"a loss that is no number", func(z *zone.Zone, _ *zone.State, _ *float64) { z.Loss = math.NaN() }, "zone: loss NaN is not between 0 and 1e6 W/K"},
		{"no step", func(_ *zone.Zone, _ *zone.State, step *float64) { *step = 0 }, "zone: a step of 0 s is not between 0.001 and 1e6 s"},
		{"a body without capacity", func(z *zone.Zone, _ *zone.State, _ *float64) { z.Bodies[1].Capacity = 0 }, "bodies[1] (pane): capacity 0 is not between 1 and 1e12 J/K"},
		{"too few states", func(_ *zone.Zone, s *zone.State, _ *float64) { s.Bodies = s.Bodies[:1] }, "state: 1 bodies where the zone has 3"},
		{"water that is owed", func(_ *zone.Zone, s *zone.State, _ *float64) { s.Bodies[2].Water = -1 }, "bodies[2] (frame): it begins at 8 °C with -1 kg of water"},
	}
	for _, tt := range tests {
		z, step := night(), 60.0
		s := z.Even(8, 0.005, 4e-4)
		tt.spoil(&z, &s, &step)
		if _, err := z.Begin(s, step); err == nil || err.Error() != tt.says {
			t.Errorf("%s: got %v, want %q", tt.name, err, tt.says)
		}
	}
}
