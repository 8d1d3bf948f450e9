package tree

import (
	"strconv"
	"strings"
)

// A Pointer names a place in a document, as RFC 6901 has it: `/fittings/bed/at`.
// The empty Pointer is the whole document.
type Pointer string

var (
	escape   = strings.NewReplacer("~", "~0", "/", "~1")
	unescape = strings.NewReplacer("~1", "/", "~0", "~")
)

// PointerTo is the pointer of these steps from the top.
func PointerTo(steps ...string) Pointer {
	var b strings.Builder
	for _, s := range steps {
		b.WriteByte('/')
		b.WriteString(escape.Replace(s))
	}
	return Pointer(b.String())
}

// Dotted is the pointer of a path as people write it: `fittings.bed.at`.
func Dotted(path string) Pointer {
	if path == "" {
		return ""
	}
	return PointerTo(strings.Split(path, ".")...)
}

// Steps are the keys and positions the pointer goes through.
func (p Pointer) Steps() []string {
	if p == "" {
		return nil
	}
	steps := strings.Split(strings.TrimPrefix(string(p), "/"), "/")
	for i, s := range steps {
		steps[i] = unescape.Replace(s)
	}
	return steps
}

// Path is the pointer as people write it, with dots.
func (p Pointer) Path() string { return strings.Join(p.Steps(), ".") }

// Then is the pointer one step further.
func (p Pointer) Then(step string) Pointer { return p + PointerTo(step) }

// Holds tells whether other is p or lies below it.
func (p Pointer) Holds(other Pointer) bool {
	return strings.HasPrefix(string(other), string(p)) &&
		(len(other) == len(p) || other[len(p)] == '/')
}

// At is the node at a place, or nil. Items of a list are counted from 0.
func (n *Node) At(p Pointer) *Node {
	for _, step := range p.Steps() {
		if n == nil {
			return nil
		}
		if n.Kind == List {
			n = n.item(step)
		} else {
			n = n.Get(step)
		}
	}
	return n
}

// item is the item at a position written without leading noughts, or nil.
func (n *Node) item(step string) *Node {
	i, err := strconv.Atoi(step)
	if err != nil || i < 0 || i >= len(n.Items) || strconv.Itoa(i) != step {
		return nil
	}
	return n.Items[i]
}
