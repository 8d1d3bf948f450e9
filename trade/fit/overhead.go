package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
)

// lowOver is the fitting that is lowest over a head at a place, and the box about that head; -1 where it is the roof.
func (w *worker) lowOver(s spot) (thing int, head solid.Bounds) {
	const half = headWide / 2
	head = solid.Bounds{MinX: s.x - half, MaxX: s.x + half, MinY: s.y - half, MaxY: s.y + half, MinZ: s.under - 1, MaxZ: s.under + 1}
	mode := w.mode(s.mode)
	for i := range mode.Standings {
		f := &w.in.Fittings[i]
		if !mode.Standings[i].Box.Meets(head) || i == s.at || f.Where != "" || f.For != "" || f.Gives >= 1 {
			continue
		}
		for _, p := range mode.Standings[i].Solid {
			if math.Abs(p.Low-s.under) < 1 && p.Bounds().Meets(head) {
				return i, head
			}
		}
	}
	return -1, head
}

// offTheHead says what hangs over a head and by how much it is too low, and has the attempts to raise it or to move it aside.
func (w *worker) offTheHead(s spot, by float64) (words string, attempts []attempt) {
	i, head := w.lowOver(s)
	if i < 0 {
		return "", nil
	}
	return fmt.Sprintf("What is so low over the head is %s, not the roof: raise it by %s, or move it aside.", w.name(i), about(by)),
		append(w.asides(i, head, touching), moves(i, solid.Roof, by))
}
