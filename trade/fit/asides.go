package fit

import (
	"tumblehome/solve/solid"
)

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
