package fit

import (
	"container/heap"
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// shortest is the shortest way over a grid from a cell to any of the goals over cells that may be trodden, ends included; nil if there is none.
// Dijkstra, Numerische Mathematik 1 (1959) 269-271; of equally short ways the one found first.
func (g *Ground) shortest(from int32, goals []bool, may func(int32) bool) []int32 {
	far, before, done := make([]float64, len(goals)), make([]int32, len(goals)), make([]bool, len(goals))
	for c := range far {
		far[c] = math.Inf(1)
	}
	far[from], before[from] = 0, -1
	for queue := (&reachedCells{{from, 0}}); queue.Len() > 0; {
		at := heap.Pop(queue).(reachedCell)
		switch {
		case done[at.cell]:
			continue
		case goals[at.cell]:
			return back(before, at.cell)
		}
		done[at.cell] = true
		i, j := int(at.cell)/g.ny, int(at.cell)%g.ny
		for u := max(0, i-1); u <= min(g.nx-1, i+1); u++ {
			for v := max(0, j-1); v <= min(g.ny-1, j+1); v++ {
				c := int32(u*g.ny + v)
				if off := at.far + math.Hypot(float64(u-i), float64(v-j)); off < far[c] && may(c) {
					far[c], before[c] = off, at.cell
					heap.Push(queue, reachedCell{c, off})
				}
			}
		}
	}
	return nil
}

// back is the way to a cell, from its beginning.
func back(before []int32, c int32) []int32 {
	var way []int32
	for ; c >= 0; c = before[c] {
		way = append(way, c)
	}
	slices.Reverse(way)
	return way
}

// pulled is a way drawn tight: straight as far as every cell under it has the clearance that the way has anyhow.
func (g *Ground) pulled(cells []int32, t *trodden, from int32) []solid.Point {
	if len(cells) == 0 {
		return []solid.Point{g.place(from)}
	}
	least := t.clear[cells[0]]
	for _, c := range cells {
		least = min(least, t.clear[c])
	}
	line := []solid.Point{g.place(cells[0])}
	for k := 0; k < len(cells)-1; {
		next := k + 1
		for n := len(cells) - 1; n > next; n-- {
			if g.straight(cells[k], cells[n], func(c int32) bool { return t.pass.part[c] != 0 && t.clear[c] >= least }) {
				next = n
			}
		}
		line, k = append(line, g.place(cells[next])), next
	}
	return line
}

func (g *Ground) place(c int32) solid.Point {
	return solid.Point{X: g.atX(int(c) / g.ny), Y: g.atY(int(c) % g.ny)}
}

// straight says whether every cell under a straight line may be trodden.
func (g *Ground) straight(from, to int32, may func(int32) bool) bool {
	a, b := g.place(from), g.place(to)
	n := int(math.Ceil(2 * math.Hypot(b.X-a.X, b.Y-a.Y) / cell))
	for k := 0; k <= n; k++ {
		share := float64(k) / float64(n)
		i, j := math.Round((a.X+(b.X-a.X)*share-g.x)/cell), math.Round((a.Y+(b.Y-a.Y)*share-g.y)/cell)
		if !may(int32(int(i)*g.ny + int(j))) {
			return false
		}
	}
	return true
}

// reachedCell waits to be gone on from.
type reachedCell struct {
	cell int32
	far  float64
}

type reachedCells []reachedCell

func (q reachedCells) Len() int { return len(q) }
func (q reachedCells) Less(a, b int) bool {
	return q[a].far < q[b].far || q[a].far == q[b].far && q[a].cell < q[b].cell
}
func (q reachedCells) Swap(a, b int) { q[a], q[b] = q[b], q[a] }
func (q *reachedCells) Push(c any)   { *q = append(*q, c.(reachedCell)) }
func (q *reachedCells) Pop() any {
	last := len(*q) - 1
	c := (*q)[last]
	*q = (*q)[:last]
	return c
}
