package draw

import (
	"math"
	"sort"
)

// stackPitch is the least distance between parallel dimension lines, in millimetres (common
// practice, no source).
const stackPitch = 6.0

// Stack lays chains of one direction on parallel lines beside a drawing: the first line at
// `first` (y or x on the paper), further ones outwards (towards larger y or x when outward is
// true). Shorter chains lie nearer, so that no dimension line is crossed by an extension line;
// chains that do not overlap share a line. It gives the chains with At filled in.
func Stack(first float64, outward bool, chains ...Chain) []Chain {
	out := append([]Chain{}, chains...)
	sort.SliceStable(out, func(i, j int) bool { return out[i].reach() < out[j].reach() })
	var rows [][]Chain
	for i := range out {
		row := lowestFree(rows, out[i])
		if row == len(rows) {
			rows = append(rows, nil)
		}
		rows[row] = append(rows[row], out[i])
	}
	out = out[:0]
	at := first
	for i, row := range rows {
		tall := stackPitch
		for _, c := range row {
			tall = math.Max(tall, c.Height()+1.2)
		}
		if outward && i > 0 { // text stands on the near side of its own line
			at += tall
		}
		for _, c := range row {
			c.At = at
			out = append(out, c)
		}
		if !outward {
			at -= tall
		}
	}
	return out
}

// lowestFree is the first row above every row in which the chain would overlap another.
func lowestFree(rows [][]Chain, c Chain) int {
	from, to := c.span()
	for r := len(rows) - 1; r >= 0; r-- {
		for _, other := range rows[r] {
			a, b := other.span()
			if from < b+2 && a < to+2 {
				return r + 1
			}
		}
	}
	return 0
}

// span is the stretch of the line that the chain needs with its texts.
func (c Chain) span() (from, to float64) {
	if len(c.Stops) < 2 {
		return 0, 0
	}
	set := c.set()
	from, to = set.from, set.to
	for _, p := range set.places {
		from, to = math.Min(from, p.s-p.width/2), math.Max(to, p.s+p.width/2)
	}
	return from, to
}

func (c Chain) reach() float64 {
	from, to := c.span()
	return to - from
}
