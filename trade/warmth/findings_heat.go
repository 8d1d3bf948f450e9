package warmth

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// cold judges whether what shall be kept can be kept.
func (r *Result) cold() (finding.Finding, bool) {
	n, worst := r.usual(), r.coldest()
	if r.in.Keep == nil || len(r.in.Sleepers) == 0 {
		return finding.Finding{}, false
	}
	keep := *r.in.Keep
	out := finding.Finding{Source: balance, Limit: &finding.Measure{Value: keep, Unit: "°C"}, Measured: &finding.Measure{Value: n.Low, Unit: "°C"}}
	month := months[n.Month-1]
	if r.in.burning() == nil {
		out.Code, out.Severity, out.About, out.Title = "warmth.heater.none", finding.Close, []string{r.in.KeepAbout}, "Nothing keeps the van as warm at night as is wanted"
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside; %.0f are wanted and no heater that may burn at night is fitted.", month, n.Low, keep)
		return out, n.Low < keep-nearKeep
	}
	out.Code, out.About, out.Title = "warmth.heater.small", []string{r.in.Heater.About, r.in.KeepAbout}, "The heater is too small"
	switch {
	case n.Low < keep-nearKeep:
		out.Severity = finding.Fault
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside, with the heater at full power.", month, n.Low)
	case worst.Low < keep-nearKeep:
		out.Severity, out.Title, out.Measured.Value = finding.Close, "On the coldest nights the heater is too small", worst.Low
		out.Words = fmt.Sprintf("On one night in ten in %s it falls to %.0f °C inside or lower, with the heater at full power.", months[worst.Month-1], worst.Low)
	default:
		return out, false
	}
	out.Caution = "A larger heater needs a flue as well, and enough battery to start."
	return out, true
}

func littleWords(watts float64) string {
	if watts == 0 {
		return "next to nothing"
	}
	return fmt.Sprintf("no more than about %.0f W", watts)
}

// large says that a heater would seldom run warm. Its smallest step counts for nothing here: makers do not all tell it.
func (r *Result) large() (finding.Finding, bool) {
	h, n := r.in.burning(), r.coldest()
	if h == nil {
		return finding.Finding{}, false
	}
	wants := 0.0
	for _, hour := range n.Hours {
		if hour.Hour >= r.in.Habit.ToBed || hour.Hour < r.in.Habit.Up {
			wants = math.Max(wants, hour.Heater)
		}
	}
	if wants*tooBig >= h.Power {
		return finding.Finding{}, false
	}
	return finding.Finding{Code: "warmth.heater.large", Severity: finding.Note, About: []string{h.About}, Title: "The heater is far larger than the van needs",
		Words:    fmt.Sprintf("Even one of the coldest nights wants %s of its %.0f W. A heater that burns fuel soots up when it seldom runs warm: let it run hard for a while now and then.", littleWords(round(wants, 50)), h.Power),
		Measured: &finding.Measure{Value: h.Power, Unit: "W"}, Limit: &finding.Measure{Value: math.Round(wants * tooBig), Unit: "W"}, Source: practice}, true
}
