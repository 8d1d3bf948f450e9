package trips

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
)

var practice = finding.Source{Text: "common practice, no source", Sure: finding.Practice}

// Findings lists what the builder should know.
func (r Result) Findings() []finding.Finding {
	var out []finding.Finding
	for _, p := range r.Trips {
		if p.DrivingPerDay > longDrive {
			out = append(out, p.longDriving())
		}
		if len(p.Assumed) > 0 {
			out = append(out, p.unsaid())
		}
		if f, more := p.bedless(r.in.Beds); more {
			out = append(out, f)
		}
	}
	if f, full := r.crowded(); full {
		out = append(out, f)
	}
	return out
}

// longDrive is what those who drive for a living may drive in a day [h]: Regulation (EC) No 561/2006, article 6, from memory. Nobody holds a
// camper to it; it is a yardstick.
const longDrive = 9

func (p *Planned) longDriving() finding.Finding {
	return finding.Finding{
		Code: "trips.driving", Severity: finding.Close, About: []string{"/use/trips/" + p.ID},
		Title:    fmt.Sprintf("%s means %.0f hours at the wheel in a day", p.ID, p.DrivingPerDay),
		Words:    fmt.Sprintf("Those who drive for a living stop at %d hours. Another night on the way makes it shorter.", longDrive),
		Measured: &finding.Measure{Value: p.DrivingPerDay, Unit: "h"}, Limit: &finding.Measure{Value: longDrive, Unit: "h"},
		Source: finding.Source{Text: "Regulation (EC) No 561/2006, article 6, as a yardstick", Sure: finding.Memory},
	}
}

func (p *Planned) unsaid() finding.Finding {
	return finding.Finding{
		Code: "trips.unsaid", Severity: finding.Note, About: []string{"/use/trips/" + p.ID},
		Title:  p.ID + " leaves something open",
		Words:  "It does not say " + strings.Join(p.Assumed, "; ") + ".",
		Source: practice,
	}
}

// bedless finds a trip with more people than lie down in the van.
func (p *Planned) bedless(beds int) (finding.Finding, bool) {
	return finding.Finding{
		Code: "trips.beds", Severity: finding.Note, About: []string{"/use/trips/" + p.ID, "/modes/night/people"},
		Title:    fmt.Sprintf("On %s come along %d, and %d lie down in the night", p.ID, len(p.Aboard), beds),
		Words:    "Warmth and air are reckoned for who lies down in the van, electricity and driving for who comes along. Say in the night where the others lie, or that they stay at home.",
		Measured: &finding.Measure{Value: float64(len(p.Aboard)), Unit: "1"}, Limit: &finding.Measure{Value: float64(beds), Unit: "1"}, Source: practice,
	}, beds > 0 && len(p.Aboard) > beds && p.NightsPerYear > 0
}

var (
	monthDays  = [12]float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}
	monthNames = [12]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}
)

// crowded finds the month that has too few nights for its trips by most.
func (r *Result) crowded() (finding.Finding, bool) {
	worst, over := 0, 1e-9
	for m, nights := range r.Nights {
		if nights-monthDays[m] > over {
			worst, over = m, nights-monthDays[m]
		}
	}
	if over < 1e-6 {
		return finding.Finding{}, false
	}
	f := finding.Finding{
		Code: "trips.nights", Severity: finding.Fault,
		Title:    fmt.Sprintf("%s has %.0f nights, the trips need %.0f", monthNames[worst], monthDays[worst], r.Nights[worst]),
		Words:    "Warmth, water and power would be reckoned for nights there cannot be. Make the trips fewer, shorter or spread over more months.",
		Measured: &finding.Measure{Value: r.Nights[worst], Unit: "1"}, Limit: &finding.Measure{Value: monthDays[worst], Unit: "1"},
		Source: finding.Source{Text: "the calendar", Sure: finding.Computed},
	}
	for _, p := range r.Trips {
		if slices.ContainsFunc(p.Months, func(m Month) bool { return m.Number == worst+1 && m.Nights > 0 }) {
			f.About = append(f.About, "/use/trips/"+p.ID)
		}
	}
	return f, true
}

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{
		Code: "trips.beds", Meaning: "More people come along on a trip than lie down in the van at night.",
		Why: "Warmth and air are reckoned for the one number, electricity for the other.", Clear: "Say in the night where everybody lies, or take people out of the trip.",
	}, {
		Code: "trips.driving", Meaning: "A trip means more hours at the wheel in a day than is wise.",
		Why: "Tired drivers have accidents, and a day on the road leaves no day for what the trip is for.", Clear: "Spend another night on the way, or go less far.",
	}, {
		Code: "trips.nights", Meaning: "All the trips together need more nights than a month has.",
		Why: "What follows for warmth, water and power is then too much.", Clear: "Make the trips fewer, shorter, or spread them over more months.",
	}, {
		Code: "trips.unsaid", Meaning: "A trip does not say when, how often, how long, with whom or how far it goes.",
		Why: "Something usual is taken instead, and the figures rest on it.", Clear: "Say what you know; a guess of yours is better than one of ours.",
	},
}
