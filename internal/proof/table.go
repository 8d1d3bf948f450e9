package proof

import (
	"fmt"
	"io"
	"text/tabwriter"
)

// Table prints the records, a heading for each package, and a last line that
// counts them. It returns how many do not hold.
func Table(w io.Writer, records []Record) (failed int, err error) {
	columns := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	heading := ""
	for _, r := range records {
		if r.Package != heading {
			heading = r.Package
			fmt.Fprintf(columns, "\n%s\n", heading)
			fmt.Fprintln(columns, "  what\texpected\tgot\ttolerance\tunit\t\tsource")
		}
		word := "ok"
		if !r.OK {
			word = "FAILS"
			failed++
		}
		fmt.Fprintf(columns, "  %s\t%s\t%s\t%s\t%s\t%s\t%s\n",
			r.Name, r.Expected, r.Got, r.Tolerance, r.Unit, word, r.Source)
	}
	fmt.Fprintf(columns, "\n%d figures checked against sources outside this project, %d do not hold\n",
		len(records), failed)
	return failed, columns.Flush()
}
