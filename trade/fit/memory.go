package fit

import (
	"slices"

	"tumblehome/solve/solid"
)

// Memory keeps the judgements of one working-out for the next, which most often differs from it by where one fitting stands. A judgement still
// holds if nothing changed within its reach; the answers are the same with a memory or without.
type Memory struct {
	in     Inputs // that it was made from
	pairs  map[[2]shape]solid.Way
	exits  map[[2]shape]solid.Way
	outs   map[shape]*outside
	parts  map[partAt]*kept[opened]
	gaps   map[gapSpot]*kept[float64]
	floors map[string]*laid
	crawls map[crawlAt]*crossing
	exit   map[exitAt]*kept[standsBefore]
	spots  map[spotAt]*kept[spot]
	seats  map[spotAt]*kept[facing]
	bodies map[bodyAt]*kept[overBody]
	sides  *sides
	fronts []ranked // the fittings by where they begin along the van, in the mode that was looked at last
}

// newMemory has room for as much as the one before.
func newMemory(in Inputs, was *Memory) *Memory {
	in.Before, in.Nudge, in.Lengthen, in.Stretch, in.Slide, in.Turn, in.Parts = nil, nil, nil, nil, nil, nil, nil
	return &Memory{
		in: in, pairs: make(map[[2]shape]solid.Way, len(was.pairs)), exits: make(map[[2]shape]solid.Way, len(was.exits)),
		outs: make(map[shape]*outside, len(was.outs)), parts: make(map[partAt]*kept[opened], len(was.parts)),
		gaps: make(map[gapSpot]*kept[float64], len(was.gaps)), floors: map[string]*laid{}, crawls: map[crawlAt]*crossing{}, exit: map[exitAt]*kept[standsBefore]{},
		spots: map[spotAt]*kept[spot]{}, seats: map[spotAt]*kept[facing]{}, bodies: map[bodyAt]*kept[overBody]{},
	}
}

// kept is a judgement with the space that it depends on.
type kept[Judgement any] struct {
	is    Judgement
	reach solid.Bounds
}

// recall is a judgement about a mode: the one before if nothing that counts changed within its reach, else it is judged now.
func recall[Key comparable, Judgement any](w *worker, was, now map[Key]*kept[Judgement], mode *Mode, key Key, counts func(int) bool, judge func() (Judgement, solid.Bounds)) Judgement {
	if known := now[key]; known != nil {
		return known.is
	}
	known := was[key]
	if known == nil || w.changed(mode, known.reach, counts) {
		known = &kept[Judgement]{}
		known.is, known.reach = judge()
	}
	now[key] = known
	return known.is
}

// change is a fitting that stands otherwise in a mode than it did, with the boxes about where it was and where it is.
type change struct {
	fitting int
	was, is solid.Bounds
}

// remember sets out with what is still of use of the memory before.
func (w *worker) remember() {
	before := w.in.Before
	w.was, w.changes = &Memory{}, map[string][]change{}
	if before != nil && w.in.RoomKey != "" && before.in.RoomKey == w.in.RoomKey {
		w.was = &Memory{pairs: before.pairs, outs: before.outs}
		if alike(&before.in, &w.in) {
			w.was = before
			w.compare()
		}
	}
	w.now = newMemory(w.in, w.was)
	w.result.Memory = w.now
}

// alike says whether two inputs differ only in where things stand, what they weigh and what of them opens.
func alike(a, b *Inputs) bool {
	return a.Partition == b.Partition && a.Error == b.Error && slices.Equal(a.Openings, b.Openings) && slices.Equal(a.People, b.People) &&
		slices.EqualFunc(a.Fittings, b.Fittings, func(f, g Fitting) bool { g.Mass = f.Mass; return f == g }) &&
		slices.EqualFunc(a.Modes, b.Modes, func(m, n Mode) bool {
			return m.Name == n.Name && slices.Equal(m.Open, n.Open) && slices.Equal(m.Poses, n.Poses)
		})
}

// compare finds what stands otherwise than it did. A solid that is the same as before is taken from before, so that it is known again.
func (w *worker) compare() {
	for m := range w.in.Modes {
		mode, was := &w.in.Modes[m], w.was.in.Modes[m].Standings
		for i := range mode.Standings {
			s, old := &mode.Standings[i], &was[i]
			alike := s.Box == old.Box && s.Moved == old.Moved && slices.Equal(s.Scribed, old.Scribed)
			if alike && shapeOf(s.Solid) != shapeOf(old.Solid) && slices.EqualFunc(s.Solid, old.Solid, samePrism) {
				s.Solid = old.Solid
			}
			if !alike || shapeOf(s.Solid) != shapeOf(old.Solid) || !sameAside(s.Aside, old.Aside) {
				w.changes[mode.Name] = append(w.changes[mode.Name], change{i, old.reach(), s.reach()})
			}
		}
	}
}

// sameAside says whether a thing is put aside as it was before.
func sameAside(s, old *Standing) bool {
	if s == nil || old == nil {
		return s == old
	}
	return slices.EqualFunc(s.Solid, old.Solid, samePrism)
}

func samePrism(p, q solid.Prism) bool {
	return p.Low == q.Low && p.High == q.High && slices.Equal(p.Outline, q.Outline)
}

// changed says whether anything that counts changed within reach in a mode.
func (w *worker) changed(mode *Mode, reach solid.Bounds, counts func(int) bool) bool {
	return slices.ContainsFunc(w.changes[mode.Name], func(c change) bool {
		return (c.was.Meets(reach) || c.is.Meets(reach)) && counts(c.fitting)
	})
}

func all(int) bool { return true }
