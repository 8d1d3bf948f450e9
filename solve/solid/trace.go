package solid

import "math"

// trace is a line that rises or falls all the way from one u to another: a straight one, or an arc about the origin, above or below it.
type trace struct {
	from, till float64
	v, slope   float64 // of a straight line: its height at from, and its slope
	radius     float64 // of an arc, else 0
	side       float64 // of an arc: +1 above, -1 below
}

func (t trace) at(u float64) float64 {
	if t.radius > 0 {
		return t.side * math.Sqrt(max(0, t.radius*t.radius-u*u))
	}
	return t.v + t.slope*(u-t.from)
}

// ends are a trace's heights at both ends of a slice, the lower first.
func (t trace) ends(from, till float64) (low, high float64) {
	v, w := t.at(from), t.at(till)
	return min(v, w), max(v, w)
}

// straight adds the line between two points.
func (t *tipping) straight(p, q Point) {
	if p.X > q.X {
		p, q = q, p
	}
	if q.X-p.X > hair {
		t.add(trace{from: p.X, till: q.X, v: p.Y, slope: (q.Y - p.Y) / (q.X - p.X)})
	}
}

// arc adds the path of a point, quarter by quarter.
func (t *tipping) arc(p Point) {
	radius, at := math.Hypot(p.X, p.Y), math.Atan2(p.Y, p.X)
	if radius <= hair {
		return
	}
	for end := at + t.angle; at < end; {
		quarter := math.Floor(at/(math.Pi/2)+hair) + 1
		till := min(end, quarter*math.Pi/2)
		u, w := radius*math.Cos(at), radius*math.Cos(till)
		if side := math.Sin((at + till) / 2); math.Abs(u-w) > hair {
			t.add(trace{from: min(u, w), till: max(u, w), radius: radius, side: math.Copysign(1, side)})
		}
		at = till
	}
}

func (t *tipping) add(one trace) {
	t.traces = append(t.traces, one)
	t.breaks = append(t.breaks, one.from, one.till)
}

// until is how far a slice that begins at a may go so that its corner beyond the trace, which bounds it above or below, is no further
// from the trace than the tolerance.
func (t trace) until(a float64, above bool, tolerance float64) float64 {
	if t.radius == 0 {
		if t.slope == 0 {
			return t.till
		}
		return a + tolerance*math.Sqrt(1+t.slope*t.slope)/math.Abs(t.slope)
	}
	limit := t.radius - tolerance // the corner is nearer to the origin than the arc
	if above == (t.side > 0) {
		limit = t.radius + tolerance
	}
	corner := func(leg float64) float64 { return math.Sqrt(max(0, max(0, limit)*max(0, limit)-leg*leg)) }
	other := func(leg float64) float64 { return math.Sqrt(max(0, t.radius*t.radius-leg*leg)) }
	v := math.Abs(t.at(a))
	switch outer := limit > t.radius; {
	case outer && a >= 0: // the corner is above the end
		return corner(v)
	case outer: // above the beginning
		return -other(corner(a))
	case a >= 0: // below the beginning
		return other(corner(a))
	default: // below the end
		return -corner(v)
	}
}
