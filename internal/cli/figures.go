package cli

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"tumblehome/internal/words"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/working"
)

type figuresCommand struct {
	source
	Codes []string `arg:"" optional:"" help:"Codes, or beginnings of codes; all if left out."`
	JSON  bool     `name:"json" help:"Print one flat map from code to value, unit, label, p50, p80, limit and state."`
}

// Run prints the figures asked for.
func (c figuresCommand) Run(s *streams) error {
	r, err := c.reckon()
	if err != nil {
		return err
	}
	for _, code := range c.Codes {
		if len(chosenFigures(r, []string{code})) == 0 {
			return noFigure(r, code)
		}
	}
	chosen := chosenFigures(r, c.Codes)
	if c.JSON {
		return printFigureMap(s.out, chosen)
	}
	return printFigures(s.out, chosen)
}

func chosenFigures(r *reckon.Reckoning, codes []string) []working.Figure {
	if len(codes) == 0 {
		return r.Figures
	}
	var chosen []working.Figure
	for _, f := range r.Figures {
		for _, code := range codes {
			if f.Code == code || strings.HasPrefix(f.Code, code+".") {
				chosen = append(chosen, f)
				break
			}
		}
	}
	return chosen
}

// noFigure says that a code is unknown and which may have been meant.
func noFigure(r *reckon.Reckoning, code string) error {
	known := make([]string, len(r.Figures))
	for i, f := range r.Figures {
		known[i] = f.Code
	}
	if near := quantity.Near(code, known); near != "" {
		return fmt.Errorf("no figure is called %s; did you mean %s?", code, near)
	}
	return fmt.Errorf("no figure is called %s; `tumblehome figures FILE` lists them all", code)
}

func printFigures(out io.Writer, figures []working.Figure) error {
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	for _, f := range figures {
		fmt.Fprintf(table, "%s\t%s\t%s\t%s\n", f.Code, words.Figure(f), f.Label, remark(f))
	}
	return table.Flush()
}

// remark tells a figure's limit, spread and state where they say something.
func remark(f working.Figure) string {
	var parts []string
	if f.Limit != nil {
		parts = append(parts, map[bool]string{false: "of ", true: "at least "}[f.Least]+words.Amount(*f.Limit, f.Unit))
	}
	if spread := words.Spread(f); spread != "" {
		parts = append(parts, spread)
	}
	if f.Words != "" {
		parts = append(parts, f.Words)
	}
	if f.State != "" && f.State != working.Current {
		parts = append(parts, string(f.State))
	}
	return strings.Join(parts, "; ")
}

// figureJSON is the form other programs read; its keys are stable.
type figureJSON struct {
	Value float64       `json:"value"`
	Unit  string        `json:"unit"`
	Label string        `json:"label"`
	P50   *float64      `json:"p50,omitempty"`
	P80   *float64      `json:"p80,omitempty"`
	Limit *float64      `json:"limit,omitempty"`
	State working.State `json:"state"`
}

// printFigureMap writes one flat map in the order of the codes.
func printFigureMap(out io.Writer, figures []working.Figure) error {
	all := make(map[string]figureJSON, len(figures))
	for _, f := range figures {
		all[f.Code] = figureJSON{f.Value, f.Unit, f.Label, f.P50, f.P80, f.Limit, f.State}
	}
	var text bytes.Buffer
	w := json.NewEncoder(&text)
	w.SetEscapeHTML(false)
	w.SetIndent("", "  ")
	if err := w.Encode(all); err != nil {
		return err
	}
	_, err := out.Write(text.Bytes())
	return err
}
