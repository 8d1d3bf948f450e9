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
		if way := w.wayFree(one.thing, one.it, one.off); way.Depth >= 0.5 && !math.IsInf(way.Depth, 1) { // less is no move that anybody can make
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
	best := w.shortest(i, it, it.Solid.Exits(off.Solid))
	w.now.exits[key] = best
	return best
}

// shortest is the shortest of six ways for which there is room, without end if there is none.
func (w *worker) shortest(i int, it *Standing, far [6]float64) solid.Way {
	sides := [6]solid.Side{solid.Front, solid.Rear, solid.Left, solid.Right, solid.Floor, solid.Roof}
	slices.SortStableFunc(sides[:], func(a, b solid.Side) int { return cmp.Compare(far[a], far[b]) })
	for _, side := range sides {
		if !math.IsInf(far[side], 1) && w.roomFor(i, it, side, far[side]) {
			d := solid.Directions[side]
			return solid.Way{X: d[0], Y: d[1], Z: d[2], Depth: far[side]}
		}
	}
	return solid.Way{Depth: math.Inf(1)}
}

// roomFor says whether a thing may go so far towards a side without standing out of it farther than it does.
func (w *worker) roomFor(i int, s *Standing, to solid.Side, far float64) bool {
	f := w.in.Fittings[i]
	if f.isOutside() { // what is screwed to the roof or under the floor stays on it: up or down it would hang in the air
		return to != solid.Floor && to != solid.Roof
	}
	if f.Where == "cab" && to == solid.Floor {
		return false
	}
	d := solid.Directions[to]
	there := s.Box.Moved(d[0]*far, d[1]*far, d[2]*far)
	if w.safe().holds(there) {
		return true
	}
	out, was := w.boxExcess(there, to), w.boxExcess(s.Box, to)
	if f.Where == "cab" {
		out, was = w.beyondCab(there, to, out), w.beyondCab(s.Box, to, was)
	}
	return out <= touching || out <= was
}
