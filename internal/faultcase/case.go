package faultcase

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// A Case is one thing done to a build, and what follows.
type Case struct {
	Name   string   // what was done, as a sentence
	On     string   // the demonstration build it is done to; "" is the sound build
	Patch  string   // what is done: an RFC 7396 merge patch
	Takes  string   // or an alternative of the demonstration build that is taken
	Finds  []string // what appears, as Told writes it
	Clears []string // what no longer appears
	Also   string   // why other findings appear as well; "" if none may

	// Refused is part of what is said when such a document is not even read; then the finding is for those who fill a trade's inputs
	// by other ways.
	Refused string
}

//go:embed sound.yaml
var sound []byte

// Base is the document that the case starts from.
func (c Case) Base() (*build.Document, error) {
	text := sound
	if c.On != "" {
		var err error
		if text, err = examples.Document(c.On); err != nil {
			return nil, err
		}
	}
	doc, _, err := build.Decode(c.On+".yaml", text, catalogue.Builtin())
	return doc, err
}

// Document is the build with the case done to it.
func (c Case) Document() (*build.Document, error) {
	base, err := c.Base()
	if err != nil {
		return nil, err
	}
	if c.Takes != "" {
		return build.TakeAlternative(base, c.Takes, catalogue.Builtin())
	}
	patch, err := tree.ParsePatch([]byte(c.Patch))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", c.Name, err)
	}
	doc, err := build.Apply(base, patch, catalogue.Builtin())
	if err != nil {
		return nil, fmt.Errorf("%s: %w", c.Name, err)
	}
	return doc, nil
}

// Try reckons the build before and after, and says in sentences what was found otherwise than the case has it.
func (c Case) Try(machine *reckon.Machine) ([]string, error) {
	base, err := c.Base()
	if err != nil {
		return nil, err
	}
	doc, err := c.Document()
	if c.Refused != "" {
		return c.accepted(err), nil
	}
	if err != nil {
		return nil, err
	}
	d := reckon.Compare(machine.Reckon(base, quantity.Date{}), machine.Reckon(doc, quantity.Date{}))
	return c.missed(d), nil
}

// accepted says that a document was read that should have been refused, or was refused for another reason.
func (c Case) accepted(err error) []string {
	if err != nil && strings.Contains(err.Error(), c.Refused) {
		return nil
	}
	return []string{fmt.Sprintf("not refused with %q but %v", c.Refused, err)}
}

// missed compares what appeared and what was cleared with what should have.
func (c Case) missed(d reckon.Difference) []string {
	var out []string
	appeared, cleared := told(d.Appeared), told(d.Cleared)
	for _, want := range c.Finds {
		if !slices.Contains(appeared, want) {
			out = append(out, "not found: "+want)
		}
	}
	for _, want := range c.Clears {
		if !slices.Contains(cleared, want) {
			out = append(out, "not cleared: "+want)
		}
	}
	for _, got := range appeared {
		if c.Also == "" && !slices.Contains(c.Finds, got) {
			out = append(out, "found as well: "+got)
		}
	}
	return out
}

// Told is a finding in one line: how bad, which code, about what first, and in which mode.
func Told(f finding.Finding) string {
	text := f.Severity.String() + " " + f.Code
	if len(f.About) > 0 {
		text += " " + f.About[0]
	}
	if f.Mode != "" {
		text += " in " + f.Mode
	}
	return text
}

func told(all []finding.Finding) []string {
	out := make([]string, len(all))
	for i, f := range all {
		out[i] = Told(f)
	}
	return out
}

// All are the cases, trade by trade.
func All() []Case {
	return slices.Concat(shellCases, liningCases, climateCases, fitCases, fitMoreCases, movesCases, weightCases, warmthCases, powerCases, runsCases, cablesCases, moneyCases, demoCases)
}
