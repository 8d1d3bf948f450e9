package main

import (
	"encoding/csv"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"text/tabwriter"
	"time"

	"tumblehome/trade/power"
)

const yieldAnswers = "trade/power/testdata/yields.answer.json"

// yieldPlace is a place of yields.py, with the monthly yields of 1 kWp that are printed for it.
type yieldPlace struct {
	Place                        string
	Latitude, Longitude, Offset  float64
	Mean, Low, High, Spread, Sun [12]float64
	Wh, Simple                   [12]float64
}

var yieldFiles = map[string]string{"Sodankyla": "cold-sodankyla.csv", "Seattle": "mild-seattle-tacoma.csv", "Las Vegas": "hot-las-vegas.csv"}

// powerTrial prints the yield of a flat panel by drawn years beside that of hourly ones, and how long a van takes. With -hourly the hourly years in
// that folder are gone through hour by hour as well.
func powerTrial(out io.Writer, args []string) error {
	flags := flag.NewFlagSet("power", flag.ContinueOnError)
	flags.SetOutput(out)
	folder := flags.String("hourly", "", "folder of hourly years to go through")
	if err := flags.Parse(args); err != nil {
		return err
	}
	text, err := os.ReadFile(yieldAnswers)
	if err != nil {
		return fmt.Errorf("%w (trials are run from the root of the sources)", err)
	}
	var all []yieldPlace
	if err := json.Unmarshal(text, &all); err != nil {
		return fmt.Errorf("%s: %w", yieldAnswers, err)
	}
	fmt.Fprintln(out, "A flat panel of 100 W, Wh a day, by 200 drawn years beside the hourly year (numpy):")
	for _, p := range all {
		if err := p.print(out, *folder); err != nil {
			return err
		}
	}
	return nil
}

func (p *yieldPlace) print(out io.Writer, folder string) error {
	climate := power.Climate{Latitude: p.Latitude, Longitude: p.Longitude, Offset: p.Offset, Mean: p.Mean, Low: p.Low, High: p.High, Spread: p.Spread, Sun: p.Sun}
	begin := time.Now()
	sky, err := power.NewSky(climate, 200, 1)
	if err != nil {
		return err
	}
	weather := time.Since(begin)
	in := power.Inputs{Climate: climate, Years: 200, Battery: &power.Battery{Chemistry: power.Lithium, Rated: 100}, Sources: []power.Source{{Kind: power.Sun, Watts: 100, Panels: 1}},
		Sky: func(power.Climate, int, uint64) (*power.Sky, error) { return sky, nil }}
	begin = time.Now()
	r := power.Work(in)
	fmt.Fprintf(out, "%s: weather %d ms, one van %d ms\n", p.Place, weather.Milliseconds(), time.Since(begin).Milliseconds())
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(table, "month\thourly\tdrawn\toff by\t")
	for m := range 12 {
		fmt.Fprintf(table, "%d\t%.1f\t%.1f\t%+.1f %%\t\n", m+1, p.Wh[m], r.Months[m].Yield, 100*(r.Months[m].Yield/math.Max(p.Wh[m], 1e-9)-1))
	}
	if err := table.Flush(); err != nil || folder == "" {
		return err
	}
	return p.through(out, filepath.Join(folder, yieldFiles[p.Place]))
}

// through goes through the hourly year as the simple model of the printed table does: no glass, losses 14.08 %, cells by NOCT 47.
func (p *yieldPlace) through(out io.Writer, file string) error {
	f, err := os.Open(file)
	if err != nil {
		fmt.Fprintf(out, "  %v: left out\n", err)
		return nil
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	panel := power.Source{Kind: power.Sun, Watts: 1000, Panels: 1}
	scale := 0.8592 / panel.Kept()
	var sums [12]float64
	for i, row := range rows[1:] {
		month, err1 := strconv.Atoi(row[0])
		air, err2 := strconv.ParseFloat(row[3], 64)
		light, err3 := strconv.ParseFloat(row[5], 64)
		if err1 != nil || err2 != nil || err3 != nil || month < 1 || month > 12 {
			return fmt.Errorf("%s:%d: not an hour: %q", file, i+2, row)
		}
		sums[month-1] += scale * panel.Output(light, air) / 1000
	}
	worst := 0.0
	for m, sum := range sums {
		worst = math.Max(worst, math.Abs(sum-p.Simple[m]))
	}
	fmt.Fprintf(out, "  hour by hour, 1 kWp without glass: off by %.3f kWh a month at most from the printed table\n", worst)
	return nil
}
