package runs

import "math"

// What lies on the floor is stumbled over [mm]: practice, no source.
const (
	treadHigh = 150  // up to this height above the finished floor
	footClear = 120  // nearer to a side nobody treads, unless a door is there
	headClear = 1000 // under what hangs or stands lower than this nobody treads
	leastOpen = 150  // so much of a leg in the open is none yet
	lookFloor = 25   // how far apart a leg is looked at
)

// acrossGangway finds where a leg lies on floor that is walked on.
func (w *worker) acrossGangway(a, b Point, add func(Foul, stretch)) {
	n := int(math.Ceil(distance(a, b) / lookFloor))
	open := stretch{1, 0}
	for k := range n + 1 {
		if share := float64(k) / float64(max(n, 1)); w.trodden(between(a, b, share)) {
			open.from, open.to = min(open.from, share), max(open.to, share)
		}
	}
	if (open.to-open.from)*distance(a, b) > leastOpen {
		add(Foul{Kind: Gangway, Surface: floor}, open)
	}
}

// trodden says whether a place is where feet go.
func (w *worker) trodden(p Point) bool {
	room := w.in.Room
	high := p[2] - room.Floor()
	if high < -sheet || high > treadHigh || w.inCab(p) || p[0] > room.Rear() {
		return false
	}
	for i := range w.in.Things {
		b := w.in.Things[i].Box
		if p[0] > b.MinX-near && p[0] < b.MaxX+near && p[1] > b.MinY-near && p[1] < b.MaxY+near && b.MinZ-room.Floor() < headClear {
			return false
		}
	}
	toLeft, toRight := p[1]-room.Left(p[0], p[2]), room.Right(p[0], p[2])-p[1]
	for _, a := range w.in.Arches {
		if p[0] > a.Box.MinX && p[0] < a.Box.MaxX && p[1] > a.Box.MinY-near && p[1] < a.Box.MaxY+near {
			return false
		}
	}
	return min(toLeft, toRight) > footClear || w.onSill(p, toLeft < toRight)
}

// onSill says whether a place at the foot of a side lies on the sill of a door there.
func (w *worker) onSill(p Point, onLeft bool) bool {
	side := right
	if onLeft {
		side = left
	}
	for _, o := range w.in.Openings {
		if o.Door && o.Through == side && p[0] > o.X[0] && p[0] < o.X[1] && o.Z[0] < w.in.Room.Floor()+treadHigh {
			return true
		}
	}
	return false
}
