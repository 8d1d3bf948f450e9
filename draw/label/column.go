package label

import (
	"math"
	"sort"

	"tumblehome/draw"
)

// Column sets labels one below another about a line x = const, each as near to the height of
// its place as the others let it, between two heights: margin notes beside a drawing. Leaders
// do not cross where labels are equally high. Labels that do not fit between the heights are
// marked, and run over the lower end.
func Column(labels []Label, x, from, to, gap float64) []Placed {
	at, tall := make([]float64, len(labels)), make([]float64, len(labels))
	for i, l := range labels {
		at[i], tall[i] = l.Place.Y, l.Height+gap
	}
	at = draw.Spread(at, tall)
	settle(at, tall, from, to)
	centres := make([]draw.Point, len(labels))
	for i := range labels {
		centres[i] = draw.Pt(x, at[i])
	}
	uncross(labels, centres)
	out := make([]Placed, len(labels))
	for i, l := range labels {
		b := l.at(centres[i])
		out[i] = Placed{Box: b, Leader: l.leader(b), Fits: b.Min.Y >= from-1e-9 && b.Max.Y <= to+1e-9}
	}
	return out
}

// settle pushes the row into the room between two heights, keeping its order and distances.
func settle(at, tall []float64, from, to float64) {
	order := make([]int, len(at))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return at[order[a]] < at[order[b]] })
	floor := math.Inf(1)
	for k := len(order) - 1; k >= 0; k-- {
		i := order[k]
		limit := to - tall[i]/2
		if k < len(order)-1 {
			limit = floor - tall[i]/2
		}
		at[i] = math.Min(at[i], limit)
		floor = at[i] - tall[i]/2
	}
	ceiling := from
	for _, i := range order {
		at[i] = math.Max(at[i], ceiling+tall[i]/2)
		ceiling = at[i] + tall[i]/2
	}
}

// uncross swaps labels of equal height while their leaders cross. Each swap shortens the sum
// of the two leaders (the sides of a quadrilateral against its diagonals), so it ends.
func uncross(labels []Label, centres []draw.Point) {
	for again, round := true, 0; again && round < 1+len(labels)*len(labels); round++ {
		again = false
		for i := range labels {
			for j := range i {
				if labels[i].Height == labels[j].Height && Cross(centres[i], labels[i].Place, centres[j], labels[j].Place) {
					centres[i], centres[j] = centres[j], centres[i]
					again = true
				}
			}
		}
	}
}
