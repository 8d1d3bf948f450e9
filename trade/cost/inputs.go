package cost

import "tumblehome/quantity"

// Inputs is all that cost needs to know. Amounts of money are in the build's currency unless they name another.
type Inputs struct {
	Currency    string
	Rates       map[string]float64 // one unit of another currency in the build's
	Budget      *quantity.Money    // nil: none was set
	Contingency quantity.Share     // of the budget, kept for the unforeseen
	Items       []Item
	Spending    []Spent
}

// Item is something that is in the plan.
type Item struct {
	Pointer string // JSON Pointer of what it is for
	What    string // material, row or name
	Row     string // items of one row share one error of their price; "" shares with nobody
	Plan    Amount // for all of it, as if nothing had been bought
	ToCome  Amount // for what is neither fitted nor paid for
}

// Amount is money with its spread, in the build's currency.
type Amount struct {
	Likely float64 // what the price tags say
	Mean   float64
	Dev    float64 // standard deviation
}

// Spent is money paid, or received if negative.
type Spent struct {
	ID     string
	Date   quantity.Date
	Paid   quantity.Money
	What   string // plain words; "" for none
	On     string // vehicle, or else it counts as conversion
	Sudden bool   // nobody planned it
}
