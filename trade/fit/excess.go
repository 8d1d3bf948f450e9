package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// excess of the box first; only when it stands out does the cut solid matter.
func (w *worker) excess(s *Standing, side solid.Side) float64 {
	if w.safe().holds(s.Box) {
		return 0
	}
	if !s.Moved && slices.Contains(s.Scribed, side) {
		return w.overCut(s.Box, side)
	}
	if !s.Moved && side == solid.Roof && len(s.Scribed) > 0 {
		return max(w.roofExcess(s.Box), w.roofOverFace(s)) // what is scribed to a side only was not meant to be cut off at the roof
	}
	by := w.boxExcess(s.Box, side)
	if by <= touching || len(s.Solid) == 1 && len(s.Solid[0].Outline) == 4 && s.Solid[0].Bounds() == s.Box && isBox(s.Solid[0]) {
		return by
	}
	by = math.Inf(-1)
	for _, p := range s.Solid {
		if side == solid.Roof {
			by = max(by, w.roofExcess(p.Bounds()))
		} else {
			by = max(by, w.underRoof(p).ExcessAt(w.in.Room, side, step))
		}
	}
	return by
}

func (w *worker) boxExcess(b solid.Bounds, side solid.Side) float64 {
	if side == solid.Roof {
		return w.roofExcess(b)
	}
	return w.underRoof(solid.Box(b)).ExcessAt(w.in.Room, side, step)
}

// underCrown is how far below its crown the roof's sides are still looked at as sides [mm]: at the crown itself they come together.
const underCrown = 5

// underRoof is the part of a prism below the roof's crown: what stands out above it is the roof's matter, not that of the sides.
func (w *worker) underRoof(p solid.Prism) solid.Prism {
	if p.High <= w.shoulder() {
		return p
	}
	b, r := p.Bounds(), w.in.Room
	for _, x := range [3]float64{b.MinX, (b.MinX + b.MaxX) / 2, b.MaxX} {
		p.High = min(p.High, r.Roof(x, 0)-underCrown)
	}
	p.Low = min(p.Low, p.High)
	return p
}

// roofMargin is how far [mm] below the lowest roof near the middle of the van a thing counts as clear of the roof unseen.
const roofMargin = 150

// roofExcess is how far a box stands out of the roof. What stands out of a side is that side's matter: the roof is looked at only
// between the sides at the height of the box's top.
func (w *worker) roofExcess(b solid.Bounds) float64 {
	if over := b.MaxZ - w.shoulder(); over <= 0 {
		return over
	}
	r := w.in.Room
	var room [2][lookedAt]float64
	along, _ := solid.Steps(r)
	return solid.Greatest(solid.Places(room[0][:], b.MinX, b.MaxX, step, along), solid.Places(room[1][:], 0, 1, step/max(step, b.MaxY-b.MinY), nil), func(x, t float64) float64 {
		y := b.MinY + t*(b.MaxY-b.MinY)
		y = min(max(y, r.Left(x, b.MaxZ)), r.Right(x, b.MaxZ))
		return b.MaxZ - r.Roof(x, y)
	})
}

// shoulder is the height up to which the sides of the van are surely sides, and not yet the roof.
func (w *worker) shoulder() float64 { return w.ground().lowRoof - roofMargin }

// belowShoulder is the part of a box below the shoulders; at its lowest if it is above them.
func (w *worker) belowShoulder(b solid.Bounds) solid.Bounds {
	b.MaxZ = max(b.MinZ, min(b.MaxZ, w.shoulder()))
	return b
}

func lowRoof(r solid.Region) float64 {
	low := math.Inf(1)
	for _, x := range spread(r.Front(), r.Rear(), 250) {
		for _, y := range spread(0.6*r.Left(x, r.Floor()+600), 0.6*r.Right(x, r.Floor()+600), 300) {
			low = min(low, r.Roof(x, y))
		}
	}
	return low
}

// isBox says whether a prism of four corners fills its bounds.
func isBox(p solid.Prism) bool {
	b := p.Bounds()
	return p.Area() >= 0.999999*(b.MaxX-b.MinX)*(b.MaxY-b.MinY)
}
