package cli

import (
	"fmt"
	"io"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/internal/words"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

type compareCommand struct {
	source
	Other       string `arg:"" optional:"" help:"The build to lay beside it." type:"path"`
	Alternative string `help:"Name of an alternative of the first build." placeholder:"ID"`
	JSON        bool   `name:"json" help:"Print the difference as JSON."`
}

// Run prints what differs, figure by figure.
func (c compareCommand) Run(s *streams) error {
	from, to, err := c.both()
	if err != nil {
		return err
	}
	day, err := c.day()
	if err != nil {
		return err
	}
	machine := reckon.NewMachine()
	difference := reckon.Compare(machine.Reckon(from, day), machine.Reckon(to, day))
	if c.JSON {
		return printJSON(s.out, difference)
	}
	return printDifference(s.out, difference)
}

// both reads the two documents that are compared.
func (c compareCommand) both() (from, to *build.Document, err error) {
	if (c.Other == "") == (c.Alternative == "") {
		return nil, nil, fmt.Errorf("compare: name another build, or one alternative with --alternative")
	}
	if from, err = c.load(); err != nil {
		return nil, nil, err
	}
	if c.Other != "" {
		to, err = load(c.Other)
		return from, to, err
	}
	if _, ok := from.Alternatives[c.Alternative]; !ok {
		return nil, nil, noAlternative(from, c.Alternative)
	}
	to, err = build.TakeAlternative(from, c.Alternative, catalogue.Builtin())
	return from, to, err
}

func noAlternative(doc *build.Document, id string) error {
	known := build.SortedKeys(doc.Alternatives)
	if near := quantity.Near(id, known); near != "" {
		return fmt.Errorf("no alternative is called %s; did you mean %s?", id, near)
	}
	return fmt.Errorf("no alternative is called %s; there are: %s", id, strings.Join(known, " "))
}

func printDifference(out io.Writer, d reckon.Difference) error {
	var text strings.Builder
	for _, f := range d.Appeared {
		fmt.Fprintf(&text, "appears: %s: %s (%s)\n", f.Severity, f.Title, f.Code)
	}
	for _, f := range d.Cleared {
		fmt.Fprintf(&text, "cleared: %s: %s (%s)\n", f.Severity, f.Title, f.Code)
	}
	for _, c := range d.Changes {
		if words.Moved(c) {
			fmt.Fprintln(&text, words.Change(c))
		}
	}
	if text.Len() == 0 {
		text.WriteString("Nothing differs that a builder would notice.\n")
	}
	_, err := io.WriteString(out, text.String())
	return err
}
