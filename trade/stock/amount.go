package stock

import (
	"math"

	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// Amount is money with its spread, in the build's currency.
type Amount struct {
	Likely float64 // what the price tags say
	Mean   float64
	Dev    float64 // standard deviation
}

func (a Amount) times(n float64) Amount { return Amount{n * a.Likely, n * a.Mean, n * a.Dev} }

// amount reads a price as a PERT distribution. It is false for a price in a currency without a rate.
func (in *Inputs) amount(p *Price) (Amount, bool) {
	if p == nil {
		return Amount{}, false
	}
	if p.Standing == "free" {
		return Amount{}, true
	}
	rate, ok := in.rate(p.Price.Likely.Currency)
	if !ok {
		return Amount{}, false
	}
	likely, low, high := p.Price.Likely.Float(), p.Price.Low.Float(), p.Price.High.Float()
	if p.Price.Form == quantity.Bare {
		down, up := catalogue.PriceSpread(p.Standing)
		low, high = down*likely, up*likely
	}
	if p.Price.Form == quantity.Exact || p.Standing == "paid" {
		low, high = likely, likely
	}
	mean := (low + 4*likely + high) / 6
	dev := math.Sqrt(max(0, (mean-low)*(high-mean)/7))
	return Amount{likely, mean, dev}.times(rate), true
}

func (in *Inputs) rate(currency string) (float64, bool) {
	if currency == "" || currency == in.Currency {
		return 1, true
	}
	r, ok := in.Rates[currency]
	return r, ok && r > 0
}
