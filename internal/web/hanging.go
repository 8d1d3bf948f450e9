package web

import (
	"errors"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// mostRounds is how far references may lead from one thing to the next.
const mostRounds = 12

// takenOut is a document without a fitting and what hangs on it, and the places that hung. The document's own decoder finds them: what it
// says about references that lead nowhere once the fitting is gone. Nothing hangs when there are no places.
func (s *state) takenOut(doc *tree.Node, id string, rows *catalogue.Catalogue) (rest *tree.Node, hung []tree.Pointer, err error) {
	rest = tree.Remove(doc, tree.PointerTo("fittings", id))
	for range mostRounds {
		_, err = build.DecodeTree(rest, rows)
		var faults build.Faults
		if !errors.As(err, &faults) {
			return rest, hung, err
		}
		next := rest
		for i := len(faults) - 1; i >= 0; i-- { // later items of a list first, so that positions stay true
			if faults[i].Kind != build.References {
				return rest, hung, err
			}
			hung = append(hung, tree.Dotted(faults[i].Path))
			next = s.loosen(next, tree.Dotted(faults[i].Path).Steps())
		}
		if tree.Equal(next, rest) {
			return rest, hung, err
		}
		rest = next
	}
	return rest, hung, err
}

// loosen takes out what makes no sense without what it referred to. Money that was spent stays spent, and a fitting that stood against
// the one taken out stays where it stands.
func (s *state) loosen(doc *tree.Node, steps []string) *tree.Node {
	at := func(n int) *tree.Node { return tree.Remove(doc, tree.PointerTo(steps[:min(n, len(steps))]...)) }
	switch {
	case len(steps) > 3 && steps[0] == "fittings" && steps[2] == "at":
		return s.stay(doc, steps)
	case len(steps) > 2 && steps[0] == "fittings" && (steps[2] == "in" || steps[2] == "upon" || steps[2] == "for"),
		len(steps) > 1 && (steps[0] == "accepted" || steps[0] == "runs"):
		return at(2)
	case len(steps) > 3 && steps[0] == "modes" && steps[2] == "people",
		len(steps) > 3 && steps[0] == "water" && steps[1] == "taps":
		return at(map[string]int{"modes": 4, "water": 3}[steps[0]])
	}
	return dropEmpty(at(len(steps)), steps[:len(steps)-1])
}

// dropEmpty leaves out a list or map that has lost its last item.
func dropEmpty(doc *tree.Node, steps []string) *tree.Node {
	p := tree.PointerTo(steps...)
	if n := doc.At(p); n != nil && n.Kind != tree.Scalar && len(n.Entries)+len(n.Items) == 0 {
		return tree.Remove(doc, p)
	}
	return doc
}
