package tree

import (
	"fmt"
	"slices"
)

// A Patch is a JSON Merge Patch. The zero Patch changes nothing.
type Patch struct{ root *Node }

// ParsePatch reads a patch from JSON.
func ParsePatch(text []byte) (Patch, error) {
	root, err := readJSON(text)
	if err != nil {
		return Patch{}, fmt.Errorf("patch: %w", err)
	}
	return Patch{root}, nil
}

// Setting is the patch that puts a value at a place.
func Setting(p Pointer, value *Node) Patch {
	steps := p.Steps()
	for _, key := range slices.Backward(steps) {
		value = MapOf(Entry{Key: key, Value: value})
	}
	return Patch{value}
}

// Deleting is the patch that takes away what is at a place.
func Deleting(p Pointer) Patch { return Setting(p, &Node{Kind: Gone}) }

// JSON is the patch as JSON on one line, its keys in order.
func (p Patch) JSON() []byte {
	if p.root == nil {
		return []byte("{}")
	}
	return JSON(sorted(p.root))
}

// MarshalJSON is JSON.
func (p Patch) MarshalJSON() ([]byte, error) { return p.JSON(), nil }

// UnmarshalJSON is ParsePatch.
func (p *Patch) UnmarshalJSON(text []byte) error {
	got, err := ParsePatch(text)
	if err == nil {
		*p = got
	}
	return err
}

// Empty tells whether the patch changes nothing in any document that is a map.
func (p Patch) Empty() bool {
	return p.root == nil || p.root.Kind == Map && len(p.root.Entries) == 0
}

// Merge is the document with the patch applied: the algorithm of RFC 7396
// section 2. The document stays as it was.
func Merge(doc *Node, p Patch) *Node {
	if p.root == nil {
		return doc
	}
	return merge(doc, p.root)
}

func merge(doc, patch *Node) *Node {
	if patch.Kind != Map {
		return patch
	}
	out := &Node{Kind: Map}
	if doc != nil && doc.Kind == Map {
		*out = *doc
		out.Entries = make([]Entry, len(doc.Entries), len(doc.Entries)+len(patch.Entries))
		copy(out.Entries, doc.Entries)
	}
	for _, e := range patch.Entries {
		out.merge(e)
	}
	return out
}

// merge applies one entry of a patch to a map that is still being made.
func (n *Node) merge(e Entry) {
	i := n.index(e.Key)
	switch {
	case e.Value.Kind == Gone && i >= 0:
		n.Entries = slices.Delete(n.Entries, i, i+1)
	case e.Value.Kind == Gone:
	case i >= 0:
		n.Entries[i].Value = merge(n.Entries[i].Value, e.Value)
	default:
		n.Entries = append(n.Entries, Entry{Key: e.Key, Value: merge(nil, e.Value)})
	}
}

func (n *Node) index(key string) int {
	return slices.IndexFunc(n.Entries, func(e Entry) bool { return e.Key == key })
}

// sorted is n with the keys of all its maps in order.
func sorted(n *Node) *Node {
	if n.Kind != Map {
		return n
	}
	out := *n
	out.Entries = make([]Entry, len(n.Entries))
	for i, e := range n.Entries {
		e.Value = sorted(e.Value)
		out.Entries[i] = e
	}
	slices.SortStableFunc(out.Entries, func(a, b Entry) int { return Compare(a.Key, b.Key) })
	return &out
}
