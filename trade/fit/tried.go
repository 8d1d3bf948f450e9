package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// An attempt is one thing moved, or made smaller by drawing one of its faces in, that might clear a finding.
type attempt struct {
	thing   int
	by      [3]float64 // moved by so much; or
	axis    int        // narrowed along an axis
	less    float64    // by so much; 0 is moved
	drawsIn solid.Side // the face that comes in
}

// moves is an attempt to move a thing towards a side, at least so far, in whole mm.
func moves(i int, to solid.Side, far float64) attempt {
	d, far := solid.Directions[to], math.Ceil(far-1e-6)
	return attempt{thing: i, by: [3]float64{d[0] * far, d[1] * far, d[2] * far}}
}

// tried are those of some attempts as proposals that clear a finding: each is looked at with the thing moved, or smaller, and judged again, wherever
// it rests. One that moves something into something else or out of the room, in any mode, is left out. The least comes first, and no more than three.
func (w *worker) tried(f finding.Finding, judge func(*worker), attempts ...attempt) []finding.Proposal {
	return w.triedBeside(f, judge, w.comesInTheWay, attempts...)
}

// triedBeside are those of them that make nothing else worse.
func (w *worker) triedBeside(f finding.Finding, judge func(*worker), worse func(*worker, attempt) bool, attempts ...attempt) []finding.Proposal {
	if w.in.Nudge == nil && w.in.Lengthen == nil {
		return nil // this is an attempt itself
	}
	slices.SortStableFunc(attempts, func(a, b attempt) int { return int(a.far() - b.far()) })
	var out []finding.Proposal
	var helped []attempt
	for _, a := range attempts {
		if len(out) == 3 {
			break
		}
		rest := w.resting(a.thing)
		if rest == nil || slices.ContainsFunc(helped, a.repeats) || w.in.Fittings[a.thing].For != "" || a.far() > farthest || !w.hasRoom(a) || w.takesSupport(a) {
			continue
		}
		proposed := w.nudge(a.thing, a.by[0], a.by[1], a.by[2], "")
		if a.less > 0 {
			proposed = w.resize(a.thing, a.axis, -a.less, "", [3]string{"shorter", "narrower", "lower"}[a.axis])
		}
		if len(proposed) == 0 {
			continue
		}
		sub := w.after(a)
		judge(sub)
		cleared := !slices.ContainsFunc(sub.result.Findings, func(g finding.Finding) bool { return g.Key() == f.Key() && g.Mode == f.Mode })
		if cleared && !worse(sub, a) {
			out, helped = append(out, proposed...), append(helped, a)
		}
	}
	return out
}

// worseBy says of an attempt whether some judging finds more after it that is more than a note and was not found before, or not so grave.
func (w *worker) worseBy(judge func(*worker)) func(*worker, attempt) bool {
	return func(sub *worker, _ attempt) bool {
		judged := len(sub.result.Findings)
		judge(sub)
		return slices.ContainsFunc(sub.result.Findings[judged:], func(g finding.Finding) bool {
			return g.Severity > finding.Note && !slices.ContainsFunc(w.result.Findings, func(f finding.Finding) bool {
				return f.Code == g.Code && slices.Equal(f.About, g.About) && f.Mode == g.Mode && f.Severity >= g.Severity
			})
		})
	}
}

// comesInTheWay says whether anything that goes along stands deeper in something else after an attempt, or farther out of the room, in any mode.
// What becomes smaller comes into nothing's way; and the shape that it is cut to is not known then.
func (w *worker) comesInTheWay(sub *worker, a attempt) bool {
	if a.less > 0 {
		return false
	}
	goes := w.carriedBy(a.thing)
	return w.worseBy(func(sub *worker) {
		for _, i := range goes {
			sub.insideOf(i)
		}
	})(sub, a) || slices.ContainsFunc(goes, func(i int) bool { return w.comesInto(sub, i) })
}

// comesInto says whether a thing stands deeper in something after an attempt, in any mode.
func (w *worker) comesInto(sub *worker, i int) bool {
	for m := range w.in.Modes {
		was, now := w.in.Modes[m].Standings, sub.in.Modes[m].Standings
		if len(now[i].Solid) == 0 || now[i].Box == was[i].Box || w.in.Fittings[i].Gives >= 1 {
			continue
		}
		for j := range now {
			if j == i || len(now[j].Solid) == 0 || w.in.Fittings[j].Gives >= 1 || !now[i].Box.Meets(now[j].Box) || w.belong(i, j) {
				continue
			}
			deep := sub.pairWay(now[i].Solid, now[j].Solid).Depth
			if deep > touching+w.give(i, &now[i])+w.give(j, &now[j]) && deep > w.pairWay(was[i].Solid, was[j].Solid).Depth+touching {
				return true
			}
		}
	}
	return false
}

// farthest is how far a thing is proposed to be moved at most [mm].
const farthest = 800

// sameAct is by how little one act must differ from another to be the same to a builder [mm].
const sameAct = 10

// repeats says whether an attempt is another one over again, a few millimetres farther.
func (a attempt) repeats(other attempt) bool {
	same := func(v, u float64) bool {
		return (v < 0) == (u < 0) && (v > 0) == (u > 0) && math.Abs(v-u) < sameAct
	}
	return a.thing == other.thing && a.axis == other.axis && a.drawsIn == other.drawsIn && same(a.less, other.less) &&
		same(a.by[0], other.by[0]) && same(a.by[1], other.by[1]) && same(a.by[2], other.by[2])
}

func (a attempt) far() float64 {
	return max(math.Abs(a.by[0]), math.Abs(a.by[1]), math.Abs(a.by[2]), a.less)
}

// standing is a standing after the attempt.
func (a attempt) standing(s Standing) Standing {
	if a.less == 0 {
		s.Solid, s.Box = s.Solid.Moved(a.by[0], a.by[1], a.by[2]), s.Box.Moved(a.by[0], a.by[1], a.by[2])
		if s.Aside != nil {
			aside := a.standing(*s.Aside)
			s.Aside = &aside
		}
		return s
	}
	less := math.Ceil(a.less/5-1e-9) * 5
	ends := [6]*float64{&s.Box.MinX, &s.Box.MaxX, &s.Box.MinY, &s.Box.MaxY, &s.Box.MinZ, &s.Box.MaxZ}
	*ends[a.drawsIn] -= less * (solid.Directions[a.drawsIn][0] + solid.Directions[a.drawsIn][1] + solid.Directions[a.drawsIn][2])
	s.Solid = solid.Solid{solid.Box(s.Box)}
	return s
}

// after judges what is after an attempt, until the next is made. It remembers all that the attempt leaves as it is, and proposes nothing.
func (w *worker) after(a attempt) *worker {
	sub := &worker{in: w.in, index: w.index, people: w.people, carriers: w.carriers, doors: w.doors, was: w.now, changes: map[string][]change{}, movedIn: map[string][]int{}}
	sub.in.Nudge, sub.in.Lengthen, sub.in.Stretch, sub.in.Slide, sub.in.Turn, sub.in.Modes = nil, nil, nil, nil, nil, slices.Clone(w.in.Modes)
	goes := w.carriedBy(a.thing)
	if w.spare == nil {
		w.spare = make([][]Standing, len(w.in.Modes))
	}
	for m := range sub.in.Modes {
		mode, own := &sub.in.Modes[m], false
		for _, i := range goes {
			now, changed := w.attempted(a, i, &mode.Standings[i])
			if !changed {
				continue
			}
			if !own {
				mode.Standings, own = append(w.spare[m][:0], mode.Standings...), true
				w.spare[m] = mode.Standings
			}
			sub.changes[mode.Name] = append(sub.changes[mode.Name], change{i, mode.Standings[i].reach(), now.reach()})
			mode.Standings[i] = now
		}
	}
	sub.now = newMemory(sub.in, &Memory{})
	sub.result.workings = map[string]working.Working{}
	return sub
}

// carriedBy are a thing and all that it carries.
func (w *worker) carriedBy(thing int) []int {
	var out []int
	for i := range w.carriers {
		if i == thing || w.carries(thing, i) {
			out = append(out, i)
		}
	}
	return out
}

// attempted is a standing after an attempt, if that changes it, of a thing or what it carries.
func (w *worker) attempted(a attempt, i int, s *Standing) (Standing, bool) {
	switch {
	case len(s.Solid) == 0 || s.Moved && i == a.thing:
	case i == a.thing || a.less == 0 && !s.Moved:
		return a.standing(*s), true
	case a.less > 0 && a.drawsIn == solid.Roof && !w.within(a.thing, i): // what is on top comes down with it, pulled out or not
		return moves(i, solid.Floor, math.Ceil(a.less/5-1e-9)*5).standing(*s), true
	}
	return Standing{}, false
}

// within says whether a thing stands inside another, or on what does.
func (w *worker) within(host, i int) bool {
	for ; i >= 0 && i != host; i = w.carriers[i] {
		if w.in.Fittings[i].In {
			return true
		}
	}
	return false
}

// hasRoom says whether a thing that is moved keeps in the room and out of everything else, in every mode that has it where it rests.
func (w *worker) hasRoom(a attempt) bool {
	if a.less > 0 {
		return true
	}
	if !w.goesThrough(a) {
		return false
	}
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		s := &mode.Standings[a.thing]
		if s.Moved || len(s.Solid) == 0 {
			continue
		}
		now := a.standing(*s)
		for side, d := range solid.Directions {
			if far := a.by[0]*d[0] + a.by[1]*d[1] + a.by[2]*d[2]; far > 0 && !w.roomFor(a.thing, s, solid.Side(side), far) {
				return false
			}
		}
		for j := range mode.Standings {
			o := &mode.Standings[j]
			if j == a.thing || len(o.Solid) == 0 || !o.Box.Meets(now.Box) || w.in.Fittings[j].Gives > 0 || w.carries(a.thing, j) || w.carries(j, a.thing) || w.in.Fittings[j].isOutside() {
				continue
			}
			if deep, in := o.Solid.Deepest(now.Solid); in && deep.Depth > touching {
				if before, was := o.Solid.Deepest(s.Solid); !was || before.Depth < deep.Depth {
					return false
				}
			}
		}
	}
	return true
}

// asides are the attempts to move a thing in each level direction off a space, and to make it smaller where it stands against a side of the van.
func (w *worker) asides(i int, off solid.Bounds, more float64) []attempt {
	s := w.resting(i)
	if s == nil {
		return nil
	}
	b := s.Box
	far := [4]float64{b.MaxX - off.MinX, off.MaxX - b.MinX, b.MaxY - off.MinY, off.MaxY - b.MinY}
	var out []attempt
	for side := solid.Front; side <= solid.Right; side++ {
		if far[side] += more; far[side] > 0 {
			out = append(out, moves(i, side, far[side]))
			if w.leans(b, side) {
				out = append(out, attempt{thing: i, axis: int(side) / 2, less: far[side], drawsIn: side ^ 1})
			}
		}
	}
	return out
}

// leans says whether a box stands so near a side of the room that, made smaller, it stays there. Along the van things are measured from their front.
func (w *worker) leans(b solid.Bounds, side solid.Side) bool {
	const near = 60
	x, z := (b.MinX+b.MaxX)/2, (b.MinZ+b.MaxZ)/2
	switch side {
	case solid.Front:
		return true
	case solid.Left:
		return b.MinY < w.in.Room.Left(x, z)+near
	case solid.Right:
		return b.MaxY > w.in.Room.Right(x, z)-near
	}
	return false
}
