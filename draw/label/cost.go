package label

import "tumblehome/draw"

// What a position costs, in millimetres of leader. Leaders that cross are worth a long way
// round; a leader through a box, or a box on a line, nearly as much.
const (
	costCrossing = 120
	costThrough  = 80
	costLine     = 15
	costLater    = 0.05 // for each candidate that was to be preferred
)

// cost of laying label i at the box, given where the others lie. Once it is sure to reach the
// limit the rest is not worked out.
func (t *table) cost(i int, box draw.Rect, limit float64) float64 {
	l := t.Labels[i]
	sum := nearest(box, l.Place).Distance(l.Place)
	if sum >= limit {
		return sum
	}
	mine := l.leader(box)
	for _, s := range t.Lines {
		if meets(box, s[0], s[1]) {
			sum += costLine
		}
	}
	for _, o := range t.Obstacles {
		if len(mine) == 2 && meets(o, mine[0], mine[1]) {
			sum += costLine
		}
	}
	for j := range t.boxes {
		if sum >= limit {
			return sum
		}
		if j != i && t.placed[j] {
			sum += meeting(box, mine, t.boxes[j], t.leaders[j])
		}
	}
	return sum
}

// meeting is what two labels cost each other.
func meeting(a draw.Rect, aLine []draw.Point, b draw.Rect, bLine []draw.Point) float64 {
	sum := 0.0
	if len(aLine) == 2 && meets(b, aLine[0], aLine[1]) {
		sum += costThrough
	}
	if len(bLine) == 2 && meets(a, bLine[0], bLine[1]) {
		sum += costThrough
	}
	if len(aLine) == 2 && len(bLine) == 2 && Cross(aLine[0], aLine[1], bLine[0], bLine[1]) {
		sum += costCrossing
	}
	return sum
}

// Cross tells whether two line segments cross properly; touching at an end is not crossing.
func Cross(a, b, c, d draw.Point) bool {
	turn := func(p, q, r draw.Point) float64 { return q.Sub(p).Cross(r.Sub(p)) }
	return turn(a, b, c)*turn(a, b, d) < 0 && turn(c, d, a)*turn(c, d, b) < 0
}

// meets tells whether a line segment runs through the inside of a rectangle (clipping after
// Liang and Barsky).
func meets(r draw.Rect, a, b draw.Point) bool {
	if max(a.X, b.X) < r.Min.X || min(a.X, b.X) > r.Max.X || max(a.Y, b.Y) < r.Min.Y || min(a.Y, b.Y) > r.Max.Y {
		return false // nearly always
	}
	from, to := 0.0, 1.0
	d := b.Sub(a)
	for _, c := range [4][2]float64{
		{-d.X, a.X - r.Min.X}, {d.X, r.Max.X - a.X}, {-d.Y, a.Y - r.Min.Y}, {d.Y, r.Max.Y - a.Y},
	} {
		switch p, q := c[0], c[1]; {
		case p == 0 && q <= 0:
			return false
		case p < 0:
			from = max(from, q/p)
		case p > 0:
			to = min(to, q/p)
		}
	}
	return to-from > 1e-9
}
