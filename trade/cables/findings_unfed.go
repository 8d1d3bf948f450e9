package cables

import (
	"fmt"
	"slices"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// unfed notes a thing that draws current and is in no circuit, and proposes one of its own.
func (r *Result) unfed(l Load) finding.Finding {
	f := finding.Finding{Code: "power.cable.unfed", Severity: finding.Note, About: []string{l.About}, Title: capital(l.Name) + " is in no circuit yet", Source: finding.Source{Text: "the catalogue says that it draws current", Sure: finding.Computed},
		Measured: measure(l.Watts, "W"), Words: fmt.Sprintf("It draws about %s W. Until it is among the loads of a circuit it has no cable, no fuse and no place in the sums.", quantity.Parted(l.Watts))}
	if r.free(l.ID) {
		f.Proposals = []finding.Proposal{propose("give it a circuit of its own", "/power/circuits", l.ID, map[string]any{"from": r.in.Banks[0].ID, "loads": []string{l.ID}})}
	}
	return f
}

// free reports whether a circuit of that name can be begun.
func (r *Result) free(id string) bool {
	return len(r.in.Banks) > 0 && !slices.ContainsFunc(r.in.Circuits, func(c Circuit) bool { return c.ID == id })
}
