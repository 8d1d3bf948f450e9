package cli

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"tumblehome/reckon"
	"tumblehome/reckon/remedy"
	"tumblehome/trade/finding"
)

type checkCommand struct {
	source
	JSON bool `name:"json" help:"Print the findings as JSON. Proposals were tried and help; untried is how many of a finding were not tried, and are left out."`
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

// checked is a finding with only those proposals that were tried and help.
type checked struct {
	finding.Finding
	Untried int `json:"untried,omitempty"` // how many of its proposals were not tried and are left out; the command finding tries them
}

func helped(r *reckon.Reckoning, worker remedy.Worker) []checked {
	out, left := make([]checked, len(r.Findings)), tries(mostTried)
	for i, f := range r.Findings {
		tried, any := left.of(worker, r, f)
		if !any {
			out[i].Untried = len(f.Proposals)
		}
		f.Proposals = helping(tried)
		out[i].Finding = f
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
	code := f.Code
	if f.Mode != "" { // the same may be found in several
		code += ", in the mode " + f.Mode
	}
	fmt.Fprintf(text, "%-9s %s (%s)\n", f.Severity, f.Title, code)
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
