package draw

import (
	"math"
	"sort"
)

// stackPitch is the least distance between parallel dimension lines in millimetres, stackAir
// the least between the texts of one line and the next (common practice, no source).
const (
	stackPitch = 6.0
	stackAir   = 1.2
)

// Stack lays chains (all Horizontal or all Vertical) on parallel lines beside a drawing whose
// edge is at the given y or x on the paper, outwards from it: towards larger y or x when
// outward is true. Shorter chains lie nearer, so that no dimension line is crossed by an
// extension line; chains that do not overlap share a line. It gives the chains with At filled
// in, and the edge of the room they take.
func Stack(edge float64, outward bool, chains ...Chain) (set []Chain, end float64) {
	line := edge
	if !outward {
		line -= extensionGap + extensionOver
	}
	for _, row := range rowsOf(chains) {
		tall := stackPitch
		for _, c := range row {
			tall = math.Max(tall, c.Height()+stackAir)
		}
		// Texts stand above and to the left of their line: outwards they lie between their
		// line and the one before, otherwise between their line and the next.
		if outward {
			line += tall
		}
		for _, c := range row {
			c.At = line
			set = append(set, c)
		}
		if !outward {
			line -= tall
		}
	}
	if outward {
		return set, line + extensionOver
	}
	return set, line + stackAir
}

// rowsOf shares the chains out to rows, nearest first.
func rowsOf(chains []Chain) [][]Chain {
	sorted := append([]Chain{}, chains...)
	sort.SliceStable(sorted, func(i, j int) bool {
		a, b := sorted[i].reach(), sorted[j].reach()
		if math.Abs(a-b) < 0.5 {
			return len(sorted[i].Stops) > len(sorted[j].Stops) // the whole lies outside its pieces
		}
		return a < b
	})
	var rows [][]Chain
	for _, c := range sorted {
		row := lowestFree(rows, c)
		if row == len(rows) {
			rows = append(rows, nil)
		}
		rows[row] = append(rows[row], c)
	}
	return rows
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
