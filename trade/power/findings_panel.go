package power

import (
	"fmt"

	"tumblehome/trade/finding"
)

var panelVoltsSource = finding.Source{Text: "a controller lowers the voltage of panels and does not raise it; a battery takes charge at about 14 V, or 27 V in one of 24 V; common practice, no source", Sure: finding.Practice}

// tooFewVolts finds panels whose volts at full power are below those at which the battery takes charge.
func tooFewVolts(s *Source, b *Battery) (finding.Finding, bool) {
	takes := natures[b.Chemistry].takes * b.series()
	f := finding.Finding{Code: "power.panel.volts", Severity: finding.Fault, About: []string{s.About, b.About}, Title: "The panels have too few volts to charge the battery", Source: panelVoltsSource, Caution: carePanel,
		Words: fmt.Sprintf("At full power they give %s V; this battery takes charge at about %.1f V. A controller lowers the voltage and does not raise it: nothing flows, and no sun is counted. If %s V is what a panel is sold as, write in its row the volts at full power from its label (Vmp): about 18 for a panel sold as 12 V.",
			fine(s.PanelVolts), takes, fine(s.PanelVolts)),
		Measured: &finding.Measure{Value: s.PanelVolts, Unit: "V"}, Limit: &finding.Measure{Value: takes, Unit: "V"}}
	if s.Panels > 1 && !s.InRow && float64(s.Panels)*s.PanelVolts >= takes {
		f.Words += " Panels joined in a row, plus to minus, add up their volts; the controller must bear them together, and more in frost."
		f.Proposals = []finding.Proposal{{Words: "join the panels in a row", Patch: patchAt(s.About+"/in-row", "yes")}}
	}
	return f, s.Kind == Sun && s.tooFewVolts(takes)
}

// secondVolts asks the same of panels that charge a bank which the year leaves out.
func (r *Result) secondVolts() (out []finding.Finding) {
	for _, two := range r.in.Second {
		for i := range two.Sources {
			if f, low := tooFewVolts(&two.Sources[i], two.Battery); low {
				out = append(out, f)
			}
		}
	}
	return out
}
