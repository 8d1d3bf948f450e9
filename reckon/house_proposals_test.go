package reckon_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
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

// sameAct is by how little one number must differ from another to be the same act to a builder [mm].
const sameAct = 10

// Nobody is offered one act twice: 190 mm and 191 mm to the left.
func TestNoProposalRepeatsAnother(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Findings {
			for i, p := range f.Proposals {
				if strings.Contains(p.Words, " 0 mm") {
					t.Errorf("%s %v proposes to %s", f.Code, f.About, p.Words)
				}
				for _, q := range f.Proposals[:i] {
					if sameButForAFew(leaves(t, p), leaves(t, q)) {
						t.Errorf("%s %v proposes to %s, and to %s", f.Code, f.About, q.Words, p.Words)
					}
				}
			}
		}
	})
}

// leaves are the values of a patch, by where they stand.
func leaves(t *testing.T, p finding.Proposal) map[string]string {
	patch, err := tree.ParsePatch(p.Patch)
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]string{}
	var walk func(at string, n *tree.Node)
	walk = func(at string, n *tree.Node) {
		for i := range n.Entries {
			walk(at+"/"+n.Entries[i].Key, n.Entries[i].Value)
		}
		for i := range n.Items {
			walk(fmt.Sprint(at, "/", i), n.Items[i])
		}
		if n.Kind == tree.Scalar {
			out[at] = n.Text
		}
	}
	walk("", tree.Merge(&tree.Node{Kind: tree.Map}, patch))
	return out
}

// sameButForAFew says whether two patches write the same in the same places, but for one number a few millimetres off.
func sameButForAFew(a, b map[string]string) bool {
	differ := 0
	for at, text := range a {
		other, there := b[at]
		if !there {
			return false
		}
		if text == other {
			continue
		}
		one, errOne := build.ParseAxisRule(text)
		two, errTwo := build.ParseAxisRule(other)
		if differ++; errOne != nil || errTwo != nil || one.Form != two.Form || one.A.Face != two.A.Face || one.A.Of != two.A.Of || math.Abs((one.A.Plus-two.A.Plus).Float()) >= sameAct {
			return false
		}
	}
	return len(a) == len(b) && differ <= 1
}
