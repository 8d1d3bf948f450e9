package cost

import (
	"slices"
	"strings"

	"github.com/govalues/decimal"

	"tumblehome/quantity"
)

// entry is one item of spending in the build's currency.
type entry struct {
	Spent
	amount decimal.Decimal
}

// ledger is the spending in order of date, then id.
type ledger struct {
	conversion, vehicle, sudden []entry
	foreign                     []Spent // in a currency without a rate: not counted
}

func (in *Inputs) ledger() ledger {
	var l ledger
	all := slices.Clone(in.Spending)
	slices.SortStableFunc(all, func(a, b Spent) int {
		if c := a.Date.Compare(b.Date); c != 0 {
			return c
		}
		return strings.Compare(a.ID, b.ID)
	})
	for _, s := range all {
		amount, ok := in.own(s.Paid)
		switch e := (entry{s, amount}); {
		case !ok:
			l.foreign = append(l.foreign, s)
		case s.On == "vehicle":
			l.vehicle = append(l.vehicle, e)
		default:
			l.conversion = append(l.conversion, e)
			if s.Sudden {
				l.sudden = append(l.sudden, e)
			}
		}
	}
	return l
}

// own is an amount in the build's currency, to the penny. It is false for a currency without a rate.
func (in *Inputs) own(m quantity.Money) (decimal.Decimal, bool) {
	if m.Currency == "" || m.Currency == in.Currency {
		return m.Amount, true
	}
	rate, err := decimal.NewFromFloat64(in.Rates[m.Currency])
	if err != nil || !rate.IsPos() {
		return decimal.Decimal{}, false
	}
	out, err := m.Amount.Mul(rate)
	return out.Round(2), err == nil
}

// sum is exact to the penny. A sum beyond seventeen digits stays where it was.
func sum(entries []entry) quantity.Money {
	var total decimal.Decimal
	for _, e := range entries {
		if next, err := total.Add(e.amount); err == nil {
			total = next
		}
	}
	return quantity.Money{Amount: total}
}

func (e entry) value() float64 { return quantity.Money{Amount: e.amount}.Float() }
