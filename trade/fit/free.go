package fit

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// freeWay is the shortest way along an axis by which one of two that foul leaves the other and stays in the room.
type freeWay struct {
	thing int
	way   solid.Way
}

// freeWays are those of both, the shorter first; none for what cannot.
func (w *worker) freeWays(f foul, modeName string) []freeWay {
	mode := w.mode(modeName)
	if mode == nil {
		return nil
	}
	a, b := &mode.Standings[f.a], &mode.Standings[f.b]
	var ways []freeWay
	for _, one := range []struct {
		thing   int
		it, off *Standing
	}{{f.a, a, b}, {f.b, b, a}} {
		if way := w.wayFree(one.thing, one.it, one.off); !math.IsInf(way.Depth, 1) {
			ways = append(ways, freeWay{one.thing, way})
		}
	}
	slices.SortStableFunc(ways, func(x, y freeWay) int { return cmp.Compare(x.way.Depth, y.way.Depth) })
	return ways
}

// wayFree is the shortest way of one thing off another that keeps in the room, without end if there is none. What sits in an opening stays there.
func (w *worker) wayFree(i int, it, off *Standing) solid.Way {
	if w.in.Fittings[i].For != "" {
		return solid.Way{Depth: math.Inf(1)}
	}
	key := [2]shape{shapeOf(it.Solid), shapeOf(off.Solid)}
	if best, known := w.was.exits[key]; known {
		w.now.exits[key] = best
		return best
	}
	best := solid.Way{Depth: math.Inf(1)}
	for side, d := range solid.Directions {
		far := it.Solid.Exit(off.Solid, d[0], d[1], d[2])
		if far < best.Depth && w.roomFor(i, it, solid.Side(side), far) {
			best = solid.Way{X: d[0], Y: d[1], Z: d[2], Depth: far}
		}
	}
	w.now.exits[key] = best
	return best
}

// roomFor says whether a thing may go so far towards a side without standing out of it farther than it does.
func (w *worker) roomFor(i int, s *Standing, to solid.Side, far float64) bool {
	if w.in.Fittings[i].Where != "" {
		return to != solid.Floor
	}
	d := solid.Directions[to]
	return w.boxExcess(s.Box.Moved(d[0]*far, d[1]*far, d[2]*far), to) <= max(touching, w.boxExcess(s.Box, to))
}
