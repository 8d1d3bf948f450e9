package power

import "strings"

// Chemistry is what a battery is made of.
type Chemistry string

// The four that are common in vans.
const (
	Lithium Chemistry = "lithium iron phosphate"
	AGM     Chemistry = "AGM lead"
	Gel     Chemistry = "gel lead"
	Flooded Chemistry = "flooded lead"
)

// Lead tells lead from lithium.
func (c Chemistry) Lead() bool { return c != Lithium }

// ChemistryOf tells a battery's chemistry by the id and the name of its row; false if they do not say.
func ChemistryOf(row, name string) (Chemistry, bool) {
	text := " " + strings.ToLower(row+" "+name) + " "
	for _, c := range []struct {
		is    Chemistry
		words []string
	}{
		{Lithium, []string{"lfp", "lifepo", "lithium"}},
		{AGM, []string{"agm"}},
		{Gel, []string{"gel"}},
		{Flooded, []string{"flooded", "leisure", "lead", "wet"}},
	} {
		for _, w := range c.words {
			if strings.Contains(text, w) {
				return c.is, true
			}
		}
	}
	return Flooded, false
}

// nature is what a chemistry can do. Middles of the usual ranges; common practice, no source, but where said.
type nature struct {
	usable   float64 // share that may be taken; half of lead is the usual rule
	deepest  float64 // share beyond which it is harmed soon
	peukert  float64 // exponent: battery handbooks give 1.2 to 1.3 flooded, 1.05 to 1.15 AGM, 1.1 to 1.25 gel, 1.05 lithium (read)
	charged  float64 // Ah kept of an Ah charged
	gives    float64 // V, mean while it is emptied
	takes    float64 // V, mean while it is filled
	accepts  float64 // share of its Ah in A that it takes while it fills
	tapers   float64 // state of charge from which it takes less and less
	most     float64 // share of its Ah in A that may be charged at all
	rate     float64 // share of its Ah in A that may be drawn for long
	loses    float64 // share lost by itself in a month at 20 °C; half of it at 10 °C (read)
	capacity []point // share of the capacity by temperature
}

type point struct{ at, is float64 }

var natures = map[Chemistry]nature{
	Flooded: {usable: 0.5, deepest: 0.5, peukert: 1.25, charged: 0.85, gives: 12.5, takes: 14.0, accepts: 0.15, tapers: 0.8, most: 0.2, rate: 0.5, loses: 0.06, capacity: coldLead},
	AGM:     {usable: 0.5, deepest: 0.6, peukert: 1.10, charged: 0.92, gives: 12.5, takes: 14.0, accepts: 0.30, tapers: 0.8, most: 0.4, rate: 1, loses: 0.03, capacity: coldLead},
	Gel:     {usable: 0.5, deepest: 0.6, peukert: 1.15, charged: 0.92, gives: 12.5, takes: 13.9, accepts: 0.175, tapers: 0.8, most: 0.2, rate: 0.5, loses: 0.02, capacity: coldLead},
	Lithium: {usable: 0.8, deepest: 1, peukert: 1.05, charged: 0.99, gives: 12.8, takes: 13.5, accepts: 0.5, tapers: 0.95, most: 0.5, rate: 1, loses: 0.025, capacity: coldLithium},
}

// Lead at the 20 h rate from memory; lithium between what two makers print (90 and 80 % at 0 °C, 70 % at -20 °C: read).
var (
	coldLead    = []point{{-20, 0.55}, {-10, 0.725}, {0, 0.85}, {10, 0.92}, {25, 1}}
	coldLithium = []point{{-20, 0.70}, {0, 0.85}, {25, 1}}
)

// along reads a table between its points, and holds its ends beyond them.
func along(table []point, at float64) float64 {
	for i, p := range table {
		if at > p.at {
			continue
		}
		if i == 0 {
			return p.is
		}
		before := table[i-1]
		return before.is + (p.is-before.is)*(at-before.at)/(p.at-before.at)
	}
	return table[len(table)-1].is
}

// Capacity is the share of what it holds at 25 °C that a battery gives at a temperature [°C].
func Capacity(c Chemistry, temperature float64) float64 {
	return along(natures[c].capacity, temperature)
}

// ColdCharge is the most a lithium cell should be charged with at a temperature [°C], as a share of its Ah in A: nothing below 0 °C, where
// metal deposits. A maker's table for fast charging (lithium telecom battery manual, tables 4.3 and 4.4: read).
func ColdCharge(temperature float64) float64 {
	switch t := temperature; {
	case t < 0 || t > 60:
		return 0
	case t < 5:
		return 0.1
	case t < 10:
		return 0.2
	case t < 25:
		return 1
	case t < 50:
		return 0.75
	}
	return 0.1
}
