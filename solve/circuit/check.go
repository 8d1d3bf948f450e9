package circuit

import "fmt"

// A Fault is a network that says nothing that could be solved, with the place of what is wrong with it.
type Fault struct {
	Place string // "loads[2] (lamp)", "node n1", "reference"
	Says  string
}

func (f *Fault) Error() string { return f.Place + ": " + f.Says }

// Limits within which a network is taken to be meant. They also keep the arithmetic far from its own limits.
const (
	leastResistance, greatestResistance = 1e-6, 1e6 // Ω
	greatestVoltage                     = 1e5       // V
	greatestPower                       = 1e8       // W, either way
	greatestCurrent                     = 1e6       // A, either way
)

func outside(v, low, high float64) bool { return !(v >= low && v <= high) }

// check gives the first fault of a part by itself.
func (n Network) check() error {
	if n.Reference == "" {
		return &Fault{"reference", "no node is named to stand at 0 V"}
	}
	if len(n.Sources) == 0 {
		return &Fault{"sources", "there is none, so no voltage is given"}
	}
	for k, s := range n.Sources {
		if says := s.fault(); says != "" {
			return &Fault{named("sources", k, s.Name), says}
		}
	}
	for k, c := range n.Conductors {
		if says := c.fault(); says != "" {
			return &Fault{named("conductors", k, c.Name), says}
		}
	}
	for k, l := range n.Loads {
		if says := l.fault(); says != "" {
			return &Fault{named("loads", k, l.Name), says}
		}
	}
	return nil
}

func named(list string, k int, name string) string {
	if name == "" {
		return fmt.Sprintf("%s[%d]", list, k)
	}
	return fmt.Sprintf("%s[%d] (%s)", list, k, name)
}

func (s Source) fault() string {
	if outside(s.Voltage, 0, greatestVoltage) {
		return fmt.Sprintf("voltage %g is not between 0 and %g V; to turn a source round, change its ends", s.Voltage, greatestVoltage)
	}
	return firstOf(endsFault(s.From, s.To), resistanceFault(s.Resistance))
}

func (c Conductor) fault() string {
	return firstOf(endsFault(c.From, c.To), resistanceFault(c.Resistance))
}

func (l Load) fault() string {
	switch {
	case outside(l.Power, -greatestPower, greatestPower):
		return fmt.Sprintf("power %g is not a number within %g W", l.Power, greatestPower)
	case outside(l.Current, -greatestCurrent, greatestCurrent):
		return fmt.Sprintf("current %g is not a number within %g A", l.Current, greatestCurrent)
	case l.Resistance != 0:
		return firstOf(endsFault(l.From, l.To), resistanceFault(l.Resistance))
	}
	return endsFault(l.From, l.To)
}

func endsFault(from, to string) string {
	switch {
	case from == "" || to == "":
		return "an end has no node"
	case from == to:
		return fmt.Sprintf("both ends are at node %s", from)
	}
	return ""
}

func resistanceFault(r float64) string {
	if outside(r, leastResistance, greatestResistance) {
		return fmt.Sprintf("resistance %g is not between %g and %g Ω; what has none is a single node", r, leastResistance, greatestResistance)
	}
	return ""
}

func firstOf(faults ...string) string {
	for _, f := range faults {
		if f != "" {
			return f
		}
	}
	return ""
}
