package proof

import (
	"fmt"
	"math"
	"testing"
)

// A Case is one published figure and ours beside it.
type Case struct {
	Name      string  // what is worked out, in words
	Source    string  // who says so: standard and clause, book and page, program and version, "from memory"
	Inputs    string  // the inputs with units, enough to repeat it
	Expected  float64 // the source's figure, in Unit
	Got       float64 // our figure, in Unit
	Tolerance float64 // largest difference allowed, in Unit, not below zero
	Unit      string  // "mm", "kg", "1" for a bare number
}

// Fault says in one sentence why the case does not hold, or is empty when it
// holds. A case without a name, source or unit, and one with a figure that is
// no number, never holds.
func (c Case) Fault() string {
	switch {
	case c.Name == "":
		return "the case has no name"
	case c.Source == "":
		return fmt.Sprintf("%s: no source is named", c.Name)
	case c.Unit == "":
		return fmt.Sprintf("%s: no unit is named", c.Name)
	case !finite(c.Expected) || !finite(c.Got) || !finite(c.Tolerance) || c.Tolerance < 0:
		return fmt.Sprintf("%s: expected %g, got %g, tolerance %g: not all are usable numbers",
			c.Name, c.Expected, c.Got, c.Tolerance)
	case math.Abs(c.Got-c.Expected) > c.Tolerance:
		return fmt.Sprintf("%s: got %.8g %s, %s says %.8g, off by %.3g where %.3g is allowed; inputs: %s",
			c.Name, c.Got, c.Unit, c.Source, c.Expected, c.Got-c.Expected, c.Tolerance, c.Inputs)
	}
	return ""
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

// Check fails the test when the case does not hold, and lets the test go on.
// When TUMBLEHOME_PROOF names a folder the case is also written there.
func Check(t testing.TB, c Case) {
	t.Helper()
	fault := c.Fault()
	if fault != "" {
		t.Error(fault)
	}
	if err := write(record(c, callerPackage(), t.Name(), fault == "")); err != nil {
		t.Errorf("%s: not written to the table of proofs: %v", c.Name, err)
	}
}
