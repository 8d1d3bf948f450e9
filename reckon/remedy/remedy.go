// Package remedy answers: would that really help, and what else would it change?
//
// A finding's proposal is only a patch that somebody thought might clear it. Try applies it to the document, works everything out again
// and says whether the finding is gone, which figures moved and which findings came instead. Nothing is saved.
package remedy

import (
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// Tried is a proposal and what came of it.
type Tried struct {
	finding.Proposal
	Clears bool              // the finding is gone and nothing as bad came instead; a fault that came instead of a danger is told in the words
	Eases  bool              // it is still there, but less grave
	Moves  []reckon.Change   // the figures that moved
	Brings []finding.Finding // findings that were not there before
}

// Worker tries proposals on one reckoning.
type Worker struct {
	Reckon func(*build.Document, quantity.Date) *reckon.Reckoning // (*reckon.Machine).Reckon
	Rows   build.RowSource
	Today  quantity.Date
}

// Try tries every proposal of a finding, in order. A proposal that makes no sound document is left out.
func (w Worker) Try(r *reckon.Reckoning, f finding.Finding) []Tried {
	var out []Tried
	for _, p := range f.Proposals {
		if t, ok := w.try(r, f, p); ok {
			out = append(out, t)
		}
	}
	return out
}

func (w Worker) try(r *reckon.Reckoning, f finding.Finding, p finding.Proposal) (Tried, bool) {
	patch, err := tree.ParsePatch(p.Patch)
	if err != nil {
		return Tried{}, false
	}
	doc, err := build.Apply(r.Document, patch, w.Rows)
	if err != nil {
		return Tried{}, false
	}
	after := w.Reckon(doc, w.Today)
	difference := reckon.Compare(r, after)
	left, still := find(after.Findings, f)
	t := Tried{Proposal: p, Moves: difference.Changes, Brings: difference.Appeared}
	t.Brings = slices.DeleteFunc(t.Brings, func(g finding.Finding) bool { return still && g.Key() == left.Key() })
	worse := slices.ContainsFunc(t.Brings, func(g finding.Finding) bool { return g.Severity >= f.Severity })
	t.Clears = !still && !worse
	t.Eases = still && left.Severity < f.Severity && !worse
	if harm := slices.IndexFunc(t.Brings, func(g finding.Finding) bool { return g.Severity >= finding.Fault }); harm >= 0 && !worse {
		t.Words += "; then: " + t.Brings[harm].Title
	}
	return t, true
}

// find looks for the same finding, perhaps less grave, in another reckoning.
func find(all []finding.Finding, f finding.Finding) (finding.Finding, bool) {
	i := slices.IndexFunc(all, func(g finding.Finding) bool { return g.Key() == f.Key() && g.Mode == f.Mode })
	if i < 0 {
		return finding.Finding{}, false
	}
	return all[i], true
}
