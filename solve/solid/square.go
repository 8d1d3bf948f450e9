package solid

import "math"

// hair is as good as nothing: the rounding of places on things of ordinary size.
const hair = 1e-9

// squared cuts a convex outline so that, seen from an axis that it will turn about, each part has the nearest and the farthest point of
// every edge at a corner, and spans at most a right angle if the axis is in it. Then the hull of two places of a part, turned a little,
// has no more than the part passes over. (A bar turned a little about a pin before its middle passes over a bow tie; its hull is much more.
// Its two halves do not have this fault.) Edges that are a circle about the axis within the slack are left whole.
func squared(outline []Point, about Point, near, slack float64) [][]Point {
	parts := [][]Point{outline}
	if near == 0 {
		along := Point{outline[1].X - outline[0].X, outline[1].Y - outline[0].Y}
		parts = halved(halved(parts, about, along), about, Point{-along.Y, along.X})
	}
	for i := range outline {
		u, v, w := corner(outline, i)
		if foot, ok := footOn(v, w, about); ok && max(apart(v, about), apart(w, about))-apart(foot, about) > slack {
			parts = halved(parts, about, Point{v.Y - w.Y, w.X - v.X})
		}
		if near > 0 && flatBefore(u, v, about) && flatBefore(w, v, about) {
			parts = halved(parts, about, Point{v.X - about.X, v.Y - about.Y})
		}
	}
	return parts
}

// corner is a corner of an outline between its two neighbours.
func corner(around []Point, i int) (before, at, after Point) {
	n := len(around)
	return around[(i+n-1)%n], around[i], around[(i+1)%n]
}

// footOn is the point of the line from v to w that is nearest to another, and whether it is between the two.
func footOn(v, w, from Point) (Point, bool) {
	ex, ey := w.X-v.X, w.Y-v.Y
	t := ((from.X-v.X)*ex + (from.Y-v.Y)*ey) / (ex*ex + ey*ey)
	return Point{v.X + t*ex, v.Y + t*ey}, t > hair && t < 1-hair
}

// flatBefore says whether the edge from v to u leads away from a point and less than 30 degrees, half of the widest step, off from
// square to the way to it.
func flatBefore(u, v, from Point) bool {
	ex, ey, dx, dy := u.X-v.X, u.Y-v.Y, v.X-from.X, v.Y-from.Y
	rise := (ex*dx + ey*dy) / (math.Hypot(ex, ey) * math.Hypot(dx, dy))
	return rise >= 0 && rise < 0.5 // sin 30°
}

func apart(v, w Point) float64 { return math.Hypot(v.X-w.X, v.Y-w.Y) }

// halved cuts every part along a line, unless one side of it would be as good as nothing.
func halved(parts [][]Point, through, along Point) [][]Point {
	to := Point{through.X + along.X, through.Y + along.Y}
	var cut [][]Point
	for _, p := range parts {
		left, right := clip(p, nil, through, to), clip(p, nil, to, through)
		if nothing := hair * area(p); area(left) <= nothing || area(right) <= nothing {
			cut = append(cut, p)
		} else {
			cut = append(cut, left, right)
		}
	}
	return cut
}
