package fit

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// leastMade is the smallest that anything is proposed to be made [mm].
const leastMade = 50

// resize proposes to make a fitting larger or, by less than nothing, smaller along an axis; to whole 5 mm, away from what it is. Nothing if its size does
// not stand in the document.
func (w *worker) resize(i, axis int, by float64, larger, smaller string) []finding.Proposal {
	s := w.resting(i)
	if w.in.Lengthen == nil || s == nil {
		return nil
	}
	b := s.Box
	size := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}[axis]
	by = math.Copysign(math.Ceil(math.Abs(by)/5-1e-9)*5, by)
	if by == 0 || size+by < leastMade {
		return nil
	}
	patch, ok := w.in.Lengthen(w.in.Fittings[i].ID, axis, by)
	if !ok {
		return nil
	}
	word := larger
	if by < 0 {
		word = smaller
	}
	return []finding.Proposal{{Words: fmt.Sprintf("make %s %s mm %s", finding.SetOff(w.name(i)), quantity.Parted(math.Abs(by)), word), Patch: patch}}
}

// higher proposes to make a hard fitting higher or lower, and says what room that takes; a thicker cushion is pressed more as well.
func (w *worker) higher(i int, by float64) []finding.Proposal {
	if w.in.Fittings[i].Gives > 0 {
		return nil
	}
	out := w.resize(i, 2, by, "higher", "lower")
	for k := range out {
		out[k].Words += w.roomTaken(i, math.Copysign(math.Ceil(math.Abs(by)/5-1e-9)*5, by))
	}
	return out
}

// roomTaken says what room is lost when a fitting is made so much higher or, by less than nothing, lower: in it, or under what hangs over it.
func (w *worker) roomTaken(i int, by float64) string {
	top := w.resting(i).Box.MaxZ
	var holds, meets []string
	for j := range w.in.Fittings {
		s := w.resting(j)
		if s == nil || j == i {
			continue
		}
		inside := w.in.Fittings[j].In && w.carriers[j] == i
		over := !w.carries(i, j) && w.in.Fittings[j].Where == "" && s.Box.MinZ >= top-touching && s.Box.MinZ < top+by-touching && overlap(s.Box, w.resting(i).Box)
		switch {
		case inside && by < 0 && s.Box.MaxZ > top+by-w.in.Fittings[i].Board+touching:
			meets = append(meets, w.name(j))
		case inside && by < 0:
			holds = append(holds, w.name(j))
		case over:
			meets = append(meets, w.name(j))
		}
	}
	switch {
	case len(meets) > 0 && by < 0:
		return "; then it is too low for " + strings.Join(meets, " and ") + " in it"
	case len(meets) > 0:
		return "; then it meets " + strings.Join(meets, " and ") + " over it"
	case len(holds) > 0:
		return "; the room in it becomes as much lower"
	}
	return ""
}

// overlap says whether two boxes lie over one another, seen from above.
func overlap(a, b solid.Bounds) bool {
	return a.MinX < b.MaxX && b.MinX < a.MaxX && a.MinY < b.MaxY && b.MinY < a.MaxY
}
