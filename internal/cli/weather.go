package cli

import (
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/climate"
)

type weatherCommand struct {
	File string `arg:"" help:"An hourly year: an EPW file, or the table of a typical year (CSV) of the European solar service." type:"path"`
	As   string `help:"The id that the place is to have in the document." default:"own" placeholder:"ID"`
}

// Run prints the months of a weather file as they stand in a document. One byte more is read than a file may have, so that a longer one
// is seen to be too long.
func (c weatherCommand) Run(s *streams) error {
	file, err := os.Open(c.File)
	if err != nil {
		return err
	}
	defer file.Close()
	text, err := io.ReadAll(io.LimitReader(file, climate.MostBytes+1))
	if err != nil {
		return err
	}
	year, err := climate.ReadWeather(filepath.Base(c.File), text)
	if err != nil {
		return err
	}
	if late := year.Late(); math.Abs(late) > climate.MostLate {
		fmt.Fprintf(s.err, "The sun of %s stands %+.1f h off its clock: its hours may be labelled in another zone. The months hold all the same.\n", year.File, late)
	}
	use := build.Use{Climate: c.As, Weather: map[string]build.Weather{c.As: monthsOf(year)}}
	written := build.Encode(&build.Document{Use: use}).Get("use")
	_, err = s.out.Write(tree.Write(tree.MapOf(tree.Entry{Key: "use", Value: written})))
	return err
}

// monthsOf are the months of a year as a document has them, rounded to what a thermometer tells.
func monthsOf(year *climate.Series) build.Weather {
	p := year.Place("")
	height := int(math.Round(p.Height))
	w := build.Weather{Called: p.Name, Lat: p.Lat, Lon: p.Lon, Altitude: &height, Clock: &p.Offset, Note: p.Source}
	tenth := func(t quantity.Temperature) quantity.Temperature {
		return quantity.Temperature(rounded(float64(t), 10))
	}
	for _, m := range p.Months {
		w.Mean, w.Low, w.High = append(w.Mean, tenth(m.Mean)), append(w.Low, tenth(m.Low)), append(w.High, tenth(m.High))
		w.Humidity = append(w.Humidity, quantity.Share(rounded(float64(m.Humidity), 100)))
		w.Sun, w.Spread = append(w.Sun, rounded(m.Sun, 100)), append(w.Spread, rounded(m.Spread, 10))
	}
	return w
}

// rounded is a value to a whole number of parts.
func rounded(v, parts float64) float64 { return math.Round(v*parts)/parts + 0 } // + 0 turns -0 into 0
