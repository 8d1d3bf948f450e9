package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// How much of a thing one cuts off to lay it to the lining: up to half its size across that face, and up to 250 mm in any case, for a
// locker under a curved roof or a ledge over a wheel arch. What stands out farther was put there by mistake. Common practice, no source.
const (
	cutShare = 0.5
	cutLeast = 250
)

// overCut is how far a box stands out of a side that it is scribed to; nought as long as that is what one cuts off. Above the shoulders of the
// van, where the sides go over into the roof, a corner is lost in any case: how much of it is asked of the roof.
func (w *worker) overCut(b solid.Bounds, side solid.Side) float64 {
	size := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}[side/2]
	if side == solid.Left || side == solid.Right {
		b = w.belowShoulder(b)
	}
	by := w.boxExcess(b, side)
	if by <= max(cutLeast, cutShare*size) {
		return 0
	}
	return by
}

// roofOverFace is how far a box that is scribed to a side, but not to the roof, stands out of the roof at its other face, or in its middle if it
// is scribed to both: there the roof was not meant to be cut to.
func (w *worker) roofOverFace(s *Standing) float64 {
	left, right := slices.Contains(s.Scribed, solid.Left), slices.Contains(s.Scribed, solid.Right)
	b, y := s.Box, 0.0
	switch {
	case left && right:
		y = (b.MinY + b.MaxY) / 2
	case left:
		y = b.MaxY
	case right:
		y = b.MinY
	default:
		return math.Inf(-1)
	}
	if b.MaxZ <= w.shoulder() {
		return math.Inf(-1)
	}
	lowest := math.Inf(1)
	for _, x := range spread(b.MinX, b.MaxX, step) {
		lowest = min(lowest, w.in.Room.Roof(x, y))
	}
	return b.MaxZ - lowest
}

// cutAway says whether a thing at rest has a place, but nothing of it is left inside what it is scribed to.
func (s *Standing) cutAway() bool {
	return !s.Moved && len(s.Scribed) > 0 && len(s.Solid) == 0 && !s.Box.Empty()
}
