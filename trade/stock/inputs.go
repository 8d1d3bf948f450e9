package stock

import (
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// Inputs is all that stock needs to know.
type Inputs struct {
	Currency string
	Rates    map[string]float64 // one unit of another currency in the build's
	Needs    []takeoff.Line     // net quantities; those of no material are not bought by measure
	Offers   []Offer
	Things   []Thing
	InHand   []InHand
	Settled  []string // JSON Pointers of what has been paid for
}

// Offer is one stock size that a material can be bought in.
type Offer struct {
	Of    string         // the material as the lines name it; a row is an offer of itself as well
	Row   string         // catalogue row
	Each  string         // what one price buys: sheet, roll, box
	Holds float64        // net quantity of one, in Unit
	Unit  string         // m2, m, piece, l
	Waste quantity.Share // added to the net need before rounding up
	Price *Price         // nil: nobody knows
}

// Price is what one costs, and how far that can be trusted.
type Price struct {
	Price    quantity.Spread[quantity.Money]
	Standing string // guess, quote, paid or free
	Pointer  string // where the document says so; "" for the catalogue's own
}

// Thing is bought, made or found as a whole: its price covers all that it is made of.
type Thing struct {
	Pointer string
	Row     string // "" for none
	Price   *Price // nil: nobody knows
	Fitted  bool
	Found   bool // given: it costs nothing
}

// InHand is what lies in the workshop.
type InHand struct {
	Row  string
	Have float64 // how many
}
