package cables

import "tumblehome/trade/finding"

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

// mainsUnnamed notes that mains voltage is planned and nobody is named for it: it stands here as one block for somebody else.
func (r *Result) mainsUnnamed() (finding.Finding, bool) {
	return finding.Finding{Code: "power.mains.by", Severity: finding.Note, About: []string{r.Mains.About}, Caution: MainsCaution, Title: "Nobody is named to install the mains",
		Words:  "Inlet, breakers, sockets and the bonding of the body are a licensed electrician's work, by local code. Ask before linings hide the way of its cables.",
		Source: finding.Source{Text: "HD 60364-7-721 and national rules: inlet, breaker and protective bonding are for a licensed electrician", Sure: finding.Read}}, r.Mains.State == "planned" && r.Mains.By == ""
}

// MainsCaution stands beside everything at mains voltage.
const MainsCaution = "Mains voltage kills. Nothing here is a plan for its wiring: leave it to a licensed electrician, by local code."
