package tree

// Difference is the patch that makes b of a: Merge(a, Difference(a, b)) equals b.
// It says nothing about the order of keys.
func Difference(a, b *Node) Patch {
	if Equal(a, b) {
		return Patch{}
	}
	return Patch{difference(a, b)}
}

func difference(a, b *Node) *Node {
	if b.Kind != Map || a == nil || a.Kind != Map {
		return b
	}
	patch := &Node{Kind: Map}
	for _, e := range a.Entries {
		if b.Get(e.Key) == nil {
			patch.Entries = append(patch.Entries, Entry{Key: e.Key, Value: &Node{Kind: Gone}})
		}
	}
	for _, e := range b.Entries {
		if before := a.Get(e.Key); !Equal(before, e.Value) {
			patch.Entries = append(patch.Entries, Entry{Key: e.Key, Value: difference(before, e.Value)})
		}
	}
	return patch
}

// Inverse is the patch that takes p back: Merge(Merge(doc, p), Inverse(doc, p))
// equals doc.
func Inverse(doc *Node, p Patch) Patch { return Difference(Merge(doc, p), doc) }

// Touches are the places that the patch sets or deletes, in the patch's order.
func (p Patch) Touches() []Pointer {
	if p.Empty() {
		return nil
	}
	return touches(nil, "", p.root)
}

func touches(found []Pointer, at Pointer, n *Node) []Pointer {
	if n.Kind != Map || len(n.Entries) == 0 {
		return append(found, at)
	}
	for _, e := range n.Entries {
		found = touches(found, at.Then(e.Key), e.Value)
	}
	return found
}

// Disjoint tells whether neither patch touches a place that the other touches,
// or one above or below it. Such patches may be applied in either order.
func Disjoint(p, q Patch) bool {
	for _, a := range p.Touches() {
		for _, b := range q.Touches() {
			if a.Holds(b) || b.Holds(a) {
				return false
			}
		}
	}
	return true
}

// Remove is the document without what is at the places. Places where nothing
// is are passed over.
func Remove(doc *Node, places ...Pointer) *Node {
	for _, p := range places {
		if doc.At(p) != nil && p != "" {
			doc = remove(doc, p.Steps())
		}
	}
	return doc
}

func remove(n *Node, steps []string) *Node {
	out := &Node{Kind: n.Kind, Text: n.Text, Line: n.Line, Column: n.Column}
	for i, item := range n.Items {
		switch {
		case itoa(i) != steps[0]:
			out.Items = append(out.Items, item)
		case len(steps) > 1:
			out.Items = append(out.Items, remove(item, steps[1:]))
		}
	}
	for _, e := range n.Entries {
		switch {
		case e.Key == steps[0] && len(steps) == 1:
			continue
		case e.Key == steps[0]:
			e.Value = remove(e.Value, steps[1:])
		}
		out.Entries = append(out.Entries, e)
	}
	return out
}
