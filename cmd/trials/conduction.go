package main

import (
	"encoding/json"
	"fmt"
	"io"
	"math"
	"os"
	"text/tabwriter"
	"time"

	"tumblehome/solve/conduction"
)

const conductionCases = "solve/conduction/testdata/"

// conductionTrial prints every case beside what others found, then the time beside getdp. With the word "detail" it
// only solves the detail that is timed, which is how it times itself as a whole process.
func conductionTrial(out io.Writer, args []string) error {
	if len(args) == 1 && args[0] == "detail" {
		return printDetail(out)
	}
	if len(args) > 0 {
		return fmt.Errorf("conduction takes no word but detail, not %q", args)
	}
	if err := printCases(out); err != nil {
		return err
	}
	return conductionTimes(out)
}

// conductionCase is one section of cases.json with the figures that others found for it.
type conductionCase struct {
	Name     string
	Section  conduction.Section
	Accuracy conduction.Accuracy
	Figures  []struct {
		What            string
		X, Y            float64
		Boundary        int
		Want, Tolerance float64
		Source          string
	}
}

func readConduction(name string, v any) error {
	text, err := os.ReadFile(conductionCases + name)
	if err != nil {
		return fmt.Errorf("%w (trials are run from the root of the sources)", err)
	}
	return json.Unmarshal(text, v)
}

func printCases(out io.Writer) error {
	var cases []conductionCase
	if err := readConduction("cases.json", &cases); err != nil {
		return err
	}
	for _, c := range cases {
		begin := time.Now()
		r, err := conduction.Solve(c.Section, c.Accuracy)
		if err != nil {
			return fmt.Errorf("%s: %w", c.Name, err)
		}
		fmt.Fprintf(out, "\n%s: %d points, %.1f ms\n", c.Name, len(r.Field.Temperature), milliseconds(time.Since(begin)))
		printFigures(out, c, r)
	}
	return nil
}

// printFigures prints one line for each figure, and marks those that are farther off than allowed.
func printFigures(out io.Writer, c conductionCase, r conduction.Result) {
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "  figure\tothers\tours\tdifference\tallowed\t\tsource")
	for _, f := range c.Figures {
		s := r.Surfaces[f.Boundary]
		name, got := f.What+" "+s.Name, map[string]float64{
			"heat": s.Heat, "transmittance": r.Coupling / s.Length, "factor": r.Factor(s)}[f.What]
		if f.What == "temperature" {
			name = fmt.Sprintf("temperature (%g, %g)", f.X, f.Y)
			got, _ = r.Field.At(conduction.Point{X: f.X, Y: f.Y})
		}
		mark := ""
		if math.Abs(got-f.Want) > f.Tolerance {
			mark = "TOO FAR"
		}
		fmt.Fprintf(table, "  %s\t%g\t%.4f\t%+.4f\t%g\t%s\t%s\n", name, f.Want, got, got-f.Want, f.Tolerance, mark, f.Source)
	}
	table.Flush()
}

func milliseconds(d time.Duration) float64 { return float64(d.Microseconds()) / 1000 }
