package conduction

import (
	"math"
	"slices"
)

// sameLine is how close two coordinates are, as a share of the section's extent, to be one mesh line: far above
// the rounding of a sum of layers, far below any real thickness.
const sameLine = 1e-9

// baseLines gives the coordinates of every edge of the section along x and y, rising.
func baseLines(s Section) (x, y []float64) {
	for _, r := range s.Regions {
		x, y = append(x, r.X0, r.X1), append(y, r.Y0, r.Y1)
	}
	for _, b := range s.Boundaries {
		x, y = append(x, b.X0, b.X1), append(y, b.Y0, b.Y1)
	}
	return merge(x), merge(y)
}

func merge(v []float64) []float64 {
	slices.Sort(v)
	near := sameLine * (v[len(v)-1] - v[0])
	return slices.CompactFunc(v, func(a, b float64) bool { return math.Abs(b-a) <= near })
}

// place is the index of the line nearest to v.
func place(lines []float64, v float64) int {
	i, _ := slices.BinarySearch(lines, v)
	switch {
	case i == len(lines):
		return i - 1
	case i > 0 && v-lines[i-1] < lines[i]-v:
		return i - 1
	}
	return i
}

// within is the interval of the lines that holds v, and how far into it v lies, 0 to 1. It is ok when v is between
// the outer lines.
func within(lines []float64, v float64) (i int, share float64, ok bool) {
	last := len(lines) - 1
	if math.IsNaN(v) || v < lines[0] || v > lines[last] {
		return 0, 0, false
	}
	i, _ = slices.BinarySearch(lines, v)
	i = min(max(i-1, 0), last-1)
	return i, (v - lines[i]) / (lines[i+1] - lines[i]), true
}

// split halves the intervals that the mark names.
func split(lines []float64, marked func(i int) bool) []float64 {
	var out []float64
	for i := range len(lines) - 1 {
		out = append(out, lines[i])
		if marked(i) {
			out = append(out, (lines[i]+lines[i+1])/2)
		}
	}
	return append(out, lines[len(lines)-1])
}

func every(int) bool { return true }

// atLeast halves the widest intervals until there are n.
func atLeast(lines []float64, n int) []float64 {
	for len(lines) <= n {
		wide := 0.0
		for i := range len(lines) - 1 {
			wide = max(wide, lines[i+1]-lines[i])
		}
		lines = split(lines, func(i int) bool { return lines[i+1]-lines[i] > 0.7*wide })
	}
	return lines
}
