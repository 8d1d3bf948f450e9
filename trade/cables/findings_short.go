package cables

import (
	"fmt"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// breaks finds a fuse that cannot break what the battery gives into a short at its place. The main fuse stands in for one that breaks at least as much as a blade.
func (r *Result) breaks(c *Cable) (finding.Finding, bool) {
	f, p := c.way.Fuse, c.Fuse
	if p.Amps <= 0 || f.Kind == Unsaid && f.Breaking == 0 || p.Breaking >= p.Meets || p.Backed && p.Breaking >= makes[Blade].breaking {
		return finding.Finding{}, false
	}
	about, _ := c.fuseKey()
	if f.Said {
		about = f.About
	}
	out := finding.Finding{Code: "power.fuse.breaking", Severity: finding.Danger, About: []string{about}, Title: c.itsFuse() + " cannot break a short", Source: breakingSource, Caution: fireCaution,
		Measured: measure(p.Breaking, "A"), Limit: measure(p.Meets, "A"),
		Words: fmt.Sprintf("At its place a short draws about %s A; it can break %s A. Beyond that it bursts and goes on burning inside.", whole(p.Meets), quantity.Parted(p.Breaking))}
	if kind := kindFor(p.Amps, p.Meets); kind != Unsaid {
		owner, _ := c.fuseKey()
		if c.Role == Lead { // what is written there wins over what is said of its line
			owner = c.way.About
		}
		patch := propose("take a "+makes[kind].words, owner, "fuse-kind", string(kind))
		if f.Breaking > 0 {
			return out, true // what is written of its breaking wins over its kind: only the builder knows which is meant
		}
		out.Proposals = append(out.Proposals, patch)
	}
	return out, true
}

const (
	clearsAt   = 3.5 // times its rating: within half a second
	clearsWell = 6.0
)

// slow finds a short at the far end that is not large enough to open the fuse at once.
func (r *Result) slow(c *Cable) (finding.Finding, bool) {
	end, p := c.Weakest(), c.Fuse
	if end <= 0 || p.Amps <= 0 || !p.Said {
		return finding.Finding{}, false
	}
	times := end / p.Amps
	if times >= clearsAt {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.slow", Severity: finding.Fault, About: []string{c.way.Fuse.About, c.sectionAbout()}, Title: "A short at the end of " + c.Title + " would not open its fuse at once", Source: clearSource, Caution: fireCaution,
		Measured: measure(end, "A"), Limit: measure(clearsAt*p.Amps, "A"),
		Words: fmt.Sprintf("So long and thin a cable lets only %s A pass into a short at its far end, %.1f times the rating of its fuse. It would heat for seconds or minutes.", quantity.Parted(end), times)}
	f.Proposals = r.quicker(c)
	return f, true
}

// quicker proposes a smaller fuse that a short at the far end would open at once, or a cable that lets enough pass into one.
func (r *Result) quicker(c *Cable) []finding.Proposal {
	if least := c.fuseChoice(); least > 0 && least < c.Fuse.Amps && clearsAt*least <= c.Weakest() {
		return c.rated(least)
	}
	drive := r.Supplies[r.supplyOf(c.Bank)].Drive
	if c.Role == Charge && c.Source != Shore {
		drive = full[Flooded] * c.from // the starter battery's
	}
	before := drive/c.Weakest() - c.ohms() // Ω of all else on the way
	mm2, ok := nextStandard(func(a float64) bool {
		return a > c.Section.MM2 && a >= c.Section.Need && drive/(before+pair(c.Length.MM, a, warmCopper)) >= clearsAt*c.Fuse.Amps
	})
	if !ok || !c.Section.Said {
		return nil
	}
	return c.sectioned(mm2)
}

// selective finds a fuse that goes together with the one above it.
func (r *Result) selective(c *Cable) (finding.Finding, bool) {
	above := r.above(c)
	if above == nil || !c.Fuse.Said || c.Fuse.Amps <= 0 {
		return finding.Finding{}, false
	}
	ratio := bladeRatio
	if c.Fuse.Kind != Blade {
		ratio = boltedRatio
	}
	if !above.Fuse.Said || above.Fuse.Amps <= 0 || above.Fuse.Amps >= ratio*c.Fuse.Amps*(1-1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.selective", Severity: finding.Close, About: []string{c.way.Fuse.About, above.way.Fuse.About}, Title: "A short in " + c.Title + " may take more than its own fuse with it", Source: selectSource,
		Measured: measure(c.Fuse.Amps, "A"), Limit: measure(above.Fuse.Amps/ratio, "A"),
		Words: fmt.Sprintf("Its fuse of %s A sits behind one of %s A. Both may go, and then all that hangs on the second is dark.", digits(c.Fuse.Amps, 4), digits(above.Fuse.Amps, 4))}
	if c.Fuse.Least <= above.Fuse.Amps/ratio && c.Fuse.Least < c.Fuse.Amps {
		f.Proposals = c.rated(c.Fuse.Least)
	}
	return f, true
}

// above is the cable whose fuse is the next before that of another, or nil.
func (r *Result) above(c *Cable) *Cable {
	i := r.trunkOf(c.Bank)
	switch {
	case i < 0, c.Role == Trunk, c.charges() && (c.Fuse.End != "to" || c.Source == Split):
		return nil
	case c.fed != "":
		return r.find(c.Bank, c.fed)
	}
	return &r.Cables[i]
}

// kindUnsaid notes that the main fuse has to be of a kind that breaks what the battery gives, and that nobody has said which it is.
func (r *Result) kindUnsaid(s Supply) (finding.Finding, bool) {
	i := r.trunkOf(s.ID)
	if i < 0 {
		return finding.Finding{}, false
	}
	c := &r.Cables[i]
	f := c.way.Fuse
	if !f.Said || f.None || f.Kind != Unsaid || f.Breaking > 0 || c.Fuse.Kind == Unsaid {
		return finding.Finding{}, false
	}
	out := finding.Finding{Code: "power.fuse.kind", Severity: finding.Note, About: []string{f.About}, Title: "Nobody has said how the main fuse is made", Source: breakingSource,
		Limit: measure(s.Fault, "A"),
		Words: fmt.Sprintf("Into a short this battery gives about %s A. A blade fuse breaks %s A and bursts beyond; a %s does.", whole(s.Fault), quantity.Parted(makes[Blade].breaking), makes[c.Fuse.Kind].words)}
	owner, key := c.fuseKey()
	if key != "" {
		out.Proposals = []finding.Proposal{propose("take a "+makes[c.Fuse.Kind].words, owner, "fuse-kind", string(c.Fuse.Kind))}
	}
	return out, s.Fault > makes[Blade].breaking
}

// weakPart finds an isolator or busbar that is made for less than the main fuse lets pass.
func (r *Result) weakPart(s Supply) (finding.Finding, bool) {
	i := r.trunkOf(s.ID)
	if i < 0 || r.Cables[i].Fuse.Amps <= 0 || !r.Cables[i].Fuse.Said {
		return finding.Finding{}, false
	}
	fuse := r.Cables[i].Fuse.Amps
	for _, p := range []*Part{s.Isolator, s.Busbar, s.Shunt} {
		if p == nil || p.Amps <= 0 || p.Amps >= fuse {
			continue
		}
		f := finding.Finding{Code: "power.part.weak", Severity: finding.Fault, About: []string{p.About, r.Cables[i].way.Fuse.About}, Title: "What sits behind the main fuse is made for less than it lets pass", Source: protectSource, Caution: fireCaution,
			Measured: measure(p.Amps, "A"), Limit: measure(fuse, "A"),
			Words: fmt.Sprintf("The %s is made for %.0f A; the main fuse lets %.0f A pass for good.", p.Name, p.Amps, fuse)}
		if main := &r.Cables[i]; main.Fuse.Least <= p.Amps && main.fuseChoice() > 0 {
			f.Proposals = main.rated(main.Fuse.Least)
		}
		return f, true
	}
	return finding.Finding{}, false
}
