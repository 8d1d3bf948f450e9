package warmth

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// cold judges whether what shall be kept can be kept.
func (r *Result) cold() (finding.Finding, bool) {
	n, worst := r.usual(), r.coldest()
	if len(r.in.Sleepers) == 0 {
		return finding.Finding{}, false
	}
	if r.in.Keep == nil {
		return r.bitter()
	}
	keep := *r.in.Keep
	out := finding.Finding{Source: balance, Limit: &finding.Measure{Value: keep, Unit: "°C"}, Measured: &finding.Measure{Value: n.Low, Unit: "°C"}}
	month := months[n.Month-1]
	if r.in.burning() == nil {
		out.Code, out.Severity, out.About, out.Title = "warmth.heater.none", finding.Close, []string{r.in.KeepAbout}, "Nothing keeps the van as warm at night as is wanted"
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside; %.0f are wanted and no heater that may burn at night is fitted.", month, n.Low, keep)
		if n.Low < bitter {
			out.Severity, out.Caution = finding.Fault, frost
		}
		return out, n.Low < keep-nearKeep
	}
	out.Code, out.About, out.Title = "warmth.heater.small", []string{r.in.Heater.About, r.in.KeepAbout}, "The heater is too small"
	switch {
	case n.Low < keep-nearKeep && r.strains(n):
		out.Severity = finding.Fault
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside, with the heater at full power.", month, n.Low)
	case worst.Low < keep-nearKeep && r.strains(worst):
		out.Severity, out.Title, out.Measured.Value = finding.Close, "On the coldest nights the heater is too small", worst.Low
		out.Words = fmt.Sprintf("On one night in ten in %s it falls to %.0f °C inside or lower, with the heater at full power.", months[worst.Month-1], worst.Low)
	default:
		return out, false
	}
	out.Caution = "A larger heater needs a flue as well, and enough battery to start."
	return out, true
}

const frost = "Who is chilled through falls asleep and does not wake to help themselves. Never make up for it with a flame that has no flue."

// bitter judges nights of which nobody said how warm they should be.
func (r *Result) bitter() (finding.Finding, bool) {
	n := r.usual()
	out := finding.Finding{Code: "warmth.heater.none", Severity: finding.Close, About: []string{"/use/trips"}, Title: fmt.Sprintf("Nobody sleeps well at %s °C", degrees(n.Low)), Source: practice, Caution: frost,
		Words:    fmt.Sprintf("On a usual night in %s it falls so low inside, and no heater that may burn at night is fitted. Say how warm it should be at night (keep), fit a heater, or go in warmer months.", months[n.Month-1]),
		Measured: &finding.Measure{Value: n.Low, Unit: "°C"}, Limit: &finding.Measure{Value: bearable, Unit: "°C"}}
	if h := r.in.burning(); h != nil {
		out.Code, out.About, out.Severity = "warmth.heater.small", []string{h.About}, finding.Fault
		out.Words = fmt.Sprintf("On a usual night in %s it falls so low inside, with the heater at full power.", months[n.Month-1])
	}
	if n.Low < bitter {
		out.Severity = finding.Fault
	}
	strained := r.in.burning() == nil || r.strains(n)
	return out, n.Low < bearable && strained && !r.in.TripsAssumed
}

// degrees are whole ones, with the sign that is printed.
func degrees(t float64) string {
	return strings.Replace(fmt.Sprintf("%.0f", t), "-", "−", 1)
}

func littleWords(watts float64) string {
	if watts == 0 {
		return "next to nothing"
	}
	return fmt.Sprintf("no more than about %.0f W", watts)
}

// wants is the most that the heater gives in an hour while people sleep, W.
func (r *Result) wants(n *Night) float64 {
	wants := 0.0
	for _, hour := range n.Hours {
		if hour.Hour >= r.in.Habit.ToBed || hour.Hour < r.in.Habit.Up {
			wants = math.Max(wants, hour.Heater)
		}
	}
	return wants
}

// strains says that the heater gives all it can: where it does not, a thermostat that lags for a while is no heater too small.
func (r *Result) strains(n *Night) bool { return r.wants(n) >= nearlyAll*r.in.Heater.Power }

// large says that a heater would seldom run warm. Its smallest step counts for nothing here: makers do not all tell it.
func (r *Result) large() (finding.Finding, bool) {
	h, n := r.in.burning(), r.coldest()
	if _, cold := r.cold(); h == nil || cold {
		return finding.Finding{}, false
	}
	wants := r.wants(n)
	if wants*tooBig >= h.Power {
		return finding.Finding{}, false
	}
	return finding.Finding{Code: "warmth.heater.large", Severity: finding.Note, About: []string{h.About}, Title: "The heater is far larger than the van needs",
		Words:    fmt.Sprintf("Even one of the coldest nights wants %s of its %s W. A heater that burns fuel soots up when it seldom runs warm: let it run hard for a while now and then.", littleWords(round(wants, 50)), quantity.Parted(h.Power)),
		Measured: &finding.Measure{Value: h.Power, Unit: "W"}, Limit: &finding.Measure{Value: math.Round(wants * tooBig), Unit: "W"}, Source: practice}, true
}
