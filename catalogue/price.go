package catalogue

import (
	"strconv"

	"tumblehome/quantity"
)

// UnitMass is the mass of one unit of a row with its spread. It is false where
// the mass is not known. A mass by the metre or square metre is taken for the
// stock size, where there is one.
func (c *Catalogue) UnitMass(id string) (quantity.Spread[quantity.Mass], bool) {
	r, ok := c.Row(id)
	kg := unitMass(r)
	if !ok || kg == 0 {
		return quantity.Spread[quantity.Mass]{}, false
	}
	return quantity.About(quantity.Mass(kg)).WithDefault(MassSpread(id, r)), true
}

// unitMass is in kg, 0 where it is not known.
func unitMass(r Row) float64 {
	long, wide := value(r.Long).Float()/1000, value(r.Wide).Float()/1000
	switch {
	case r.Mass == nil:
		return long * wide * value(r.Thick).Float() / 1000 * value(r.Density).Float()
	case r.Mass.Per == quantity.Metre:
		return r.Mass.Amount * long
	case r.Mass.Per == quantity.SquareMetre:
		return r.Mass.Amount * long * wide
	}
	return r.Mass.Amount
}

// Price is what one unit of a row costs with tax, as a guess with its spread,
// in this currency ("" stands for the build's own in an own row). The built-in
// table knows GBP and EUR; the euro figures are the pound figures times 1.17.
// It is false where no price is known in this currency.
func (c *Catalogue) Price(id, currency string) (quantity.Spread[quantity.Money], bool) {
	if r, _ := c.Row(id); r.Price != nil {
		own := r.Price.Currency == "" || r.Price.Currency == currency
		return guessed(r.Price.Float(), r.Price.Currency), own
	}
	for c.base != nil {
		c = c.base
	}
	rough, ok := c.prices[id]
	switch currency {
	case "GBP":
		return guessed(rough.gbp, currency), ok
	case "EUR":
		return guessed(rough.eur, currency), ok
	}
	return quantity.Spread[quantity.Money]{}, false
}

// guessed is a price from memory between its least and its most.
func guessed(amount float64, currency string) quantity.Spread[quantity.Money] {
	low, high := PriceSpread("guess")
	return quantity.Between(money(low*amount, currency), money(amount, currency), money(high*amount, currency))
}

// money is an amount to the cent.
func money(amount float64, currency string) quantity.Money {
	m, err := quantity.ParseMoney(strconv.FormatFloat(amount, 'f', 2, 64))
	if err != nil {
		return quantity.Money{Currency: currency} // beyond a million million
	}
	m.Currency = currency
	return m
}
