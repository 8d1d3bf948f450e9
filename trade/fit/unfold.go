package fit

import (
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// mostMovers is how many things may move from one mode to the next for their order to be looked for: every order of ten is looked at.
const mostMovers = 10

// mostBits is how many may move at all for anything to be said.
const mostBits = 64

var unfoldSource = finding.Source{Text: "the space that each moving thing passes through, in this build; every order looked at, the shortest taken", Sure: finding.Computed}

// unfold says for each mode in which order it is made up from the mode before it, or what bars it.
func (w *worker) unfold() {
	for m := range w.in.Modes {
		to := &w.in.Modes[m]
		if from := w.modeBefore(to); from != nil && !(w.leftOpen && from.Name == "drive") {
			w.unfoldTo(from, to)
		}
	}
}

// modeBefore is the mode that another is made up from: the day from driving, all others from the day.
func (w *worker) modeBefore(to *Mode) *Mode {
	before := map[string]string{"drive": "", "day": "drive"}
	name, ok := before[to.Name]
	if !ok {
		name = "day"
	}
	for m := range w.in.Modes {
		if w.in.Modes[m].Name == name {
			return &w.in.Modes[m]
		}
	}
	return nil
}

// mover is a thing that stands elsewhere in the two modes.
type mover struct {
	fitting  int
	position string      // that it takes; empty for where it rests
	path     solid.Solid // by way of where it rests

	walls   []meeting // what it meets that does not move
	fromBar uint64    // movers that bar it while they stand as before
	toBar   uint64    // movers that bar it once they have moved
}

func (w *worker) unfoldTo(from, to *Mode) {
	movers := moversBetween(from, to)
	if len(movers) == 0 || len(movers) > mostBits {
		return
	}
	for i := range movers {
		w.look(from, to, movers, i)
	}
	if len(movers) > mostMovers {
		w.unfoldMany(from, to, movers)
		return
	}
	if order, ok := shortestOrder(movers, nil); ok {
		w.showOrder(from, to, movers, order)
		return
	}
	w.reportBarred(to, movers, smallestBar(movers))
}

// unfoldMany is for more movers than every order can be looked at of: each goes as soon as it can. What never can since something that stays bars it is
// told; of one that the others bar it is not known whether another order would do.
func (w *worker) unfoldMany(from, to *Mode, movers []mover) {
	if order, ok := firstOrder(movers); ok {
		w.showOrder(from, to, movers, order)
		return
	}
	if slices.ContainsFunc(movers, func(m mover) bool { return len(m.walls) > 0 }) {
		w.reportBarred(to, movers, nil)
	}
}

// moversBetween are the things whose position differs.
func moversBetween(from, to *Mode) []mover {
	var movers []mover
	find := func(list []Mover, fitting int) *Mover {
		for i := range list {
			if list[i].Fitting == fitting {
				return &list[i]
			}
		}
		return nil
	}
	for _, m := range to.Movers {
		now := mover{fitting: m.Fitting, position: m.Position, path: slices.Clip(m.Path)}
		if was := find(from.Movers, m.Fitting); was != nil {
			if was.Position == m.Position {
				continue
			}
			now.path = append(now.path, was.Path...)
		}
		movers = append(movers, now)
	}
	for _, m := range from.Movers {
		if find(to.Movers, m.Fitting) == nil {
			movers = append(movers, mover{fitting: m.Fitting, path: m.Path})
		}
	}
	slices.SortFunc(movers, func(a, b mover) int { return a.fitting - b.fitting })
	return movers
}

// look says what mover i meets on its way.
func (w *worker) look(from, to *Mode, movers []mover, i int) {
	it := &movers[i]
	if len(it.path) == 0 {
		return
	}
	path := it.path.Boxed()
	b := path.Bounds()
	moving := map[int]int{}
	for j, m := range movers {
		moving[m.fitting] = j
	}
	for f := range w.in.Fittings {
		if f == it.fitting || w.belong(f, it.fitting) || w.in.Fittings[f].In {
			continue
		}
		j, moves := moving[w.moverOf(f, moving)]
		if moves && j == i {
			continue // it rides along
		}
		was := w.standsInWay(from, from, to, it, path, b, f)
		switch {
		case !moves && was.Depth > 0:
			it.walls = append(it.walls, meeting{fitting: f, way: was})
		case moves:
			if was.Depth > 0 {
				it.fromBar |= 1 << j
			}
			if w.standsInWay(to, from, to, it, path, b, f).Depth > 0 {
				it.toBar |= 1 << j
			}
		}
	}
	if m, leaves := w.leavesRoom(to, w.leaving(it.path, func() solid.Solid { return to.Standings[it.fitting].Solid })); leaves {
		it.walls = append(it.walls, m)
	}
}

// moverOf is the mover that takes a fitting along, itself included; the fitting itself if none does.
func (w *worker) moverOf(f int, moving map[int]int) int {
	at := f
	for range len(w.carriers) {
		if _, moves := moving[at]; moves {
			return at
		}
		if at = w.carriers[at]; at < 0 {
			break
		}
	}
	return f
}

// standsInWay says how deep a fitting stands in the path of a mover in a mode. What is in the mover itself, before it sets out or once it has arrived, is
// a foul of that mode and is said there.
func (w *worker) standsInWay(mode, from, to *Mode, it *mover, path solid.Boxed, about solid.Bounds, f int) solid.Way {
	s := &mode.Standings[f]
	if !s.Box.Meets(about) {
		return solid.Way{}
	}
	hit := w.meets(path, f, s)
	if hit.Depth == 0 {
		return hit
	}
	for _, at := range [2]*Mode{from, to} {
		if w.meets(at.Standings[it.fitting].Solid.Boxed(), f, &at.Standings[f]).Depth > 0 {
			return solid.Way{}
		}
	}
	return hit
}
