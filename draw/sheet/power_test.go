package sheet_test

import (
	"fmt"
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
