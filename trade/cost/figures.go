package cost

import (
	"fmt"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Figures lists every figure, by code.
func (r Result) Figures() []working.Figure {
	var out []working.Figure
	for _, e := range r.entries() {
		out = append(out, e.figure)
	}
	return out
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	for _, e := range r.entries() {
		if e.figure.Code == code {
			w := e.show()
			w.Code, w.Label = code, e.figure.Label
			return w, true
		}
	}
	return working.Working{}, false
}

// shown is a figure and how to show it.
type shown struct {
	figure working.Figure
	show   func() working.Working
}

// entries makes all figures, sorted by code.
func (r Result) entries() []shown {
	var out []shown
	put := func(f working.Figure, show func() working.Working) {
		f.Unit, f.State = r.in.Currency, working.Current
		out = append(out, shown{f, show})
	}
	spread := func(f working.Figure, a Amount) working.Figure {
		p50, p80 := a.Mean, a.P80()
		f.Value, f.P50, f.P80 = a.Mean, &p50, &p80
		return f
	}
	if r.budget > 0 {
		put(working.Figure{Code: "cost.contingency-left", Value: r.contingencyLeft(), Label: "Left of the contingency", Words: "kept for what nobody planned"}, r.showContingency)
	}
	forecast := spread(working.Figure{Code: "cost.forecast", Label: "The conversion will cost", Words: "paid and to come"}, r.Forecast)
	if r.budget > 0 {
		forecast.Limit = &r.budget
	}
	put(forecast, r.showForecast)
	if r.budget > 0 {
		put(working.Figure{Code: "cost.left", Value: r.budget - r.Forecast.Mean, Label: "Left of the budget in the end"}, r.showLeft)
	}
	put(working.Figure{Code: "cost.paid", Value: r.Paid.Float(), Label: "Paid for the conversion", Words: "less what came back"},
		func() working.Working { return showSpending(r.book.conversion, r.Paid.Float(), r.in.Currency) })
	put(working.Figure{Code: "cost.paid-vehicle", Value: r.Vehicle.Float(), Label: "Paid for the van itself"},
		func() working.Working { return showSpending(r.book.vehicle, r.Vehicle.Float(), r.in.Currency) })
	put(working.Figure{Code: "cost.planned", Value: r.Planned.Likely, Label: "All that is planned, at the best-known prices", Words: "as if nothing had been bought"}, r.showPlanned)
	put(spread(working.Figure{Code: "cost.to-come", Label: "Still to buy"}, r.ToCome), r.showToCome)
	return out
}

func (r *Result) contingency() float64 { return r.budget * r.in.Contingency.Float() }

func (r *Result) contingencyLeft() float64 { return r.contingency() - r.Sudden.Float() }

var adding = finding.Source{Text: "sums of the builder's own entries and prices", Sure: finding.Computed}

func here() working.Origin { return working.Origin{Here: true} }

func of(code string) working.Origin { return working.Origin{Figure: code} }

// showSpending lists entries by date.
func showSpending(entries []entry, total float64, currency string) working.Working {
	w := working.Working{Formula: "Σ paid", Source: adding}
	for _, e := range entries {
		label := e.What
		if label == "" {
			label = e.ID
		}
		w.Lines = append(w.Lines, working.Line{
			Label: e.Date.String() + " " + label, Value: e.value(), Unit: currency,
			From: working.Origin{Pointer: "/spending/" + e.ID},
		})
	}
	w.Lines = append(w.Lines, working.Line{Label: "in all", Value: total, Unit: currency, From: here()})
	return w
}

// showItems lists what is not nought.
func (r *Result) showItems(pick func(Item) Amount, value func(Amount) float64) working.Working {
	w := working.Working{Formula: "Σ price", Source: adding}
	var total float64
	for _, i := range r.items {
		v := value(pick(i))
		if v == 0 {
			continue
		}
		total += v
		w.Lines = append(w.Lines, working.Line{Label: i.What, Value: v, Unit: r.in.Currency, From: working.Origin{Pointer: i.Pointer}})
	}
	w.Lines = append(w.Lines, working.Line{Label: "in all", Value: total, Unit: r.in.Currency, From: here()})
	return w
}

func (r Result) showPlanned() working.Working {
	return r.showItems(func(i Item) Amount { return i.Plan }, func(a Amount) float64 { return a.Likely })
}

func (r Result) showToCome() working.Working {
	w := r.showItems(func(i Item) Amount { return i.ToCome }, func(a Amount) float64 { return a.Mean })
	w.Notes = append(w.Notes,
		"Each price stands with its mean: a guess may turn out 30 % lower or 50 % higher, so its mean lies a little above the tag; a quote 5 % either way.",
		fmt.Sprintf("One in five it passes %.0f: %.0f as a standard deviation.", r.ToCome.P80(), r.ToCome.Dev))
	return w
}

func (r Result) showForecast() working.Working {
	return working.Working{
		Formula: "paid + to come", Source: adding,
		Lines: []working.Line{
			{Label: "paid", Value: r.Paid.Float(), Unit: r.in.Currency, From: of("cost.paid")},
			{Label: "still to buy", Value: r.ToCome.Mean, Unit: r.in.Currency, From: of("cost.to-come")},
			{Label: "the conversion will cost", Value: r.Forecast.Mean, Unit: r.in.Currency, From: here()},
		},
	}
}

func (r Result) showLeft() working.Working {
	return working.Working{
		Formula: "budget − forecast", Source: adding,
		Lines: []working.Line{
			{Label: "budget", Value: r.budget, Unit: r.in.Currency, From: working.Origin{Pointer: "/build/budget"}},
			{Label: "forecast", Value: r.Forecast.Mean, Unit: r.in.Currency, From: of("cost.forecast")},
			{Label: "left", Value: r.budget - r.Forecast.Mean, Unit: r.in.Currency, From: here()},
		},
	}
}

func (r Result) showContingency() working.Working {
	w := working.Working{
		Formula: "budget · share − Σ sudden", Source: budgeting,
		Lines: []working.Line{
			{Label: "budget", Value: r.budget, Unit: r.in.Currency, From: working.Origin{Pointer: "/build/budget"}},
			{Label: "share kept back", Value: 100 * r.in.Contingency.Float(), Unit: "%", From: working.Origin{Pointer: "/build/contingency"}},
			{Label: "kept back", Value: r.contingency(), Unit: r.in.Currency, From: here()},
		},
	}
	for _, l := range showSpending(r.book.sudden, 0, r.in.Currency).Lines[:len(r.book.sudden)] {
		l.Label, l.Value = "less "+l.Label, -l.Value
		w.Lines = append(w.Lines, l)
	}
	w.Lines = append(w.Lines, working.Line{Label: "left", Value: r.contingencyLeft(), Unit: r.in.Currency, From: here()})
	return w
}
