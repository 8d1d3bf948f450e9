package runs

import (
	"fmt"
	"math"
)

// tail leads from the line to a spot: up or down the side, or across by the roof or the floor.
func (l *layer) tail(s Spot, x float64) []Corner {
	if s.Bare {
		return nil
	}
	y, z := (s.Box.MinY+s.Box.MaxY)/2, tens((s.Box.MinZ+s.Box.MaxZ)/2)
	z = max(l.in.Room.Floor()+footHigh, min(z, l.top))
	at := l.sideOf(s)
	onRoof := s.Box.MinZ > l.top
	switch {
	case at == l.path.side && !onRoof:
		return l.upTo(at, x, z)
	case l.path.high == low && !onRoof, l.isLow(s) && (at == "" || l.path.high == belt):
		if over := l.byFloor(at, x, y, z); at == "" || !l.underfoot(over, x) {
			return over
		}
	}
	var out []Corner
	if l.path.high != edge {
		out = append(out, l.onSide(l.path.side, x, l.top), l.onRoof(x, sign(l.path.side)*l.edge))
	}
	if at == "" || onRoof {
		return append(out, l.onRoof(x, max(-l.edge, min(l.edge, tens(y)))))
	}
	out = append(out, l.onRoof(x, sign(at)*l.edge), l.onSide(at, x, l.top))
	return append(out, l.upTo(at, x, z)...)
}

// underfoot says whether a line from the foot of the side would lie where one walks.
func (l *layer) underfoot(over []Corner, x float64) bool {
	line := At(append([]Corner{l.other(l.path.side, x)}, over...))
	for i := 0; i+1 < len(line); i++ {
		found := false
		l.acrossGangway(line[i], line[i+1], func(Foul, stretch) { found = true })
		if found {
			return true
		}
	}
	return false
}

// isLow says whether something stands in the lower half of the van, from where nobody goes by the roof without need.
func (l *layer) isLow(s Spot) bool { return s.Box.MinZ+s.Box.MaxZ < l.in.Room.Floor()+l.top }

// byFloor leads from the line down its side and across the floor to what stands out in the room or on the other side.
func (l *layer) byFloor(at string, x, y, z float64) []Corner {
	var out []Corner
	if l.path.high == edge {
		out = append(out, l.onSide(l.path.side, x, l.top))
	}
	if l.path.high != low {
		out = append(out, l.other(l.path.side, x))
	}
	if at == "" {
		return append(out, l.onFloor(x, tens(y)))
	}
	return append(append(out, l.other(at, x)), l.upTo(at, x, z)...)
}

// upTo is a leg up or down a side to a thing, where it is not at the line's level.
func (l *layer) upTo(side string, x, z float64) []Corner {
	if math.Abs(z-l.level()) < offLevel && side == l.path.side && l.path.high != edge {
		return nil
	}
	if l.path.high == edge && side == l.path.side {
		return []Corner{l.onSide(side, x, l.top), l.onSide(side, x, z)}
	}
	return []Corner{l.onSide(side, x, z)}
}

// other is the foot of a side, from where the floor is crossed.
func (l *layer) other(side string, x float64) Corner {
	c := l.onSide(side, x, l.in.Room.Floor()+footHigh)
	c.Z = fmt.Sprintf("floor + %d", footHigh)
	return c
}

// sideOf is the side at which something stands, or none.
func (l *layer) sideOf(s Spot) string {
	x, z := (s.Box.MinX+s.Box.MaxX)/2, (s.Box.MinZ+s.Box.MaxZ)/2
	x = max(l.in.Room.Front(), min(x, l.in.Room.Rear()))
	toLeft, toRight := s.Box.MinY-l.in.Room.Left(x, z), l.in.Room.Right(x, z)-s.Box.MaxY
	switch {
	case min(toLeft, toRight) > atSide:
		return ""
	case math.Abs(toLeft-toRight) < atSide/2: // it goes across the van
		return l.path.side
	case toLeft < toRight:
		return left
	}
	return right
}
