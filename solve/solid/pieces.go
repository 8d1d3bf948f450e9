package solid

import (
	"errors"
	"slices"
)

var (
	errFlat    = errors.New("the outline has no three corners that are not in a row")
	errCrossed = errors.New("the outline crosses or touches itself")
)

// Pieces cuts a simple outline, convex or not, either way round, into convex ones: ears are clipped (Meisters, American
// Mathematical Monthly 82 (1975) 648-651) and put together again wherever that leaves no hollow corner, after Hertel and Mehlhorn
// (Foundations of Computation Theory 1983, 207-218), which gives at most four times the fewest possible. Corners in a row and corners
// given twice are dropped. An outline that crosses or touches itself is an error. The time grows with the cube of the corners.
func Pieces(outline []Point) ([][]Point, error) {
	around := plain(outline)
	if len(around) < 3 {
		return nil, errFlat
	}
	if crosses(around) {
		return nil, errCrossed
	}
	if area(around) < 0 {
		slices.Reverse(around)
	}
	var pieces [][]Point
	for len(around) >= 3 {
		i := ear(around)
		if i < 0 {
			return nil, errCrossed
		}
		if a, b, c := corner(around, i); turn(a, b, c) > 0 {
			pieces = append(pieces, []Point{a, b, c})
		}
		around = slices.Delete(around, i, i+1)
	}
	return together(pieces), nil
}

// Extruded is the solid over a simple outline between two heights.
func Extruded(outline []Point, low, high float64) (Solid, error) {
	pieces, err := Pieces(outline)
	if err != nil {
		return nil, err
	}
	s := make(Solid, len(pieces))
	for i, p := range pieces {
		s[i] = Prism{p, low, high}
	}
	return s, nil
}

// plain is an outline without corners in a row and corners given twice.
func plain(outline []Point) []Point {
	around := slices.Clone(outline)
	for i := 0; i < len(around) && len(around) >= 3; {
		if a, b, c := corner(around, i); turn(a, b, c) == 0 {
			around = slices.Delete(around, i, i+1)
			i = max(0, i-1)
			continue
		}
		i++
	}
	return around
}

// corner is a corner of an outline between its two neighbours.
func corner(around []Point, i int) (before, at, after Point) {
	n := len(around)
	return around[(i+n-1)%n], around[i], around[(i+1)%n]
}

// crosses says whether two edges that are not neighbours meet.
func crosses(around []Point) bool {
	for i := range around {
		_, a, b := corner(around, i)
		for j := i + 2; j < len(around); j++ {
			if i == 0 && j == len(around)-1 {
				continue
			}
			if _, c, d := corner(around, j); meet(a, b, c, d) {
				return true
			}
		}
	}
	return false
}

// meet says whether the closed stretches from a to b and from c to d have a point in common.
func meet(a, b, c, d Point) bool {
	if max(a.X, b.X) < min(c.X, d.X) || max(c.X, d.X) < min(a.X, b.X) || max(a.Y, b.Y) < min(c.Y, d.Y) || max(c.Y, d.Y) < min(a.Y, b.Y) {
		return false
	}
	return !sameSide(turn(a, b, c), turn(a, b, d)) && !sameSide(turn(c, d, a), turn(c, d, b))
}

func sameSide(t, u float64) bool { return (t > 0 && u > 0) || (t < 0 && u < 0) }

// ear is a corner that can be cut off: it turns left, and its triangle holds no other corner; or it turns nowhere. It is -1 if there is none.
func ear(around []Point) int {
	for i := range around {
		a, b, c := corner(around, i)
		if t := turn(a, b, c); t == 0 || t > 0 && !holds(around, a, b, c) {
			return i
		}
	}
	return -1
}

// holds says whether a triangle holds a corner that is not one of its own.
func holds(around []Point, a, b, c Point) bool {
	for _, p := range around {
		if p != a && p != b && p != c && turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0 {
			return true
		}
	}
	return false
}

// together puts two pieces together, again and again, where they share an edge and the whole is convex.
func together(pieces [][]Point) [][]Point {
	for i := 0; i < len(pieces); i++ {
		for j := i + 1; j < len(pieces); j++ {
			if whole, ok := joined(pieces[i], pieces[j]); ok {
				pieces[i], pieces = whole, slices.Delete(pieces, j, j+1)
				j = i // from the start, with the greater piece
			}
		}
	}
	return pieces
}

// joined is the convex outline about two that share an edge.
func joined(p, q []Point) ([]Point, bool) {
	for i := range p {
		_, a, b := corner(p, i)
		for j := range q {
			if _, c, d := corner(q, j); a != d || b != c {
				continue
			}
			whole := make([]Point, 0, len(p)+len(q)-2)
			for k := range p {
				whole = append(whole, p[(i+1+k)%len(p)])
			}
			for k := 2; k < len(q); k++ {
				whole = append(whole, q[(j+k)%len(q)])
			}
			return whole, Prism{Outline: whole}.IsConvex()
		}
	}
	return nil, false
}
