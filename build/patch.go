package build

import (
	"fmt"

	"tumblehome/build/tree"
)

// Apply is the document with a patch merged in; the document stays as it was.
// An edit that would break any rule, a reference left hanging among them, is
// refused with an error of type Faults.
func Apply(doc *Document, p tree.Patch, rows RowSource) (*Document, error) {
	return DecodeTree(tree.Merge(Encode(doc), p), rows)
}

// TakeAlternative is the document with one of its alternatives taken: what it
// is without removed, then what it is with merged in.
func TakeAlternative(doc *Document, id string, rows RowSource) (*Document, error) {
	alternative, ok := doc.Alternatives[id]
	if !ok {
		f := notIn("alternatives", id, Encode(doc).Get("alternatives"))
		return nil, Faults{{Kind: References, Path: "alternatives", Wrong: f.Wrong, Expected: f.Expected, Near: someOf(f.Near)}}
	}
	n := Encode(doc)
	for _, path := range alternative.Without {
		n = tree.Remove(n, tree.Dotted(path))
	}
	if alternative.With != nil {
		n = tree.Merge(n, alternative.With.Patch())
	}
	removed := make([]tree.Pointer, len(alternative.Without))
	for i, path := range alternative.Without {
		removed[i] = tree.Dotted(path)
	}
	// What one alternative takes away another may name: they are left out.
	taken, err := decode("", tree.Remove(n, "/alternatives"), rows, removed...)
	if err != nil {
		return nil, fmt.Errorf("alternative %s: %w", id, err)
	}
	return taken, nil
}

func someOf(near string) []string {
	if near == "" {
		return nil
	}
	return []string{near}
}
