package settings

import (
	"sort"
	"strings"
)

// Search are the settings that go by these words, best first: the id itself,
// then another word for it, then the beginning of one.
// Every word must be found; capitals do not matter. No words find nothing.
func Search(words []string) []Setting {
	type hit struct {
		at, score int
	}
	var hits []hit
	for i, s := range all {
		if score := s.score(words); score > 0 {
			hits = append(hits, hit{i, score})
		}
	}
	sort.SliceStable(hits, func(a, b int) bool { return hits[a].score > hits[b].score })
	found := make([]Setting, len(hits))
	for i, h := range hits {
		found[i] = all[h.at]
	}
	return found
}

func (s Setting) score(words []string) int {
	sum := 0
	for _, w := range words {
		one := s.scoreOf(strings.ToLower(w))
		if one == 0 {
			return 0
		}
		sum += one
	}
	return sum
}

// scoreOf one word: 8 for the id, 5 for another word for it (4 and 3 where it
// stands second or later), 3 for a part of the id, 1 for a beginning.
func (s Setting) scoreOf(w string) int {
	if s.ID == w {
		return 8
	}
	best := 0
	consider := func(other string, whole int) {
		if other == w {
			best = max(best, whole)
		} else if len(w) >= 3 && strings.HasPrefix(other, w) {
			best = max(best, 1)
		}
	}
	for i, other := range s.Words {
		consider(other, 5-min(i, 2))
	}
	for part := range strings.SplitSeq(s.ID, "-") {
		consider(part, 3)
	}
	return best
}
