package cables

import (
	"fmt"

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

// strand finds a cable so thin that it breaks by being handled, or falls out of its plugs.
func (r *Result) strand(c *Cable) (finding.Finding, bool) {
	if c.plugged() {
		return c.loosePlugs()
	}
	if !c.Section.Said || c.Section.MM2 >= leastStrand {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.cable.strand", Severity: finding.Close, About: []string{c.sectionAbout()}, Title: c.itself() + " is thinner than a cable alone should be", Source: strandSource,
		Measured: measure(c.Section.MM2, "mm2"), Limit: measure(leastStrand, "mm2"), Words: fmt.Sprintf("%s mm² break where they are bent and shaken. In a common sheath 0.75 mm² will do.", digits(c.Section.MM2, 4))}
	f.Proposals = c.sectioned(max(c.Section.Need, leastStrand))
	return f, true
}

// loosePlugs finds a cable of panels that is thinner than their plugs hold.
func (c *Cable) loosePlugs() (finding.Finding, bool) {
	f := finding.Finding{Code: "power.cable.strand", Severity: finding.Close, About: []string{c.sectionAbout()}, Title: c.itself() + " is thinner than the plugs of panels hold", Source: plugSource,
		Measured: measure(c.Section.MM2, "mm2"), Limit: measure(leastPlug, "mm2"), Words: fmt.Sprintf("Such plugs are made for 2.5 to 6 mm². A cable of %s mm² sits loose in its seal and its crimp: water gets in, and the joint gets warm.", digits(c.Section.MM2, 4))}
	f.Proposals = c.sectioned(max(c.Section.Need, leastPlug))
	return f, c.Section.Said && c.Section.MM2 < leastPlug
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
