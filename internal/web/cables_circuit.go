package web

import (
	"fmt"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
)

// circuitSheet is one sheet of the circuit diagrams.
type circuitSheet struct {
	Title   string
	InWords string   // what its text equivalent is called
	Words   []string // the same in sentences
	draw    templ.Component
}

// circuitSheets are all of them, of every battery.
func circuitSheets(v view) []circuitSheet {
	all := sheet.Circuits(v.Reckoning, "")
	var out []circuitSheet
	for i, s := range all {
		one := circuitSheet{Title: "The circuit diagram", Words: sentences(s.Description)}
		id, which := "circuit-diagram", ""
		if len(all) > 1 {
			which = fmt.Sprintf(", sheet %d of %d", i+1, len(all))
			id += fmt.Sprint("-", i+1)
		}
		one.Title, one.InWords = one.Title+which, "the same in words"+which
		s.Title += which
		if i > 0 {
			s.Marks = withEnds(s.Marks, fmt.Sprint("-", i+1))
		}
		one.draw = svgOf(s, id)
		out = append(out, one)
	}
	return out
}

// withEnds gives groups ids of their own, where several drawings of one kind stand on a page.
func withEnds(marks []draw.Mark, end string) []draw.Mark {
	out := make([]draw.Mark, len(marks))
	for i, m := range marks {
		if g, ok := m.(draw.Group); ok {
			if g.ID != "" {
				g.ID += end
			}
			g.Marks = withEnds(g.Marks, end)
			m = g
		}
		out[i] = m
	}
	return out
}

// sentences are the parts of a text, each with its full stop.
func sentences(text string) []string {
	var out []string
	for part := range strings.SplitSeq(strings.TrimSuffix(text, "."), ". ") {
		out = append(out, part+".")
	}
	return out
}
