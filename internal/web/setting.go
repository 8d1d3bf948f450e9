package web

import (
	"strconv"
	"strings"

	"tumblehome/build/tree"
)

// valueText is what stands at a place of the document, in the document's own grammar on one line; "" where nothing stands.
func valueText(doc *tree.Node, p tree.Pointer) string {
	n := doc.At(p)
	if n == nil {
		return ""
	}
	if n.Kind == tree.Scalar {
		return n.Text
	}
	return strings.Join(strings.Fields(string(tree.JSON(n))), " ")
}

// valueNode reads what somebody typed: a map or list where it is written as one, else plain text that the field's own rule will judge.
func valueNode(text string) *tree.Node {
	if strings.HasPrefix(text, "{") || strings.HasPrefix(text, "[") {
		if source, err := tree.Parse("field", []byte(text)); err == nil {
			return source.Root
		}
	}
	return tree.Plain(text)
}

// change is one value that somebody wants at one place; an empty value takes away what is there.
type change struct {
	Path  tree.Pointer
	Value string
}

// patchOf is the patch that makes the changes in a document. Merge patches replace lists whole, so a change within a list carries all of it.
func patchOf(doc *tree.Node, changes []change) tree.Patch {
	wanted := doc
	for _, c := range changes {
		if strings.TrimSpace(c.Value) == valueText(wanted, c.Path) {
			continue
		}
		wanted = set(wanted, c.Path.Steps(), strings.TrimSpace(c.Value))
	}
	return tree.Difference(doc, wanted)
}

// set is n with a value at the end of some steps. Maps on the way that end empty are left out: the document has no empty ones.
func set(n *tree.Node, steps []string, value string) *tree.Node {
	if len(steps) == 0 {
		if value == "" {
			return nil
		}
		return valueNode(value)
	}
	if n != nil && n.Kind == tree.List || n == nil && steps[0] == "-" {
		return setItem(n, steps, value)
	}
	out := &tree.Node{Kind: tree.Map}
	found := false
	for _, e := range entries(n) {
		if e.Key == steps[0] {
			found = true
			if e.Value = set(e.Value, steps[1:], value); e.Value == nil {
				continue
			}
		}
		out.Entries = append(out.Entries, e)
	}
	if !found && value != "" {
		out.Entries = append(out.Entries, tree.Entry{Key: steps[0], Value: set(nil, steps[1:], value)})
	}
	if len(out.Entries) == 0 {
		return nil
	}
	return out
}

func entries(n *tree.Node) []tree.Entry {
	if n == nil {
		return nil
	}
	return n.Entries
}

// setItem changes one item of a list; "-" stands for a new one at its end.
func setItem(n *tree.Node, steps []string, value string) *tree.Node {
	var items []*tree.Node
	if n != nil {
		items = n.Items
	}
	out := &tree.Node{Kind: tree.List}
	i, err := strconv.Atoi(steps[0])
	if steps[0] == "-" {
		i, err = len(items), nil
	}
	if err != nil || i < 0 || i > len(items) {
		return n // nothing stands there; the decoder is not troubled with it
	}
	for k, item := range items {
		if k == i {
			item = set(item, steps[1:], value)
		}
		if item != nil {
			out.Items = append(out.Items, item)
		}
	}
	if i == len(items) {
		if item := set(nil, steps[1:], value); item != nil {
			out.Items = append(out.Items, item)
		}
	}
	if len(out.Items) == 0 {
		return nil
	}
	return out
}
