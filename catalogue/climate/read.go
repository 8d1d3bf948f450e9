package climate

import (
	_ "embed"
	"encoding/csv"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

//go:embed places.csv
var placesCSV string

// readPlaces takes the table as it is embedded: a heading, then one row a place, twelve figures in each cell of a quantity. The text is
// part of the program, so a row that cannot be read is a mistake of ours; the test of the table finds it.
func readPlaces(text string) []Place {
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return nil
	}
	var places []Place
	for _, cell := range rows[1:] {
		p := Place{ID: cell[0], Kind: Kind(cell[1]), Name: cell[2], Land: cell[3], Source: cell[14],
			Lat: quantity.Angle(number(cell[4])), Lon: quantity.Angle(number(cell[5])), Height: number(cell[6]), Offset: number(cell[7])}
		mean, low, high, humidity, sun, spread := twelve(cell[8]), twelve(cell[9]), twelve(cell[10]), twelve(cell[11]), twelve(cell[12]), twelve(cell[13])
		for m := range p.Months {
			p.Months[m] = Month{Mean: quantity.Temperature(mean[m]), Low: quantity.Temperature(low[m]), High: quantity.Temperature(high[m]),
				Humidity: quantity.Share(humidity[m] / 100), Sun: sun[m], Spread: spread[m]}
		}
		if cell[9] == "" {
			britain(&p.Months)
		}
		places = append(places, p)
	}
	return places
}

func twelve(text string) (out [12]float64) {
	for i, one := range strings.Fields(text) {
		out[i%12] = number(one)
	}
	return out
}

func number(text string) float64 {
	v, _ := strconv.ParseFloat(text, 64)
	return v
}
