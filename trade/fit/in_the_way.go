package fit

import (
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

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
