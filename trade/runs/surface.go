package runs

import "math"

// Surfaces of the room, as the document names them.
const (
	left  = "left"
	right = "right"
	floor = "floor"
	roof  = "roof"
	rear  = "rear"
)

// near is how far off a finished surface a way still lies on it [mm]: practice, the tape is no sharper.
const near = 40

// roofDrops is more than a roof comes down from its middle to where the sides begin [mm]: typical, from memory.
const roofDrops = 600

// surfaceAt is the finished surface on or behind which a point lies, and how far before it (less than zero is behind); none where it is
// out in the room.
func (w *worker) surfaceAt(p Point) (surface string, before float64) {
	room := w.in.Room
	best, ridge := math.Inf(1), room.Roof(p[0], 0)
	nearer := func(name string, gap float64) {
		if math.Abs(gap) < best {
			surface, before, best = name, gap, math.Abs(gap)
		}
	}
	nearer(floor, p[2]-room.Floor())
	nearer(rear, room.Rear()-p[0])
	switch { // above the ridge the sides have met
	case p[2] > ridge:
	case p[1] < 0:
		nearer(left, p[1]-room.Left(p[0], p[2]))
	default:
		nearer(right, room.Right(p[0], p[2])-p[1])
	}
	if p[2] > ridge-roofDrops {
		nearer(roof, room.Roof(p[0], p[1])-p[2])
	}
	if before > near {
		return "", before
	}
	return surface, before
}

// beforeSurface is how far a point lies before the finished surface of this name; less than nought is behind it.
func (w *worker) beforeSurface(name string, p Point) float64 {
	room := w.in.Room
	switch name {
	case left:
		return p[1] - room.Left(p[0], p[2])
	case right:
		return room.Right(p[0], p[2]) - p[1]
	case floor:
		return p[2] - room.Floor()
	case roof:
		return room.Roof(p[0], p[1]) - p[2]
	case rear:
		return room.Rear() - p[0]
	}
	return p[0] - room.Front()
}

// inCab says whether a point lies before the living space, where nothing is known.
func (w *worker) inCab(p Point) bool { return p[0] < w.in.Room.Front()-1 }

// outside is how far a point lies beyond the bare skin, and through which side of it is the shortest way back; 0 is inside.
func (w *worker) outside(p Point) (surface string, beyond float64) {
	skin := w.in.Skin
	for _, s := range [...]struct {
		name   string
		beyond float64
	}{
		{left, skin.Left(p[0], p[2]) - p[1]}, {right, p[1] - skin.Right(p[0], p[2])}, {roof, p[2] - skin.Roof(p[0], p[1])}, {floor, skin.Floor() - p[2]}, {rear, p[0] - skin.Rear()},
	} {
		if s.beyond > sheet && (surface == "" || s.beyond < beyond) {
			surface, beyond = s.name, s.beyond
		}
	}
	return surface, beyond
}

// sheet is how far beyond the inside of the skin a way has gone through it [mm].
const sheet = 1
