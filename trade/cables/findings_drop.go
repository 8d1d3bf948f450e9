package cables

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
)

// drop finds a cable that loses more than it may, or than the builder wants.
func (r *Result) drop(c *Cable) (finding.Finding, bool) {
	share := c.Drop.Cables() / c.Volts
	said := c.Role == Lead && c.Drop.Shared > c.Drop.Limit*c.Volts // of its line already
	if share <= c.Drop.Limit*(1+1e-9) || !c.Section.Said || !r.known(c) || said {
		return finding.Finding{}, false
	}
	if c.Role == Charge && c.Source == Split {
		return r.dropWithLead(c), true
	}
	f := finding.Finding{Code: "power.drop", Severity: finding.Fault, About: []string{c.sectionAbout()}, Title: "Much voltage is lost on the way to " + c.To.Words, Source: dropSource,
		Measured: measure(100*share, "%"), Limit: measure(100*c.Drop.Limit, "%"), Proposals: c.sectioned(r.thickEnough(c)),
		Words: fmt.Sprintf("%.1f V of %.1f V (%.1f %%) stay in the cables over %.1f m of %s mm² with %s; no more than %s %% should.", c.Drop.Cables(), c.Volts, 100*share, c.Length.MM/1000, digits(c.Section.MM2, 4), c.flows(), digits(100*c.Drop.Limit, 3))}
	if volts, names := r.before(c); volts > 0 {
		f.Words += fmt.Sprintf(" Of it %.1f V are lost in what feeds it, %s.", volts, strings.Join(names, " and "))
	}
	natural, _ := limits(c.Loads)
	if c.Role == Trunk {
		natural = criticalLimit
	}
	switch {
	case c.charges() && share <= criticalLimit:
		f.Severity, f.Title = finding.Close, "The line from "+c.From.Words+" loses more voltage than is good for charging"
	case !c.charges() && share <= natural:
		f.Severity, f.Title = finding.Close, "More voltage is lost on the way to "+c.To.Words+" than you want"
		f.Source = finding.Source{Text: "what the document wants; resistances of IEC 60228", Sure: finding.Read}
	}
	return f, true
}

// dropWithLead tells what the line of a relay loses with its lead, as the greatest loss is told: nothing between them makes up for it.
func (r *Result) dropWithLead(line *Cable) finding.Finding {
	lead := r.leadOf(line)
	lost := lead.lost()
	f := finding.Finding{Code: "power.drop", Severity: finding.Fault, About: []string{line.sectionAbout()}, Title: "The line from " + line.From.Words + " loses more voltage than is good for charging", Source: dropSource,
		Measured: measure(lost, "%"), Limit: measure(100*lead.Drop.Limit, "%"),
		Words: fmt.Sprintf("%.1f V of %.1f V (%.1f %%) stay in line and lead together, %s and %s, with %s A; no more than %s %% should. %.1f V of it stay in the line alone.", lead.Drop.Cables(), lead.Volts, lost, line.Number, lead.Number, digits(line.Current, 3), digits(100*lead.Drop.Limit, 3), line.Drop.Own)}
	if lost <= 100*criticalLimit {
		f.Severity = finding.Close
	}
	within := func(a, b float64) bool {
		return pair(line.Length.MM, a, warmCopper)*line.Current+pair(lead.Length.MM, b, warmCopper)*lead.Current <= lead.Drop.Limit*lead.Volts
	}
	if mm2, ok := nextStandard(func(a float64) bool {
		return a > line.Section.MM2 && a >= line.Section.Need && within(a, lead.Section.MM2)
	}); ok {
		f.Proposals = line.sectioned(mm2)
	}
	if mm2, ok := nextStandard(func(a float64) bool { return a > lead.Section.MM2 && a >= line.Section.Need && within(a, a) }); ok {
		area := digits(mm2, 4) + " mm2"
		f.Proposals = append(f.Proposals, proposeAll("make line and lead "+digits(mm2, 4)+" mm²", edit{line.way.About, "cable", area}, edit{lead.way.About, "cable", area}))
	}
	return f
}

// flows is the current of a cable in words: what converts draws more at a lower voltage.
func (c *Cable) flows() string {
	words := digits(c.Current, 3) + " A"
	if now := digits(c.Drop.Own/c.ohms(), 3) + " A"; c.Role == Feed && now != words {
		return words + ", " + now + " at the voltage that is left"
	}
	return words
}

// thickEnough is the smallest standard cross-section that passes every rule and keeps the losses within what is aimed for; 0 where none does.
func (r *Result) thickEnough(c *Cable) float64 {
	mm2, ok := nextStandard(func(a float64) bool {
		if a <= c.Section.MM2 || a < c.Section.Need {
			return false
		}
		d, ok := r.lossesWith(*c, a)
		return ok && d.Own <= c.Drop.Aim*c.Volts && d.Cables() <= c.Drop.Limit*c.Volts
	})
	if !ok {
		return 0
	}
	return mm2
}

// lossesWith is what a cable would lose with another cross-section, everything else as it is.
func (r *Result) lossesWith(c Cable, mm2 float64) (Drop, bool) {
	c.Section.MM2 = mm2
	if c.charges() {
		c.Drop.Own = c.Current * c.ohms()
		return c.Drop, true
	}
	c.Starved = nil
	t := r.nets[c.Bank].tree
	t.legs = slices.Clone(t.legs)
	for i := range t.legs {
		if t.legs[i].id == c.ID {
			t.legs[i] = c.leg()
		}
	}
	if c.Role == Trunk {
		t.trunk = c.ohms()
	}
	n := t.solve()
	c.losses(n)
	return c.Drop, n.tipped == nil
}

// before is what is lost in the circuits that one hangs on [V], and their numbers.
func (r *Result) before(c *Cable) (float64, []string) {
	volts, n := 0.0, r.nets[c.Bank]
	var names []string
	if c.Role == Lead && c.Drop.Shared > 0 {
		return c.Drop.Shared, []string{c.FedBy}
	}
	for from := c.fed; from != ""; from = n.find(from).from {
		volts += n.through(from) * n.find(from).cable
		names = append(names, r.find(c.Bank, from).name())
	}
	return volts, names
}
