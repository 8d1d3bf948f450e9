package catalogue

import (
	"math"
	"slices"
	"strings"
)

// Search finds rows by a beginner's words, best first, at most twenty: their
// usual meaning, then words of id and name. A size in the words (20 l, 180 W,
// 100 Ah) draws rows near it forward. Every word must be found.
func (c *Catalogue) Search(text string) []string {
	w := ReadWish(text)
	type hit struct {
		id    string
		score float64
	}
	var hits []hit
	for _, id := range c.RowIDs() {
		row, _ := c.Row(id)
		if score := w.score(id, row); score > 0 {
			hits = append(hits, hit{id, score})
		}
	}
	slices.SortStableFunc(hits, func(a, b hit) int {
		switch {
		case a.score != b.score:
			return int(math.Copysign(1, b.score-a.score))
		case len(a.id) != len(b.id):
			return len(a.id) - len(b.id)
		}
		return strings.Compare(a.id, b.id)
	})
	ids := make([]string, 0, 20)
	for _, h := range hits[:min(20, len(hits))] {
		ids = append(ids, h.id)
	}
	return ids
}

// score of a row: the sum over the words, more for what is placed than for
// what it is made of, and up to 6 for a named size that is near.
func (w Wish) score(id string, row Row) float64 {
	if len(w.Words) == 0 {
		return 0
	}
	sum := 0.0
	for _, word := range w.Words {
		one := scoreWord(word, id, row)
		if one == 0 {
			return 0
		}
		sum += one
	}
	if row.Size != nil {
		sum += 1 + closeness(float64(w.Long), value(row.Size.X).Float())
	}
	return sum + closeness(float64(w.Holds), value(row.Holds).Float()) +
		closeness(float64(w.Watts), value(row.Watts).Float()) + closeness(float64(w.AmpHours), value(row.AmpHours).Float())
}

// scoreWord is 12 for the usual meaning of a word, less the further back it
// stands; 5 for a word of the id, 3 of the name or group, 1 for a beginning.
func scoreWord(word, id string, row Row) float64 {
	for i, beginning := range meant[word] {
		if strings.HasPrefix(id, beginning) {
			return max(6, 12-float64(i))
		}
	}
	best := 0.0
	consider := func(part string, whole float64) {
		switch {
		case part == word:
			best = max(best, whole)
		case len(word) >= 3 && strings.HasPrefix(part, word):
			best = max(best, 1)
		}
	}
	for part := range strings.SplitSeq(id, "-") {
		consider(part, 5)
	}
	for part := range strings.FieldsFuncSeq(strings.ToLower(row.Name), func(r rune) bool { return r == ' ' || r == ',' || r == '(' || r == ')' }) {
		consider(part, 3)
	}
	consider(row.Group, 3)
	return best
}

// closeness is 6 for what was asked, falling to 0 at half or twice as much.
func closeness(asked, have float64) float64 {
	if asked <= 0 || have <= 0 {
		return 0
	}
	return 6 * max(0, 1-math.Abs(math.Log2(have/asked)))
}
