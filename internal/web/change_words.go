package web

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// wordsOf describes a patch for the history: "settle, place along the van: 1010 → 1110".
func wordsOf(before *tree.Node, patch tree.Patch) string {
	const told = 3
	after := tree.Merge(before, patch)
	var touched []tree.Pointer
	for _, p := range patch.Touches() {
		for _, place := range differing(before.At(p), after.At(p), p) {
			if place = posed(place); !slices.Contains(touched, place) {
				touched = append(touched, place)
			}
		}
	}
	var parts []string
	for i, p := range touched {
		if i == told {
			parts = append(parts, fmt.Sprintf("%d more", len(touched)-told))
			break
		}
		if said, ok := poseChange(before, after, p); ok {
			parts = append(parts, said)
		} else {
			parts = append(parts, changeWords(before, after, p))
		}
	}
	return strings.Join(parts, "; ")
}

// differing goes into lists, which patches replace whole, for the places where two of equal length differ.
func differing(before, after *tree.Node, p tree.Pointer) []tree.Pointer {
	if before == nil || after == nil || before.Kind != after.Kind || before.Kind == tree.Scalar || len(before.Items) != len(after.Items) {
		return []tree.Pointer{p}
	}
	var out []tree.Pointer
	for i := range before.Items {
		if !tree.Equal(before.Items[i], after.Items[i]) {
			out = append(out, differing(before.Items[i], after.Items[i], p.Then(count(i)))...)
		}
	}
	for _, q := range tree.Difference(before, after).Touches() {
		if before.Kind == tree.Map {
			out = append(out, p+q)
		}
	}
	return out
}

func changeWords(before, after *tree.Node, p tree.Pointer) string {
	const longest = 40
	from, to := valueText(before, p), valueText(after, p)
	what := thingWords(before, after, p)
	switch {
	case to == "":
		return what + " taken out"
	case len([]rune(to)) > longest:
		return what + " changed"
	case from == "" || len([]rune(from)) > longest:
		return what + ": " + to
	}
	return what + ": " + from + " → " + to
}

// thingWords are the words of a place in the document, where a fitting is called by its name.
func thingWords(before, after *tree.Node, p tree.Pointer) string {
	words, steps := pathWords(p.Path()), p.Steps()
	if len(steps) < 2 || steps[0] != "fittings" {
		return words
	}
	rest, found := strings.CutPrefix(words, unhyphen(steps[1]))
	if !found {
		return words
	}
	doc := before
	if doc.At(tree.PointerTo("fittings", steps[1])) == nil {
		doc = after
	}
	return called(doc, "fittings", steps[1]) + rest
}

// posed is what somebody does in a mode, for a place below that but the head: lying instead of sitting is one change, not two.
func posed(p tree.Pointer) tree.Pointer {
	steps := p.Steps()
	if len(steps) == 5 && steps[0] == "modes" && steps[2] == "people" && steps[4] != "head" {
		return tree.PointerTo(steps[:4]...)
	}
	return p
}

// poseChange says in a sentence what somebody does from now on: "drive: Sam sits on the bed".
func poseChange(before, after *tree.Node, p tree.Pointer) (string, bool) {
	steps := p.Steps()
	if len(steps) != 4 || steps[0] != "modes" || steps[2] != "people" {
		return "", false
	}
	who := unhyphen(steps[1]) + ": " + called(after, "people", steps[3]) + " "
	for _, verb := range verbs {
		if at := valueText(after, p.Then(verb)); at != "" {
			return who + poseWords(verb) + " " + called(after, "fittings", at), true
		}
	}
	for _, verb := range verbs {
		if at := valueText(before, p.Then(verb)); at != "" {
			return who + "no longer " + poseWords(verb) + " " + called(before, "fittings", at), true
		}
	}
	return "", false
}

// verbs are what people do in the document's grammar.
var verbs = []string{"lies", "sits", "stands", "cooks"}

// called is the name of an item, as the builder says it.
func called(doc *tree.Node, section, id string) string {
	if section == "fittings" {
		return cmp.Or(namesOf(doc)[id], unhyphen(id))
	}
	return cmp.Or(valueText(doc, tree.PointerTo(section, id, "called")), unhyphen(id))
}

// namesOf are the names of the fittings of a document as it is written.
func namesOf(doc *tree.Node) map[string]string {
	all := map[string]build.Fitting{}
	for _, e := range entries(doc.At("/fittings")) {
		all[e.Key] = build.Fitting{Called: valueText(doc, tree.PointerTo("fittings", e.Key, "called"))}
	}
	return build.Names(all)
}
