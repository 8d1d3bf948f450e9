package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"text/tabwriter"
	"time"

	"tumblehome/solve/sky"
	"tumblehome/solve/weather"
)

// hourlyPlaces are the hourly years that may be found; clock is hours ahead of UTC.
var hourlyPlaces = []struct {
	file            string
	lat, lon, clock float64
}{
	{"cold-sodankyla.csv", 67.37, 26.63, 2},
	{"mild-seattle-tacoma.csv", 47.47, -122.32, -8},
	{"hot-las-vegas.csv", 36.08, -115.15, -8},
	{"mild-piedmont-45n-8e.csv", 45, 8, 0},
}

const drawn = 200 // years

func drawnYears(out io.Writer, folder string) error {
	for _, p := range hourlyPlaces {
		found, err := readHourly(filepath.Join(folder, p.file))
		if os.IsNotExist(err) {
			fmt.Fprintf(out, "\n%s is not there\n", p.file)
			continue
		}
		if err != nil {
			return err
		}
		if err := compareYears(out, p.file, found, outsideYear(p.lat, p.lon, p.clock)); err != nil {
			return fmt.Errorf("%s: %w", p.file, err)
		}
	}
	return nil
}

func compareYears(out io.Writer, name string, found weather.Year, outside []float64) error {
	maker, err := weather.New(climateOf(found, outside))
	if err != nil {
		return err
	}
	begin := time.Now()
	year := weather.Year{Sunlight: make([]float64, weather.Hours), Temperature: make([]float64, weather.Hours)}
	for i := range drawn {
		maker.Fill(year, 1, uint64(i))
	}
	took := time.Since(begin)
	want := portraitOf(found, outside)
	many := make([]differences, len(want))
	for i := range drawn {
		maker.Fill(year, 1, uint64(i))
		for j, f := range portraitOf(year, outside) {
			many[j].add(f.value)
		}
	}
	fmt.Fprintf(out, "\n%s: %d years drawn in %.0f ms (goal: 800)\n", name, drawn, milliseconds(took))
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "  figure\tthe hourly year\tours, mean\tours, between years ±")
	for j, f := range want {
		m := many[j]
		mean := m.sum / m.n
		fmt.Fprintf(table, "  %s\t%.3f\t%.3f\t%.3f\n", f.name, f.value, mean, math.Sqrt(max(0, m.squares/m.n-mean*mean)))
	}
	return table.Flush()
}

// outsideYear is the light outside in every hour of 2025 by the clock of the place.
func outsideYear(lat, lon, clock float64) []float64 {
	out := make([]float64, weather.Hours)
	middle := time.Date(2025, 1, 1, 0, 30, 0, 0, time.UTC).Add(-time.Duration(clock * float64(time.Hour)))
	for h := range out {
		out[h] = sky.At(middle).Outside(lat*math.Pi/180, lon*math.Pi/180, 3600)
		middle = middle.Add(time.Hour)
	}
	return out
}

// readHourly reads month, day, hour, temperature, humidity and global irradiance from a file with one line of names.
func readHourly(name string) (y weather.Year, err error) {
	f, err := os.Open(name)
	if err != nil {
		return y, err
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return y, fmt.Errorf("%s: %w", name, err)
	}
	if len(rows) != weather.Hours+1 || len(rows[0]) < 6 {
		return y, fmt.Errorf("%s: %d lines, a year has %d and one of names", name, len(rows), weather.Hours)
	}
	for i, row := range rows[1:] {
		t, err1 := strconv.ParseFloat(row[3], 64)
		g, err2 := strconv.ParseFloat(row[5], 64)
		if err1 != nil || err2 != nil {
			return y, fmt.Errorf("%s:%d: %q and %q are not both numbers", name, i+2, row[3], row[5])
		}
		y.Temperature, y.Sunlight = append(y.Temperature, t), append(y.Sunlight, g)
	}
	return y, nil
}
