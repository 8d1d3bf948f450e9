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
	if words, ok := wordList(n); ok {
		return words
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

// wordList writes a list of words as a person does: "small, tall".
func wordList(n *tree.Node) (string, bool) {
	if n.Kind != tree.List || len(n.Items) == 0 {
		return "", false
	}
	words := make([]string, len(n.Items))
	for i, item := range n.Items {
		if item.Kind != tree.Scalar || strings.ContainsAny(item.Text, ",[]{}") {
			return "", false
		}
		words[i] = item.Text
	}
	return strings.Join(words, ", "), true
}

// listNode reads what wordList writes.
func listNode(text string) *tree.Node {
	n := &tree.Node{Kind: tree.List}
	for word := range strings.SplitSeq(text, ",") {
		if word = strings.TrimSpace(word); word != "" {
			n.Items = append(n.Items, tree.Plain(word))
		}
	}
	return n
}

// change is one value that somebody wants at one place; an empty value takes away what is there.
type change struct {
	Path  tree.Pointer
	Value string
	List  bool // the value is a list of words
}

// node is the value as the document writes it; nil takes away what is there.
func (c change) node() *tree.Node {
	switch text := strings.TrimSpace(c.Value); {
	case text == "":
		return nil
	case c.List:
		return listNode(text)
	default:
		return valueNode(text)
	}
}

// patchOf is the patch that makes the changes in a document. Merge patches replace lists whole, so a change within a list carries all of it.
// A change of what is not there is refused: it would be lost without a word.
func patchOf(doc *tree.Node, changes []change) (tree.Patch, error) {
	wanted := doc
	for _, c := range changes {
		if strings.TrimSpace(c.Value) == valueText(wanted, c.Path) {
			continue
		}
		next := setNode(wanted, c.Path.Steps(), c.node())
		if tree.Equal(next, wanted) && !tree.Equal(next.At(c.Path), c.node()) {
			return tree.Patch{}, errUnreadable("there is no " + pathWords(c.Path.Path()) + " here to change")
		}
		wanted = next
	}
	return tree.Difference(doc, wanted), nil
}

// set is n with a text at the end of some steps.
func set(n *tree.Node, steps []string, text string) *tree.Node {
	return setNode(n, steps, change{Value: text}.node())
}

// setNode is n with a value at the end of some steps, or without one. Maps on the way that end empty are left out: the document has
// no empty ones.
func setNode(n *tree.Node, steps []string, value *tree.Node) *tree.Node {
	if len(steps) == 0 {
		return value
	}
	if n != nil && n.Kind == tree.List || n == nil && steps[0] == "-" {
		return setItem(n, steps, value)
	}
	out := &tree.Node{Kind: tree.Map}
	found := false
	for _, e := range entries(n) {
		if e.Key == steps[0] {
			found = true
			if e.Value = setNode(e.Value, steps[1:], value); e.Value == nil {
				continue
			}
		}
		out.Entries = append(out.Entries, e)
	}
	if !found && value != nil {
		out.Entries = append(out.Entries, tree.Entry{Key: steps[0], Value: setNode(nil, steps[1:], value)})
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
func setItem(n *tree.Node, steps []string, value *tree.Node) *tree.Node {
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
			item = setNode(item, steps[1:], value)
		}
		if item != nil {
			out.Items = append(out.Items, item)
		}
	}
	if i == len(items) {
		if item := setNode(nil, steps[1:], value); item != nil {
			out.Items = append(out.Items, item)
		}
	}
	if len(out.Items) == 0 {
		return nil
	}
	return out
}
