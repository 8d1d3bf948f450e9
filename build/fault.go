package build

import (
	"fmt"
	"strings"

	"tumblehome/quantity"
)

// A FaultKind groups what can be wrong with a document, in the order in which
// it is reported.
type FaultKind int

const (
	Syntax     FaultKind = iota // not YAML or JSON as documents use it
	Keys                        // a key that is unknown, missing or no id
	Values                      // a value that is not of its field's kind
	References                  // a name that leads nowhere
	Meaning                     // well written, but it can not be
)

// A Fault is one thing wrong with a document, and where.
type Fault struct {
	Kind         FaultKind
	File         string   // empty when the document was not read from a text
	Line, Column int      // from 1; 0 when the document was not read from a text
	Path         string   // dotted, from the top; empty for the whole document
	Wrong        string   // what is wrong
	Expected     string   // what should stand there, or empty
	Near         []string // what was perhaps meant, the likeliest first
}

// Error is `file:line:column: path: what is wrong; expected …; did you mean …?`
func (f Fault) Error() string {
	var b strings.Builder
	if f.File != "" {
		fmt.Fprintf(&b, "%s:%d:%d: ", f.File, f.Line, f.Column)
	}
	if f.Path != "" {
		b.WriteString(f.Path + ": ")
	}
	b.WriteString(f.Wrong)
	if f.Expected != "" {
		b.WriteString("; expected " + f.Expected)
	}
	if len(f.Near) > 0 {
		b.WriteString("; did you mean " + ticked(f.Near) + "?")
	}
	return b.String()
}

// ticked are the words as a sentence quotes them: "`a`, `b` or `c`".
func ticked(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = "`" + w + "`"
	}
	return quantity.OrList(quoted)
}

// Faults are everything wrong with a document, kind by kind.
type Faults []Fault

// Error is one line for each fault.
func (f Faults) Error() string {
	lines := make([]string, len(f))
	for i := range f {
		lines[i] = f[i].Error()
	}
	return strings.Join(lines, "\n")
}

const mostFaults = 20 // of one kind; more help nobody
