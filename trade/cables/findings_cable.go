package cables

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
)

// tooThin finds a cable that does not carry what flows in it.
func (r *Result) tooThin(c *Cable) (finding.Finding, bool) {
	if !c.Section.Said || c.Current <= c.Rating.Amps*(1+1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.cable.thin", Severity: finding.Fault, About: []string{c.sectionAbout()}, Title: c.itself() + " is too thin for its current", Source: c.Rating.From, Caution: fireCaution,
		Measured: measure(c.Current, "A"), Limit: measure(c.Rating.Amps, "A"),
		Words: fmt.Sprintf("%s A flow in it; %s mm² carry %.0f A %s.", digits(c.Current, 3), digits(c.Section.MM2, 4), c.Rating.Amps, c.Rating.Words())}
	if c.Fuse.Amps <= 0 || c.Fuse.Amps > c.Rating.Amps {
		f.Severity = finding.Danger
	}
	if c.Section.Need > c.Section.MM2 {
		f.Proposals = c.sectioned(c.Section.Need)
	}
	return f, true
}

// Words says where a cable lies, as far as that counts.
func (r Rating) Words() string {
	words := fmt.Sprintf("in air of %.0f °C", r.Air)
	if r.Bundle < 1 {
		words += fmt.Sprintf(", %d loaded cores side by side", r.Cores)
	}
	if r.Wrapped < 1 {
		words += ", wrapped in insulation"
	}
	return words
}

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

// strand finds a cable so thin that it breaks by being handled.
func (r *Result) strand(c *Cable) (finding.Finding, bool) {
	if !c.Section.Said || c.Section.MM2 >= leastStrand {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.cable.strand", Severity: finding.Close, About: []string{c.sectionAbout()}, Title: c.itself() + " is thinner than a cable alone should be", Source: strandSource,
		Measured: measure(c.Section.MM2, "mm2"), Limit: measure(leastStrand, "mm2"), Words: fmt.Sprintf("%s mm² break where they are bent and shaken. In a common sheath 0.75 mm² will do.", digits(c.Section.MM2, 4))}
	f.Proposals = c.sectioned(max(c.Section.Need, leastStrand))
	return f, true
}

// body finds a circuit that uses the body as its negative. What a relay joins has no other.
func (r *Result) body(c *Cable) (finding.Finding, bool) {
	if !c.Body || c.charges() {
		return finding.Finding{}, false
	}
	of := c.Title
	if c.Role == Trunk {
		of = "the " + of
	}
	return finding.Finding{Code: "power.cable.body", Severity: finding.Fault, About: []string{c.About + "/return"}, Title: "The negative of " + of + " goes through the body of the van",
		Source:  finding.Source{Text: "a dealer's advice page on 12 V in motor caravans: return in copper of the same section; common practice in building in", Sure: finding.Practice},
		Words:   "Seams, glue and paint carry current badly and rust where they do. Every circuit of the living space wants its own negative cable, as thick as the positive.",
		Caution: "Joints in the body heat up where nobody looks.", Proposals: []finding.Proposal{propose("lead the negative back by a cable", c.About, "return", "cable")}}, true
}

// together finds mains and 12 V in one way.
func (r *Result) together(c *Cable) (finding.Finding, bool) {
	for _, run := range c.way.Runs {
		for _, mains := range r.Mains.Runs {
			if run == mains {
				return finding.Finding{Code: "power.cable.mains", Severity: finding.Danger, About: []string{c.About + "/along", r.Mains.About + "/along"}, Title: "Mains cable and the cable of " + c.Title + " lie in one way",
					Source:  finding.Source{Text: "ISO 10133 and HD 60364-7-721 as public excerpts give them: not in one duct unless divided", Sure: finding.Read},
					Words:   "Where insulation wears through, mains voltage reaches everything at 12 V, and whoever touches it.",
					Caution: "Mains voltage kills. Where its cables lie is for a licensed electrician to say, by local code."}, true
			}
		}
	}
	return finding.Finding{}, false
}

// unchosen notes a circuit whose cable nobody has written yet, with what would do.
func (r *Result) unchosen(c *Cable) (finding.Finding, bool) {
	if c.ID == "" || c.Section.Said || c.Section.Need == 0 {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.cable.unchosen", Severity: finding.Note, About: []string{c.About}, Title: c.itself() + " is not chosen yet", Source: c.Section.decided().Source,
		Measured: measure(c.Section.MM2, "mm2"), Words: fmt.Sprintf("%s mm² would do over %.1f m, since %s.", digits(c.Section.MM2, 4), c.Length.MM/1000, c.Section.decided().Words)}
	if c.takesFuse() {
		f.Words += fmt.Sprintf(" A fuse of %s A goes with it.", digits(c.Fuse.Amps, 4))
	}
	f.Proposals = []finding.Proposal{r.chosen(c)}
	return f, true
}

// decided is the demand that made a cable as thick as it is.
func (s Section) decided() Demand {
	for _, d := range s.Steps {
		if d.Rule == s.Rule {
			return d
		}
	}
	return Demand{Words: "every rule is met", Source: copperSource}
}

// thinBond finds a bond to the body that is thinner than what it may have to carry.
func (r *Result) thinBond(out []finding.Finding, c *Cable) []finding.Finding {
	if !c.Section.Said || c.Section.MM2 >= c.Section.Need {
		return out
	}
	return append(out, finding.Finding{Code: "power.cable.bond", Severity: finding.Fault, About: []string{c.About + "/bond"}, Title: "The bond from negative to the body is thin", Source: bondSource,
		Measured: measure(c.Section.MM2, "mm2"), Limit: measure(c.Section.Need, "mm2"), Words: "A positive that touches the body sends the whole current of a short through the bond. It must last until the fuse has gone.",
		Caution: fireCaution, Proposals: []finding.Proposal{propose(fmt.Sprintf("make it %s mm²", digits(c.Section.Need, 4)), c.About, "bond", fmt.Sprintf("%s mm2", digits(c.Section.Need, 4)))}})
}

// mainsUnnamed notes that mains voltage is planned and nobody is named for it: it stands here as one block for somebody else.
func (r *Result) mainsUnnamed() (finding.Finding, bool) {
	return finding.Finding{Code: "power.mains.by", Severity: finding.Note, About: []string{r.Mains.About}, Caution: MainsCaution, Title: "Nobody is named to install the mains",
		Words:  "Inlet, breakers, sockets and the bonding of the body are a licensed electrician's work, by local code. Ask before linings hide the way of its cables.",
		Source: finding.Source{Text: "HD 60364-7-721 and national rules: inlet, breaker and protective bonding are for a licensed electrician", Sure: finding.Read}}, r.Mains.State == "planned" && r.Mains.By == ""
}

// MainsCaution stands beside everything at mains voltage.
const MainsCaution = "Mains voltage kills. Nothing here is a plan for its wiring: leave it to a licensed electrician, by local code."

// unfed notes a thing that draws current and is in no circuit, and proposes one of its own.
func (r *Result) unfed(l Load) finding.Finding {
	f := finding.Finding{Code: "power.cable.unfed", Severity: finding.Note, About: []string{l.About}, Title: capital(l.Name) + " is in no circuit yet", Source: finding.Source{Text: "the catalogue says that it draws current", Sure: finding.Computed},
		Measured: measure(l.Watts, "W"), Words: fmt.Sprintf("It draws about %.0f W. Until it is among the loads of a circuit it has no cable, no fuse and no place in the sums.", l.Watts)}
	if r.free(l.ID) {
		f.Proposals = []finding.Proposal{propose("give it a circuit of its own", "/power/circuits", l.ID, map[string]any{"from": r.in.Banks[0].ID, "loads": []string{l.ID}})}
	}
	return f
}

// free reports whether a circuit of that name can be begun.
func (r *Result) free(id string) bool {
	return len(r.in.Banks) > 0 && !slices.ContainsFunc(r.in.Circuits, func(c Circuit) bool { return c.ID == id })
}
