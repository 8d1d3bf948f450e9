package fit

import (
	"fmt"
	"slices"
)

// gathered are the fouls to be told, and with each what lies on one of the two and fouls the other as well: a mattress and its bed in the same
// locker are one matter.
func (w *worker) gathered(mode *Mode, found []foul) (told []foul, with map[[2]int][]int) {
	moved := func(f foul) bool { return mode.Standings[f.a].Moved || mode.Standings[f.b].Moved }
	known := make(map[[2]int]bool, len(found))
	for _, f := range found {
		known[[2]int{f.a, f.b}] = moved(f)
	}
	with = map[[2]int][]int{}
	for _, f := range found {
		if of, thing, follows := w.carriedIn(f, moved(f), known); follows {
			with[of] = append(with[of], thing)
		} else {
			told = append(told, f)
		}
	}
	return told, with
}

// carriedIn is the foul of what carries one of two that foul with the other, if that is known and told of in the same mode, and the one that is carried.
func (w *worker) carriedIn(f foul, moved bool, known map[[2]int]bool) (of [2]int, thing int, follows bool) {
	for _, two := range [2][2]int{{f.a, f.b}, {f.b, f.a}} {
		lowest := -1
		for c, n := w.carriers[two[0]], 0; c >= 0 && n < len(w.carriers); c, n = w.carriers[c], n+1 {
			if m, in := known[[2]int{min(c, two[1]), max(c, two[1])}]; in && m == moved {
				lowest = c
			}
		}
		if lowest >= 0 {
			return [2]int{min(lowest, two[1]), max(lowest, two[1])}, two[0], true
		}
	}
	return of, 0, false
}

// inItAsWell says what lies on one of two that foul and is in the other as well.
func (w *worker) inItAsWell(f foul, with map[[2]int][]int) string {
	things := with[[2]int{f.a, f.b}]
	if len(things) == 0 {
		return ""
	}
	names, _ := w.namesOf(things)
	host, other := f.a, f.b
	if !slices.ContainsFunc(things, func(i int) bool { return w.carries(f.a, i) }) {
		host, other = f.b, f.a
	}
	return fmt.Sprintf(" What %s carries is in %s with it: %s.", w.name(host), w.name(other), and(names))
}

// pointersTo are the pointers to some things.
func (w *worker) pointersTo(things []int) []string {
	_, pointers := w.namesOf(things)
	return pointers
}
