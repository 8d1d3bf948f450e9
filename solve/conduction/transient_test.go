package conduction_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/conduction"
)

func follow(t testing.TB, w conduction.Wall, start float64, outer, inner conduction.Drive, step float64, cells int) *conduction.Transient {
	t.Helper()
	f, err := w.Follow(start, outer, inner, step, cells)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// timber is deep enough that for three hours the far side does not matter.
func timber(outer float64) conduction.Wall {
	return conduction.Wall{Outer: outer, Layers: []conduction.Layer{
		{Thickness: 0.25, Conductivity: 0.13, Density: 500, HeatCapacity: 1600}}}
}

const alpha = 0.13 / (500 * 1600)

func TestAHalfSpaceWhoseSurfaceIsSetToZeroCoolsByTheErrorFunction(t *testing.T) {
	cold, warm := conduction.Drive{}, conduction.Drive{Temperature: 20}
	f := follow(t, timber(0), 20, cold, warm, 30, 160)
	wanted := map[int][4]float64{ // after s: °C at 5, 10 and 20 mm, W/m² out
		600: {5.5940, 10.5216, 16.9584, 148.558}, 3600: {2.3244, 4.5997, 8.8251, 60.6486}, 10800: {1.3452, 2.6808, 5.2864, 35.0155},
	}
	for time := 30; time <= 10800; time += 30 {
		f.Step(cold, warm)
		want, listed := wanted[time]
		if !listed {
			continue
		}
		inputs := fmt.Sprintf("λ 0.13 W/mK, ρ 500 kg/m³, c 1600 J/kgK, 20 °C, surface at 0 °C for %d s", time)
		for k, depth := range []float64{0.005, 0.010, 0.020} {
			proof.Check(t, proof.Case{Name: fmt.Sprintf("half-space, %g mm deep", 1000*depth), Source: "closed form, 20·erf(x/2√(αt))",
				Inputs: inputs, Expected: want[k], Got: f.At(depth), Tolerance: 0.01, Unit: "°C"})
			near(t, "the table against the error function", want[k], 20*math.Erf(depth/2/math.Sqrt(alpha*float64(time))), 6e-5)
		}
		out, _ := f.Entered()
		mean := 2 * 0.13 * 20 / math.Sqrt(math.Pi*alpha) * (math.Sqrt(float64(time)) - math.Sqrt(float64(time)-30)) / 30 // over the last step
		proof.Check(t, proof.Case{Name: "half-space, flow at the surface", Source: "closed form, λΔT/√(παt), mean over the last 30 s",
			Inputs: inputs, Expected: mean, Got: -out, Tolerance: 0.002 * mean, Unit: "W/m2"})
	}
}

func TestAHalfSpaceUnderAFilmCoolsAsTheClosedFormSays(t *testing.T) {
	cold, warm := conduction.Drive{}, conduction.Drive{Temperature: 1}
	f := follow(t, timber(1/7.69), 0, warm, cold, 30, 160)
	wanted := map[int][]float64{
		600: {0.27339, 0.16124, 0.04220}, 3600: {0.57105, 0.48214, 0.32855}, 10800: {0.72545, 0.66505, 0.55074},
	}
	for time := 30; time <= 10800; time += 30 {
		f.Step(warm, cold)
		for k, want := range wanted[time] {
			depth := []float64{0.005, 0.010, 0.020}[k]
			proof.Check(t, proof.Case{Name: fmt.Sprintf("half-space under a film, %g mm deep", 1000*depth),
				Source:   "closed form, erfc(ξ) − exp(hx/λ + h²αt/λ²)·erfc(ξ + h√(αt)/λ)",
				Inputs:   fmt.Sprintf("λ 0.13 W/mK, ρ 500 kg/m³, c 1600 J/kgK, h 7.69 W/m²K, after %d s", time),
				Expected: want, Got: f.At(depth), Tolerance: 0.0005, Unit: "1"})
		}
	}
}

func TestAPlaneWallCoolsAsTheSeriesSays(t *testing.T) {
	times := []float64{0.1, 0.2, 0.5, 1, 2} // Fourier numbers
	tests := []struct {
		biot            float64
		middle, surface [5]float64
	}{
		{0.1, [5]float64{0.99922, 0.99400, 0.96798, 0.92239, 0.83733}, [5]float64{0.96529, 0.95142, 0.92178, 0.87813, 0.79714}},
		{0.5, [5]float64{0.99632, 0.97260, 0.86411, 0.69838, 0.45578}, [5]float64{0.84390, 0.79015, 0.68688, 0.55459, 0.36193}},
		{1, [5]float64{0.99311, 0.95064, 0.77253, 0.53386, 0.25467}, [5]float64{0.72358, 0.64339, 0.50452, 0.34818, 0.16609}},
		{2, [5]float64{0.98778, 0.91789, 0.65962, 0.36956, 0.11589}, [5]float64{0.55360, 0.45764, 0.31313, 0.17520, 0.05494}},
		{5, [5]float64{0.97731, 0.86488, 0.52311, 0.22072, 0.03928}, [5]float64{0.30879, 0.23153, 0.13303, 0.05609, 0.00998}},
		{10, [5]float64{0.96842, 0.82925, 0.45464, 0.16382, 0.02127}, [5]float64{0.17057, 0.12248, 0.06433, 0.02317, 0.00301}},
	}
	for _, tt := range tests { // a wall of thickness 2 and diffusivity 1, so that time is the Fourier number
		w := conduction.Wall{Outer: 1 / tt.biot, Inner: 1 / tt.biot, Layers: []conduction.Layer{{Thickness: 2, Conductivity: 1, Density: 1, HeatCapacity: 1}}}
		f := follow(t, w, 1, conduction.Drive{}, conduction.Drive{}, 0.002, 48)
		now := 0
		for k, fourier := range times {
			for ; now < int(math.Round(fourier/0.002)); now++ {
				f.Step(conduction.Drive{}, conduction.Drive{})
			}
			surface, other := f.Surfaces()
			near(t, "the two surfaces", surface, other, 1e-12)
			inputs := fmt.Sprintf("Bi %g, Fo %g", tt.biot, fourier)
			proof.Check(t, proof.Case{Name: "plane wall, middle", Source: "series of 60 terms, ζ tan ζ = Bi", Inputs: inputs,
				Expected: tt.middle[k], Got: f.At(1), Tolerance: 0.0005, Unit: "1"})
			proof.Check(t, proof.Case{Name: "plane wall, surface", Source: "series of 60 terms, ζ tan ζ = Bi", Inputs: inputs,
				Expected: tt.surface[k], Got: surface, Tolerance: 0.0005, Unit: "1"})
		}
	}
}

// Four times fewer points and ten times longer steps keep what Wall.Follow says of them.
func TestTwelveCellsAreGoodToThreeThousandths(t *testing.T) {
	for biot, want := range map[float64][2]float64{0.1: {0.99400, 0.95142}, 1: {0.95064, 0.64339}, 10: {0.82925, 0.12248}} { // at Fo 0.2, as above
		w := conduction.Wall{Outer: 1 / biot, Inner: 1 / biot, Layers: []conduction.Layer{{Thickness: 2, Conductivity: 1, Density: 1, HeatCapacity: 1}}}
		f := follow(t, w, 1, conduction.Drive{}, conduction.Drive{}, 0.02, 12)
		for range 10 {
			f.Step(conduction.Drive{}, conduction.Drive{})
		}
		surface, _ := f.Surfaces()
		near(t, "middle", f.At(1), want[0], 0.003)
		near(t, "surface", surface, want[1], 0.003)
	}
}

// swing drives a wall with a sine of 1 K outside and finds amplitude and lag, h, of what is seen, over the last period.
func swing(t *testing.T, w conduction.Wall, hours float64, see func(*conduction.Transient) float64) (amplitude, lag float64) {
	const steps = 240
	outer := func(k int) conduction.Drive {
		return conduction.Drive{Temperature: math.Sin(2 * math.Pi * float64(k) / steps)}
	}
	f := follow(t, w, 0, outer(0), conduction.Drive{}, hours*3600/steps, 16)
	var sine, cosine float64
	for k := 1; k <= 6*steps; k++ {
		f.Step(outer(k), conduction.Drive{})
		if k > 5*steps {
			sine += 2. / steps * see(f) * math.Sin(2*math.Pi*float64(k)/steps)
			cosine += 2. / steps * see(f) * math.Cos(2*math.Pi*float64(k)/steps)
		}
	}
	lag = math.Mod(math.Atan2(-cosine, sine)+2*math.Pi, 2*math.Pi) / (2 * math.Pi) * hours
	return math.Hypot(sine, cosine), lag
}

func TestASwingOfADayReachesInAsTransferMatricesSay(t *testing.T) {
	type answer struct{ Amplitude, Lag float64 }
	var want struct{ Light, LightHour, Heavy, Half answer }
	oracle.Decode(t, oracle.Python, "testdata/periodic.py", &want)
	heavy := conduction.Wall{Outer: 0.04, Inner: 0.13, Layers: []conduction.Layer{
		{Thickness: 0.02, Conductivity: 0.13, Density: 500, HeatCapacity: 1600},
		{Thickness: 0.10, Conductivity: 0.7, Density: 1800, HeatCapacity: 1000},
		{Thickness: 0.02, Conductivity: 0.17, Density: 680, HeatCapacity: 1600},
	}}
	surface := func(f *conduction.Transient) float64 { _, inner := f.Surfaces(); return inner }
	tests := []struct {
		name  string
		wall  conduction.Wall
		hours float64
		see   func(*conduction.Transient) float64
		want  answer
	}{
		{"a light wall in a day", light(), 24, surface, want.Light},
		{"a light wall in an hour", light(), 1, surface, want.LightHour},
		{"a heavy wall in a day", heavy, 24, surface, want.Heavy},
		{"20 mm deep in thick timber in a day", timber(0), 24, func(f *conduction.Transient) float64 { return f.At(0.02) }, want.Half},
	}
	for _, tt := range tests {
		amplitude, lag := swing(t, tt.wall, tt.hours, tt.see)
		const source = "python3, complex transfer matrices of ISO 13786 and the half-space, testdata/periodic.py"
		proof.Check(t, proof.Case{Name: "amplitude within, " + tt.name, Source: source, Inputs: "1 K outside, testdata/periodic.py",
			Expected: tt.want.Amplitude, Got: amplitude, Tolerance: 0.003 * tt.want.Amplitude, Unit: "K"})
		proof.Check(t, proof.Case{Name: "lag within, " + tt.name, Source: source, Inputs: "1 K outside, testdata/periodic.py",
			Expected: tt.want.Lag, Got: lag, Tolerance: 0.002 * tt.hours, Unit: "h"})
	}
}

func TestAThinSheetCoolsAsOneLump(t *testing.T) {
	w := conduction.Wall{Outer: 0.04, Inner: 0.04, Layers: light().Layers[:1]}
	f := follow(t, w, 20, conduction.Drive{}, conduction.Drive{}, 1, 4)
	for range 70 {
		f.Step(conduction.Drive{}, conduction.Drive{})
	}
	proof.Check(t, proof.Case{Name: "cooling of a steel sheet", Source: "closed form, exp(−t/τ), τ = ρcd/2h = 70.2 s",
		Inputs: "1 mm, ρ 7800 kg/m³, c 450 J/kgK, 25 W/m²K on both sides, 20 °C, 70 s", Expected: 20 * math.Exp(-70/70.2), Got: f.At(0.0005), Tolerance: 0.005, Unit: "°C"})
}

func TestWhatEntersIsStored(t *testing.T) {
	for _, w := range []conduction.Wall{light(), {Outer: 0, Inner: 0.13, Layers: light().Layers}} {
		f := follow(t, w, 15, conduction.Drive{}, conduction.Drive{Temperature: 20}, 300, 8)
		before, entered, gross := f.Stored(), 0.0, 0.0
		for k := range 100 {
			f.Step(conduction.Drive{Temperature: float64(k % 7), Heat: 200 * float64(k%3)}, conduction.Drive{Temperature: 20, Heat: 5})
			outer, inner := f.Entered()
			entered += 300 * (outer + inner)
			gross += 300 * (math.Abs(outer) + math.Abs(inner))
		}
		near(t, "stored less entered, as a share of what went through", (f.Stored()-before-entered)/gross, 0, 1e-9)
	}
}

func TestAConstantDriveLeadsToTheSteadyState(t *testing.T) {
	cold, warm := conduction.Drive{}, conduction.Drive{Temperature: 20}
	f := follow(t, light(), 5, cold, warm, 3600, 8)
	for range 100 {
		f.Step(cold, warm)
	}
	_, inner := f.Entered()
	near(t, "flow, W/m2", inner, 20*light().Transmittance(), 1e-9)
	_, surface := f.Surfaces()
	near(t, "inner surface, °C", surface, 20*(1-light().Transmittance()*0.13), 1e-9)
}

func TestBadWallsAreRefused(t *testing.T) {
	tests := []struct {
		name string
		wall conduction.Wall
		step float64
		says string
	}{
		{"no layer", conduction.Wall{}, 60, "wall: no layer"},
		{"no thickness", conduction.Wall{Layers: []conduction.Layer{{Name: "board"}}}, 60, "layers[0] (board): thickness 0"},
		{"nothing stored", conduction.Wall{Layers: []conduction.Layer{{Thickness: 1, Conductivity: 1}}}, 60, "layers[0]: density 0 times heat capacity 0"},
		{"a negative film", conduction.Wall{Outer: -1, Layers: light().Layers}, 60, "wall: surface resistance -1"},
		{"no step", light(), 0, "wall: a step of 0 s"},
	}
	for _, tt := range tests {
		_, err := tt.wall.Follow(10, conduction.Drive{}, conduction.Drive{}, tt.step, 8)
		if err == nil || len(err.Error()) < len(tt.says) || err.Error()[:len(tt.says)] != tt.says {
			t.Errorf("%s: got %v, want a fault that begins %q", tt.name, err, tt.says)
		}
	}
}
