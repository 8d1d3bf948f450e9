package fit

import (
	"fmt"
	"math"

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
	return []finding.Proposal{{Words: fmt.Sprintf("make %s %.0f mm %s", w.name(i), math.Abs(by), word), Patch: patch}}
}

// higher proposes to make a hard fitting higher or lower; a thicker cushion is pressed more as well.
func (w *worker) higher(i int, by float64) []finding.Proposal {
	if w.in.Fittings[i].Gives > 0 {
		return nil
	}
	return w.resize(i, 2, by, "higher", "lower")
}
