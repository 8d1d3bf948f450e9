package tree

import (
	"fmt"
	"strings"
)

// A Fault is one thing wrong with a text, and where.
type Fault struct {
	File         string
	Line, Column int
	Says         string // what is wrong and what to write instead
}

// Error is `file:line:column: what is wrong`.
func (f Fault) Error() string { return fmt.Sprintf("%s:%d:%d: %s", f.File, f.Line, f.Column, f.Says) }

// Faults are everything wrong with one text, in its order.
type Faults []Fault

// Error is one line for each fault.
func (f Faults) Error() string {
	lines := make([]string, len(f))
	for i := range f {
		lines[i] = f[i].Error()
	}
	return strings.Join(lines, "\n")
}

const mostFaults = 20 // of one text; more help nobody

// faultList gathers faults until there are enough.
type faultList struct {
	file string
	all  Faults
}

func (l *faultList) add(line, column int, says string) {
	if len(l.all) < mostFaults {
		l.all = append(l.all, Fault{l.file, line, column, says})
	}
}
