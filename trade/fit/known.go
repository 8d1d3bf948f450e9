package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

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

// outside is how far a shape reaches out of each side, in its box and with the faces that are cut to a surface.
type outside struct {
	box     solid.Bounds
	moved   bool
	scribed [6]bool
	by      [6]float64
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

// excesses are how far a standing reaches out of each side.
func (w *worker) excesses(s *Standing) [6]float64 {
	of := shapeOf(s.Solid)
	var scribed [6]bool
	for _, side := range s.Scribed {
		scribed[side] = true
	}
	out := w.was.outs[of]
	if out == nil || out.box != s.Box || out.moved != s.Moved || out.scribed != scribed {
		out = &outside{box: s.Box, moved: s.Moved, scribed: scribed}
		for side := range out.by {
			out.by[side] = w.excess(s, solid.Side(side))
		}
	}
	w.now.outs[of] = out
	return out.by
}

// partAt is a part of a fitting in a mode.
type partAt struct {
	fitting int
	part    any
	mode    string
}

// openingKnown is opening, remembered: from the reckoning before, or from another mode in which all about the part is the same.
func (w *worker) openingKnown(mode *Mode, p *Part, hangs []hung) opened {
	return recall(w, w.was.parts, w.now.parts, mode, partAt{p.Fitting, p.Key, mode.Name}, all, func() (opened, solid.Bounds) {
		for m := range w.in.Modes {
			other := &w.in.Modes[m]
			if known := w.now.parts[partAt{p.Fitting, p.Key, other.Name}]; known != nil && w.alikeAbout(mode, other, known.reach) {
				is := known.is
				is.mode = mode.Name
				return is, known.reach
			}
		}
		return w.opening(mode, p, hangs)
	})
}

// alikeAbout says whether two modes differ in nothing within reach.
func (w *worker) alikeAbout(a, b *Mode, reach solid.Bounds) bool {
	near := func(i int) bool {
		return a.Standings[i].Box.Meets(reach) || b.Standings[i].Box.Meets(reach)
	}
	return slices.Equal(a.Open, b.Open) && !slices.ContainsFunc(w.moved(a), near) && !slices.ContainsFunc(w.moved(b), near)
}

// moved are the fittings that are not where they rest in a mode, looked for once.
func (w *worker) moved(mode *Mode) []int {
	moved, known := w.movedIn[mode.Name]
	if !known {
		for i := range mode.Standings {
			if mode.Standings[i].Moved {
				moved = append(moved, i)
			}
		}
		w.movedIn[mode.Name] = moved
	}
	return moved
}

// spotAt is a seat or a bed in a mode, or where one stands at a fitting, seen from a height.
type spotAt struct {
	mode string
	at   int
	z    float64
}

// stands is the height of a spot on which one stands: on the floor, wherever that is.
const stands = -1e9

// above is the space over and under a box and so far beside it: what a head there depends on.
func above(b solid.Bounds, beside float64) solid.Bounds {
	b = b.Grown(beside)
	b.MinZ, b.MaxZ = math.Inf(-1), math.Inf(1)
	return b
}
