package runs

import "math"

// across is how far apart two places may lie across the van and still be on one side of it [mm].
const across = 500

// legs follow the surfaces from one place to another by straight legs: along the side they share, else by the floor or the roof, whichever
// is shortest.
func (w *worker) legs(p, q Point) ([]Point, float64) {
	low, high := w.in.Room.Floor(), w.in.Room.Roof((p[0]+q[0])/2, 0)
	best := by(p, q, low)
	if over := by(p, q, high); length(over) < length(best) {
		best = over
	}
	if p[1]*q[1] >= 0 || math.Abs(p[1]-q[1]) < across {
		if side := []Point{p, {q[0], p[1], p[2]}, {q[0], p[1], q[2]}, q}; length(side) <= length(best) {
			best = side
		}
	}
	return best, length(best)
}

// by goes from one place to another at a level.
func by(p, q Point, z float64) []Point {
	return []Point{p, {p[0], p[1], z}, {q[0], p[1], z}, {q[0], q[1], z}, q}
}
