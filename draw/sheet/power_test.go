package sheet_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/trade/power"
)

// dark is a year of winter trips, in which the engine does what the sun cannot, and one long trip in June.
func dark() power.Result {
	r := power.Result{Habit: power.Usual}
	for i, yield := range map[int]float64{0: 70, 1: 190, 2: 380, 5: 690, 10: 90, 11: 40} {
		m := &r.Months[i]
		m.Nights, m.Use, m.Yield, m.Engine = 4, [3]float64{430, 620, 790}, yield, 500
		m.Flat = power.Chance{Of: 30 - int(yield/30), In: 800, Share: (30 - yield/30) / 200, Error: 0.008}
		for h := range 24 {
			m.Middle[h], m.Low[h] = 0.9-0.015*float64(h), 0.5-0.012*float64(h)
		}
	}
	r.Months[5].Flat = power.Chance{In: 2800}
	return r
}

func TestTheDrawingsOfPowerAreFitToBeSeen(t *testing.T) {
	for _, width := range []float64{sheet.WideChart, sheet.Phone} {
		flawless(t, sheet.PowerYear(dark(), width))
		flawless(t, sheet.PowerYear(power.Result{}, width))
		for _, empty := range []float64{0, 0.1, 0.5} {
			t.Run(fmt.Sprintf("a day, %v kept, %v wide", empty, width), func(t *testing.T) { flawless(t, sheet.PowerDay(dark().Months[0], 1, empty, width)) })
		}
	}
}

func TestTheFlatterTheYearTheTallerItsBars(t *testing.T) {
	tallest := func(r power.Result) float64 {
		high := 0.0
		for _, m := range sheet.PowerYear(r, sheet.WideChart).Marks {
			if s, ok := m.(draw.Shape); ok && s.Fill == draw.FillLead {
				high = max(high, s.Path.Bounds().Height())
			}
		}
		return high
	}
	never := dark()
	for i := range never.Months {
		never.Months[i].Flat.Share = 0
	}
	if often, none := tallest(dark()), tallest(never); often <= 1 || none != 0 {
		t.Errorf("tallest bars %v and %v", often, none)
	}
}

// kits is a chart in which a larger battery and a larger panel help alike.
func kits() power.Chart {
	c := power.Chart{Promise: 0.05, Own: [2]float64{100, 180}, OwnShare: 0.11, Nights: 6400,
		Kit: &power.Kit{Battery: power.Offer{Name: "battery", AmpHours: 100}, Panel: power.Offer{Name: "panel", Watts: 220}, Batteries: 2, Panels: 1, Price: 750, Share: 0.04}}
	for i := range 12 {
		c.AmpHours, c.Watts = append(c.AmpHours, 25*float64(i+1)), append(c.Watts, 40*float64(i))
	}
	for _, w := range c.Watts {
		var row []float64
		for _, ah := range c.AmpHours {
			row = append(row, math.Exp(-ah/60-w/200))
		}
		c.Share = append(c.Share, row)
	}
	return c
}

func TestTheChartOfKitsIsFitToBeSeen(t *testing.T) {
	none := kits()
	none.Kit, none.Own = nil, [2]float64{900, 900}
	for _, width := range []float64{sheet.WideChart, sheet.Phone} {
		flawless(t, sheet.PowerKit(kits(), width))
		flawless(t, sheet.PowerKit(none, width))
	}
	if s := sheet.PowerKit(power.Chart{}, sheet.Phone); len(s.Marks) != 0 {
		t.Errorf("a chart that was not worked out has %d marks", len(s.Marks))
	}
}

// On the heavy line the promise is just kept: exp(-ah/60 - w/200) = 0.05 where ah/60 + w/200 = 3.
func TestTheHeavyLineIsWhereThePromiseIsJustKept(t *testing.T) {
	c := kits()
	found := 0
	for _, p := range sheet.EqualRisk(c, 0.05) {
		found++
		if d := p[0]/60 + p[1]/200 - math.Log(20); math.Abs(d) > 0.03 {
			t.Errorf("at %.0f Ah and %.0f W the exponent is off by %.3f", p[0], p[1], d)
		}
	}
	if found < 10 {
		t.Errorf("only %d points", found)
	}
}
