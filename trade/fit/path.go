package fit

import "tumblehome/solve/solid"

const (
	sweptRoughly = 5  // what moving things pass through is taken up to so much too large [mm]
	grazing      = 15 // a path may graze a finished surface by so much: hinges and runners are set finer than a document says [mm]
)

// meeting is what a moving thing runs into: a fitting, or a side of the room.
type meeting struct {
	fitting int // -1 for the room
	side    solid.Side
	way     solid.Way // how deep, and by which way the thing met is soonest out
}

// meets says how deep a path runs into a fitting; depth 0 if it passes.
func (w *worker) meets(path solid.Boxed, i int, s *Standing) solid.Way {
	if len(s.Solid) == 0 || w.in.Fittings[i].Gives >= 1 {
		return solid.Way{}
	}
	way, in := s.Solid.DeepestIn(path)
	if !in || way.Depth <= touching+sweptRoughly+w.give(i, s) {
		return solid.Way{}
	}
	return way
}

// leaving is how far what moves stands out of each side of the room, 0 where it does not, and the box about it.
type leaving struct {
	box solid.Bounds
	by  [6]float64
}

// leaving the room counts beyond what a thing did before it set out. A front without a partition is open.
func (w *worker) leaving(path solid.Solid, before func() solid.Solid) leaving {
	out := leaving{box: path.Bounds()}
	if w.safe().holds(out.box) {
		return out
	}
	const slack = grazing + sweptRoughly
	for side := solid.Front; side <= solid.Roof; side++ {
		if side == solid.Front && !w.in.Partition {
			continue
		}
		if by := w.solidExcess(path, side); by > slack && by > slack+max(0, w.solidExcess(before(), side)) {
			out.by[side] = by
		}
	}
	return out
}

// leavesRoom is the side through which what moves in a mode leaves the room farthest.
func (w *worker) leavesRoom(mode *Mode, out leaving) (meeting, bool) {
	worst := meeting{fitting: -1}
	for to, by := range out.by {
		if side := solid.Side(to); by > worst.way.Depth && !w.open(mode, side, out.box) {
			worst.side, worst.way.Depth = side, by
		}
	}
	return worst, worst.way.Depth > 0
}

// solidExcess is how far any prism stands out of a side, looked at in its corners, half way between and where the room steps: a path is wanted
// only roughly.
func (w *worker) solidExcess(s solid.Solid, side solid.Side) float64 {
	most := 0.0
	if w.cornerExcess(s.Bounds(), side) <= 0 {
		return most
	}
	for _, p := range s {
		if b := p.Bounds(); !w.safe().holds(b) {
			most = max(most, w.cornerExcess(b, side))
		}
	}
	return most
}

// lookedAt is at how many places of a length there is room to look without allocation.
const lookedAt = 48

func (w *worker) cornerExcess(b solid.Bounds, side solid.Side) float64 {
	r := w.in.Room
	switch side {
	case solid.Front:
		return r.Front() - b.MinX
	case solid.Rear:
		return b.MaxX - r.Rear()
	case solid.Floor:
		return r.Floor() - b.MinZ
	case solid.Roof:
		if b.MaxZ <= w.shoulder() {
			return 0
		}
	}
	most := 0.0
	var room [2][lookedAt]float64
	along, up := solid.Steps(r)
	heights := solid.Places(room[0][:], b.MinZ, b.MaxZ, b.MaxZ-b.MinZ, up)
	for _, x := range solid.Places(room[1][:], b.MinX, b.MaxX, (b.MaxX-b.MinX)/2, along) {
		switch side {
		case solid.Left:
			for _, z := range heights {
				most = max(most, r.Left(x, z)-b.MinY)
			}
		case solid.Right:
			for _, z := range heights {
				most = max(most, b.MaxY-r.Right(x, z))
			}
		case solid.Roof:
			low, high := r.Left(x, b.MaxZ), r.Right(x, b.MaxZ) // what stands out of a side is that side's matter
			most = max(most, b.MaxZ-r.Roof(x, min(max(b.MinY, low), high)), b.MaxZ-r.Roof(x, min(max(b.MaxY, low), high)))
		}
	}
	return most
}

// safeBox is a box that is inside the room for certain.
type safeBox solid.Bounds

func (s safeBox) holds(b solid.Bounds) bool {
	return b.MinX >= s.MinX && b.MaxX <= s.MaxX && b.MinY >= s.MinY && b.MaxY <= s.MaxY && b.MinZ >= s.MinZ && b.MaxZ <= s.MaxZ
}

// safe is a box well inside the room.
func (w *worker) safe() safeBox { return w.ground().safe }

// safeIn is as wide as the narrowest place between knee and shoulder, and as high as the lowest roof.
func safeIn(r solid.Region, lowRoof float64) safeBox {
	s := solid.Bounds{MinX: r.Front(), MaxX: r.Rear(), MinY: -1e4, MaxY: 1e4, MinZ: r.Floor(), MaxZ: lowRoof - roofMargin}
	along, up := solid.Steps(r)
	for _, x := range solid.Places(nil, r.Front(), r.Rear(), step, along) {
		for _, z := range solid.Places(nil, s.MinZ, s.MaxZ, step, up) {
			s.MinY, s.MaxY = max(s.MinY, r.Left(x, z)), min(s.MaxY, r.Right(x, z))
		}
	}
	const margin = 20 // the sides are looked at only every so often
	s.MinY, s.MaxY = s.MinY+margin, s.MaxY-margin
	return safeBox(s)
}
