package climate

import (
	"slices"
	"sync"

	"tumblehome/quantity"
)

// A Month is the usual weather of one month.
type Month struct {
	Mean     quantity.Temperature // of all hours [°C]
	Low      quantity.Temperature // mean of each day's lowest hour [°C]
	High     quantity.Temperature // mean of each day's highest hour [°C]
	Humidity quantity.Share       // relative, mean of all hours
	Sun      float64              // irradiation on level ground [kWh/m2 in a day]
	Spread   float64              // standard deviation of the days' mean temperatures [K]
}

// A Kind is what a place stands for.
type Kind string

const (
	Station Kind = "station" // one weather station
	Region  Kind = "region"  // the mean of a part of a country
	Country Kind = "country" // the mean of a country: Nearest leaves it out
)

// A Place is where a weather holds.
type Place struct {
	ID, Name string
	Kind     Kind
	Land     string         // ISO 3166-1 alpha-2
	Lat, Lon quantity.Angle // north and east positive
	Height   float64        // above the sea [m]
	Offset   float64        // of standard time from UTC [h]
	Months   [12]Month      // January first
	Source   string         // how the figures are known
}

var all = sync.OnceValue(func() []Place { return readPlaces(placesCSV) })

// All are the places, sorted by id.
func All() []Place { return slices.Clone(all()) }

// Get finds a place by its id.
func Get(id string) (Place, bool) {
	places := all()
	if i := slices.IndexFunc(places, func(p Place) bool { return p.ID == id }); i >= 0 {
		return places[i], true
	}
	return Place{}, false
}
