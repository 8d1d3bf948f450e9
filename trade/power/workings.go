package power

import (
	"fmt"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

type (
	entry  = working.Line
	origin = working.Origin
)

var (
	here     = origin{Here: true}
	practice = finding.Source{Text: "common practice, no source", Sure: finding.Practice}
)

func (r *Result) workingOfUse() working.Working {
	w := working.Working{Formula: "E = Σ P · duty · hours", Source: finding.Source{Text: "a diary of loads; hours and duties by way of living are common practice, no source", Sure: finding.Practice}}
	for i := range r.Uses {
		u := &r.Uses[i]
		l := entry{Symbol: "E", Label: u.Name, Value: u.Mean[r.Habit], Unit: "Wh", From: origin{Pointer: u.About}}
		if u.How != "" {
			l.Label += ", " + u.How
		}
		w.Lines = append(w.Lines, l)
		if u.Assumed != "" {
			w.Notes = append(w.Notes, u.Name+": "+u.Assumed)
		}
	}
	if r.Scale != 1 {
		w.Notes = append(w.Notes, fmt.Sprintf("All but what is always on is multiplied by %.2f, so that it agrees with the builder's own readings on average.", r.Scale))
	}
	w.Notes = append(w.Notes, "A mean over the nights of the year. A fridge takes UA·(Ta − Ti)/COP and at most its own power; warm food is 17 Wh a kilogram.")
	w.Lines = append(w.Lines, entry{Symbol: "E", Label: "in a day of a trip", Value: r.day(r.Habit), Unit: "Wh", From: here})
	return w
}

func (r *Result) workingOfBattery() working.Working {
	b, n := r.in.Battery, natures[r.in.Battery.Chemistry]
	w := working.Working{Formula: "E = C · d · U", Source: practice}
	holds := entry{Symbol: "C", Label: "it holds as printed", Value: b.holds(), Unit: "Ah", From: origin{Row: b.Row}}
	if b.Tested > 0 {
		holds.Label, holds.From = "it holds by test", origin{Pointer: b.About + "/tested"}
	}
	if holds.From == (origin{}) {
		holds.From.Pointer = b.About
	}
	share := entry{Symbol: "d", Label: "may be taken", Value: 100 * b.usable(), Unit: "%", From: origin{Row: b.Row}}
	if b.Usable <= 0 || b.Row == "" {
		share.From = origin{Assumption: "the usual for " + string(b.Chemistry)}
	}
	w.Lines = []entry{holds, share,
		{Symbol: "U", Label: "mean voltage while it is emptied", Value: n.gives * b.series(), Unit: "V", From: origin{Assumption: "the usual for " + string(b.Chemistry)}},
		{Symbol: "E", Label: "it gives from full", Value: r.Battery.Gives, Unit: "Wh", Sum: fmt.Sprintf("%.4g × %.2g × %.4g", b.holds(), b.usable(), n.gives*b.series()), From: here}}
	return w
}

func (r *Result) workingOfNeeded() working.Working {
	ah, k, cold, age := r.needed()
	usual := origin{Assumption: "the usual for " + string(r.in.Battery.Chemistry)}
	return working.Working{Formula: "C = E·N/(U·d·kT·ka)", Source: practice, Lines: []entry{
		{Symbol: "E", Label: "used in a day in " + monthNames[r.Darkest-1], Value: r.Months[r.Darkest-1].Use[r.Habit], Unit: "Wh", From: here},
		{Symbol: "N", Label: "days without sun or drive", Value: dullDays, Unit: "d", From: origin{Assumption: "as most plan"}},
		{Symbol: "U", Label: "mean voltage while it is emptied", Value: k.gives, Unit: "V", From: usual},
		{Symbol: "d", Label: "may be taken", Value: 100 * r.in.Battery.usable(), Unit: "%", From: origin{Figure: "power.battery.usable"}},
		{Symbol: "kT", Label: "is left of it by the cold", Value: 100 * cold, Unit: "%", From: usual},
		{Symbol: "ka", Label: "is left of it when some years old", Value: 100 * age, Unit: "%", From: usual},
		{Symbol: "C", Label: "it should hold", Value: ah, Unit: "Ah", From: here}}}
}

func (r *Result) workingOfAutonomy() working.Working {
	k := r.in.kitOf(r.in.Battery)
	m := &r.Months[r.Darkest-1]
	use := m.Use[r.Habit]
	i := use / 24 / k.gives
	w := working.Working{Formula: "N = C·d·kT/(24·I·(I/I20)^(k−1)), I = E/(24·U); without the power of k where I is below I20", Source: finding.Source{Text: "Peukert's law in the rated-hour form", Sure: finding.Read}}
	w.Lines = []entry{
		{Symbol: "E", Label: "used in a day in " + monthNames[r.Darkest-1], Value: use, Unit: "Wh", From: here},
		{Symbol: "I", Label: "mean current", Value: i, Unit: "A", Sum: fmt.Sprintf("%.4g / 24 / %.4g", use, k.gives), From: here},
		{Symbol: "C·d", Label: "may be taken, warm", Value: k.depth, Unit: "Ah", From: origin{Figure: "power.battery.usable"}},
		{Symbol: "kT", Label: fmt.Sprintf("is left of it at %.0f °C", m.Battery), Value: 100 * along(k.nature.capacity, m.Battery), Unit: "%", From: origin{Assumption: "the usual for " + string(r.in.Battery.Chemistry)}},
		{Symbol: "I20", Label: "current at which it is rated", Value: k.rated, Unit: "A", From: here},
		{Symbol: "N", Label: "it lasts", Value: r.Autonomy, Unit: "d", From: here}}
	return w
}

func (r *Result) workingOfYield(m int) working.Working {
	k := r.in.kitOf(r.in.Battery)
	w := working.Working{Formula: "E = P/1000 · H · Π(1 − L) · heat and controller", Source: finding.Source{Text: "losses as listed by NREL/TP-6A20-62641; cell temperature by NOCT; light of the sky by Erbs 1982", Sure: finding.Read}}
	watts := 0.0
	for i := range r.in.Sources {
		s := &r.in.Sources[i]
		if s.Kind != Sun || s.Watts <= 0 {
			continue
		}
		watts += s.Watts
		w.Lines = append(w.Lines, entry{Symbol: "P", Label: "panels in full light", Value: s.Watts, Unit: "W", From: origin{Pointer: s.About}},
			entry{Symbol: "Π(1 − L)", Label: "left by dirt, shade, wiring and age", Value: 100 * Kept(s.losses()...), Unit: "%", From: origin{Assumption: "usual losses; shade as said, or 3 %"}})
	}
	plain := r.in.Climate.Sun[m] * watts
	w.Lines = append(w.Lines, entry{Symbol: "H", Label: "light on level ground in a day in " + monthNames[m], Value: r.in.Climate.Sun[m], Unit: "kWh/m2", From: origin{Assumption: "the climate of " + r.in.Place}})
	if plain > 0 {
		w.Lines = append(w.Lines, entry{Label: "left by glass, heat, wiring, dirt and controller together", Value: 100 * r.Months[m].Yield / plain, Unit: "%", From: here})
	}
	w.Lines = append(w.Lines, entry{Symbol: "E", Label: "in a day", Value: r.Months[m].Yield, Unit: "Wh", From: here})
	w.Notes = []string{fmt.Sprintf("A mean over %d years of drawn weather, hour by hour. The panel lies flat, and no snow lies on it.", r.Years), fmt.Sprintf("On the dullest of ten days %.0f Wh, on the best %.0f.", r.Months[m].Sunny[0], r.Months[m].Sunny[1])}
	if k.roof.pwm > 0 {
		w.Notes = append(w.Notes, "The controller holds the panel at the battery's voltage: what lies above it is lost.")
	}
	return w
}

func (r *Result) workingOfFlat(c Chance, what string) working.Working {
	w := working.Working{Formula: "p = k/n ± √(p·(1 − p)/n)", Source: finding.Source{Text: "hour by hour through drawn years of weather; binomial standard error", Sure: finding.Computed}}
	w.Lines = []entry{
		{Label: "years of weather", Value: float64(r.Years), Unit: "1", From: here},
		{Symbol: "n", Label: what, Value: float64(c.In), Unit: "1", From: here},
		{Symbol: "k", Label: "of them flat", Value: float64(c.Of), Unit: "1", From: here},
		{Label: "standard error", Value: 100 * c.Error, Unit: "%", From: here},
		{Symbol: "p", Label: "of them flat", Value: 100 * c.Share, Unit: "%", From: here}}
	w.Notes = []string{"Trips are laid on days of their months at random, the same for every battery and panel.", "The error is that of the count alone, as if every night were by itself; those of one trip hang together. That weather, use or battery may be otherwise is not in it."}
	return w
}
