package catalogue

import (
	"slices"
	"strings"

	"tumblehome/quantity"
)

// Near are up to five names that a name which is no row and no material was
// perhaps meant to be, the likeliest first: a slip of the pen, then names that
// share most words with it.
func (c *Catalogue) Near(name string) []string {
	candidates := slices.Compact(slices.Sorted(slices.Values(append(c.RowIDs(), c.MaterialNames()...))))
	var near []string
	if slip := quantity.Near(name, candidates); slip != "" {
		near = append(near, slip)
	}
	words := strings.Split(name, "-")
	type hit struct {
		name  string
		score int
	}
	var hits []hit
	for _, candidate := range candidates {
		if s := sharedWords(words, candidate); s > 0 && !slices.Contains(near, candidate) {
			hits = append(hits, hit{candidate, s})
		}
	}
	slices.SortStableFunc(hits, func(a, b hit) int {
		if a.score != b.score {
			return b.score - a.score
		}
		return len(a.name) - len(b.name)
	})
	for _, h := range hits {
		if len(near) == 5 {
			break
		}
		near = append(near, h.name)
	}
	return near
}

// sharedWords counts the words of a name found in another, a whole word twice
// and its beginning once.
func sharedWords(words []string, in string) int {
	score := 0
	parts := strings.Split(in, "-")
	for _, w := range words {
		switch {
		case w == "":
		case slices.Contains(parts, w):
			score += 2
		case len(w) >= 3 && slices.ContainsFunc(parts, func(p string) bool { return strings.HasPrefix(p, w) || len(p) >= 3 && strings.HasPrefix(w, p) }):
			score++
		}
	}
	return score
}
