package tree

import (
	"cmp"
	"strings"
)

// A Kind is what a node is.
type Kind uint8

const (
	Scalar Kind = iota // a text
	Map                // keys and values, in the order they were written
	List               // values in order
	Gone               // null: only in patches, where it deletes
)

// A Node is one value of a document. Line and Column count from one, the column
// in characters; both are 0 in what was not read from a text.
type Node struct {
	Kind    Kind
	Text    string  // of a scalar, without quotes
	Quoted  bool    // the scalar is a text even where it looks like a number
	Entries []Entry // of a map
	Items   []*Node // of a list
	Line    int
	Column  int
}

// An Entry is a key of a map with its value.
type Entry struct {
	Key    string
	Value  *Node
	Line   int // of the key
	Column int
}

// Text is a scalar that reads as a string everywhere.
func Text(s string) *Node { return &Node{Text: s, Quoted: true} }

// Plain is a scalar that is written as it stands: a number, a quantity, a word.
func Plain(s string) *Node { return &Node{Text: s} }

// MapOf is a map with these entries.
func MapOf(entries ...Entry) *Node { return &Node{Kind: Map, Entries: entries} }

// ListOf is a list of these items.
func ListOf(items ...*Node) *Node { return &Node{Kind: List, Items: items} }

// Get is the value of a key of a map, or nil.
func (n *Node) Get(key string) *Node {
	if n == nil || n.Kind != Map {
		return nil
	}
	for i := range n.Entries {
		if n.Entries[i].Key == key {
			return n.Entries[i].Value
		}
	}
	return nil
}

// Keys are the keys of a map in their order.
func (n *Node) Keys() []string {
	keys := make([]string, len(n.Entries))
	for i, e := range n.Entries {
		keys[i] = e.Key
	}
	return keys
}

// Equal tells whether two nodes say the same. The order of keys, quotes and
// places do not count.
func Equal(a, b *Node) bool {
	switch {
	case a == b:
		return true
	case a == nil || b == nil || a.Kind != b.Kind || a.Text != b.Text:
		return false
	case len(a.Entries) != len(b.Entries) || len(a.Items) != len(b.Items):
		return false
	}
	for i, item := range a.Items {
		if !Equal(item, b.Items[i]) {
			return false
		}
	}
	for i, e := range a.Entries {
		other := b.Entries[i].Value
		if b.Entries[i].Key != e.Key {
			other = b.Get(e.Key)
		}
		if other == nil || !Equal(e.Value, other) {
			return false
		}
	}
	return true
}

// Compare orders ids as people do: numbers inside them count as numbers, so s2
// stands before s10.
func Compare(a, b string) int {
	for x, y := a, b; ; {
		if x == "" || y == "" {
			return cmp.Or(cmp.Compare(len(x), len(y)), strings.Compare(a, b)) // s01 and s1
		}
		m, n := leadingDigits(x), leadingDigits(y)
		if m == 0 || n == 0 {
			if x[0] != y[0] {
				return cmp.Compare(x[0], y[0])
			}
			x, y = x[1:], y[1:]
			continue
		}
		p, q := stripZeros(x[:m]), stripZeros(y[:n])
		if by := cmp.Or(cmp.Compare(len(p), len(q)), strings.Compare(p, q)); by != 0 {
			return by
		}
		x, y = x[m:], y[n:]
	}
}

func leadingDigits(s string) int {
	i := 0
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return i
}

func stripZeros(s string) string {
	for len(s) > 1 && s[0] == '0' {
		s = s[1:]
	}
	return s
}
