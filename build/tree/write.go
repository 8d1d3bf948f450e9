package tree

import (
	"strings"
	"unicode/utf8"
)

const mostColumns = 110

// Write is the node as YAML, in one way only: two blanks for each level, a map or
// list on one line where it fits, except maps of maps, whose entries always have
// a line each. Reading it back gives an equal node, and writing that gives the
// same bytes.
func Write(n *Node) []byte {
	w := &writer{}
	w.block(n, 0)
	return []byte(w.out.String())
}

type writer struct{ out strings.Builder }

// block writes n at the given indent, ending with a line end.
func (w *writer) block(n *Node, indent int) {
	switch {
	case n.Kind == Map && len(n.Entries) > 0:
		for i, e := range n.Entries {
			if i > 0 {
				w.blanks(indent)
			}
			key := keyText(e.Key)
			w.out.WriteString(key + ":")
			w.value(e.Value, indent, indent+utf8.RuneCountInString(key)+2)
		}
	case n.Kind == List && len(n.Items) > 0:
		for i, item := range n.Items {
			if i > 0 {
				w.blanks(indent)
			}
			w.out.WriteString("- ")
			if line, ok := oneLine(item, indent+2); ok {
				w.out.WriteString(line + "\n")
			} else {
				w.block(item, indent+2)
			}
		}
	default:
		line, _ := oneLine(n, 0)
		w.out.WriteString(line + "\n")
	}
}

// value writes what follows a key: on the same line where it fits.
func (w *writer) value(n *Node, indent, column int) {
	if line, ok := oneLine(n, column); ok {
		w.out.WriteString(" " + line + "\n")
		return
	}
	w.out.WriteString("\n")
	w.blanks(indent + 2)
	w.block(n, indent+2)
}

func (w *writer) blanks(n int) {
	for range n {
		w.out.WriteByte(' ')
	}
}

// oneLine is n in flow style, if it is of a kind that goes on one line and fits
// when it begins at column.
func oneLine(n *Node, column int) (string, bool) {
	if !flows(n) {
		return "", false
	}
	if n.Kind == Scalar {
		return scalarText(n, false), true
	}
	var b strings.Builder
	flow(&b, n)
	line := b.String()
	fits := column+utf8.RuneCountInString(line) <= mostColumns
	return line, fits || len(n.Entries)+len(n.Items) == 0
}

// flows tells whether n reads well on one line: no map of maps, no list of
// anything but scalars.
func flows(n *Node) bool {
	maps := 0
	for _, e := range n.Entries {
		if !flows(e.Value) {
			return false
		}
		if e.Value.Kind == Map {
			maps++
		}
	}
	for _, item := range n.Items {
		if item.Kind != Scalar {
			return false
		}
	}
	return maps == 0 || maps < len(n.Entries)
}

func flow(b *strings.Builder, n *Node) {
	switch n.Kind {
	case Scalar:
		b.WriteString(scalarText(n, true))
	case Map:
		b.WriteByte('{')
		for i, e := range n.Entries {
			if i > 0 {
				b.WriteString(", ")
			}
			b.WriteString(keyText(e.Key) + ": ")
			flow(b, e.Value)
		}
		b.WriteByte('}')
	case List:
		b.WriteByte('[')
		for i, item := range n.Items {
			if i > 0 {
				b.WriteString(", ")
			}
			flow(b, item)
		}
		b.WriteByte(']')
	case Gone:
		b.WriteString("null")
	}
}
