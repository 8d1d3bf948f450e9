package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"time"

	"tumblehome/solve/sky"
)

const skyAnswers = "solve/sky/testdata/positions.answer.json"

// skyTrial prints how far our sun is from ephem's, then, where hourly years are found in the folder named by -hourly,
// the statistics of drawn years beside them.
func skyTrial(out io.Writer, args []string) error {
	flags := flag.NewFlagSet("sky", flag.ContinueOnError)
	flags.SetOutput(out)
	folder := flags.String("hourly", "", "folder of hourly years to compare drawn years with")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("sky takes no word but -hourly folder, not %q", flags.Args())
	}
	if err := printSun(out); err != nil {
		return err
	}
	if *folder == "" {
		fmt.Fprintln(out, "\nNo folder of hourly years is named by -hourly: drawn years are not compared.")
		return nil
	}
	return drawnYears(out, *folder)
}

func printSun(out io.Writer) error {
	text, err := os.ReadFile(skyAnswers)
	if err != nil {
		return fmt.Errorf("%w (trials are run from the root of the sources)", err)
	}
	var others struct{ Positions, Days [][6]float64 }
	if err := json.Unmarshal(text, &others); err != nil {
		return fmt.Errorf("%s: %w", skyAnswers, err)
	}
	fmt.Fprintf(out, "The sun beside PyEphem 4.1.4: %d positions, %d days\n", len(others.Positions), len(others.Days))
	var high, round differences
	begin := time.Now()
	for _, p := range others.Positions {
		at := sky.At(time.Unix(int64(p[0]), 0)).From(p[1]*math.Pi/180, p[2]*math.Pi/180)
		high.add(at.Elevation*180/math.Pi - p[3])
		round.add(math.Remainder(at.Azimuth*180/math.Pi-p[4], 360) * math.Cos(at.Elevation))
	}
	each := time.Since(begin) / time.Duration(len(others.Positions))
	high.print(out, "elevation", "°", 0.01)
	round.print(out, "azimuth, along the sky", "°", 0.01)
	printDays(out, others.Days)
	fmt.Fprintf(out, "  %d ns a position\n", each.Nanoseconds())
	return nil
}

func printDays(out io.Writer, days [][6]float64) {
	var off [3]differences
	for _, d := range days {
		day := sky.DayOf(time.Unix(int64(d[0]), 0), d[1]*math.Pi/180, d[2]*math.Pi/180)
		for i, t := range []time.Time{day.Rise, day.Noon, day.Set} {
			off[i].add(float64(t.UnixMilli())/1000 - d[3+i])
		}
	}
	for i, name := range []string{"sunrise", "noon", "sunset"} {
		off[i].print(out, name, "s", 30)
	}
}

// differences of ours from another's.
type differences struct{ n, sum, squares, most float64 }

func (d *differences) add(v float64) {
	d.n++
	d.sum += v
	d.squares += v * v
	d.most = max(d.most, math.Abs(v))
}

func (d *differences) print(out io.Writer, name, unit string, allowed float64) {
	mark := ""
	if d.most > allowed {
		mark = "  TOO FAR"
	}
	fmt.Fprintf(out, "  %-24s mean %+.5f, root mean square %.5f, greatest %.5f %s (allowed %g)%s\n",
		name, d.sum/d.n, math.Sqrt(d.squares/d.n), d.most, unit, allowed, mark)
}
