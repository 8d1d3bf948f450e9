package reckon

import (
	"tumblehome/build"
	"tumblehome/trade/cost"
	"tumblehome/trade/stock"
)

// workCost adds up what was paid and what is to come.
func (m *Machine) workCost(w *stages, bought stock.Result) (cost.Result, Digest) {
	b := w.doc.Build
	in := cost.Inputs{Currency: b.Currency, Rates: b.Rates, Budget: b.Budget, Contingency: valueOf(b.Contingency)}
	for _, l := range bought.Lines {
		in.Items = append(in.Items, costItem(l))
	}
	for _, id := range build.SortedKeys(w.doc.Spending) {
		s := w.doc.Spending[id]
		in.Spending = append(in.Spending, cost.Spent{ID: id, Date: s.Date, Paid: s.Paid, What: s.What, On: s.On, Sudden: bool(valueOf(s.Sudden))})
	}
	return work(m, "cost", 1, cost.Work, in)
}

func costItem(l stock.Line) cost.Item {
	item := cost.Item{What: l.Of, Row: l.Plan.Row, Plan: cost.Amount(l.Plan.Cost), ToCome: cost.Amount(l.Buy.Cost)}
	if len(l.Pointers) > 0 {
		item.Pointer = l.Pointers[0]
	}
	return item
}
