package cables

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/trade/finding"
)

// Of the voltage of a bank, what is made for it has between these shares on its plate: 10 to 16 V at 12.8 V.
const (
	leastShare = 0.75
	mostShare  = 1.3
	mainsFrom  = 50.0 // V from which a thing is for the mains
)

var voltsSource = finding.Source{Text: "volts of the catalogue's rows; what is made for 12 V has 10 to 16 V on its plate, common practice", Sure: finding.Practice}

func (l Load) suits(volts float64) bool {
	return l.Volts == 0 || l.Volts >= leastShare*volts && l.Volts <= mostShare*volts
}

// volts finds what is made for another voltage than the bank that feeds it has. Where everything is, it is the bank that does not fit.
func (r *Result) volts(s Supply) []finding.Finding {
	var wrong []Load
	known := 0
	for _, c := range r.in.feeds(s.ID) {
		for _, l := range c.Loads {
			if l.Volts > 0 && l.Volts < mainsFrom {
				known++
			}
			if !l.suits(s.Volts) && !slices.ContainsFunc(wrong, func(other Load) bool { return other.ID == l.ID }) {
				wrong = append(wrong, l)
			}
		}
	}
	if f, odd := bankOdd(s); odd {
		out := []finding.Finding{f}
		for _, l := range wrong {
			if l.Volts >= mainsFrom {
				out = append(out, loadVolts(s, l))
			}
		}
		return out
	}
	mains := slices.ContainsFunc(wrong, func(l Load) bool { return l.Volts >= mainsFrom })
	if len(wrong) > 1 && len(wrong) == known && !mains && len(s.Batteries) > 0 {
		return []finding.Finding{bankVolts(s, wrong)}
	}
	out := append(r.relayVolts(s), r.inputVolts(s)...)
	for _, l := range wrong {
		out = append(out, loadVolts(s, l))
	}
	return out
}

// relayVolts finds a relay that joins batteries of different voltages.
func (r *Result) relayVolts(s Supply) (out []finding.Finding) {
	for _, one := range r.in.Sources {
		if one.Kind != Split || one.Starter <= 0 || r.bankOf(one) != s.ID || math.Round(one.Starter/12) == one.starter(s) {
			continue
		}
		out = append(out, finding.Finding{Code: "power.volts", Severity: finding.Danger, About: []string{one.About, "/vehicle/volts"}, Source: voltsSource, Caution: fireCaution, Measured: measure(one.Starter, "V"), Limit: measure(s.Volts, "V"),
			Title: fmt.Sprintf("A relay joins the vehicle's %s V to a battery of %s V", digits(one.Starter, 3), digits(s.Volts, 3)),
			Words: "A relay joins the two as a cable does: the higher one empties itself into the lower as fast as the cable lets it. Only a charger that converts belongs between them."})
	}
	return out
}

// inputVolts notes what a charger on the engine must bear where vehicle and house battery have different voltages: a row has the volts of what it gives.
func (r *Result) inputVolts(s Supply) (out []finding.Finding) {
	for _, one := range r.in.Sources {
		if one.Kind != Engine || one.Starter <= 0 || len(one.Is) == 0 || r.bankOf(one) != s.ID || one.starter(s) == s.blocks() {
			continue
		}
		charger, vehicle := one.Is[0], digits(one.Starter, 3)
		f := finding.Finding{Code: "power.volts.input", Severity: finding.Note, About: []string{charger.About, "/vehicle/volts"}, Source: voltsSource, Caution: fireCaution, Limit: measure(one.Starter, "V"),
			Title: fmt.Sprintf("The input of %s must bear %s V", charger.Name, vehicle),
			Words: fmt.Sprintf("The vehicle has %s V, the house battery %s V. Look on its label for an input of %s V and an output of %s V: one that is made for the same volts on both sides is destroyed.", vehicle, digits(12*s.blocks(), 3), vehicle, digits(12*s.blocks(), 3))}
		if charger.Volts > 0 {
			f.Words = fmt.Sprintf("Its row in the catalogue says %s V, and nothing of what it takes in. ", digits(charger.Volts, 3)) + f.Words
		}
		out = append(out, f)
	}
	return out
}

func loadVolts(s Supply, l Load) finding.Finding {
	f := finding.Finding{Code: "power.volts", Severity: finding.Fault, About: []string{l.About}, Source: voltsSource, Measured: measure(l.Volts, "V"), Limit: measure(s.Volts, "V"),
		Title: fmt.Sprintf("%s is made for %s V and hangs on %s V", capital(l.Name), digits(l.Volts, 3), digits(s.Volts, 3)),
		Words: "It does not run on so little, or runs badly."}
	switch {
	case l.Volts >= mainsFrom:
		f.Severity, f.Caution = finding.Danger, MainsCaution
		f.Words = "It belongs to the mains and to no circuit of the battery: its cable, its fuse and its place are an electrician's. Take it out of the circuit's loads."
	case l.Volts < s.Volts:
		f.Severity, f.Caution = finding.Danger, fireCaution
		f.Words = "So much more than it is made for destroys it, and may set it on fire."
	}
	return f
}

func bankVolts(s Supply, loads []Load) finding.Finding {
	f := loadVolts(s, loads[0])
	f.About = []string{s.Batteries[0].About}
	for _, l := range loads {
		f.About = append(f.About, l.About)
	}
	f.Title = fmt.Sprintf("The battery gives %s V, and what hangs on it is made for %s V", digits(s.Volts, 3), digits(loads[0].Volts, 3))
	f.Words = fmt.Sprintf("This holds for %d things, %s first. On so little they do not run, or run badly.", len(loads), loads[0].Name)
	if loads[0].Volts < s.Volts {
		f.Words = fmt.Sprintf("This holds for %d things, %s first. So much more than they are made for destroys them, and may set them on fire.", len(loads), loads[0].Name)
	}
	return f
}

// unlike finds batteries side by side that are not of one voltage, or not of one kind.
func (r *Result) unlike(s Supply) (finding.Finding, bool) {
	if len(s.Batteries) == 0 {
		return finding.Finding{}, false
	}
	first := s.Batteries[0]
	for _, other := range s.Batteries[1:] {
		about := []string{first.About, other.About}
		switch {
		case other.blocks() != first.blocks():
			return finding.Finding{Code: "power.volts", Severity: finding.Danger, About: about, Caution: fireCaution, Title: "Batteries of different voltages stand side by side", Source: voltsSource,
				Measured: measure(other.Volts, "V"), Limit: measure(first.Volts, "V"),
				Words: fmt.Sprintf("%s and %s are joined plus to plus. The higher one empties itself into the lower with hundreds of amperes.", capital(first.Name), other.Name)}, true
		case other.Chemistry != Unknown && first.Chemistry != Unknown && other.Chemistry != first.Chemistry:
			f := finding.Finding{Code: "power.battery.mixed", Severity: finding.Fault, About: about, Title: "Two kinds of battery stand side by side", Source: mixedSource,
				Words: fmt.Sprintf("%s is of the kind %s, %s of the kind %s. They want different charging voltages: one is always half charged, or boils dry.", capital(first.Name), chemistries[first.Chemistry], other.Name, chemistries[other.Chemistry])}
			if first.Chemistry == Lithium || other.Chemistry == Lithium {
				f.Severity, f.Caution = finding.Danger, fireCaution
				f.Words += " Lithium stands higher than lead and sends it its whole current."
			}
			return f, true
		}
	}
	return finding.Finding{}, false
}

var mixedSource = finding.Source{Text: "makers' advice not to join kinds of battery; voltages at rest of lead 12.8 and lithium 13.3 V; common practice", Sure: finding.Practice}

var chemistries = map[Chemistry]string{Flooded: "lead with liquid", AGM: "lead with glass mat (AGM)", Gel: "lead with gel", Lithium: "lithium"}
