package fit

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/catalogue/people"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// rimOf is by how much a mattress may end short of the end of its bed: a rim with the board it is made of [mm]. Common practice, no source.
const rimOf = 50

// run is a stretch along a bed on which cushions lie without a gap.
type run struct {
	from, to float64
	first    int // the cushion it begins with
	cushions int // on the whole bed
}

// cushioned is the longest stretch of a bed on which cushions lie, cut to the bed, if they leave more than a rim of its length bare. A bed without any
// cushion is one whose mattress nobody has planned yet: it counts as long as it is.
func (w *worker) cushioned(b berth) (run, bool) {
	bed := b.mode.Standings[b.bed].Box
	if w.in.Fittings[b.bed].Gives > 0 {
		return run{}, false
	}
	from, to := ends(bed.MinX, bed.MaxX, bed.MinY, bed.MaxY, b.axis)
	var all []run
	for i := range b.mode.Standings {
		s := &b.mode.Standings[i]
		if len(s.Solid) == 0 || !w.cushions(i, b.bed, s.Box, bed) || !overlap(s.Box, bed) {
			continue
		}
		low, high := ends(s.Box.MinX, s.Box.MaxX, s.Box.MinY, s.Box.MaxY, b.axis)
		all = append(all, run{max(low, from), min(high, to), i, 0})
	}
	slices.SortFunc(all, func(p, q run) int { return cmp.Or(cmp.Compare(p.from, q.from), cmp.Compare(p.first, q.first)) })
	var most, now run
	for k, r := range all {
		if k == 0 || r.from > now.to+cushionOn {
			now = r
		} else if r.to > now.to {
			now.to = r.to
		}
		if now.to-now.from > most.to-most.from {
			most = now
		}
	}
	most.cushions = len(all)
	return most, len(all) > 0 && (most.from > from+rimOf || most.to < to-rimOf)
}

// ends of a box along an axis.
func ends(x0, x1, y0, y1 float64, axis int) (from, to float64) {
	if axis == 1 {
		return y0, y1
	}
	return x0, x1
}

// lain is how long a bed is for who lies on it: as long as its cushions, where it has some; and what it is that is so long.
func (w *worker) lain(b berth) (length float64, on int) {
	length, _ = w.usable(b)
	r, short := w.cushioned(b)
	if !short || r.to-r.from >= length {
		return length, b.bed
	}
	return r.to - r.from, r.first
}

// longerMattress proposes to make a mattress as long as its bed, if that is long enough then.
func (w *worker) longerMattress(b berth) []finding.Proposal {
	r, short := w.cushioned(b)
	length, _ := w.usable(b)
	if !short || r.cushions > 1 || length < b.person.Stature+people.Lying {
		return nil
	}
	bed := b.mode.Standings[b.bed].Box
	from, to := ends(bed.MinX, bed.MaxX, bed.MinY, bed.MaxY, b.axis)
	low, high := math.Floor(r.from-from), math.Floor(to-r.to)
	if low > w.roomBeyond(r.first, b.axis, solid.Side(2*b.axis))+5 || high > w.roomBeyond(r.first, b.axis, solid.Side(2*b.axis+1))+5 { // in whole 5 mm
		return nil
	}
	return w.stretched(r.first, b.axis, low, high, ", as long as "+w.name(b.bed))
}
