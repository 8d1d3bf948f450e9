package cost

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/quantity"
)

// z80 is the 80 % quantile of the standard normal distribution.
const z80 = 0.8416212335729143

// Result is what the build costs.
type Result struct {
	Planned  Amount         // all that is in the plan
	Paid     quantity.Money // for the conversion, less what came back
	Vehicle  quantity.Money // for the van itself
	Sudden   quantity.Money // of Paid, what nobody planned
	ToCome   Amount         // neither fitted nor paid for
	Forecast Amount         // Paid and ToCome
	in       Inputs
	items    []Item
	book     ledger
	budget   float64 // 0: none
}

// Work adds up the build. Equal inputs give equal results.
func Work(in Inputs) Result {
	r := Result{in: in, book: in.ledger(), items: slices.Clone(in.Items)}
	slices.SortStableFunc(r.items, func(a, b Item) int {
		return cmp.Or(cmp.Compare(a.Pointer, b.Pointer), cmp.Compare(a.What, b.What))
	})
	r.Paid, r.Vehicle, r.Sudden = sum(r.book.conversion), sum(r.book.vehicle), sum(r.book.sudden)
	r.Planned = total(r.items, func(i Item) Amount { return i.Plan })
	r.ToCome = total(r.items, func(i Item) Amount { return i.ToCome })
	paid := r.Paid.Float()
	r.Forecast = Amount{Likely: paid + r.ToCome.Likely, Mean: paid + r.ToCome.Mean, Dev: r.ToCome.Dev}
	if in.Budget != nil {
		own, _ := in.own(*in.Budget)
		r.budget = quantity.Money{Amount: own}.Float()
	}
	return r
}

// total adds amounts: deviations within a row, squares between rows.
func total(items []Item, pick func(Item) Amount) Amount {
	var sum Amount
	var rows []string
	dev := map[string]float64{}
	for _, i := range items {
		a := pick(i)
		sum.Likely += a.Likely
		sum.Mean += a.Mean
		if i.Row == "" {
			sum.Dev += a.Dev * a.Dev
			continue
		}
		if _, known := dev[i.Row]; !known {
			rows = append(rows, i.Row)
		}
		dev[i.Row] += a.Dev
	}
	for _, row := range rows {
		sum.Dev += dev[row] * dev[row]
	}
	sum.Dev = math.Sqrt(sum.Dev)
	return sum
}

// P80 is the amount that is passed one time in five.
func (a Amount) P80() float64 { return a.Mean + z80*a.Dev }
