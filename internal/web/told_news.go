package web

import (
	"slices"

	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// noteNews are the notes that a change brings, takes away, or only makes graver or milder: a reader must not be told that one and the same
// note is new and cleared.
type noteNews struct {
	Appeared, Graver, Milder, Cleared []finding.Finding
}

// newsIn sorts the notes of a difference. One that reads the same before and after has not changed for the reader, unless its severity has.
func newsIn(d reckon.Difference) noteNews {
	n := noteNews{Cleared: slices.Clone(d.Cleared)}
	for _, f := range d.Appeared {
		i := slices.IndexFunc(n.Cleared, func(was finding.Finding) bool {
			return was.Code == f.Code && was.Mode == f.Mode && was.Title == f.Title
		})
		if i < 0 {
			n.Appeared = append(n.Appeared, f)
			continue
		}
		switch was := n.Cleared[i].Severity; {
		case f.Severity > was:
			n.Graver = append(n.Graver, f)
		case f.Severity < was:
			n.Milder = append(n.Milder, f)
		}
		n.Cleared = slices.Delete(n.Cleared, i, i+1)
	}
	return n
}
