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

// move puts a label at a box.
func (t *table) move(i int, box draw.Rect) {
	t.boxes[i], t.leaders[i], t.placed[i] = box, t.Labels[i].leader(box), true
}

// lay puts a label at its cheapest free position: one of its own, or where those are taken or
// tangled, one that touches what is there. A label that lies already moves only if that costs
// less. It tells whether the label moved.
func (t *table) lay(i int) bool {
	best, box := math.Inf(1), draw.Rect{}
	if t.placed[i] {
		best = t.cost(i, t.boxes[i], best) - 1e-9
	}
	had := best
	try := func(b draw.Rect, later float64) {
		if cost := t.cost(i, b, best-later) + later; cost < best && t.free(b, i) {
			best, box = cost, b
		}
	}
	for k, c := range t.candidates[i] {
		try(c, float64(k)*costLater)
	}
	if best >= costThrough {
		for _, c := range t.corners(i) {
			try(c, 0)
		}
	}
	if best < had {
		t.move(i, box)
	}
	return best < had
}

// rounds bounds the work of improve; nearly always nothing moves after three or four.
const rounds = 8

// improve takes up each label in turn and lays it anew, then swaps labels that are in each
// other's way, until nothing moves.
func (t *table) improve() {
	for moved, round := true, 0; moved && round < rounds; round++ {
		moved = false
		for i := range t.Labels {
			moved = t.lay(i) || moved
		}
		for i := range t.Labels {
			for j := range i {
				moved = t.swap(i, j) || moved
			}
		}
	}
}

// swap exchanges the positions of two labels when both fit there and it costs less.
func (t *table) swap(i, j int) bool {
	if !t.placed[i] || !t.placed[j] || meeting(t.boxes[i], t.leaders[i], t.boxes[j], t.leaders[j]) == 0 {
		return false
	}
	a, b := t.boxes[i], t.boxes[j]
	both := func() float64 {
		return t.cost(i, t.boxes[i], math.Inf(1)) + t.cost(j, t.boxes[j], math.Inf(1))
	}
	had := both()
	t.move(i, t.Labels[i].at(b.Centre()))
	t.move(j, t.Labels[j].at(a.Centre()))
	if t.suits(i) && t.suits(j) && both() < had-1e-9 {
		return true
	}
	t.move(i, a)
	t.move(j, b)
	return false
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
	before := *t
	n := len(t.Labels)
	t.boxes, t.leaders, t.placed = make([]draw.Rect, n), make([][]draw.Point, n), make([]bool, n)
	for _, i := range t.order(func(i int) float64 { return -t.Labels[i].Height*1e3 - t.Labels[i].Width }) {
		best := math.Inf(1)
		for _, c := range t.corners(i) {
			if at := c.Min.Y*1e3 + c.Min.X; at < best {
				best = at
				t.move(i, c)
			}
		}
	}
	if count(t.placed) < count(before.placed) {
		*t = before
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
