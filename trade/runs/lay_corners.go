package runs

import (
	"fmt"
	"math"
	"slices"
)

// Corner is a corner of a way as the document writes it, and where that is.
type Corner struct {
	X, Y, Z string
	At      Point
}

// At is where the corners are.
func At(corners []Corner) []Point {
	out := make([]Point, len(corners))
	for i, c := range corners {
		out[i] = c.At
	}
	return out
}

func (l *layer) onSide(side string, x, z float64) Corner {
	if side == left {
		return Corner{plain(x), offset("left", -l.deep), plain(z), Point{x, l.in.Room.Left(x, z) - l.deep, z}}
	}
	return Corner{plain(x), offset("right", l.deep), plain(z), Point{x, l.in.Room.Right(x, z) + l.deep, z}}
}

func (l *layer) onRoof(x, y float64) Corner {
	return Corner{plain(x), plain(y), offset("roof", l.deepRoof), Point{x, y, l.in.Room.Roof(x, y) + l.deepRoof}}
}

func (l *layer) onFloor(x, y float64) Corner {
	return Corner{plain(x), plain(y), "floor", Point{x, y, l.in.Room.Floor()}}
}

// apart leaves out corners that lie on the one before.
func apart(all []Corner) []Corner {
	return slices.CompactFunc(all, func(a, b Corner) bool { return distance(a.At, b.At) < 10 })
}

func sign(side string) float64 {
	if side == left {
		return -1
	}
	return 1
}

func tens(v float64) float64 { return 10 * math.Round(v/10) }

func plain(v float64) string { return fmt.Sprintf("%.0f", v) }

func offset(face string, plus float64) string {
	switch {
	case plus > 0:
		return fmt.Sprintf("%s + %.0f", face, plus)
	case plus < 0:
		return fmt.Sprintf("%s - %.0f", face, -plus)
	}
	return face
}
