package cables

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

const (
	farBelow  = 0.8 // of what the rows say, below which a written current is not believed: rows are round figures, and things run at less than full power
	halfBelow = 0.5 // of it, below which the cable is made for something else
)

var rowsSource = finding.Source{Text: "watts of the catalogue's rows over the voltage; that rows are good to a fifth is common practice", Sure: finding.Practice}

var panelsSource = finding.Source{Text: "watts of the panels over their own volts, together where they stand side by side, a quarter more beside bright clouds; a controller limits what it gives the battery, and is not counted on to limit what flows to it; common practice", Sure: finding.Practice}

// drawn is what the rows say that a circuit's loads draw, all at once [A].
func (f Circuit) drawn(volts float64) float64 {
	sum := 0.0
	for _, l := range f.Loads {
		sum += l.amps(volts)
	}
	return sum
}

func (l Load) amps(volts float64) float64 {
	switch {
	case l.Kind == Inverter:
		return l.Watts / converting / (inverterLow * volts)
	case l.Kind == Heater && l.Watts > 0:
		return max(l.Watts, glow) / volts
	}
	return l.Watts / volts
}

// glow is what the plug that lights a fuel heater takes for two to four minutes at each start [W]; from memory (90 to 120).
const glow = 120.0

// throughOf is what flows in a circuit's cable with everything on [A]: what it and all that hangs on it draws. Where it has no loads of its own what is
// written for it counts if that is more.
func (r *Result) throughOf(f Circuit, volts float64) float64 {
	sum := r.ownAmps(f, volts)
	if !r.in.hasBank(f.ID) {
		sum += r.throughAll(f.ID, "", volts)
	}
	if len(f.Loads) == 0 {
		return max(sum, f.Current)
	}
	return sum
}

// throughAll adds up what flows in the circuits that begin at a bank or circuit, or at the bank's main circuit.
func (r *Result) throughAll(from, main string, volts float64) float64 {
	sum := 0.0
	for _, c := range r.in.Circuits {
		if c.ID != main && (c.From == from || main != "" && c.From == main) {
			sum += r.throughOf(c, volts)
		}
	}
	return sum
}

// ownAmps is what a circuit's own loads draw [A]: none where it only feeds others.
func (r *Result) ownAmps(f Circuit, volts float64) float64 {
	if len(f.Loads) == 0 && !r.in.hasBank(f.ID) && len(r.in.feeds(f.ID)) > 0 {
		return 0
	}
	return f.amps(volts)
}

// certain is drawn without sockets: what is plugged into those is the builder's to say, and their rows have the most that they bear.
func (f Circuit) certain(volts float64) float64 {
	sum := 0.0
	for _, l := range f.Loads {
		if l.Kind != Socket {
			sum += l.amps(volts)
		}
	}
	return sum
}

// low reports whether a written current is far below what certainly flows.
func low(said, certain float64) bool { return said > 0 && said < farBelow*certain*(1-1e-9) }

// certain is what a source certainly sends through its cable [A]: of panels what they give together; of a charger on the mains what it is made for. What
// a converter may take from an engine is set, and is judged with the engine.
func (s Source) certain() float64 {
	switch s.Kind {
	case Sun:
		return s.sends()
	case Shore:
		most := 0.0
		for _, l := range s.Is {
			most += l.Amps
		}
		return most
	}
	return 0
}

// sends is what panels give together in full sun [A], each at its own voltage: side by side the sum, in a row no more than one of them.
func (s Source) sends() float64 {
	sum, most := 0.0, 0.0
	for _, l := range s.Is {
		i := l.panelAmps()
		sum, most = sum+i, max(most, i)
	}
	if s.InRow {
		return most
	}
	return sum
}

// panelAmps is what a panel gives in full sun [A]: as it is written, else its watts over its volts, those of 36 cells where nobody says.
func (l Load) panelAmps() float64 {
	switch {
	case l.Amps > 0:
		return l.Amps
	case l.Volts > 0:
		return l.Watts / l.Volts
	}
	return l.Watts / panelVolts
}

// lowCurrents finds written currents that are far below what the rows of loads and sources say.
func (r *Result) lowCurrents(s Supply) []finding.Finding {
	var out []finding.Finding
	for _, c := range r.in.feeds(s.ID) {
		if said, is := c.Current, c.certain(s.Volts); low(said, is) {
			out = append(out, tooLow(c.Way, "current", "The loads of "+c.Title, "draw", said, is, c.amps(s.Volts)))
		}
	}
	for _, c := range r.in.Sources {
		i := r.supplyOf(c.To)
		if i < 0 || r.Supplies[i].ID != s.ID {
			continue
		}
		if said, is := c.Most, c.certain(); low(said, is) {
			f := tooLow(c.Way, "most", capital(c.Title), "can send", said, is, c.amps(s))
			if c.Kind == Sun {
				f.Source = panelsSource
			}
			out = append(out, f)
		}
	}
	return out
}

// allAtOnce finds a main cable that is written for less than what hangs on it draws at once.
func (r *Result) allAtOnce(c *Cable) (finding.Finding, bool) {
	if c.Role != Trunk || c.told == 0 || c.sum <= c.told*(1+1e-9) {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.current.low", Severity: finding.Close, About: []string{c.About + "/current"}, Title: "All at once draws more through the main cable than is written",
		Source: finding.Source{Text: "the sum of what is written for the circuits, or what their loads draw by the catalogue", Sure: finding.Computed}, Measured: measure(c.told, "A"), Limit: measure(c.sum, "A"),
		Words: fmt.Sprintf("%s A are written; the circuits that hang on it may draw %s A together. Cable and fuse are reckoned with %s A.", digits(c.told, 3), digits(c.sum, 3), digits(c.Current, 3))}
	if c.Fuse.Amps > 0 && c.sum > c.Fuse.Amps {
		f.Severity = finding.Fault
		f.Words += fmt.Sprintf(" Its fuse of %s A would blow.", digits(c.Fuse.Amps, 4))
	}
	f.Proposals = writeCurrent(c.About, "current", c.sum)
	return f, true
}

// mostWritten are the greatest currents that the document takes [A].
var mostWritten = map[string]float64{"current": 2000, "most": 1000}

// writeCurrent proposes a current in steps of half an ampere, unless it is absurd: then the loads are wrong.
func writeCurrent(about, key string, amps float64) []finding.Proposal {
	up := math.Ceil(2*amps-1e-9) / 2
	if up > mostWritten[key] {
		return nil
	}
	return []finding.Proposal{propose(fmt.Sprintf("write %s A", digits(up, 4)), about, key, up)}
}

func tooLow(w Way, key, who, does string, said, is, reckoned float64) finding.Finding {
	f := finding.Finding{Code: "power.current.low", Severity: finding.Close, About: []string{w.About + "/" + key}, Title: who + " " + does + " more than is written", Source: rowsSource,
		Measured: measure(said, "A"), Limit: measure(is, "A"),
		Words: fmt.Sprintf("%s A are written; as the catalogue has them they %s %s A. Cable and fuse are reckoned with %s A.", digits(said, 3), does, digits(is, 3), digits(reckoned, 3))}
	if key == "most" {
		f.Words = fmt.Sprintf("%s A are written; as the catalogue has it, it %s %s A. Cable and fuse are reckoned with %s A.", digits(said, 3), does, digits(is, 3), digits(reckoned, 3))
	}
	if said < halfBelow*is {
		f.Severity = finding.Fault
	}
	f.Proposals = writeCurrent(w.About, key, reckoned)
	return f
}
