package reckon

import (
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Reckoning is everything that follows from one document on one day. It never changes once made.
type Reckoning struct {
	Document *build.Document
	Today    quantity.Date
	Figures  []working.Figure  // sorted by code
	Findings []finding.Finding // gravest first

	Results
	explain []explainer
	written func() *tree.Node // the document as it is written, worked out when first asked for
}

// Written is the document as a tree, as it is written. It must not be changed.
func (r *Reckoning) Written() *tree.Node { return r.written() }

type (
	figure = working.Figure
	note   = finding.Finding
)

// explainer shows how one of its figures came about.
type explainer interface {
	Working(code string) (working.Working, bool)
}

// Figure finds a figure by its code.
func (r *Reckoning) Figure(code string) (working.Figure, bool) {
	i, ok := slices.BinarySearchFunc(r.Figures, code, func(f working.Figure, code string) int {
		return strings.Compare(f.Code, code)
	})
	if !ok {
		return working.Figure{}, false
	}
	return r.Figures[i], true
}

// Working shows how a figure came about.
func (r *Reckoning) Working(code string) (working.Working, bool) {
	for _, e := range r.explain {
		if w, ok := e.Working(code); ok {
			return w, true
		}
	}
	return working.Working{}, false
}

// trade is what every trade's result can say.
type trade interface {
	explainer
	Figures() []working.Figure
	Findings() []finding.Finding
}

// take adds what a trade found.
func (r *Reckoning) take(t trade) {
	r.Figures = append(r.Figures, t.Figures()...)
	r.Findings = append(r.Findings, t.Findings()...)
	r.explain = append(r.explain, t)
}

// settle brings figures and findings into their order and marks what the builder has accepted.
func (r *Reckoning) settle() {
	slices.SortStableFunc(r.Figures, func(a, b working.Figure) int { return strings.Compare(a.Code, b.Code) })
	for i := range r.Findings {
		r.Findings[i].Accepted = accepted(r.Document, r.Findings[i])
	}
	finding.Sort(r.Findings)
}

// accepted returns why the builder lives with a finding, or "". An acceptance names a code and, where it is about one thing, that thing; what has
// grown worse since is not accepted.
func accepted(doc *build.Document, f finding.Finding) string {
	for _, id := range build.SortedKeys(doc.Accepted) {
		a := doc.Accepted[id]
		if a.Finding != f.Code && !strings.HasPrefix(f.Code, a.Finding+".") {
			continue
		}
		if f.Severity > worst(a) {
			continue
		}
		if a.About == "" || slices.Contains(f.About, "/"+strings.ReplaceAll(a.About, ".", "/")) {
			return a.Why
		}
	}
	return ""
}

// worst is how bad a finding may be that somebody said they live with.
func worst(a build.Accepted) finding.Severity {
	for _, s := range []finding.Severity{finding.Note, finding.Fault, finding.Danger} {
		if a.As == s.String() {
			return s
		}
	}
	return finding.Close
}
