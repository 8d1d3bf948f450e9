package reckon

import (
	"slices"
	"strings"

	"tumblehome/trade/cables"
	"tumblehome/trade/climate"
	"tumblehome/trade/cost"
	"tumblehome/trade/finding"
	"tumblehome/trade/fit"
	"tumblehome/trade/lining"
	"tumblehome/trade/power"
	"tumblehome/trade/runs"
	"tumblehome/trade/shell"
	"tumblehome/trade/stock"
	"tumblehome/trade/trips"
	"tumblehome/trade/warmth"
	"tumblehome/trade/weight"
)

// explanations are those of all trades, by code.
var explanations = sortedExplanations(shell.Explanations(), lining.Explanations(), climate.Explanations, trips.Explanations, fit.Explanations, runs.Explanations, warmth.Explanations, power.Explanations, cables.Explanations, weight.Explanations, stock.Explanations, cost.Explanations)

func sortedExplanations(trades ...[]finding.Explanation) []finding.Explanation {
	all := slices.Concat(trades...)
	slices.SortFunc(all, func(a, b finding.Explanation) int { return strings.Compare(a.Code, b.Code) })
	return all
}

// Explain says what a finding's code means in general.
func Explain(code string) (finding.Explanation, bool) {
	i, ok := slices.BinarySearchFunc(explanations, code, func(e finding.Explanation, code string) int { return strings.Compare(e.Code, code) })
	if !ok {
		return finding.Explanation{}, false
	}
	return explanations[i], true
}

// Codes lists the codes of all findings there can be.
func Codes() []string {
	codes := make([]string, len(explanations))
	for i, e := range explanations {
		codes[i] = e.Code
	}
	return codes
}
