package power

import (
	"fmt"

	"tumblehome/trade/finding"
)

// Where limits come from.
var (
	bySimulation = finding.Source{Text: "hour by hour through drawn years of weather; the promise is the builder's, or one night in twenty", Sure: finding.Computed}
	coldSource   = finding.Source{Text: "a lithium battery maker's manual, tables 4.3 and 4.4: no charge below 0 °C", Sure: finding.Read}
)

// The usual warnings.
const (
	careBattery = "A battery of 12 V gives no shock, but thousands of amperes into a spanner: rings off, fuse out, negative off first and on last."
	careCharge  = "No charge into lithium below 0 °C, no lead battery in a closed living space, a fuse at each end of a cable between two batteries."
	careMains   = "Everything at mains voltage is work for a licensed electrician, and so is its test."
)

func (r *Result) judge() []finding.Finding {
	var out []finding.Finding
	put := func(f finding.Finding, ok bool) {
		if ok {
			out = append(out, f)
		}
	}
	put(r.mains())
	put(r.noBattery())
	put(r.misread())
	for i := range r.in.Things {
		put(r.unsuited(&r.in.Things[i]))
	}
	if b := r.in.Battery; b != nil {
		put(r.tested(b))
		put(r.deep(b))
		put(r.tooStrong(b))
		put(r.noSource(b))
		put(r.chargedTooFast(b))
		put(r.chargedCold(b))
		put(r.hookUp())
		for i := range r.in.Sources {
			put(r.overloaded(&r.in.Sources[i], b))
			put(r.overController(&r.in.Sources[i], b))
		}
		if !r.in.PlaceAssumed && !r.in.TripsAssumed { // of nights that nobody has planned nothing is said
			put(r.flat(b))
		}
	}
	finding.Sort(out)
	return out
}

func (r *Result) noBattery() (finding.Finding, bool) {
	f := finding.Finding{Code: "power.battery.none", Severity: finding.Note, About: []string{r.in.About}, Title: "Nothing feeds what uses electricity",
		Words: "There are things that use electricity, and no battery for them is named.", Source: practice, Caution: careBattery}
	most, any := 0.0, false
	for i := range r.Uses {
		u := &r.Uses[i]
		if u.Kind == Unlisted || u.Kind == OnMains {
			continue
		}
		any = true
		switch wh := u.Mean[r.Habit]; { // the largest; of equals none is singled out
		case wh > most:
			most, f.About = wh, []string{u.About}
		case wh == most:
			f.About = []string{r.in.About}
		}
	}
	return f, any && r.Battery == nil
}

// mains is the reminder that something is not decided.
func (r *Result) mains() (finding.Finding, bool) {
	return finding.Finding{Code: "power.mains", Severity: finding.Note, About: []string{r.in.Mains.About}, Title: "Whether there will be a mains inlet is not decided",
		Words:  "It is reckoned without. If it may come later, keep its place and the way of its cable free.",
		Source: practice, Caution: careMains,
		Proposals: []finding.Proposal{{Words: "decide to do without the mains", Patch: patchAt(r.in.Mains.About, "none")}}}, r.in.Mains.Undecided
}

// Readings this far from the list of things say that the list is not right.
const (
	farAbove = 2.0
	farBelow = 0.5
)

func (r *Result) misread() (finding.Finding, bool) {
	f := finding.Finding{Code: "power.read", Severity: finding.Note, Title: "The battery monitor and the list of things do not agree", Source: practice,
		Words:    fmt.Sprintf("It counted about %.1f times what the things listed would take. All but what is always on is reckoned with that much. Look for something that is not listed, or listed twice, or a meter that was not set to nought.", r.Scale),
		Measured: &finding.Measure{Value: r.Scale, Unit: "1"}, Limit: &finding.Measure{Value: farAbove, Unit: "1"}}
	if len(r.in.Readings) == 0 || r.Scale >= farBelow && r.Scale <= farAbove {
		return f, false
	}
	if f.About = []string{r.in.Readings[0].About}; r.Scale < farBelow {
		f.Limit.Value = farBelow
	}
	return f, true
}

// smaller is the share of what is printed from which a test counts as news.
const smaller = 0.9

func (r *Result) tested(b *Battery) (finding.Finding, bool) {
	return finding.Finding{Code: "power.battery.tested", Severity: finding.Note, About: []string{b.About + "/tested", b.Fitting},
		Title:    fmt.Sprintf("The battery holds %.0f of its %.0f Ah", b.Tested, b.Rated),
		Words:    "It is reckoned with what the test found. A battery that has lost so much goes on losing: test it again before each season.",
		Measured: &finding.Measure{Value: b.Tested, Unit: "Ah"}, Limit: &finding.Measure{Value: b.Rated, Unit: "Ah"}, Source: practice, Caution: careBattery,
	}, b.Tested > 0 && b.Tested < smaller*b.Rated
}

func (r *Result) deep(b *Battery) (finding.Finding, bool) {
	deepest := natures[b.Chemistry].deepest
	return finding.Finding{Code: "power.battery.deep", Severity: finding.Close, About: []string{b.Fitting}, Title: "A lead battery is emptied too far",
		Words:    fmt.Sprintf("%.0f %% of it may be taken as it is said here. Lead that is often emptied to four fifths lasts half as many times as lead emptied to one half.", 100*b.usable()),
		Measured: &finding.Measure{Value: 100 * b.usable(), Unit: "%"}, Limit: &finding.Measure{Value: 100 * deepest, Unit: "%"},
		Source: finding.Source{Text: "cycle lives of golf-cart batteries: 225 at 80 %, 750 at 50 %; rule of a motor-home manual", Sure: finding.Read}, Caution: careBattery,
	}, b.Chemistry.Lead() && b.usable() > deepest+1e-9
}

// lowVoltage is that of a battery nearly empty and loaded, at which an inverter draws most: common practice, no source.
func (b *Battery) lowVoltage() float64 {
	if b.Chemistry.Lead() {
		return 11 * b.series()
	}
	return 12 * b.series()
}

// tooStrong finds the load that draws more than the battery should give.
func (r *Result) tooStrong(b *Battery) (f finding.Finding, found bool) {
	limit := natures[b.Chemistry].rate * b.holds()
	for i := range r.in.Things {
		t := &r.in.Things[i]
		watts := t.Watts
		if t.Kind == Inverter {
			watts = InverterInput(t.Watts, t.Watts)
		}
		if i := watts / b.lowVoltage(); t.Kind != OnMains && i > limit && (!found || i > f.Measured.Value) {
			found = true
			f = finding.Finding{Code: "power.battery.rate", Severity: finding.Fault, About: []string{t.About, b.About}, Title: "One thing draws more than the battery should give",
				Words:    fmt.Sprintf("At full power it draws about %.0f A from a battery nearly empty; this one should give no more than %.0f A for long. Its voltage falls, and the low-voltage cut takes the lights with it.", i, limit),
				Measured: &finding.Measure{Value: i, Unit: "A"}, Limit: &finding.Measure{Value: limit, Unit: "A"}, Source: practice, Caution: careBattery}
		}
	}
	return f, found
}

func (r *Result) noSource(b *Battery) (finding.Finding, bool) {
	any := r.in.AtHome == AtHomeMains
	for i := range r.in.Sources {
		any = any || r.in.Sources[i].Kind != Shore || r.in.Mains.Inlet
	}
	return finding.Finding{Code: "power.source.none", Severity: finding.Fault, About: []string{b.About}, Title: "Nothing charges the battery",
		Words: "Neither sun, engine nor mains is said to charge it. Once empty it stays so, and a battery left empty is spoilt.", Source: practice, Caution: careCharge}, !any
}

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
		Words:    fmt.Sprintf("Together they can push %.0f A into it; for one of %.0f Ah no more than %.0f A are usual. Look for the greatest charging current on its data sheet.", most, b.Rated, limit),
		Measured: &finding.Measure{Value: most, Unit: "A"}, Limit: &finding.Measure{Value: limit, Unit: "A"}, Source: practice, Caution: careCharge}
	if left := limit - (most - worst.current(b)); left >= 5 {
		f.Proposals = []finding.Proposal{{Words: fmt.Sprintf("set it to %.0f A, if it can be set", floor(left)), Patch: patchAt(worst.About+"/most", floor(left))}}
	}
	return f, true
}

func (r *Result) chargedCold(b *Battery) (finding.Finding, bool) {
	return finding.Finding{Code: "power.battery.cold", Severity: finding.Fault, About: []string{b.Fitting, b.About}, Title: "A lithium battery is charged below freezing",
		Words:    fmt.Sprintf("About %.0f hours in a year something would charge it while it is below 0 °C. That lays down metal in its cells and spoils it for good. Nothing here is said to stop it: choose a battery or charger with a low-temperature cut-off and say so in its note.", r.Cold),
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
	return f, s.Kind == Engine && s.Most > 0 && draws > nearMost*s.Most
}

func (r *Result) overController(s *Source, b *Battery) (finding.Finding, bool) {
	full := s.Watts / (12 * b.series())
	return finding.Finding{Code: "power.panel.current", Severity: finding.Close, About: []string{s.About}, Title: "The panels can give more than their controller passes",
		Words:    fmt.Sprintf("In full sun they could give %.0f A; the controller passes %.0f A. A good one cuts the rest off, a poor one is spoilt by it.", full, s.Amps),
		Measured: &finding.Measure{Value: full, Unit: "A"}, Limit: &finding.Measure{Value: s.Amps, Unit: "A"}, Source: practice, Caution: careCharge,
	}, s.Kind == Sun && s.Amps > 0 && full > s.Amps*1.0001
}

// unsuited finds coolers that empty a battery.
func (r *Result) unsuited(t *Thing) (finding.Finding, bool) {
	f := finding.Finding{Severity: finding.Close, About: []string{t.About}, Source: practice, Caution: careBattery,
		Measured: &finding.Measure{Value: 24 * t.Watts, Unit: "Wh"}}
	switch t.Kind {
	case Thermo:
		f.Code, f.Title = "power.load.thermoelectric", "A thermoelectric box runs off the battery"
		f.Words = fmt.Sprintf("It takes %.0f W all day, about %.0f Wh, and cools to 20 K below the cabin at best. One with a compressor takes a fifth to a third of that.", t.Watts, 24*t.Watts)
	case Absorber:
		f.Code, f.Title = "power.load.absorption", "An absorption fridge is joined to the battery"
		f.Words = fmt.Sprintf("At 12 V it takes about %.0f W without pause: for the road only. It is reckoned with the engine running; off the battery it would take %.0f Wh a day.", t.Watts, 24*t.Watts)
	default:
		return f, false
	}
	return f, t.Volts < 100
}

// hookUp tells that nights on the mains do not charge the battery.
func (r *Result) hookUp() (finding.Finding, bool) {
	for i := range r.in.Sources {
		if r.in.Sources[i].Kind == Shore && r.in.Mains.Inlet {
			return finding.Finding{}, false
		}
	}
	for _, j := range r.in.Journeys {
		if j.HookUp > 0 {
			return finding.Finding{Code: "power.hook-up", Severity: finding.Note, About: []string{j.About}, Title: "Nights on the mains do not charge the battery",
				Words: "Some nights are spent on the mains, but no mains charger is joined to the battery. They are reckoned like the others.", Source: practice, Caution: careMains}, true
		}
	}
	return finding.Finding{}, false
}
