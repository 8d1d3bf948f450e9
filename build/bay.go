package build

import (
	"slices"
	"strconv"
	"strings"
)

// BayWords says bays as one finds them in the van: left-2 and left-3 are "on the left the second and third space between ribs". Spaces are counted from
// the front; each bay is said once. What is no bay keeps its id, without hyphens.
func BayWords(ids ...string) string {
	var parts, order []string
	numbers := map[string][]int{}
	for _, id := range ids {
		surface, number, found := strings.Cut(id, "-")
		n, err := strconv.Atoi(number)
		if _, known := baySurfaces[surface]; !found || err != nil || n < 1 || !known {
			surface, n = strings.ReplaceAll(id, "-", " "), 0
		}
		if !slices.Contains(order, surface) {
			order = append(order, surface)
		}
		if n > 0 && !slices.Contains(numbers[surface], n) {
			numbers[surface] = append(numbers[surface], n)
		}
	}
	for _, surface := range order {
		all := numbers[surface]
		if len(all) == 0 {
			parts = append(parts, surface)
			continue
		}
		slices.Sort(all)
		where := baySurfaces[surface]
		parts = append(parts, where.on+" the "+counts(all)+" space between "+where.ribs)
	}
	return strings.Join(parts, "; ")
}

var baySurfaces = map[string]struct{ on, ribs string }{
	"left": {"on the left", "ribs"}, "right": {"on the right", "ribs"}, "roof": {"under the roof", "bows"},
}

// counts are ordinals in their order, a run of three or more as its ends: first to fourth, sixth and seventh.
func counts(all []int) string {
	var said []string
	for i := 0; i < len(all); {
		j := i
		for j+1 < len(all) && all[j+1] == all[j]+1 {
			j++
		}
		if j-i >= 2 {
			said = append(said, ordinal(all[i])+" to "+ordinal(all[j]))
		} else {
			for k := i; k <= j; k++ {
				said = append(said, ordinal(all[k]))
			}
		}
		i = j + 1
	}
	if last := len(said) - 1; last > 0 {
		return strings.Join(said[:last], ", ") + " and " + said[last]
	}
	return said[0]
}

// ordinal is a small ordinal in words, a larger one in figures.
func ordinal(n int) string {
	small := [...]string{"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"}
	if n <= len(small) {
		return small[n-1]
	}
	return strconv.Itoa(n) + "th"
}
