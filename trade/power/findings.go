package power

import (
	"fmt"
	"math"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// Where limits come from.
var (
	bySimulation = finding.Source{Text: "hour by hour through drawn years of weather; the promise is the builder's, or one night in twenty", Sure: finding.Computed}
	coldSource   = finding.Source{Text: "a lithium battery maker's manual, tables 4.3 and 4.4: no charge below 0 °C", Sure: finding.Read}
)

// The usual warnings.
const (
	careBattery = "A battery of 12 or 24 V gives no shock, but thousands of amperes into a spanner: rings off, fuse out, negative off first and on last."
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
	put(r.unread())
	put(r.withoutMains())
	put(r.withoutCharger())
	out = append(out, r.unknown()...)
	out = append(out, r.uncontrolled()...)
	out = append(out, r.second()...)
	out = append(out, r.secondVolts()...)
	for i := range r.in.Things {
		put(r.unsuited(&r.in.Things[i]))
	}
	if b := r.in.Battery; b != nil {
		put(r.tested(b))
		put(r.testedMore(b))
		put(r.deep(b))
		put(r.tooStrong(b))
		put(r.noSource(b))
		put(r.chargedTooFast(b))
		put(r.chargedCold(b))
		put(r.hookUp())
		for i := range r.in.Sources {
			put(r.overloaded(&r.in.Sources[i], b))
			put(r.overController(&r.in.Sources[i], b))
			put(tooFewVolts(&r.in.Sources[i], b))
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
	for i := range r.in.Readings {
		read := &r.in.Readings[i]
		says := r.says(read)
		if math.IsNaN(says) {
			continue
		}
		if f.About == nil {
			f.About = []string{read.About}
		}
		if says > mostScale || says < leastScale {
			f.Words += fmt.Sprintf(" A reading of %.0f Wh is too far off to be taken as it is: no more than %.0f times and no less than a fifth of what is listed is believed of any.", read.Wh, mostScale)
			break
		}
	}
	if r.Scale < farBelow {
		f.Limit.Value = farBelow
	}
	return f, f.About != nil && (r.Scale < farBelow || r.Scale > farAbove)
}

// unread tells of a reading that nothing could be compared with.
func (r *Result) unread() (finding.Finding, bool) {
	for i := range r.in.Readings {
		if read := &r.in.Readings[i]; math.IsNaN(r.says(read)) {
			return finding.Finding{Code: "power.read.unused", Severity: finding.Note, About: []string{read.About}, Title: "A reading of the battery monitor is not used", Source: practice,
				Words: fmt.Sprintf("By the trips that are written, nobody is under way in %s, so there is nothing to compare it with. Name that month among those of a trip, or take a reading of another.", monthNames[read.Month-1])}, true
		}
	}
	return finding.Finding{}, false
}

// unsuited finds coolers that empty a battery.
func (r *Result) unsuited(t *Thing) (finding.Finding, bool) {
	f := finding.Finding{Severity: finding.Close, About: []string{t.About}, Source: practice, Caution: careBattery,
		Measured: &finding.Measure{Value: 24 * t.Watts, Unit: "Wh"}}
	switch t.Kind {
	case Thermo:
		f.Code, f.Title = "power.load.thermoelectric", "A thermoelectric box runs off the battery"
		f.Words = fmt.Sprintf("It takes %.0f W all day, about %s Wh, and cools to 20 K below the cabin at best. One with a compressor takes a fifth to a third of that.", t.Watts, quantity.Parted(24*t.Watts))
	case Absorber:
		f.Code, f.Title = "power.load.absorption", "An absorption fridge is joined to the battery"
		f.Words = fmt.Sprintf("At 12 V it takes about %.0f W without pause: for the road only. It is reckoned with the engine running; off the battery it would take %s Wh a day.", t.Watts, quantity.Parted(24*t.Watts))
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
