package cables

import (
	"fmt"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

var (
	fusedSource  = finding.Source{Text: "ABYC E-11 as suppliers quote it, and ISO 10133: every ungrounded conductor has a fuse near what feeds it", Sure: finding.Read}
	placeSource  = finding.Source{Text: "ISO 10133 (200 mm, from memory); ABYC E-11 178 mm, up to 1.0 m in a sheath behind a busbar", Sure: finding.Memory}
	selectSource = finding.Source{Text: "upper rating at least twice the lower (blade) or 1.6 times (bolted); from memory", Sure: finding.Memory}
	clearSource  = finding.Source{Text: "a fuse opens within half a second from 3.5 times its rating, a tenth from 6 times (ISO 8820 times, partly from memory)", Sure: finding.Memory}
)

// unfused finds a cable without a fuse: written so, or forgotten. A thin cable behind a fuse that protects it needs none.
func (r *Result) unfused(c *Cable) (finding.Finding, bool) {
	f := finding.Finding{Code: "power.fuse.none", Source: fusedSource, About: []string{c.way.Fuse.About}, Caution: fireCaution, Measured: measure(0, "A"), Limit: measure(c.Rating.Amps, "A")}
	choose := c.fuseChoice()
	switch {
	case c.Fuse.Said && !c.Fuse.None, c.Fuse.Needless, c.elsewhere():
		return f, false
	case c.Fuse.None && c.Role == Feed && c.fed != "" && r.find(c.Bank, c.fed).Fuse.Amps > 0 && r.find(c.Bank, c.fed).Fuse.Amps <= c.Rating.Amps:
		return f, false
	case c.Fuse.None && c.Role == Trunk:
		f.Code, f.Severity, f.Title = "power.fuse.main", finding.Danger, "The battery has no main fuse"
		f.Words = fmt.Sprintf("Into a short it gives about %s A, and nothing would stop it. A fuse belongs within a hand's breadth of its positive post.", whole(c.Fuse.Meets))
	case !c.Fuse.Said && c.Role == Trunk:
		f.Code, f.Severity, f.Title = "power.fuse.main", finding.Note, "No main fuse is planned for the battery"
		if r.begun(c.Bank) {
			f.Severity = finding.Fault
		}
		f.Words = fmt.Sprintf("Into a short it gives about %s A. A fuse of %s A belongs within a hand's breadth of its positive post.", whole(c.Fuse.Meets), digits(choose, 4))
	case c.Fuse.None:
		f.Severity, f.Title = finding.Danger, c.itself()+" has no fuse"
		f.Words = fmt.Sprintf("A short on its way would send about %s A through a cable that stands %.0f A. It would glow before anything stopped it.", whole(max(c.Fault[0], c.Fault[1])), c.Rating.Amps)
	case !c.Fuse.Said && c.Section.Said:
		f.Severity, f.Title = finding.Fault, "No fuse is planned for t"+c.itself()[1:]
		f.Words = fmt.Sprintf("A cable is protected where it leaves what feeds it. A fuse of %s A carries what it draws, and the cable stands %.0f A.", digits(choose, 4), c.Rating.Amps)
	default:
		return f, false
	}
	if edits := c.fuseEdits(choose); choose > 0 && len(edits) > 0 {
		if c.Role == Trunk {
			edits = append(edits, c.kindEdit()...)
		}
		f.Proposals = []finding.Proposal{proposeAll(fmt.Sprintf("put in a fuse of %s A", digits(choose, 4)), edits...)}
	}
	return f, true
}

// begun says whether anything of a bank's cables is written.
func (r *Result) begun(bank string) bool {
	for _, c := range r.Cables {
		if c.Bank == bank && c.Section.Said {
			return true
		}
	}
	return false
}

// fuseChoice is the rating that carries the load and that the cable stands; 0 where there is none.
func (c *Cable) fuseChoice() float64 {
	if c.Fuse.Least <= c.Fuse.Most {
		return c.Fuse.Least
	}
	return 0
}

func (r *Result) find(bank, id string) *Cable {
	for i := range r.Cables {
		if c := &r.Cables[i]; c.Bank == bank && c.ID == id && (c.Role == Feed || c.Role == Trunk) {
			return c
		}
	}
	return &Cable{}
}

// elsewhere says whether its fuse is said to be at the other end of the line only: ends judges that.
func (c *Cable) elsewhere() bool {
	return c.Role == Charge && c.Ends == "house" || c.Role == Lead && c.Ends == "source"
}

// ends finds a line between two batteries with a fuse at one end only, or of which nobody says.
func (r *Result) ends(c *Cable) (finding.Finding, bool) {
	fuse := c.way.Fuse
	if c.Role != Charge || c.Source != Engine && c.Source != Split || c.Ends == "both" || fuse.None || !fuse.Said {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.ends", Source: finding.Source{Text: "both ends of a cable between two batteries are fed: a fuse at each; from memory", Sure: finding.Memory}, About: []string{c.About}, Caution: fireCaution,
		Measured: measure(1, "fuses"), Limit: measure(2, "fuses"), Proposals: []finding.Proposal{propose("put a fuse at both ends", c.About, "fused", "both")}}
	where := map[string]string{"house": "starter", "source": "house"}[c.Ends]
	if where == "" {
		f.Severity, f.Title = finding.Close, "Nobody has said that both ends of the cable from the engine have a fuse"
		f.Words = fmt.Sprintf("There is a battery at each end of it, and a short is fed from both. Each end wants a fuse of %s A.", digits(fuse.Amps, 4))
		f.Measured = nil
		return f, true
	}
	f.Severity, f.Title = finding.Danger, "One end of the cable from the engine has no fuse"
	f.Words = fmt.Sprintf("A short on its way is fed by the %s battery too, past the fuse at the other end, with about %s A.", where, whole(map[string]float64{"starter": c.Fuse.Meets, "house": r.leadOf(c).Fuse.Meets}[where]))
	return f, true
}

// leadOf is the lead of a line.
func (r *Result) leadOf(line *Cable) *Cable {
	for i := range r.Cables {
		if c := &r.Cables[i]; c.Role == Lead && c.ID == line.ID {
			return c
		}
	}
	return &Cable{}
}

const grossly = 1.5 // times what a cable carries, beyond which a fuse does not protect it at all

// tooGreat finds a fuse that lets more pass than the cable stands. A closed relay joins two cables: each must stand the fuses of both.
func (r *Result) tooGreat(c *Cable) (finding.Finding, bool) {
	by := c
	if c.Source == Split {
		by = r.greaterFused(c)
	}
	fuse := by.Fuse.Amps
	if !by.Fuse.Said || fuse <= c.Rating.Amps*(1+1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.great", Severity: finding.Fault, About: []string{by.way.Fuse.About, c.sectionAbout()}, Title: by.itsFuse() + " is more than its cable stands", Source: protectSource,
		Measured: measure(fuse, "A"), Limit: measure(c.Rating.Amps, "A"), Caution: fireCaution,
		Words: fmt.Sprintf("The fuse lets %s A pass for good; the cable of %s mm² carries %.0f A where it lies. The cable would burn before the fuse goes.", digits(fuse, 4), digits(c.Section.MM2, 4), c.Rating.Amps)}
	if by != c {
		f.Title = by.itsFuse() + " is more than the cable behind the relay stands"
	}
	if fuse > grossly*c.Rating.Amps {
		f.Severity = finding.Danger
	}
	if choose := c.fuseChoice(); choose > 0 {
		f.Proposals = append(f.Proposals, by.rated(choose)...)
	}
	if mm2, ok := nextStandard(func(a float64) bool { return a > c.Section.MM2 && c.way.rating(a).Amps >= fuse }); ok && fuse <= absurdTimes*c.Current {
		f.Proposals = append(f.Proposals, c.sectioned(mm2)...)
	}
	return f, true
}

// greaterFused is that of the two cables that a relay joins which has the greater fuse; of equal ones the first that was asked for.
func (r *Result) greaterFused(c *Cable) *Cable {
	for i := range r.Cables {
		if o := &r.Cables[i]; o.Source == Split && o.charges() && o.ID == c.ID && o.Fuse.Amps > c.Fuse.Amps {
			return o
		}
	}
	return c
}

const absurdTimes = 10.0 // the current of a circuit

// absurd finds a fuse that is out of all proportion to what it feeds: the cable may stand it, but no appliance.
func (r *Result) absurd(c *Cable) (finding.Finding, bool) {
	if !c.Fuse.Said || c.Role != Feed && c.Role != Lead || c.Fuse.Amps <= absurdTimes*c.Current*(1+1e-9) || c.Fuse.Amps > c.Rating.Amps*(1+1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.absurd", Severity: finding.Close, About: []string{c.way.Fuse.About}, Title: c.itsFuse() + " is out of all proportion", Source: finding.Source{Text: "common practice: no more than about ten times what it feeds", Sure: finding.Practice},
		Measured: measure(c.Fuse.Amps, "A"), Limit: measure(absurdTimes*c.Current, "A"),
		Words: fmt.Sprintf("It feeds %s A through a fuse of %s A. The cable stands that; what hangs on it, and its own thin leads, may not.", digits(c.Current, 2), digits(c.Fuse.Amps, 4))}
	f.Proposals = c.rated(c.fuseChoice())
	return f, true
}

// tooSmall finds a fuse that does not carry what it feeds.
func (r *Result) tooSmall(c *Cable) (finding.Finding, bool) {
	if !c.Fuse.Said || c.Fuse.None || c.Fuse.Amps <= 0 || c.Current <= mostLoad*c.Fuse.Amps*(1+1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.small", Severity: finding.Close, About: []string{c.way.Fuse.About}, Title: c.itsFuse() + " is small for what it feeds", Source: loadSource,
		Measured: measure(c.Current, "A"), Limit: measure(mostLoad*c.Fuse.Amps, "A"),
		Words: fmt.Sprintf("%s A for hours through a fuse of %s A: it ages, and goes one night for no reason. At most %s A suit it.", digits(c.Current, 3), digits(c.Fuse.Amps, 4), digits(mostLoad*c.Fuse.Amps, 3))}
	if c.Current >= c.Fuse.Amps {
		f.Severity, f.Title = finding.Fault, c.itsFuse()+" blows with all of it on"
		f.Words = fmt.Sprintf("It draws %s A and its fuse is of %s A.", digits(c.Current, 3), digits(c.Fuse.Amps, 4))
	}
	if choose := c.fuseChoice(); choose > 0 {
		f.Proposals = c.rated(choose)
	} else {
		f.Proposals = c.thickerFor(c.Fuse.Least)
	}
	f.Caution = "Never a larger fuse than the cable stands."
	return f, true
}

// thickerFor proposes a greater fuse together with the cable that stands it.
func (c *Cable) thickerFor(amps float64) []finding.Proposal {
	edits := c.fuseEdits(amps)
	mm2, ok := nextStandard(func(a float64) bool {
		return a > c.Section.MM2 && a >= c.Section.Need && c.way.rating(a).Amps >= amps
	})
	if !ok || !c.Section.Said || c.ID == "" || len(edits) == 0 {
		return nil
	}
	area := digits(mm2, 4)
	return []finding.Proposal{proposeAll(fmt.Sprintf("make the cable %s mm² and take a fuse of %s A", area, digits(amps, 4)), append(edits, edit{c.way.About, "cable", area + " mm2"})...)}
}

const nearSource = 200.0 // mm

// far finds a fuse that leaves a length of cable before it unprotected.
func (r *Result) far(c *Cable) (finding.Finding, bool) {
	away := c.way.Fuse.Away
	if away < 0 || away <= nearSource || c.Fuse.Amps <= 0 {
		return finding.Finding{}, false
	}
	about, owner := c.way.Fuse.About, c.About
	switch c.Role {
	case Trunk: // what the bank says wins over its circuit
		owner = "/power/batteries/" + c.Bank
	case Lead:
		owner = "/power/sources/" + c.ID
	}
	return finding.Finding{Code: "power.fuse.far", Severity: finding.Fault, About: []string{about}, Title: c.itsFuse() + " is far from what feeds it", Source: placeSource, Caution: fireCaution,
		Measured: measure(away, "mm"), Limit: measure(nearSource, "mm"), Proposals: []finding.Proposal{propose("move the fuse to within 150 mm", owner, "fuse-away", 150)},
		Words: fmt.Sprintf("%s mm of cable lie before the fuse and are protected by nothing. It belongs within %.0f mm.", quantity.Parted(away), nearSource)}, true
}
