package solid

import (
	"math"
	"slices"
)

// Every is the number of intervals of at most step over a length.
func Every(length, step float64) int {
	if !(length > step) {
		return 1
	}
	return int(math.Ceil(length/step - 1e-9))
}

// Places are where a length is looked at: even places at most step apart, both ends, and those of some others that lie between; one place if the
// length is nothing. They are put where there is room.
func Places(room []float64, from, to, step float64, others []float64) []float64 {
	places := room[:0]
	if !(to > from) {
		return append(places, from)
	}
	n := Every(to-from, step)
	first, _ := slices.BinarySearch(others, from)
	last, _ := slices.BinarySearch(others, to)
	for i := range n + 1 {
		places = append(places, node(from, to, i, n))
	}
	if first < last {
		places = append(places, others[first:last]...)
		slices.Sort(places)
		places = slices.Compact(places)
	}
	return places
}

// Greatest is the greatest value of f over a rectangle: the best node of the grid of some places along each side, in rising order, followed
// uphill along u and v in steps halved from the grid's widest down to 1/128 of it. f may have jumps. A hill narrower than the grid may be
// missed; f of a point outside the rectangle is never asked.
func Greatest(us, vs []float64, f func(u, v float64) float64) float64 {
	best, bu, bv := math.Inf(-1), us[0], vs[0]
	for _, u := range us {
		for _, v := range vs {
			if value := f(u, v); value > best {
				best, bu, bv = value, u, v
			}
		}
	}
	du, dv := longest(us), longest(vs)
	for range 7 {
		du, dv = du/2, dv/2
		for _, try := range [4][2]float64{{-du, 0}, {du, 0}, {0, -dv}, {0, dv}} {
			u, v := bu+try[0], bv+try[1]
			if (u == bu && v == bv) || u < us[0] || u > us[len(us)-1] || v < vs[0] || v > vs[len(vs)-1] {
				continue
			}
			if value := f(u, v); value > best {
				best, bu, bv = value, u, v
			}
		}
	}
	return best
}

// node is the i-th of n+1 even places, exact at both ends.
func node(from, to float64, i, n int) float64 {
	if i == n {
		return to
	}
	return from + (to-from)*float64(i)/float64(n)
}

// longest is the widest distance from one place to the next.
func longest(places []float64) float64 {
	w := 0.0
	for i := 1; i < len(places); i++ {
		w = max(w, places[i]-places[i-1])
	}
	return w
}
