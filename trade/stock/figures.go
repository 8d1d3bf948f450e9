package stock

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const buyCode = "stock.buy."

// Figures says how many packs of each row there are to buy, by code.
func (r Result) Figures() []working.Figure {
	packs := map[string]float64{}
	each := map[string]string{}
	for _, l := range r.Lines {
		if l.Buy.Packs > 0 && l.Buy.Row != "" {
			packs[l.Buy.Row] += float64(l.Buy.Packs)
			each[l.Buy.Row] = l.Buy.Each
		}
	}
	var out []working.Figure
	for row, n := range packs {
		out = append(out, working.Figure{
			Code: buyCode + row, Value: n, Unit: "1", Label: "To buy: " + row, State: working.Current, Words: each[row],
		})
	}
	slices.SortFunc(out, func(a, b working.Figure) int { return cmp.Compare(a.Code, b.Code) })
	return out
}

var packing = finding.Source{Text: "whole packs by area or length with waste; waste shares are trade practice", Sure: finding.Practice}

// Working shows how many packs of a row there are to buy, and why.
func (r Result) Working(code string) (working.Working, bool) {
	row, ok := strings.CutPrefix(code, buyCode)
	if !ok || row == "" {
		return working.Working{}, false
	}
	w := working.Working{
		Code: code, Label: "To buy: " + row, Formula: "n = ⌈(net − in hand)·(1 + waste)/holds⌉", Source: packing,
		Notes: []string{"By area and length only: a cutting plan may need one more, above all for large panels."},
	}
	var total int
	for _, l := range r.Lines {
		if l.Buy.Row == row && l.Buy.Packs > 0 {
			w.Lines = append(w.Lines, l.show()...)
			total += l.Buy.Packs
		}
	}
	w.Lines = append(w.Lines, working.Line{Symbol: "Σ n", Label: "in all", Value: float64(total), Unit: "1", From: working.Origin{Here: true}})
	return w, total > 0
}

// show lists the steps of one line.
func (l Line) show() []working.Line {
	row, p := working.Origin{Row: l.Buy.Row}, l.Buy
	shelf := working.Origin{Pointer: "/stock"}
	if p.InHand == 0 {
		shelf = working.Origin{Assumption: "none of it is written down in the workshop"}
	}
	return []working.Line{
		{Symbol: "net", Label: "still needed: " + l.Of, Value: p.Net, Unit: l.Unit, From: working.Origin{Pointer: l.Pointers[0]}},
		{Symbol: "in hand", Label: "in the workshop", Value: p.InHand, Unit: l.Unit, From: shelf},
		{Symbol: "waste", Label: "added for waste", Value: 100 * p.Waste.Float(), Unit: "%", From: row},
		{Symbol: "holds", Label: "in one " + p.Each, Value: p.Holds, Unit: l.Unit, From: row},
		{
			Symbol: "n", Label: "to buy", Value: float64(p.Packs), Unit: "1", From: working.Origin{Here: true},
			Sum: fmt.Sprintf("⌈(%.2f − %.2f) × %.2f / %.2f⌉", p.Net, p.InHand, 1+p.Waste.Float(), p.Holds),
		},
	}
}

// Findings lists what the builder should know.
func (r Result) Findings() []finding.Finding {
	var about, names []string
	for _, l := range r.Lines {
		if l.Unpriced {
			about = append(about, l.Pointers[0])
			names = append(names, l.Of)
		}
	}
	if len(names) == 0 {
		return nil
	}
	return []finding.Finding{{
		Code: "stock.unpriced", Severity: finding.Note, About: about,
		Title:    fmt.Sprintf("%d things have no price yet", len(names)),
		Words:    "They count as nothing in the cost: " + strings.Join(names, ", ") + ".",
		Measured: &finding.Measure{Value: float64(len(names)), Unit: "1"},
		Source:   finding.Source{Text: "habit of keeping a budget: no item without a price", Sure: finding.Practice},
	}}
}

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{{
	Code: "stock.unpriced", Meaning: "Something in the build has no price, neither in the document nor in the catalogue.",
	Why: "It counts as nothing, so the forecast is too low.", Clear: "Write a guess under prices; a guess is better than nothing.",
}}
