package cli

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/quantity"
)

type newCommand struct {
	Build       string `arg:"" help:"The build's own file to make (*.tumblehome)." type:"path"`
	Title       string `help:"What the build is called; the file's name if left out."`
	Body        string `help:"The nearest outline: short, mid or long, then low, mid or high, such as mid-high." placeholder:"OUTLINE"`
	Arrangement string `help:"A starting arrangement; the first hour offers three." placeholder:"ID"`
	Rules       string `enum:"gb,eu,us" default:"gb" help:"Whose rules apply: gb, eu or us."`
}

// Run makes a build of which only the outline is known; everything else is assumed and said so.
func (c newCommand) Run(s *streams) error {
	answers, err := c.answers()
	if err != nil {
		return err
	}
	doc, assumed, err := begin.Document(answers)
	if err != nil {
		return err
	}
	if err := createStore(c.Build, doc); err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s is begun in %s; %d things are assumed until you say otherwise:\n", doc.Build.Title, c.Build, len(assumed))
	if err := printAssumed(s.out, assumed); err != nil {
		return err
	}
	fmt.Fprintf(s.out, "Go on with: tumblehome serve %s\n", c.Build)
	return nil
}

// printAssumed lists what was taken for what nobody has said, and how far off it may be.
func printAssumed(out io.Writer, assumed []begin.Assumption) error {
	columns := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	for _, a := range assumed {
		fmt.Fprintf(columns, "  %s\t%s\t%s\n", a.Words, a.Value, a.Spread)
	}
	return columns.Flush()
}

func (c newCommand) answers() (begin.Answers, error) {
	a := begin.Answers{Title: c.Title, Rules: c.Rules, Body: c.Body, Arrangement: c.Arrangement}
	if a.Title == "" {
		a.Title = titleOf(c.Build)
	}
	var bodies, offers []string
	for _, b := range begin.Bodies() {
		bodies = append(bodies, b.ID)
	}
	for _, o := range begin.Offers(a) {
		offers = append(offers, o.ID)
	}
	if err := oneOf("outline", c.Body, bodies); err != nil {
		return a, err
	}
	return a, oneOf("arrangement for this outline", c.Arrangement, offers)
}

// oneOf accepts nothing or one of the words known.
func oneOf(what, word string, known []string) error {
	if word == "" {
		return nil
	}
	for _, k := range known {
		if k == word {
			return nil
		}
	}
	if near := quantity.Near(word, known); near != "" {
		return fmt.Errorf("%s is no %s; did you mean %s?", word, what, near)
	}
	return fmt.Errorf("%s is no %s; there are: %s", word, what, strings.Join(known, " "))
}

// beginning is a build of which nothing is known but its name: the first hour asks for the rest.
func beginning(title string) (*build.Document, error) {
	doc, _, err := begin.Document(begin.Answers{Title: title})
	return doc, err
}
