package power_test

import (
	"slices"
	"testing"

	"tumblehome/trade/finding"
	"tumblehome/trade/power"
)

// standing is the walkers' van without its engine's charge: it lives by the sun.
func standing() power.Inputs {
	in := walkers()
	in.Sources = in.Sources[:1]
	for j := range in.Journeys {
		for m := range in.Journeys[j].Months {
			in.Journeys[j].Months[m].Day = weekday(0)
		}
	}
	in.Shop = []power.Offer{
		{Row: "small", Price: 100, AmpHours: 100, Chemistry: power.AGM, Usable: 0.5}, {Row: "large", Price: 480, AmpHours: 200, Chemistry: power.Lithium, Usable: 0.9},
		{Row: "panel", Price: 95, Watts: 180}}
	return in
}

func TestMoreBatteryOrPanelIsNeverWorse(t *testing.T) {
	for name, in := range map[string]power.Inputs{"by the sun": standing(), "with the engine": walkers(), "lead": lead(standing())} {
		c := power.Draw(in, 20, nil)
		for i := range c.Share {
			for j := range c.Share[i] {
				if i > 0 && c.Share[i][j] > c.Share[i-1][j] || j > 0 && c.Share[i][j] > c.Share[i][j-1] {
					t.Errorf("%s: %.0f Ah and %.0f W are flat in %g of nights, less of either in fewer", name, c.AmpHours[j], c.Watts[i], c.Share[i][j])
				}
			}
		}
		if allowed := 2 / float64(c.Nights); c.Smoothed > allowed { // before anything was levelled
			t.Errorf("%s: levelled by %g, where two nights of %d are %g", name, c.Smoothed, c.Nights, allowed)
		}
		if c.Share[0][0] <= c.Share[11][11] && name != "with the engine" {
			t.Errorf("%s: the least kit is flat in %g of nights, the largest in %g", name, c.Share[0][0], c.Share[11][11])
		}
	}
}

func lead(in power.Inputs) power.Inputs {
	b := *in.Battery
	b.Chemistry, b.Usable = power.Flooded, 0.5
	in.Battery = &b
	return in
}

func TestTheCheapestKitKeepsThePromiseAndNoCheaperOneDoes(t *testing.T) {
	in := standing()
	in.Promise = 0.2
	c := power.Draw(in, 20, nil)
	if c.Kit == nil || c.Kit.Share > in.Promise {
		t.Fatalf("the kit is %+v", c.Kit)
	}
	for batteries := 1; batteries <= 3; batteries++ {
		for panels := 0; panels <= 3; panels++ {
			for _, o := range in.Shop[:2] {
				if float64(batteries)*o.Price+float64(panels)*95 >= c.Kit.Price {
					continue
				}
				other := in
				other.Battery = &power.Battery{Chemistry: o.Chemistry, Rated: o.AmpHours * float64(batteries), Usable: o.Usable, CutOff: true}
				other.Sources = nil
				if panels > 0 {
					other.Sources = []power.Source{{Kind: power.Sun, Watts: 180 * float64(panels), Panels: 1, PanelVolts: 18}}
				}
				other.Years = 20
				r := power.Work(other)
				if slices.ContainsFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.battery.charge" }) {
					continue
				}
				if r.Flat.Share <= in.Promise {
					t.Errorf("%d × %s and %d panels are cheaper and keep the promise", batteries, o.Row, panels)
				}
			}
		}
	}
}

func TestAChartTellsHowFarItIs(t *testing.T) {
	last := 0
	power.Draw(standing(), 2, func(done, of int) {
		if done != last+1 || done > of {
			t.Errorf("%d of %d after %d", done, of, last)
		}
		last = done
	})
	if last < 144 {
		t.Errorf("told %d times", last)
	}
}

// Goal: 5 s on two cores.
func BenchmarkChartOfTwoHundredYears(b *testing.B) {
	in := standing()
	sky, err := power.NewSky(in.Climate, 200, 1)
	if err != nil {
		b.Fatal(err)
	}
	in.Sky = func(power.Climate, int, uint64) (*power.Sky, error) { return sky, nil }
	for b.Loop() {
		power.Draw(in, 200, nil)
	}
}
