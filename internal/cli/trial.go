package cli

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

// attempt works a document out, and is ready to try what is proposed for it: nobody is advised to do what does not help.
func attempt(doc *build.Document, day quantity.Date) (*reckon.Reckoning, remedy.Worker) {
	machine := reckon.NewMachine()
	return machine.Reckon(doc, day), remedy.Worker{Reckon: machine.Reckon, Rows: catalogue.Builtin(), Today: day}
}

// attempt reads the document, works it out, and is ready to try what is proposed for it.
func (s source) attempt() (*reckon.Reckoning, remedy.Worker, error) {
	doc, err := s.load()
	if err != nil {
		return nil, remedy.Worker{}, err
	}
	day, err := s.day()
	if err != nil {
		return nil, remedy.Worker{}, err
	}
	r, worker := attempt(doc, day)
	return r, worker, nil
}

// mostTried is how many proposals a check tries, those for the gravest findings first: each is a reckoning of its own.
const mostTried = 40

// tries is how many proposals may still be tried.
type tries int

// of tries what is proposed for a finding, if as many may still be tried.
func (n *tries) of(worker remedy.Worker, r *reckon.Reckoning, f finding.Finding) ([]remedy.Tried, bool) {
	if len(f.Proposals) == 0 {
		return nil, true
	}
	if *n -= tries(len(f.Proposals)); *n < 0 {
		return nil, false
	}
	return worker.Try(r, f), true
}

// helping are the proposals of a finding that clear it or make it less grave.
func helping(tried []remedy.Tried) []finding.Proposal {
	var out []finding.Proposal
	for _, t := range tried {
		if t.Clears || t.Eases {
			out = append(out, t.Proposal)
		}
	}
	return out
}

// writeTried writes what came of each proposal, what helps most first.
func writeTried(text *strings.Builder, tried []remedy.Tried) {
	help := func(t remedy.Tried) int {
		switch {
		case t.Clears:
			return 2
		case t.Eases:
			return 1
		}
		return 0
	}
	tried = slices.Clone(tried)
	slices.SortStableFunc(tried, func(a, b remedy.Tried) int { return help(b) - help(a) })
	for _, t := range tried {
		switch {
		case t.Clears:
			fmt.Fprintf(text, "          clears it: %s\n", t.Words)
		case t.Eases:
			fmt.Fprintf(text, "          eases it: %s\n", t.Words)
		case len(t.Brings) > 0:
			fmt.Fprintf(text, "          tried in vain: %s; then: %s\n", t.Words, t.Brings[0].Title)
		default:
			fmt.Fprintf(text, "          tried in vain: %s\n", t.Words)
		}
	}
}
