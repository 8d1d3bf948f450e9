package trips

import (
	"fmt"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Figures lists every figure, by code. A build without trips has none.
func (r Result) Figures() []working.Figure {
	if len(r.Trips) == 0 {
		return nil
	}
	var out []working.Figure
	for _, s := range r.sums() {
		out = append(out, working.Figure{Code: s.code, Value: s.total(&r), Unit: s.unit, Label: s.label, State: r.state()})
	}
	return out
}

func (r *Result) state() working.State {
	for _, p := range r.Trips {
		if len(p.Assumed) > 0 {
			return working.Assumed
		}
	}
	return working.Current
}

// sum is a figure that adds up the trips.
type sum struct {
	code, label, unit, formula string
	of                         func(Planned) float64
	say                        func(Planned) string
}

func (r *Result) sums() []sum {
	return []sum{
		{"trips.driving", "Hours at the wheel in a year", "h", "Σ trips · days · hours a day", func(p Planned) float64 { return p.DrivingPerYear },
			func(p Planned) string { return fmt.Sprintf("%.4g × %d × %.4g", p.PerYear, p.Days, p.DrivingPerDay) }},
		{"trips.nights", "Nights in the van in a year", "1", "Σ trips · nights", func(p Planned) float64 { return p.NightsPerYear },
			func(p Planned) string { return fmt.Sprintf("%.4g × %d", p.PerYear, p.Nights) }},
		{"trips.nights-on-mains", "Nights on the mains in a year", "1", "Σ nights · share", func(p Planned) float64 { return p.NightsPerYear * p.HookUp.Float() },
			func(p Planned) string { return fmt.Sprintf("%.4g × %s", p.NightsPerYear, p.HookUp) }},
	}
}

func (s sum) total(r *Result) (total float64) {
	for _, p := range r.Trips {
		total += s.of(p)
	}
	return total
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	if len(r.Trips) == 0 {
		return working.Working{}, false
	}
	for _, s := range r.sums() {
		if s.code == code {
			return r.show(s), true
		}
	}
	return working.Working{}, false
}

func (r *Result) show(s sum) working.Working {
	w := working.Working{Code: s.code, Label: s.label, Formula: s.formula,
		Source: finding.Source{Text: "sums of the builder's own trips; a trip of n nights is n days", Sure: finding.Computed}}
	for _, p := range r.Trips {
		w.Lines = append(w.Lines, working.Line{Label: p.ID, Value: s.of(p), Unit: s.unit, Sum: s.say(p), From: working.Origin{Pointer: "/use/trips/" + p.ID}})
		for _, a := range p.Assumed {
			w.Notes = append(w.Notes, p.ID+" does not say "+a)
		}
	}
	w.Lines = append(w.Lines, working.Line{Label: "in a year", Value: s.total(r), Unit: s.unit, From: working.Origin{Here: true}})
	return w
}
