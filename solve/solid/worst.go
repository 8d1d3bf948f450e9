package solid

import "math"

// Grid says how densely a rectangle is searched: intervals along each side, at least one.
type Grid struct{ U, V int }

// Every is the number of intervals of at most step over a length.
func Every(length, step float64) int {
	if !(length > step) {
		return 1
	}
	return int(math.Ceil(length/step - 1e-9))
}

// Greatest is the greatest value of f over a rectangle: the best node of the grid (corners and edges included), followed
// uphill along u and v in steps halved from the grid's down to 1/128 of it. f may have jumps. A hill narrower than the grid may be
// missed; f of a point outside the rectangle is never asked.
func Greatest(u0, u1, v0, v1 float64, g Grid, f func(u, v float64) float64) float64 {
	du, dv := (u1-u0)/float64(g.U), (v1-v0)/float64(g.V)
	best, bu, bv := math.Inf(-1), u0, v0
	for i := range g.U + 1 {
		u := node(u0, u1, i, g.U)
		for j := range g.V + 1 {
			v := node(v0, v1, j, g.V)
			if value := f(u, v); value > best {
				best, bu, bv = value, u, v
			}
			if dv == 0 {
				break
			}
		}
		if du == 0 {
			break
		}
	}
	for range 7 {
		du, dv = du/2, dv/2
		for _, try := range [4][2]float64{{-du, 0}, {du, 0}, {0, -dv}, {0, dv}} {
			u, v := bu+try[0], bv+try[1]
			if (u == bu && v == bv) || u < u0 || u > u1 || v < v0 || v > v1 {
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
