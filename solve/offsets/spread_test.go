package offsets_test

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Three bodies given by formulas, in mm. None is a polynomial of the degree
// that the surface interpolates with.
var bodies = map[string]struct {
	length, top float64
	half        func(x, z float64) float64
}{
	"leans in above the waist and narrows at both ends": {3000, 1700, func(x, z float64) float64 {
		along := 1 - 0.035*math.Pow((x-1400)/1600, 4)
		up := 1 - 0.03*math.Pow((z-650)/650, 2)
		if z > 650 {
			up = 1 - 0.19*math.Pow((z-650)/1050, 2.6)
		}
		return 940 * along * up
	}},
	"an egg": {3000, 1700, func(x, z float64) float64 {
		return 930 * math.Pow(1-math.Pow(math.Abs(z-600)/1500, 2.5), 0.4) * math.Cos((x-1300)/4500)
	}},
	"waved by pressings 4 mm deep": {3000, 1700, func(x, z float64) float64 {
		return 900 - 120*math.Pow(z/1700, 4) + 4*math.Sin(x/330)*math.Sin(z/240)
	}},
}

// A body read at 7 stations and 7 heights, each reading off by up to 3 mm at random: between them the
// surface shall be within 6 mm at 95 places of 100, and the spread it states shall hold between 90 and 99 of 100.
func TestTheSurfaceBetweenReadingsIsWithinItsSpread(t *testing.T) {
	const reading = 3.0
	for name, b := range bodies {
		rng := rand.New(rand.NewPCG(20260919, 7))
		places, within, covered := 0, 0, 0
		for range 60 {
			read := table(steps(0, b.length, 6), steps(0, b.top, 6), b.half, func(float64) float64 { return b.top + 80 })
			for i := range read.Stations {
				for j := range read.Stations[i].Half {
					read.Stations[i].Half[j] += reading * (2*rng.Float64() - 1)
				}
			}
			read.Reading = reading
			s := must(t, read)
			for range 300 {
				x, z := rng.Float64()*b.length, rng.Float64()*b.top
				off := math.Abs(s.Half(x, z) - b.half(x, z))
				places++
				if off <= 6 {
					within++
				}
				if off <= s.Spread(x, z) {
					covered++
				}
			}
		}
		near, held := float64(within)/float64(places), float64(covered)/float64(places)
		t.Logf("%s: within 6 mm at %.1f %%, within the stated spread at %.1f %%", name, 100*near, 100*held)
		if near < 0.95 {
			t.Errorf("%s: within 6 mm at %.1f %% of places, want 95", name, 100*near)
		}
		if held < 0.90 || held > 0.99 {
			t.Errorf("%s: within the stated spread at %.1f %% of places, want 90 to 99", name, 100*held)
		}
	}
}

func TestTheSpreadOfAFormIsAddedToThatOfTheReadings(t *testing.T) {
	half := func(x, z float64) float64 { return 900 }
	plain := table(steps(0, 3000, 3), steps(0, 1500, 3), half, func(float64) float64 { return 1600 })
	plain.Reading = 4
	formed := plain
	formed.Form = 30
	a, b := must(t, plain).Spread(1200, 700), must(t, formed).Spread(1200, 700)
	want := math.Sqrt(a*a + 4*30*30/3.0)
	if math.Abs(b-want) > 1e-9 {
		t.Errorf("spread with a form good to 30: got %g, want %g", b, want)
	}
	if at := must(t, plain).Spread(1000, 500); math.Abs(at-2*4/math.Sqrt(3)) > 1e-9 {
		t.Errorf("on a reading the spread is twice that of the reading: got %g", at)
	}
}
