package label

import (
	"math"
	"sort"

	"tumblehome/draw"
)

// greedy lays the labels with the fewest possibilities first.
func (t *table) greedy() {
	for _, i := range t.order(func(i int) float64 { return float64(len(t.candidates[i])) }) {
		t.lay(i)
	}
}

// order sorts the labels by a measure; equals stay in the order given.
func (t *table) order(measure func(int) float64) []int {
	out := make([]int, len(t.Labels))
	for i := range out {
		out[i] = i
	}
	sort.SliceStable(out, func(a, b int) bool { return measure(out[a]) < measure(out[b]) })
	return out
}

// lay puts a label at its cheapest free position, a touching one if none of its own is free.
func (t *table) lay(i int) bool {
	best, box := math.Inf(1), draw.Rect{}
	for k, c := range t.candidates[i] {
		if !t.free(c, i) {
			continue
		}
		if cost := t.cost(i, c) + float64(k)*costLater; cost < best {
			best, box = cost, c
		}
	}
	if math.IsInf(best, 1) {
		for _, c := range t.corners(i) {
			if cost := t.cost(i, c); cost < best {
				best, box = cost, c
			}
		}
	}
	t.boxes[i], t.placed[i] = box, !math.IsInf(best, 1)
	return t.placed[i]
}

// improve takes up each label in turn and lays it anew, then swaps labels whose leaders cross.
// It tells whether anything moved.
func (t *table) improve() bool {
	moved := false
	for i := range t.Labels {
		before := t.boxes[i]
		wasPlaced, had := t.placed[i], t.costNow(i)
		t.lay(i)
		if wasPlaced && (!t.placed[i] || t.cost(i, t.boxes[i]) >= had-1e-9) {
			t.boxes[i], t.placed[i] = before, true
		}
		moved = moved || t.boxes[i] != before
	}
	for i := range t.Labels {
		for j := range i {
			moved = t.swap(i, j) || moved
		}
	}
	return moved
}

func (t *table) costNow(i int) float64 {
	if !t.placed[i] {
		return math.Inf(1)
	}
	return t.cost(i, t.boxes[i])
}

// swap exchanges the positions of two labels when both fit there and it costs less.
func (t *table) swap(i, j int) bool {
	if !t.placed[i] || !t.placed[j] || meeting(t.boxes[i], t.Labels[i].leader(t.boxes[i]), t.boxes[j], t.Labels[j].leader(t.boxes[j])) == 0 {
		return false
	}
	a, b := t.boxes[i], t.boxes[j]
	had := t.cost(i, a) + t.cost(j, b)
	t.boxes[i], t.boxes[j] = t.Labels[i].at(b.Centre()), t.Labels[j].at(a.Centre())
	good := t.suits(i) && t.suits(j) && t.cost(i, t.boxes[i])+t.cost(j, t.boxes[j]) < had-1e-9
	if !good {
		t.boxes[i], t.boxes[j] = a, b
	}
	return good
}

// suits tells whether a label may lie where it lies.
func (t *table) suits(i int) bool {
	b := t.boxes[i]
	reach := nearest(b, t.Labels[i].Place).Distance(t.Labels[i].Place)
	return t.allowed(b) && t.free(b, i) && reach >= t.Labels[i].Reach
}

// repack gives up nearness for room: all labels are laid from scratch into touching positions,
// largest first, each as far up and left as it goes. It keeps the result only if more fit.
func (t *table) repack() {
	boxes, placed := append([]draw.Rect{}, t.boxes...), append([]bool{}, t.placed...)
	before := count(placed)
	for i := range t.placed {
		t.placed[i] = false
	}
	for _, i := range t.order(func(i int) float64 { return -t.Labels[i].Height*1e3 - t.Labels[i].Width }) {
		best := math.Inf(1)
		for _, c := range t.corners(i) {
			if at := c.Min.Y*1e3 + c.Min.X; at < best {
				best, t.boxes[i], t.placed[i] = at, c, true
			}
		}
	}
	if count(t.placed) < before {
		t.boxes, t.placed = boxes, placed
	}
}

func count(set []bool) int {
	n := 0
	for _, b := range set {
		if b {
			n++
		}
	}
	return n
}
