package climate

import (
	"cmp"
	"slices"

	places "tumblehome/catalogue/climate"
)

// Inputs is all that climate needs to know.
type Inputs struct {
	Asked    string         // the place as the document names it; "" if it does not
	Altitude *float64       // of the camp above the sea [m]; nil: as high as the place
	Own      []places.Place // the builder's own places; they win over the built-in ones
	Travel   []int          // months of the trips, 1 to 12; none: nobody said
}

// Result is the weather and the month that matters.
type Result struct {
	Weather
	Month   int  // the month of the trips with the coldest nights, 1 to 12
	Darkest int  // the month of the trips with the least sun
	StandIn bool // the place was not said, or is not known
	Own     bool // it is one of the builder's own

	in Inputs
}

// standIn is the place taken where none is known: an ordinary winter of the mainland, neither the mildest nor the hardest.
const standIn = "warsaw"

// Work settles the place, its height and the months.
func Work(in Inputs) Result {
	r := Result{in: in}
	place := r.place()
	height := place.Height
	if in.Altitude != nil {
		height = *in.Altitude
	}
	r.Weather = at(place, height)
	r.Month = r.least(func(m places.Month) float64 { return float64(m.Low) })
	r.Darkest = r.least(func(m places.Month) float64 { return m.Sun })
	return r
}

// place finds what was asked for among the builder's own and the built-in places, and notes which it is.
func (r *Result) place() places.Place {
	for _, p := range r.in.Own {
		if p.ID == r.in.Asked {
			r.Own = true
			return p
		}
	}
	p, known := places.Get(r.in.Asked)
	if !known {
		r.StandIn = true
		p, _ = places.Get(standIn)
	}
	return p
}

// months are those of the trips, or else all.
func (in Inputs) months() []int {
	if len(in.Travel) > 0 {
		return in.Travel
	}
	return []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
}

// least is the month of the trips in which a quantity is least, the first of equals.
func (r *Result) least(of func(places.Month) float64) int {
	return slices.MinFunc(r.in.months(), func(a, b int) int { return cmp.Compare(of(r.month(a)), of(r.month(b))) })
}
