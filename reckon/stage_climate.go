package reckon

import (
	"cmp"
	"math"

	"tumblehome/build"
	places "tumblehome/catalogue/climate"
	"tumblehome/trade/climate"
	"tumblehome/trade/trips"
)

// workClimate settles the weather that the trips meet.
func (m *Machine) workClimate(doc *build.Document, journeys trips.Result) (climate.Result, Digest) {
	in := climate.Inputs{Asked: doc.Use.Climate}
	if doc.Use.Altitude != nil {
		height := float64(*doc.Use.Altitude)
		in.Altitude = &height
	}
	for _, id := range build.SortedKeys(doc.Use.Weather) {
		in.Own = append(in.Own, ownPlace(id, doc.Use.Weather[id]))
	}
	for month, nights := range journeys.Nights {
		if nights > 0 {
			in.Travel = append(in.Travel, month+1)
		}
	}
	return work(m, "climate", 1, climate.Work, in)
}

// usualSpread is taken where an own weather does not say how far days stray from their month [K]: between the coasts and the inland
// of Europe; common practice, no source.
const usualSpread = 3

// ownPlace is a place of the document's own; its lists have been held to twelve. Standard time is that of the nearest full hour, where it is not said.
func ownPlace(id string, w build.Weather) places.Place {
	p := places.Place{ID: id, Name: cmp.Or(w.Called, id), Kind: places.Station, Lat: w.Lat, Lon: w.Lon, Height: float64(valueOf(w.Altitude)),
		Offset: math.Round(float64(w.Lon) / 15), Source: "the builder's own"}
	if w.Clock != nil {
		p.Offset = *w.Clock
	}
	for m := range p.Months {
		p.Months[m] = places.Month{Mean: w.Mean[m], Low: w.Low[m], High: w.High[m], Humidity: w.Humidity[m], Sun: w.Sun[m], Spread: usualSpread}
		if len(w.Spread) > 0 {
			p.Months[m].Spread = w.Spread[m]
		}
	}
	return p
}
