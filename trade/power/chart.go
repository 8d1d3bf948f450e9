package power

// Chart is the risk of a flat night over batteries and panels of many sizes, at the same weather and the same trips.
type Chart struct {
	AmpHours []float64   // of the columns
	Watts    []float64   // of the rows
	Share    [][]float64 // of nights that are flat, by row and column
	Error    float64     // largest standard error of a share
	Promise  float64
	Kit      *Kit // cheapest of the catalogue that keeps the promise; nil if none does
}

// Kit is a battery and panels to buy.
type Kit struct {
	Battery, Panel    Offer
	Batteries, Panels int
	Price, Share      float64
}

// Draw works a chart out. progress, if not nil, is told how far it is.
func Draw(in Inputs, years int, progress func(done, of int)) Chart { return Chart{} }
