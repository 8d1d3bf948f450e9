package web

import (
	"fmt"
	"strings"

	"tumblehome/build/tree"
)

// wordsOf describes a patch for the history: "settle, place along the van: 1010 → 1110".
func wordsOf(before *tree.Node, patch tree.Patch) string {
	const told = 3
	after := tree.Merge(before, patch)
	var touched []tree.Pointer
	for _, p := range patch.Touches() {
		touched = append(touched, differing(before.At(p), after.At(p), p)...)
	}
	var parts []string
	for i, p := range touched {
		if i == told {
			parts = append(parts, fmt.Sprintf("%d more", len(touched)-told))
			break
		}
		parts = append(parts, changeWords(before, after, p))
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
	what := pathWords(p.Path())
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
