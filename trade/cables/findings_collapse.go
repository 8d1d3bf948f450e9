package cables

import (
	"fmt"

	"tumblehome/trade/finding"
)

var collapseSource = finding.Source{Text: "no voltage satisfies the network: beyond E²/(4·R) a load draws more the less it gets", Sure: finding.Computed}

// collapse finds a battery that cannot carry what hangs on it.
func (r *Result) collapse(s Supply) (finding.Finding, bool) {
	if s.Collapsed == nil {
		return finding.Finding{}, false
	}
	c := r.find(s.ID, s.Collapsed.Tips)
	f := finding.Finding{Code: "power.collapse", Severity: finding.Fault, About: []string{s.About}, Title: "The voltage breaks down with everything on", Source: collapseSource,
		Measured: measure(100*s.Collapsed.Share, "%"), Limit: measure(100, "%"),
		Words: fmt.Sprintf("The battery and its cables can carry only %.0f %% of what is drawn. The lower the voltage falls the more is drawn, until everything goes out.", 100*s.Collapsed.Share)}
	if c.ID != "" {
		f.About = append([]string{c.About}, f.About...)
		f.Words += fmt.Sprintf(" %s tips it.", capital(c.Title))
	}
	return f, true
}

// starved finds a circuit that not even alone can be fed. Everything else is reckoned without it.
func (r *Result) starved(c *Cable) (finding.Finding, bool) {
	if c.Starved == nil {
		return finding.Finding{}, false
	}
	share := 100 * c.Starved.Share
	f := finding.Finding{Code: "power.collapse", Severity: finding.Fault, About: []string{c.About}, Source: collapseSource, Measured: measure(share, "%"), Limit: measure(100, "%")}
	thick := r.thickEnough(c)
	if thick == 0 {
		f.Title = "The battery cannot feed " + c.Title + ", not even alone"
		f.Words = fmt.Sprintf("Battery and cables can carry only %.0f %% of the %s A that it draws, and no cable that is sold mends that. Everything else is reckoned without it.", share, digits(c.own, 3))
		return f, true
	}
	f.Title = "The cable to " + c.To.Words + " is so long and thin that what hangs on it cannot run"
	f.Words = fmt.Sprintf("%s m of %s mm² can carry only %.0f %% of the %s A that it draws: the lower the voltage falls the more is drawn, until it goes out. Everything else is reckoned without it.",
		digits(c.Length.MM/1000, 3), digits(c.Section.MM2, 4), share, digits(c.own, 3))
	f.Proposals = c.sectioned(thick)
	return f, true
}
