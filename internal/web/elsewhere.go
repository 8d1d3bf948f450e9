package web

import "tumblehome/trade/finding"

// elsewhere counts the faults that hold only in another way the van stands than the one shown.
type elsewhere struct {
	Mode, Title string
	Count       int
	Worst       finding.Severity
}

// words say how many there are: "2 faults".
func (e elsewhere) words() string {
	if e.Count == 1 {
		return "1 fault"
	}
	return count(e.Count) + " faults"
}

// faultsElsewhere are the faults of a mode that the reader of another does not see; of the mode shown there are none.
func (v view) faultsElsewhere(mode string) elsewhere {
	e := elsewhere{Mode: mode}
	if mode == v.Mode || v.Page != "arrangement" {
		return e
	}
	for _, f := range v.Findings {
		if f.Mode == mode && f.Accepted == "" && f.Severity >= finding.Fault {
			e.Count++
			e.Worst = max(e.Worst, f.Severity)
		}
	}
	return e
}

// modesWithFaults are the modes with such faults, in the order of their tabs.
func (v view) modesWithFaults() []elsewhere {
	var out []elsewhere
	for _, m := range v.modes() {
		if e := v.faultsElsewhere(m.Value); e.Count > 0 {
			e.Title = m.Words
			out = append(out, e)
		}
	}
	return out
}
