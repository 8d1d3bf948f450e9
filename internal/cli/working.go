package cli

import (
	"fmt"
	"io"
	"strconv"
	"text/tabwriter"

	"tumblehome/trade/working"
)

type workingCommand struct {
	source
	Code string `arg:"" help:"Code of the figure."`
	JSON bool   `name:"json" help:"Print the working as JSON."`
}

// Run prints how one figure came about.
func (c workingCommand) Run(s *streams) error {
	r, err := c.reckon()
	if err != nil {
		return err
	}
	w, ok := r.Working(c.Code)
	if !ok {
		return noFigure(r, c.Code)
	}
	if c.JSON {
		return printJSON(s.out, w)
	}
	return printWorking(s.out, w)
}

func printWorking(out io.Writer, w working.Working) error {
	fmt.Fprintf(out, "%s (%s)\n", w.Label, w.Code)
	fmt.Fprintf(out, "formula: %s\nsource:  %s\n\n", w.Formula, sourceWords(w.Source))
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	for _, l := range w.Lines {
		fmt.Fprintf(table, "%s\t%s\t%s\t%s\t%s\n", l.Symbol, l.Label, value(l), l.Sum, origin(l.From))
	}
	if err := table.Flush(); err != nil {
		return err
	}
	for _, note := range w.Notes {
		fmt.Fprintf(out, "\n%s\n", note)
	}
	return nil
}

// value writes a line's value with the digits needed to follow the sum by hand.
func value(l working.Line) string {
	text := strconv.FormatFloat(l.Value, 'f', 2, 64)
	if l.Unit == "1" || l.Unit == "" {
		return text
	}
	return text + " " + l.Unit
}

// origin says where a line came from.
func origin(o working.Origin) string {
	switch {
	case o.Pointer != "":
		return "document " + o.Pointer
	case o.Row != "":
		return "catalogue " + o.Row
	case o.Figure != "":
		return "figure " + o.Figure
	case o.Assumption != "":
		return "assumed: " + o.Assumption
	}
	return ""
}
