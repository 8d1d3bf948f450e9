package fit

import (
	"cmp"
	"slices"

	"tumblehome/solve/solid"
)

// foul is two fittings in one another.
type foul struct {
	a, b int
	way  solid.Way // by which a is soonest out of b
}

// fouls finds in every mode what is in what. Pairs that rest are judged once.
func (w *worker) fouls() {
	resting := map[[2]int]solid.Way{} // judged pairs at rest; depth 0 is no foul
	seen := map[[2]int][]string{}     // modes in which a pair at rest fouls
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		found, more := w.foulsIn(mode, resting)
		told, with := w.gathered(mode, found)
		for _, f := range told {
			if mode.Standings[f.a].Moved || mode.Standings[f.b].Moved {
				w.reportFoul(f, mode.Name, with)
				continue
			}
			if key := [2]int{f.a, f.b}; len(seen[key]) == 0 {
				w.reportFoul(f, "", with)
				seen[key] = append(seen[key], mode.Name)
			}
		}
		w.showFouls(mode, found, more)
	}
}

// mostFouls is after how many fouls in a mode no more are looked for: nobody reads so many, and things heaped on one spot have them by the million.
const mostFouls = 500

// foulsIn are the fouls of one mode, found by a sweep along x, and whether there may be more.
func (w *worker) foulsIn(mode *Mode, resting map[[2]int]solid.Way) (found []foul, more bool) {
	order := w.fromFront(mode)
	for n, i := range order {
		end := mode.Standings[i.at].Box.MaxX
		for _, j := range order[n+1:] {
			if j.by >= end || len(found) == mostFouls {
				break
			}
			a, b := min(i.at, j.at), max(i.at, j.at)
			if !mode.Standings[a].Box.Meets(mode.Standings[b].Box) || w.belong(a, b) {
				continue
			}
			if way := w.judge(mode, a, b, resting); way.Depth > 0 {
				found = append(found, foul{a, b, way})
			}
		}
	}
	more = len(found) == mostFouls
	known := make(map[[2]int]bool, len(found))
	for _, f := range found {
		known[[2]int{f.a, f.b}] = true
	}
	found = slices.DeleteFunc(found, func(f foul) bool { return w.followsFrom(f, known) })
	slices.SortFunc(found, func(f, g foul) int { return cmp.Or(cmp.Compare(f.a, g.a), cmp.Compare(f.b, g.b)) })
	return found, more
}

// fromFront are the hard things that a mode has somewhere, by where they begin along the van. It sets out from the order in the mode before, and
// in the reckoning before, which is nearly the same and so soon put right.
func (w *worker) fromFront(mode *Mode) []ranked {
	if w.now.fronts == nil {
		w.now.fronts = slices.Clone(w.was.fronts)
	}
	for i := len(w.now.fronts); i < len(mode.Standings); i++ {
		w.now.fronts = append(w.now.fronts, ranked{at: i})
	}
	for n := range w.now.fronts {
		w.now.fronts[n].by = mode.Standings[w.now.fronts[n].at].Box.MinX
	}
	rank(w.now.fronts)
	there := make([]ranked, 0, len(mode.Standings))
	for _, r := range w.now.fronts {
		if len(mode.Standings[r.at].Solid) > 0 && w.in.Fittings[r.at].Gives < 1 {
			there = append(there, r)
		}
	}
	return there
}

// belong says whether one carries the other, or the skin of the van is between them: these cannot foul.
func (w *worker) belong(a, b int) bool {
	return w.parted(a, b) || w.carries(a, b) || w.carries(b, a)
}

// parted says whether the skin of the van is between two fittings. Living space and cab are one space, and what sits in an opening is on both
// sides of the skin.
func (w *worker) parted(a, b int) bool {
	f, g := &w.in.Fittings[a], &w.in.Fittings[b]
	switch {
	case f.Where == g.Where || !f.isOutside() && !g.isOutside():
		return false
	case w.liesInside(a) || w.liesInside(b):
		return false
	case f.Where == "outside" && w.throughSkin(b) || g.Where == "outside" && w.throughSkin(a):
		return false
	}
	return true
}

// followsFrom says whether a foul only repeats that what holds one of the two fouls the other.
func (w *worker) followsFrom(f foul, known map[[2]int]bool) bool {
	for _, a := range w.holders(f.a) {
		for _, b := range w.holders(f.b) {
			if (a != f.a || b != f.b) && known[[2]int{min(a, b), max(a, b)}] {
				return true
			}
		}
	}
	return false
}

// holders are a fitting and, if it stands inside another, that other.
func (w *worker) holders(i int) []int {
	if w.in.Fittings[i].In && w.carriers[i] >= 0 {
		return []int{i, w.carriers[i]}
	}
	return []int{i}
}

// judge is the way by which a leaves b, with depth 0 if they only touch or one may be pressed so far.
func (w *worker) judge(mode *Mode, a, b int, resting map[[2]int]solid.Way) solid.Way {
	sa, sb := &mode.Standings[a], &mode.Standings[b]
	key := [2]int{a, b}
	atRest := !sa.Moved && !sb.Moved
	if atRest {
		if way, known := resting[key]; known {
			return way
		}
	}
	way := w.pairWay(sa.Solid, sb.Solid)
	if way.Depth <= touching+w.give(a, sa)+w.give(b, sb) {
		way = solid.Way{}
	}
	if atRest {
		resting[key] = way
	}
	return way
}
