package cli

import (
	"fmt"
	"strings"

	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

type findingCommand struct {
	source
	Code string `arg:"" help:"Code of the finding."`
}

// Run explains what a code means and shows where it appears in this build.
func (c findingCommand) Run(s *streams) error {
	r, worker, err := c.attempt()
	if err != nil {
		return err
	}
	explanation, known := reckon.Explain(c.Code)
	if !known {
		return noFinding(c.Code)
	}
	var text strings.Builder
	fmt.Fprintf(&text, "%s\n\n%s\n%s\nWhat usually clears it: %s\n\n", explanation.Code, explanation.Meaning, explanation.Why, explanation.Clear)
	here := 0
	for _, f := range r.Findings {
		if f.Code == c.Code {
			tried := worker.Try(r, f)
			writeFinding(&text, f)
			writeTried(&text, tried)
			f.Proposals = helping(tried)
			writeEvidence(&text, f)
			here++
		}
	}
	if here == 0 {
		text.WriteString("It does not appear in this build.\n")
	}
	_, err = s.out.Write([]byte(text.String()))
	return err
}

// writeEvidence adds the numbers a finding rests on.
func writeEvidence(text *strings.Builder, f finding.Finding) {
	if f.Measured != nil {
		fmt.Fprintf(text, "          measured: %.5g %s\n", f.Measured.Value, f.Measured.Unit)
	}
	if f.Limit != nil {
		fmt.Fprintf(text, "          limit:    %.5g %s\n", f.Limit.Value, f.Limit.Unit)
	}
	fmt.Fprintf(text, "          source:   %s\n", sourceWords(f.Source))
	for _, pointer := range f.About {
		fmt.Fprintf(text, "          about:    %s\n", pointer)
	}
	for _, p := range f.Proposals {
		fmt.Fprintf(text, "          proposal: %s\n", p.Patch)
	}
}

// sourceWords name a source and how far it can be trusted, unless its own text says so.
func sourceWords(s finding.Source) string {
	if strings.Contains(s.Text, string(s.Sure)) {
		return s.Text
	}
	return fmt.Sprintf("%s (%s)", s.Text, s.Sure)
}

func noFinding(code string) error {
	known := reckon.Codes()
	if near := quantity.Near(code, known); near != "" {
		return fmt.Errorf("no finding is called %s; did you mean %s?", code, near)
	}
	return fmt.Errorf("no finding is called %s; there are: %s", code, strings.Join(known, " "))
}
