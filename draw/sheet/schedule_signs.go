package sheet

import (
	"slices"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// aboutCable says whether a note is about a cable: the one that it came from, or else that of its circuit or source, or, of a main cable or a bond, of its
// battery's.
func aboutCable(r *reckon.Reckoning, f finding.Finding, c *cables.Cable) bool {
	if marks := r.Cables.Marks(f); len(marks) > 0 {
		return slices.Contains(marks, c.Number)
	}
	known := func(e finding.Explanation) bool { return e.Code == f.Code }
	bonds := f.Code == "power.cable.bond"
	if len(f.About) == 0 || !slices.ContainsFunc(cables.Explanations, known) || bonds != (c.Role == cables.Bond) {
		return false
	}
	own := func(pointer string) bool {
		return pointer != "" && (f.About[0] == pointer || strings.HasPrefix(f.About[0], pointer+"/"))
	}
	return own(c.About) || c.Role == cables.Trunk && own("/power/batteries/"+c.Bank)
}

// gravest are the dangers and faults of a cable. What is dangerous stays so on paper, also where the builder lives with it.
func gravest(r *reckon.Reckoning, c *cables.Cable) []finding.Finding {
	var out []finding.Finding
	for _, f := range r.Findings {
		if (f.Severity == finding.Danger || f.Severity == finding.Fault && f.Accepted == "") && aboutCable(r, f, c) {
			out = append(out, f)
		}
	}
	return out
}

// signOf is the sign of the gravest note of a cable; none where there is neither danger nor fault.
func signOf(r *reckon.Reckoning, c *cables.Cable) draw.Severity {
	if all := gravest(r, c); len(all) > 0 {
		return severity(all[0].Severity)
	}
	return ""
}

// mendFirst are the dangers and faults of the cables, above all else on the paper.
func mendFirst(r *reckon.Reckoning) []row {
	var says []string
	for i := range r.Cables.Cables {
		c := &r.Cables.Cables[i]
		for _, f := range gravest(r, c) {
			says = append(says, c.Number+", "+f.Severity.String()+": "+f.Title+".")
		}
	}
	if len(says) == 0 {
		return nil
	}
	return []row{{title: "Mend these first: see margin notes", says: append(says, "Danger, an octagon: do not connect it before it is mended. Fault, a triangle: mend it before you rely on it.")}}
}

// cautioned are the cautions that stand before any plan of wiring.
func cautioned() []row {
	var says []string
	for _, said := range cables.Cautions {
		says = append(says, "• "+said)
	}
	return []row{{title: "Before you begin", says: says}}
}
