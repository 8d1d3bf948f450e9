package fit

import (
	"strings"

	"tumblehome/trade/finding"
)

// movePointer is where the document says how a part moves.
func (w *worker) movePointer(p *Part) string {
	id := w.in.Fittings[p.Fitting].ID
	if p.Move == "" {
		return pointer("fittings", id)
	}
	return pointer("fittings", id) + pointer("moves", p.Move)
}

// reportNever tells of a part whose own move does not open it: a slip of the pen, and nothing that stands in its way.
func (w *worker) reportNever(p *Part) {
	name := w.partName(p)
	out := finding.Finding{
		Code: "fit.opens.never", Severity: finding.Note, About: []string{w.movePointer(p)},
		Title:    strings.ToUpper(name[:1]) + name[1:] + " cannot be opened as its move is written",
		Words:    "Its move goes no way at all: by is 0. Say how far it opens, such as 350 for a drawer or 95° for a lid.",
		Measured: &finding.Measure{Value: 0, Unit: "%"}, Limit: &finding.Measure{Value: opensWell * 100, Unit: "%"},
		Source: finding.Source{Text: "the move as the build has it", Sure: finding.Computed},
	}
	if p.Inward {
		out.Words = "Its move turns it inwards, into its own box, where it cannot go: by is less than 0. Write the angle without the minus."
	}
	w.find(out)
}
