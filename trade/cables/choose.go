package cables

import (
	"fmt"

	"tumblehome/trade/finding"
)

const (
	leastStrand = 1.0 // mm2 of a single cable of more than 200 mm
	leastTrunk  = 6.0 // mm2 where the program chooses a battery's own cable; common practice
	leastPlug   = 2.5 // mm2 that the plugs of panels hold: 2.5 to 6; common practice, from memory
)

var (
	strandSource = finding.Source{Text: "ISO 10133: a cable run alone has at least 1 mm²; the US law asks for 1.3", Sure: finding.Read}
	plugSource   = finding.Source{Text: "plugs of solar panels are made for 2.5 to 6 mm²; common practice, from memory", Sure: finding.Memory}
	dropSource   = finding.Source{Text: "ISO 10133 as a public excerpt gives it: 3 % for feeders and what safety hangs on; 10 % for everything else and 5 % as a general value from memory", Sure: finding.Memory}
)

// choose settles the cross-section and the fuse of a cable: what is written counts, what is not is chosen.
func (c *Cable) choose() {
	f := c.way.Fuse
	c.Fuse = Protection{Amps: f.Amps, Said: f.Said, None: f.None, About: f.About, End: "from", Least: leastFuse(c.Current)}
	if !f.Said {
		c.Fuse.Amps = c.Fuse.Least
	}
	c.Section = c.demands()
	c.Rating = c.way.rating(c.Section.MM2)
	c.Fuse.Most = greatestFuse(c.Rating.Amps)
	if !f.Said {
		c.Fuse.Amps = min(c.Fuse.Least, c.Fuse.Most)
	}
	c.Fuse.Colour = bladeColours[c.Fuse.Amps]
}

// demands asks each rule for the smallest standard cross-section that passes it.
func (c *Cable) demands() Section {
	s := Section{MM2: c.way.Section, Said: c.way.Section > 0}
	ask := func(rule Rule, source finding.Source, words string, passes func(float64) bool) {
		mm2, _ := nextStandard(passes)
		s.Steps = append(s.Steps, Demand{Rule: rule, MM2: mm2, Words: words, Source: source})
	}
	carries, _ := nextStandard(func(a float64) bool { return c.way.rating(a).Amps >= c.Current })
	ask(RuleCurrent, c.way.rating(carries).From, fmt.Sprintf("it carries %s A where it lies", digits(c.Current, 3)), func(a float64) bool { return c.way.rating(a).Amps >= c.Current })
	if c.Fuse.Amps > 0 {
		ask(RuleFuse, protectSource, fmt.Sprintf("it stands what a fuse of %s A lets pass for good", digits(c.Fuse.Amps, 3)), func(a float64) bool { return c.way.rating(a).Amps >= c.Fuse.Amps })
		through := letsThrough(c.way.Fuse.Kind, c.Fuse.Amps)
		ask(RuleShort, shortSource, "it lives through a short until the fuse has gone", func(a float64) bool { return Withstands(a) >= through })
	}
	ask(RuleDrop, dropSource, fmt.Sprintf("it loses at most %s %% of %s V along %s m", digits(100*c.Drop.Aim, 3), digits(c.Volts, 3), digits(c.Length.MM/1000, 2)),
		func(a float64) bool { return Loss(c.Length.MM, a, c.Current, warmCopper) <= c.Drop.Aim*c.Volts })
	if c.Role == Trunk {
		ask(RuleMechanical, finding.Source{Text: "common practice for a battery's own cable", Sure: finding.Practice}, "everything else hangs on it, and more will", func(a float64) bool { return a >= leastTrunk })
	}
	if c.plugged() {
		ask(RulePlugs, plugSource, "the plugs of panels hold no thinner one", func(a float64) bool { return a >= leastPlug })
	}
	ask(RuleMechanical, strandSource, "thinner strands break when they are pulled and shaken", func(a float64) bool { return a >= leastStrand })
	s.decide()
	return s
}

// plugged says whether a cable ends in the plugs of panels.
func (c *Cable) plugged() bool { return c.Role == Charge && c.Source == Sun }

// decide takes the most that any rule asks for. Where none of the standard ones is enough for a rule, the thickest is reckoned with.
func (s *Section) decide() {
	failed := false
	for _, d := range s.Steps {
		if d.MM2 == 0 && !failed {
			s.Rule, failed = d.Rule, true
		}
		if d.MM2 > s.Need && !failed {
			s.Need, s.Rule = d.MM2, d.Rule
		}
	}
	if failed {
		s.Need = 0
	}
	if s.Said {
		return
	}
	s.MM2 = s.Need
	if failed {
		s.MM2 = standard[len(standard)-1]
	}
}

// protectMain chooses for the trunk, whose fuse must break what the battery gives [A] and let those behind it, the greatest of which is known [A], go first.
func (c *Cable) protectMain(behind, meets float64) {
	c.choose()
	c.Fuse.Where = "within 200 mm of the battery's post"
	if c.Fuse.Said {
		c.lift(behind, meets)
		return
	}
	c.Fuse.Least = max(c.Fuse.Least, nextFuse(behind*bladeRatio))
	c.Fuse.Least = breakable(c.Fuse.Least, meets)
	if !c.Section.Said {
		c.Fuse.Amps = c.Fuse.Least
		c.Section = c.demands()
		c.Rating = c.way.rating(c.Section.MM2)
		c.Fuse.Most = greatestFuse(c.Rating.Amps)
	}
	c.Fuse.Amps = min(c.Fuse.Least, c.Fuse.Most)
	c.Fuse.Colour = bladeColours[c.Fuse.Amps]
}

// lift takes for the least rating of a main fuse that is written, and may have to be another, one that suits what is behind it and what its circuit says,
// as far as its cable stands that.
func (c *Cable) lift(behind, meets float64) {
	for _, wanted := range []float64{breakable(nextFuse(behind*bladeRatio), meets), c.also.Amps} {
		if wanted > c.Fuse.Least && wanted <= c.Fuse.Most {
			c.Fuse.Least = wanted
		}
	}
}

// Ratio of ratings from one level to the next so that only the lower fuse goes, from memory.
const (
	bladeRatio  = 2.0
	boltedRatio = 1.6
)

// breakable is the smallest rating that is sold, at least so large, of a kind that breaks a current [A]; the rating itself where none is.
func breakable(least, meets float64) float64 {
	for _, r := range soldRatings {
		if r >= least && kindFor(r, meets) != Unsaid {
			return r
		}
	}
	return least
}

// nextFuse is the smallest rating that is sold and at least so large.
func nextFuse(amps float64) float64 {
	for _, r := range soldRatings {
		if r >= amps {
			return r
		}
	}
	return soldRatings[len(soldRatings)-1]
}
