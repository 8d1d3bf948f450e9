package reckon_test

import (
	"slices"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

func TestWhatIsProposedCanBeDone(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		root := build.Encode(b.doc)
		for _, f := range b.Findings {
			for _, p := range f.Proposals {
				patch, err := tree.ParsePatch(p.Patch)
				if err != nil || patch.Empty() {
					t.Errorf("%s proposes to %s, but by %s: %v", f.Code, p.Words, p.Patch, err)
					continue
				}
				if tree.Equal(root, tree.Merge(root, patch)) {
					t.Errorf("%s proposes to %s, which changes nothing: %s", f.Code, p.Words, p.Patch)
				}
				if _, err := build.Apply(b.doc, patch, catalogue.Builtin()); err != nil {
					t.Errorf("%s proposes to %s, and the document is refused: %v", f.Code, p.Words, err)
				}
				for _, at := range patch.Touches() {
					if steps := at.Steps(); root.At(tree.PointerTo(steps[:len(steps)-1]...)) == nil && !isNewThing(root, steps) {
						t.Errorf("%s proposes to %s at %s, where nothing is", f.Code, p.Words, at)
					}
				}
			}
		}
	})
}

// isNewThing says whether a place lies in a thing that is new in a collection that is there, or would be the first of its kind in a section that is.
func isNewThing(root *tree.Node, steps []string) bool {
	return len(steps) < 3 || root.At(tree.PointerTo(steps[:len(steps)-2]...)) != nil || len(steps) == 4 && root.At(tree.PointerTo(steps[0])) != nil
}

// A proposal clears what it is for, or at least makes it less grave.
func TestWhatIsProposedClearsWhatItIsProposedFor(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		machine := quick() // what a proposal does not touch is remembered
		for _, f := range b.Findings {
			for _, p := range f.Proposals {
				patch, err := tree.ParsePatch(p.Patch)
				if err != nil {
					t.Fatal(err)
				}
				after := machine.Reckon(applied(t, b.doc, patch), quantity.Date{})
				if slices.ContainsFunc(after.Findings, func(g finding.Finding) bool {
					return g.Key() == f.Key() && g.Mode == f.Mode && g.Severity >= f.Severity
				}) {
					t.Errorf("%s %v is still found, no less grave, after: %s", f.Code, f.About, p.Words)
				}
			}
		}
	})
}
