package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// unblock are the attempts to free a square to get out by before an opening: what stands there is moved along it or off it, or made lower.
func (w *worker) unblock(o Opening, by int) []attempt {
	zone, along, up := w.zone(o)
	s := w.resting(by)
	if s == nil || w.in.Fittings[by].isOutside() {
		return nil
	}
	square, b := float64(exitSquare+exitCell), s.Box
	var out []attempt
	add := func(to solid.Side, far float64) {
		if far > 0 {
			out = append(out, moves(by, to, far))
		}
	}
	switch o.Through {
	case "left", "right":
		add(solid.Front, b.MaxX-(along[1]-square))
		add(solid.Rear, along[0]+square-b.MinX)
	case "front", "rear":
		add(solid.Left, b.MaxY-(along[1]-square))
		add(solid.Right, along[0]+square-b.MinY)
	}
	off := map[string]struct {
		to  solid.Side
		far float64
	}{
		"left": {solid.Right, zone.MaxY - b.MinY}, "right": {solid.Left, b.MaxY - zone.MinY}, "rear": {solid.Front, b.MaxX - zone.MinX},
	}[o.Through]
	add(off.to, off.far+touching)
	if low := b.MaxZ - (up[1] - square); o.Through != "roof" && o.Through != "floor" && low > 0 {
		out = append(out, attempt{thing: by, axis: 2, less: low, drawsIn: solid.Roof})
	}
	return out
}

// beyondDoor are the attempts to move what stands behind a door along the van until so much of the door is free.
func (w *worker) beyondDoor(o Opening, by int, free float64) []attempt {
	s := w.resting(by)
	if s == nil {
		return nil
	}
	var out []attempt
	if far := s.Box.MaxX - (o.X[1] - free); far > 0 {
		out = append(out, moves(by, solid.Front, far), attempt{thing: by, less: far, drawsIn: solid.Rear})
	}
	if far := o.X[0] + free - s.Box.MinX; far > 0 {
		out = append(out, moves(by, solid.Rear, far))
	}
	return out
}

// smaller proposes to make a made thing so much smaller along one side that it goes in through a door, the least way.
func (w *worker) smaller(i int, doors []doorway) []finding.Proposal {
	f, s := &w.in.Fittings[i], w.resting(i)
	if s == nil || f.Make == "" {
		return nil
	}
	least, axis := math.Inf(1), -1
	for a, end := range [3]solid.Side{solid.Rear, solid.Right, solid.Roof} {
		for less := 5.0; less < min(least, farthest); less += 5 {
			box := attempt{less: less, drawsIn: end}.standing(Standing{Box: s.Box}).Box
			if box.MaxX-box.MinX < leastMade || box.MaxY-box.MinY < leastMade || box.MaxZ-box.MinZ < leastMade {
				break
			}
			if tightest(doors, w.carried(f, box)) <= touching {
				least, axis = less, a
			}
		}
	}
	if axis < 0 {
		return nil
	}
	return w.resize(i, axis, -least, "", [3]string{"shorter", "narrower", "lower"}[axis])
}

// lessOut proposes to have something slide out by so much less.
func (w *worker) lessOut(i int, less float64) []finding.Proposal {
	if w.in.Slide == nil || less <= 0 {
		return nil
	}
	less = math.Ceil(less/5-1e-9) * 5
	patch, ok := w.in.Slide(w.in.Fittings[i].ID, less)
	if !ok {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("pull %s out %.0f mm less", w.name(i), less), Patch: patch}}
}
