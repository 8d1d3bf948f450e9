package power

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// current is what a source pushes into the battery whether that likes it or not; a relay lets it draw what it likes.
func (s *Source) current(b *Battery) float64 {
	i := s.Amps
	switch {
	case s.Kind == Engine && s.Relay, s.Kind == Shore && s.Amps <= 0:
		return 0
	case s.Kind == Sun:
		full := s.Watts / (12 * b.series())
		if i = full; s.Amps > 0 {
			i = min(full, s.Amps)
		}
	}
	if s.Most > 0 && (i <= 0 || s.Most < i) {
		i = s.Most
	}
	return i
}

// chargedTooFast adds up what can charge at once: sun with the engine or with the mains.
func (r *Result) chargedTooFast(b *Battery) (finding.Finding, bool) {
	var by [3]float64
	kinds := [3]string{Sun, Engine, Shore}
	var worst *Source
	for i := range r.in.Sources {
		s := &r.in.Sources[i]
		for k, kind := range kinds {
			if s.Kind == kind {
				by[k] += s.current(b)
			}
		}
		if worst == nil || s.current(b) > worst.current(b) {
			worst = s
		}
	}
	limit, most := natures[b.Chemistry].most*b.Rated, by[0]+max(by[1], by[2])
	if worst == nil || most <= limit {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.battery.charge", Severity: finding.Fault, About: []string{worst.About, b.About}, Title: "The battery is charged faster than is good for it",
		Words:    fmt.Sprintf("Together they can push %s A into it; for one of %s Ah no more than %s A are usual. Look for the greatest charging current on its data sheet.", fine(most), fine(b.Rated), fine(limit)),
		Measured: &finding.Measure{Value: most, Unit: "A"}, Limit: &finding.Measure{Value: limit, Unit: "A"}, Source: practice, Caution: careCharge}
	if left := limit - (most - worst.current(b)); left >= 5 {
		f.Proposals = []finding.Proposal{{Words: fmt.Sprintf("set it to %.0f A, if it can be set", floor(left)), Patch: patchAt(worst.About+"/most", floor(left))}}
	}
	return f, true
}

func (r *Result) chargedCold(b *Battery) (finding.Finding, bool) {
	return finding.Finding{Code: "power.battery.cold", Severity: finding.Fault, About: []string{b.Fitting, b.About}, Title: "A lithium battery is charged below freezing",
		Words:    fmt.Sprintf("About %.0f hours in a year something would charge it while it is below 0 °C. That lays down metal in its cells and spoils it for good. Nothing here is said to stop it: choose a battery that takes no charge below freezing, one with a low-temperature cut-off, or one that warms itself. If the label says so, write cut-off: yes or heated: yes at its bank; words in a note count for nothing.", r.Cold),
		Measured: &finding.Measure{Value: r.Cold, Unit: "h"}, Limit: &finding.Measure{Value: 0, Unit: "h"}, Source: coldSource, Caution: careCharge}, r.Cold >= 1 && !r.in.PlaceAssumed
}

// nearMost is by how much a charger may pass what the engine is said to give.
const nearMost = 1.05

func (r *Result) overloaded(s *Source, b *Battery) (finding.Finding, bool) {
	draws := s.draws(b)
	f := finding.Finding{Code: "power.engine.overload", Severity: finding.Fault, About: []string{s.About}, Title: "More is drawn from the engine than it may give",
		Measured: &finding.Measure{Value: draws, Unit: "A"}, Limit: &finding.Measure{Value: s.Most, Unit: "A"}, Source: practice, Caution: careCharge}
	if s.Relay {
		f.Words = fmt.Sprintf("Only the cable limits what a switch lets through: about %.0f A, where %.0f A are said to be the most. A charger between the two batteries would limit it.", draws, s.Most)
		f.Source = finding.Source{Text: "I = (Ua − Ub)/R with 14.2 and 12.4 V; lead draws about a third of its ampere-hours when empty (measured reports)", Sure: finding.Read}
	} else {
		f.Words = fmt.Sprintf("The charger takes %.0f A for the battery, where %.0f A are said to be the most. Alternator, cable and fuse run hot. Take a smaller charger, or one that can be set.", draws, s.Most)
	}
	f.Proposals = append(r.bearable(s, b), s.turnedDown()...)
	return f, s.Kind == Engine && s.Most > 0 && draws > nearMost*s.Most
}

// turnedDown proposes what many chargers can: a setting for less current. Its row then has what it is set to.
func (s *Source) turnedDown() []finding.Proposal {
	if s.Relay || s.Row == "" || s.Most < 1 {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("set it to %.0f A, if it can be set, and let its row in the catalogue say so", floor(s.Most)),
		Patch: patchAt("/catalogue/"+s.Row, map[string]any{"kind": s.RowKind, "amps": floor(s.Most)})}}
}

// bearable proposes the largest charger of the catalogue that the engine bears, in place of what draws too much.
func (r *Result) bearable(s *Source, b *Battery) []finding.Proposal {
	var best Charger
	for _, c := range r.in.Chargers {
		if c.Amps <= s.Most && c.Amps > best.Amps && math.Round(c.Volts/12) == b.series() {
			best = c
		}
	}
	if best.Row == "" || s.Fitting == "" {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("take a charger of %.0f A in its place", best.Amps), Patch: patchAt(s.Fitting+"/buy", best.Row)}}
}

func (r *Result) overController(s *Source, b *Battery) (finding.Finding, bool) {
	full := s.Watts / (12 * b.series())
	return finding.Finding{Code: "power.panel.current", Severity: finding.Close, About: []string{s.About}, Title: "The panels can give more than their controller passes",
		Words:    fmt.Sprintf("In full sun they could give %.0f A; the controller passes %.0f A. A good one cuts the rest off, a poor one is spoilt by it.", full, s.Amps),
		Measured: &finding.Measure{Value: full, Unit: "A"}, Limit: &finding.Measure{Value: s.Amps, Unit: "A"}, Source: practice, Caution: careCharge,
	}, s.Kind == Sun && s.Amps > 0 && full > s.Amps*1.0001
}
