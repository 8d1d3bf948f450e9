package runs

import (
	"fmt"
	"math"
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

// apart leaves out corners that lie on the one before, and those at which the way would turn straight back.
func apart(all []Corner) []Corner {
	var out []Corner
	for _, c := range all {
		for len(out) > 1 && turnsBack(out[len(out)-2].At, out[len(out)-1].At, c.At) {
			out = out[:len(out)-1]
		}
		if n := len(out); n == 0 || distance(out[n-1].At, c.At) >= 10 {
			out = append(out, c)
		}
	}
	return out
}

// turnsBack says whether a way goes back at b on the line on which it came from a.
func turnsBack(a, b, c Point) bool {
	dot, in, on := 0.0, distance(a, b), distance(b, c)
	for axis := range a {
		dot += (b[axis] - a[axis]) * (c[axis] - b[axis])
	}
	return dot < -0.99*in*on
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
