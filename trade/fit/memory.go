package fit

import (
	"slices"
	"strings"

	"tumblehome/solve/solid"
)

// Memory keeps the judgements of one working-out for the next, which most often differs from it by one fitting. What stands where it
// stood is known by its solid being the very same; the answers are the same with a memory or without.
type Memory struct {
	room  string
	pairs map[[2]shape]solid.Way
	outs  map[side]float64
	parts map[partAt]partKnown
}

// shape is a solid by where it is kept: equal shapes are the same solid.
type shape struct {
	first *solid.Prism
	of    int
}

func shapeOf(s solid.Solid) shape {
	if len(s) == 0 {
		return shape{}
	}
	return shape{&s[0], len(s)}
}

// side of a shape and its box.
type side struct {
	of  shape
	box solid.Bounds
	to  solid.Side
}

// partAt is a part of a fitting that stands so, in a mode with these openings open.
type partAt struct {
	host   shape
	part   any
	mode   string
	opened string
}

// partKnown is how far a part opened among what stood around it.
type partKnown struct {
	reach  solid.Bounds
	around []neighbour
	opened opened
	meets  string // ids of what it meets, and of what bars it
	bars   string
}

// neighbour is a fitting that stands within reach.
type neighbour struct {
	shape   shape
	fitting Fitting
}

// remember makes an empty memory for this working-out; was is that of the last one, if it was in the same room.
func remember(in Inputs) (was, now *Memory) {
	now = &Memory{room: in.RoomKey, pairs: map[[2]shape]solid.Way{}, outs: map[side]float64{}, parts: map[partAt]partKnown{}}
	if in.Before == nil || in.RoomKey == "" || in.Before.room != in.RoomKey {
		return &Memory{}, now
	}
	return in.Before, now
}

// pairWay is the way by which a leaves b, with depth 0 where they only touch.
func (w *worker) pairWay(a, b solid.Solid) solid.Way {
	key := [2]shape{shapeOf(a), shapeOf(b)}
	way, known := w.was.pairs[key]
	if !known {
		if deep, in := a.Deepest(b); in && deep.Depth > touching {
			way = a.WayOut(b)
		}
	}
	w.now.pairs[key] = way
	return way
}

// sideExcess is how far a standing reaches out of a side.
func (w *worker) sideExcess(s *Standing, to solid.Side) float64 {
	key := side{shapeOf(s.Solid), s.Box, to}
	by, known := w.was.outs[key]
	if !known {
		by = w.excess(s, to)
	}
	w.now.outs[key] = by
	return by
}

// openingKnown is opening, remembered.
func (w *worker) openingKnown(mode *Mode, p *Part) opened {
	at := partAt{shapeOf(mode.Standings[p.Fitting].Solid), p.Key, mode.Name, strings.Join(mode.Open, " ")}
	known, found := w.was.parts[at]
	if found && slices.Equal(known.around, w.around(mode, p, known.reach)) {
		known.opened.meets.fitting = w.again(known.opened.meets.fitting, known.meets)
		known.opened.bars.fitting = w.again(known.opened.bars.fitting, known.bars)
	} else {
		known = partKnown{reach: reachOf(p), opened: w.opening(mode, p)}
		known.around = w.around(mode, p, known.reach)
		known.meets, known.bars = w.idOf(known.opened.meets), w.idOf(known.opened.bars)
	}
	w.now.parts[at] = known
	return known.opened
}

// again is where a fitting is among the inputs now.
func (w *worker) again(was int, id string) int {
	if was < 0 || id == "" {
		return was
	}
	return w.index[id]
}

func (w *worker) idOf(m meeting) string {
	if m.fitting < 0 || m.fitting >= len(w.in.Fittings) {
		return ""
	}
	return w.in.Fittings[m.fitting].ID
}

// around is what stands within reach of a part.
func (w *worker) around(mode *Mode, p *Part, reach solid.Bounds) []neighbour {
	var all []neighbour
	for i := range mode.Standings {
		if s := &mode.Standings[i]; i != p.Fitting && s.Box.Meets(reach) {
			all = append(all, neighbour{shapeOf(s.Solid), w.in.Fittings[i]})
		}
	}
	return all
}

// reachOf is the box about all that a part passes through, with what may stand upon it.
func reachOf(p *Part) solid.Bounds {
	reach := solid.Nothing
	for way := range p.Ways {
		reach = reach.Join(p.Swept(way, 1).Bounds())
	}
	reach.MinZ, reach.MaxZ = reach.MinZ-touching, reach.MaxZ+touching
	return reach
}
