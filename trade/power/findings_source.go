package power

import (
	"fmt"
	"slices"
	"strconv"

	"tumblehome/trade/finding"
)

const carePanel = "A panel gives current as long as light falls on it: cover it before you join or part its cable, and join the controller to the battery first."

// unknown tells of what is named as a source and charges nothing as far as is known.
func (r *Result) unknown() (out []finding.Finding) {
	for _, u := range r.in.Unknown {
		out = append(out, finding.Finding{Code: "power.source.unknown", Severity: finding.Close, About: []string{u.About, u.Fitting}, Title: "Known neither as a panel nor as a charger: " + u.Name, Source: practice,
			Words: "It stands under sources, but is reckoned to charge nothing. Take a row of the catalogue that is a panel with its watts, or a charger; what is no source belongs on a circuit.", Caution: careCharge})
	}
	return out
}

// uncontrolled finds panels that nothing keeps from charging a full battery.
func (r *Result) uncontrolled() (out []finding.Finding) {
	all := slices.Clone(r.in.Sources)
	for _, s := range r.in.Second {
		all = append(all, s.Sources...)
	}
	for i := range all {
		if s := &all[i]; s.Bare {
			out = append(out, finding.Finding{Code: "power.panel.uncontrolled", Severity: finding.Fault, About: []string{s.About}, Title: "A panel is joined to the battery without a controller", Source: practice, Caution: carePanel,
				Words: "Nothing stops it when the battery is full: its voltage goes on rising, lead boils dry and gives off gas that explodes, lithium shuts itself off or is spoilt. Fit a solar controller and name it (by)."})
		}
	}
	return out
}

// charged says whether anything of these brings charge.
func (r *Result) charged(sources []Source) bool {
	return slices.ContainsFunc(sources, func(s Source) bool { return s.Kind != Shore || r.in.Mains.Inlet })
}

// second tells which banks the year leaves out, and which of them nothing charges.
func (r *Result) second() (out []finding.Finding) {
	for _, s := range r.in.Second {
		out = append(out, finding.Finding{Code: "power.battery.second", Severity: finding.Note, About: []string{s.About}, Title: "The year is not reckoned for the battery called " + s.ID, Source: practice,
			Words: fmt.Sprintf("Days and nights are reckoned for %s, the largest, as if it fed everything; %s is not in it.", r.in.Battery.called(), s.ID)})
		if !r.charged(s.Sources) {
			out = append(out, finding.Finding{Code: "power.source.none", Severity: finding.Fault, About: []string{s.About}, Title: "Nothing charges " + s.ID, Source: practice, Caution: careCharge,
				Words: "No source is said to lead to it (to). Once empty it stays so, and a battery left empty is spoilt."})
		}
	}
	return out
}

func (b *Battery) called() string {
	if b.ID == "" {
		return "the battery"
	}
	return b.ID
}

// withoutMains finds a mains charger in a van that is said to have no mains.
func (r *Result) withoutMains() (finding.Finding, bool) {
	for i := range r.in.Sources {
		if s := &r.in.Sources[i]; s.Kind == Shore && r.in.Mains.Without {
			return finding.Finding{Code: "power.mains.none", Severity: finding.Close, About: []string{s.About, r.in.Mains.About}, Title: "A mains charger is joined, and the van is said to have no mains", Source: practice, Caution: careMains,
				Words: "Only one of the two can be so. It is reckoned to charge nothing. Say who fits an inlet, or take the charger out."}, true
		}
	}
	return finding.Finding{}, false
}

// withoutCharger finds a van that is charged from the mains at home by nothing.
func (r *Result) withoutCharger() (finding.Finding, bool) {
	return finding.Finding{Code: "power.mains.charger", Severity: finding.Close, About: []string{r.in.About}, Title: "The battery is said to be charged from the mains at home, and no mains charger is named", Source: practice, Caution: careMains,
			Words: "It is reckoned full at the start of each trip. Name the charger under sources, or say what charges the battery at home: the sun, or nothing."},
		r.in.AtHome == AtHomeMains && r.in.Battery != nil && !slices.ContainsFunc(r.in.Sources, func(s Source) bool { return s.Kind == Shore })
}

// fine writes currents and charges: small ones to two digits, so that none reads as nought.
func fine(v float64) string {
	if v < 10 {
		return strconv.FormatFloat(v, 'g', 2, 64)
	}
	return strconv.FormatFloat(v, 'f', 0, 64)
}
