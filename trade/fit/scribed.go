package fit

import "tumblehome/solve/solid"

// How much of a thing one cuts off to lay it to the lining: up to half its size across that face, and up to 250 mm in any case, for a
// locker under a curved roof or a ledge over a wheel arch. What stands out farther was put there by mistake. Common practice, no source.
const (
	cutShare = 0.5
	cutLeast = 250
)

// overCut is how far a box stands out of a side that it is scribed to; nought as long as that is what one cuts off.
func (w *worker) overCut(b solid.Bounds, side solid.Side) float64 {
	by := w.boxExcess(b, side)
	size := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}[side/2]
	if by <= max(cutLeast, cutShare*size) {
		return 0
	}
	return by
}

// cutAway says whether a thing at rest has a place, but nothing of it is left inside what it is scribed to.
func (s *Standing) cutAway() bool {
	return !s.Moved && len(s.Scribed) > 0 && len(s.Solid) == 0 && !s.Box.Empty()
}
