package warmth_test

import (
	"fmt"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/solve/zone"
	"tumblehome/trade/warmth"
)

func TestGlaserGivesThePublishedCondensate(t *testing.T) {
	const suite = "a public condensation-check suite (Spanish code, ISO 13788), recomputed by an independent script"
	w := warmth.Wet{Rse: 0.04, Rsi: 0.13, Layers: []warmth.Slice{{R: 0.110 / 0.667, Sd: 1.10}, {R: 0.010 / 0.41, Sd: 0.10}, {R: 0.030 / 0.0375, Sd: 0.60},
		{R: 0.030 / 0.445, Sd: 0.30}, {R: 0.010 / 0.57, Sd: 0.06}}}
	c := warmth.Climate{Outside: 5, OutsideVapour: 836.9899, Inside: 20, InsideVapour: 1285.3231}
	for i, want := range []float64{5.48221147, 7.47033972, 7.76437110, 17.40860050, 18.22131646, 18.43281272} {
		proof.Check(t, proof.Case{Name: fmt.Sprintf("temperature of face %d", i), Source: suite, Inputs: "five layers, 5 and 20 °C", Expected: want, Got: w.Temperatures(c)[i], Tolerance: 1e-6, Unit: "°C"})
	}
	rates := w.Rates(c)
	const month = 30 * 86400 * 1000
	proof.Check(t, proof.Case{Name: "condensate of 30 days on both sides of a light mortar", Source: suite, Inputs: "sd 1.10 0.10 0.60 0.30 0.06 m, 5 °C 96 %, 20 °C 55 %",
		Expected: 31.39753, Got: month * (rates[1] + rates[2]), Tolerance: 0.002, Unit: "g/m2"})
}

func TestALightWallGathersWhatTheExampleOfTheStandardGathers(t *testing.T) {
	for _, c := range []struct{ rsi, rse, want float64 }{{0.25, 0.08, 259}, {0.13, 0.04, 268}} {
		w := warmth.Wet{Rse: c.rse, Rsi: c.rsi, Layers: []warmth.Slice{{R: 0.019 / 0.127, Sd: 1.9}, {R: 0.160 / 0.04, Sd: 0.16}, {R: 1e-6, Sd: 2}, {R: 0.019 / 0.127, Sd: 0.95}}}
		sum := 0.0
		for _, g := range w.Rates(warmth.Climate{Outside: -5, OutsideVapour: 321, Inside: 20, InsideVapour: 1168}) {
			sum += g
		}
		proof.Check(t, proof.Case{Name: "condensate of 90 days in a light wall", Source: "layers of DIN 4108-3 (a public table), result by an independent script",
			Inputs: fmt.Sprintf("chipboard 19, wool 160, membrane 2 m, chipboard 19; Rsi %g, Rse %g", c.rsi, c.rse), Expected: c.want, Got: 90 * 86400 * 1000 * sum, Tolerance: 1.5, Unit: "g/m2"})
	}
}

func TestSteelGathersWhatTheTableSays(t *testing.T) {
	ply := warmth.Slice{R: 0.004 / 0.13, Sd: 0.8}
	for _, c := range []struct {
		name   string
		layers []warmth.Slice
		want   float64
	}{
		{"wool 40, plywood 4", []warmth.Slice{{R: 1, Sd: 0.04}, ply}, 5.53},
		{"XPS 30, plywood 4", []warmth.Slice{{R: 0.030 / 0.034, Sd: 3}, ply}, 1.22},
		{"wool 40, membrane 50 m, plywood 4", []warmth.Slice{{R: 1, Sd: 0.04}, {R: 1e-6, Sd: 50}, ply}, 0.091},
		{"bonded PE foam 20", []warmth.Slice{{R: 0.020 / 0.037, Sd: 140}}, 0.032},
		{"bonded elastomeric 19", []warmth.Slice{{R: 0.019 / 0.036, Sd: 190}}, 0.024},
	} {
		w := warmth.Wet{Rse: 0.04, Rsi: 0.13, Tight: true, Layers: c.layers}
		at := warmth.Climate{Outside: 0, OutsideVapour: 0.9 * 610.5, Inside: 18, InsideVapour: 0.7 * zone.Saturation(18)}
		sum := 0.0
		for _, g := range w.Rates(at) {
			sum += g
		}
		proof.Check(t, proof.Case{Name: "water on steel in 8 hours behind " + c.name, Source: "own recalculation of the project's reference by an independent script", Inputs: "18 °C 70 % inside, 0 °C outside, diffusion only",
			Expected: c.want, Got: 8 * 3600 * 1000 * sum, Tolerance: max(0.006, 0.006*c.want), Unit: "g/m2"})
	}
}

func TestWhatGatheredDriesInDrierAir(t *testing.T) {
	w := warmth.Wet{Rse: 0.04, Rsi: 0.13, Tight: true, Layers: []warmth.Slice{{R: 1, Sd: 0.04}, {R: 0.03, Sd: 0.3}}}
	w.Spend(warmth.Climate{Outside: 0, Inside: 18, InsideVapour: 1444}, 30*86400, 30)
	wet := w.Total()
	w.Spend(warmth.Climate{Outside: 15, Inside: 16, InsideVapour: 0.7 * zone.Saturation(15)}, 60*86400, 60)
	if !(wet > 0.1 && w.Total() < 0.01) {
		t.Errorf("%.3f kg/m2 gathered, %.3f left", wet, w.Total())
	}
}

func TestWinterShowsWoolWetAndGluedFoamDry(t *testing.T) {
	year := func(courses ...warmth.Course) warmth.Winter {
		in := wall(0, 0, courses...)
		in.Heater = &warmth.Heater{About: "/fittings/heater", Power: 2000, Flued: true}
		for i := range in.Months {
			in.Months[i].Nights = 25
		}
		in.Sleepers = []warmth.Sleeper{{Mass: 75}, {Mass: 75}}
		r := warmth.Work(in)
		return r.Winters[0]
	}
	board := func(from float64) warmth.Course { return course(of(0.13, 70), from, from+4, from, from+4) }
	wool := year(course(of(0.04, 1), 0, 40, 0, 40), board(40))
	foam := year(course(of(0.04, 1500), 0, 40, 0, 40), board(40))
	if !(wool.Most > 200 && foam.Most < wool.Most/10) {
		t.Errorf("behind wool %.0f g/m2, behind glued foam %.0f", wool.Most, foam.Most)
	}
}
