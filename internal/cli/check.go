package cli

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strings"

	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

type checkCommand struct {
	source
	JSON bool `name:"json" help:"Print the findings as JSON."`
}

// Run prints the findings and leaves 1 when one nobody has accepted is a fault or worse.
func (c checkCommand) Run(s *streams) error {
	r, worker, err := c.attempt()
	if err != nil {
		return err
	}
	if c.JSON {
		err = printJSON(s.out, helped(r, worker))
	} else {
		err = printFindings(s.out, r, worker)
	}
	if worst, any := finding.Worst(r.Findings); err == nil && any && worst >= finding.Fault {
		return exit(exitFault)
	}
	return err
}

// helped are the findings with only those proposals that were tried and help.
func helped(r *reckon.Reckoning, worker remedy.Worker) []finding.Finding {
	out, left := slices.Clone(r.Findings), tries(mostTried)
	for i, f := range out {
		tried, _ := left.of(worker, r, f)
		out[i].Proposals = helping(tried)
	}
	return out
}

// printFindings writes the open findings first, each as soon as what is proposed for it was tried, and the accepted ones after them.
func printFindings(out io.Writer, r *reckon.Reckoning, worker remedy.Worker) error {
	open, left := 0, tries(mostTried)
	for _, f := range r.Findings {
		if f.Accepted == "" {
			open++
			if err := printFinding(out, r, worker, f, &left); err != nil {
				return err
			}
		}
	}
	var text strings.Builder
	if open == 0 {
		text.WriteString("Nothing to report.\n")
	}
	for _, f := range r.Findings {
		if f.Accepted != "" {
			fmt.Fprintf(&text, "accepted  %s (%s)\n          because: %s\n", f.Title, f.Code, f.Accepted)
		}
	}
	_, err := io.WriteString(out, text.String())
	return err
}

func printFinding(out io.Writer, r *reckon.Reckoning, worker remedy.Worker, f finding.Finding, left *tries) error {
	var text strings.Builder
	writeFinding(&text, f)
	if tried, any := left.of(worker, r, f); any {
		writeTried(&text, tried)
	} else {
		fmt.Fprintf(&text, "          what may help was not tried here: tumblehome finding %s tries it\n", f.Code)
	}
	_, err := io.WriteString(out, text.String())
	return err
}

func writeFinding(text *strings.Builder, f finding.Finding) {
	fmt.Fprintf(text, "%-9s %s (%s)\n", f.Severity, f.Title, f.Code)
	for _, sentence := range []string{f.Words, f.Caution, lived(f)} {
		if sentence != "" {
			fmt.Fprintf(text, "          %s\n", sentence)
		}
	}
}

// lived says why the builder lives with a finding, if so.
func lived(f finding.Finding) string {
	if f.Accepted == "" {
		return ""
	}
	return "accepted, because: " + f.Accepted
}

func printJSON(out io.Writer, value any) error {
	w := json.NewEncoder(out)
	w.SetEscapeHTML(false)
	w.SetIndent("", "  ")
	return w.Encode(value)
}
