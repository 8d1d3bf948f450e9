package reckon

import (
	"math"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Change is one figure that differs between two reckonings.
type Change struct {
	Code, Label, Unit string
	From, To          float64
	Gone, New         bool // the figure exists on one side only
}

// Difference says what differs between two reckonings of one van.
type Difference struct {
	Changes  []Change          // by code
	Cleared  []finding.Finding // findings of the first that the second has not
	Appeared []finding.Finding // findings of the second that the first has not
}

// Compare lays a second reckoning beside a first.
func Compare(from, to *Reckoning) Difference {
	return Difference{
		Changes:  changes(from.Figures, to.Figures),
		Cleared:  missing(from.Findings, to.Findings),
		Appeared: missing(to.Findings, from.Findings),
	}
}

// changes merges two lists of figures, both sorted by code.
func changes(from, to []working.Figure) []Change {
	var out []Change
	for i, j := 0, 0; i < len(from) || j < len(to); {
		switch {
		case j == len(to) || i < len(from) && from[i].Code < to[j].Code:
			f := from[i]
			out = append(out, Change{Code: f.Code, Label: f.Label, Unit: f.Unit, From: f.Value, Gone: true})
			i++
		case i == len(from) || from[i].Code > to[j].Code:
			t := to[j]
			out = append(out, Change{Code: t.Code, Label: t.Label, Unit: t.Unit, To: t.Value, New: true})
			j++
		default:
			switch f, t := from[i], to[j]; {
			case f.Unit != t.Unit: // pounds are not taken from euros
				out = append(out, Change{Code: f.Code, Label: f.Label, Unit: f.Unit, From: f.Value, Gone: true},
					Change{Code: t.Code, Label: t.Label, Unit: t.Unit, To: t.Value, New: true})
			case differs(f.Value, t.Value):
				out = append(out, Change{Code: t.Code, Label: t.Label, Unit: t.Unit, From: f.Value, To: t.Value})
			}
			i, j = i+1, j+1
		}
	}
	return out
}

// differs leaves out what is only the rounding of sums taken in another order.
func differs(a, b float64) bool {
	return math.Abs(a-b) > 1e-9*math.Max(1, math.Max(math.Abs(a), math.Abs(b)))
}

// missing returns the findings of a whose key is not among those of b.
func missing(a, b []finding.Finding) []finding.Finding {
	known := make(map[string]bool, len(b))
	for _, f := range b {
		known[identity(f)] = true
	}
	var out []finding.Finding
	for _, f := range a {
		if !known[identity(f)] {
			out = append(out, f)
		}
	}
	return out
}

func identity(f finding.Finding) string {
	return strings.Join([]string{f.Code, f.Mode, f.Severity.String(), strings.Join(f.About, " ")}, "\x00")
}
