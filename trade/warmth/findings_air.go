package warmth

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

func (r *Result) unflued() (finding.Finding, bool) {
	h := r.in.Heater
	if h == nil || h.Flued {
		return finding.Finding{}, false
	}
	return finding.Finding{Code: "warmth.heater.unflued", Severity: finding.Danger, About: []string{h.About}, Title: "The heater has no flue",
		Words: "All its fumes and its water stay in the van: carbon monoxide kills sleepers without waking them. It is left out of the nights reckoned here.", Source: practice,
		Caution: fumes + " Have a heater with sealed combustion fitted, its intake and exhaust led through the floor, by the book of its maker."}, true
}

// air judges the openings that nobody can close.
func (r *Result) air() (finding.Finding, bool) {
	f, total := r.Fixed, r.in.total()
	about := []string{r.in.AirAbout}
	want := f.WantHigh + f.WantLow
	words := fmt.Sprintf("What nobody can close: %s high up and %s low down; %.0f and %.0f cm² are asked%s.", area(f.High), area(f.Low), f.WantHigh, f.WantLow,
		map[bool]string{true: " where something burns in the room", false: ""}[f.Burner])
	out := finding.Finding{Code: "warmth.air.fixed", About: about, Source: en721, Measured: &finding.Measure{Value: total, Unit: "cm2"}, Limit: &finding.Measure{Value: want, Unit: "cm2"}}
	least := math.Min(f.High/f.WantHigh, f.Low/f.WantLow)
	switch {
	case len(r.in.Sleepers) == 0 && !f.Burner:
		return out, false
	case !r.in.AirSaid:
		return r.airUnsaid(), true
	case least >= 1:
		return out, false
	case total == 0:
		out.Severity, out.Title = finding.Fault, "No opening stays open at night"
		if f.Burner {
			out.Severity = finding.Danger
		}
	case f.Burner && least < nearlyAll:
		out.Severity, out.Title = finding.Fault, "Too little fixed air for a flame in the van"
	case f.Burner || total < nearlyAll*want:
		out.Severity, out.Title = finding.Close, "Fixed air is a little short"
	default:
		out.Severity, out.Title = finding.Note, "Fixed air is enough but ill placed"
		words += " Air changes by itself only between an opening low down and one high up."
	}
	out.Words, out.Caution = words, burnerCaution(f.Burner)
	return out, true
}

// area is a free area in words.
func area(cm2 float64) string {
	if cm2 < 0.5 {
		return "nothing"
	}
	return fmt.Sprintf("%.0f cm²", cm2)
}

// airUnsaid asks what stays open at night. Nobody knows that it is nothing; where shut tight the air would be bad it is more than a remark.
func (r *Result) airUnsaid() finding.Finding {
	f, n := r.Fixed, r.usual()
	out := finding.Finding{Code: "warmth.air.unsaid", Severity: finding.Note, About: []string{r.in.AirAbout}, Title: "Nothing says yet how air gets in at night",
		Words:  fmt.Sprintf("Who sleeps in a van needs openings that nobody can close: here about %.0f cm² in the roof and %.0f cm² near the floor. Write down which stay open.", f.WantHigh, f.WantLow),
		Source: en721, Caution: burnerCaution(f.Burner)}
	if n.CO2 > mostCO2 {
		out.Severity, out.Measured, out.Limit = finding.Close, &finding.Measure{Value: n.CO2, Unit: "ppm"}, &finding.Measure{Value: mostCO2, Unit: "ppm"}
		out.Words = fmt.Sprintf("With all shut, carbon dioxide rises to about %.0f ppm by morning: heads ache from it. ", round(n.CO2, 100)) + out.Words
	}
	return out
}

func burnerCaution(burner bool) string {
	if burner {
		return fumes
	}
	return ""
}

func (r *Result) stale() (finding.Finding, bool) {
	n := r.usual()
	out := finding.Finding{Code: "warmth.co2", About: []string{r.in.AirAbout}, Title: "The air grows stale at night", Source: airGuides,
		Words: fmt.Sprintf("Carbon dioxide rises to about %.0f ppm: %.0f m³ of fresh air an hour for %s. Heads ache from it, and windows run with water. Open more, low and high.",
			round(n.CO2, 100), n.Ventilate, sleepers(len(r.in.Sleepers))),
		Measured: &finding.Measure{Value: n.CO2, Unit: "ppm"}, Limit: &finding.Measure{Value: staleCO2, Unit: "ppm"},
		Caution: "This says nothing of carbon monoxide, which comes from flames and engines: that wants an alarm."}
	switch {
	case !r.in.AirSaid || n.CO2 <= staleCO2:
		return out, false
	case n.CO2 > mostCO2:
		out.Severity = finding.Fault
	case n.CO2 > badCO2:
		out.Severity = finding.Close
	}
	return out, true
}

func sleepers(n int) string {
	if n == 1 {
		return "one sleeper"
	}
	return fmt.Sprintf("%d sleepers", n)
}

func round(v, to float64) float64 { return math.Round(v/to) * to }
