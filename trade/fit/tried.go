package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

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

// farthest is how far a thing is proposed to be moved at most [mm].
const farthest = 800

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
