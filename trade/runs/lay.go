package runs

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// Spot is a place where a way begins or ends.
type Spot struct {
	Name string
	Box  solid.Bounds // of the thing there; a point where it has no size
	Bare bool         // nothing stands there: the way ends on its line
}

// Lay leads a way from one spot to another along one of the usual lines: along the finished surface, over wheel arches, behind the lining as
// deep as the manner wants and the lining is thick, and by the floor or the roof to what stands on the other side.
func (r *Result) Lay(p Path, m Manner, from, to Spot) []Corner {
	l := &layer{worker: &worker{in: r.in}, path: p}
	l.begin(m, from, to)
	x0, x1 := l.along(from), l.along(to)
	var out []Corner
	out = append(out, l.tail(from, x0)...)
	slices.Reverse(out)
	out = append(out, l.line(x0, x1)...)
	out = append(out, l.tail(to, x1)...)
	return apart(out)
}

// layer is a way while it is being laid.
type layer struct {
	*worker
	path        Path
	deep        float64 // behind the sides
	deepRoof    float64 // behind the roof
	edge        float64 // where the roof's edge is taken to be, from the middle
	top         float64 // of the sides
	first, last float64 // along the van
}

func (l *layer) begin(m Manner, from, to Spot) {
	room := l.in.Room
	l.first, l.last = min(l.along(from), l.along(to)), max(l.along(from), l.along(to))
	ridge, half := math.Inf(1), math.Inf(1)
	for x := l.first; ; x = min(x+lookAlong, l.last) {
		ridge = min(ridge, room.Roof(x, 0))
		half = min(half, room.Right(x, ridge-underRidge), -room.Left(x, ridge-underRidge))
		if x >= l.last {
			break
		}
	}
	l.top, l.edge = tens(ridge-underRidge), tens(edgeShare*half)
	l.deep, l.deepRoof = m.behind, m.behind
	for _, z := range []float64{l.level(), l.top} {
		l.deep = min(l.deep, l.room(left, z), l.room(right, z))
	}
	l.deepRoof = min(l.deepRoof, l.room(roof, l.edge))
}

// room is how deep a way may lie behind a surface before it comes to a rib or the skin, nowhere less than nothing, to the 5 mm.
func (l *layer) room(on string, at float64) float64 {
	least := math.Inf(1)
	for x := l.first; ; x = min(x+lookAlong, l.last) {
		thick := 0.0
		switch on {
		case left:
			thick = l.in.Room.Left(x, at) - l.in.Skin.Left(x, at)
		case right:
			thick = l.in.Skin.Right(x, at) - l.in.Room.Right(x, at)
		default:
			thick = min(l.in.Skin.Roof(x, at)-l.in.Room.Roof(x, at), l.in.Skin.Roof(x, -at)-l.in.Room.Roof(x, -at))
		}
		least = min(least, thick-l.ribAt(on, x))
		if x >= l.last {
			break
		}
	}
	return max(0, 5*math.Floor(least/5))
}

// ribAt is how deep the ribs near a place are.
func (l *layer) ribAt(on string, x float64) float64 {
	deep := 0.0
	for _, r := range l.in.Ribs {
		if r.On == on && x > r.From-lookAlong && x < r.To+lookAlong {
			deep = max(deep, r.Depth)
		}
	}
	return deep
}

// along is where on the line a spot is reached.
func (l *layer) along(s Spot) float64 {
	x := (s.Box.MinX + s.Box.MaxX) / 2
	return tens(max(l.in.Room.Front(), min(l.in.Room.Rear()-offRear, x)))
}

// level is how high the line lies on its side.
func (l *layer) level() float64 {
	switch l.path.high {
	case low:
		return l.in.Room.Floor() + footHigh
	case belt:
		return min(beltHigh, l.top)
	}
	return l.top
}

// line are the corners along the van from one place to another.
func (l *layer) line(x0, x1 float64) []Corner {
	if l.path.high == edge {
		y := sign(l.path.side) * l.edge
		return []Corner{l.onRoof(x0, y), l.onRoof(x1, y)}
	}
	out := []Corner{l.foot(x0)}
	arches := l.archesBetween(min(x0, x1), max(x0, x1))
	if x1 < x0 {
		slices.Reverse(arches)
	}
	for _, a := range arches {
		near, far := a.MinX-overArch, a.MaxX+overArch
		if x1 < x0 {
			near, far = far, near
		}
		up := tens(a.MaxZ + overArch)
		if (near-x0)*(x1-x0) > 0 {
			out = append(out, l.foot(tens(near)), l.onSide(l.path.side, tens(near), up))
		}
		if (x1-far)*(x1-x0) > 0 {
			out = append(out, l.onSide(l.path.side, tens(far), up), l.foot(tens(far)))
		}
	}
	return append(out, l.foot(x1))
}

// foot is a corner on the line: at its level, or over the wheel arch that is there.
func (l *layer) foot(x float64) Corner {
	for _, a := range l.archesBetween(x, x) {
		return l.onSide(l.path.side, x, tens(a.MaxZ+overArch))
	}
	if l.path.high == low {
		c := l.onSide(l.path.side, x, l.level())
		c.Z = fmt.Sprintf("floor + %d", footHigh)
		return c
	}
	return l.onSide(l.path.side, x, l.level())
}

// archesBetween are the wheel arches on the side that the line meets between two places, from the front.
func (l *layer) archesBetween(from, to float64) []solid.Bounds {
	var out []solid.Bounds
	for _, a := range l.in.Arches {
		on := a.Box.MinY*sign(l.path.side) >= 0 && a.Box.MaxY*sign(l.path.side) >= 0
		if on && a.Box.MaxX+overArch > from && a.Box.MinX-overArch < to && l.level() < a.Box.MaxZ+overArch/2 {
			out = append(out, a.Box)
		}
	}
	slices.SortFunc(out, func(a, b solid.Bounds) int { return cmp.Compare(a.MinX, b.MinX) })
	return out
}
