package fit

import (
	"cmp"
	"math"

	"tumblehome/solve/solid"
)

// A Way is the widest way from a door to a fitting in a mode.
type Way struct {
	Mode, Door, To string
	Width          float64 // of the widest body that gets there [mm], from the main door exactly, else a cell too little at most; 0 if none does
	X, Y           float64 // where it is narrowest
}

// reached is how near the edge of a body must come to a bed or a seat to get onto it [mm]: common practice, no source.
const reached = 100

// widest are the widest ways over a floor from the step of a door to everywhere: at each cell the least clearance on the way there,
// and the cell before it.
type widest struct {
	least  []int32
	before []int32
	most   int32 // the greatest of them
}

// waits is a cell that waits to be taken in, and who waits behind it.
type waits struct{ cell, next int32 }

// widestFrom begins outside a door and takes in the roomiest cell within reach until none is left, so that no cell is taken in by a
// narrower way than need be (at the ends of a row one steps to the next, which is never free at both ends): Dijkstra's way with the narrowest place instead of the sum (Pollack, The maximum capacity through a
// network, Operations Research 8 (1960) 733-736).
func (g *Ground) widestFrom(d []int32, door Opening) widest {
	out := widest{least: make([]int32, len(d)), before: make([]int32, len(d))}
	var waiting [far*far + 1]int32 // by clearance: 1 more than where in the queue the last stands that waits
	queue := make([]waits, 0, len(d))
	put := func(c, before, least int32) {
		if least > out.least[c] {
			out.least[c], out.before[c], out.most = least, before, max(out.most, least)
			queue = append(queue, waits{c, waiting[least]})
			waiting[least] = int32(len(queue))
		}
	}
	x0, x1, y0, y1 := g.step(door)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			if c := int32(i*g.ny + j); i == 0 || i == g.nx-1 || j == 0 || j == g.ny-1 {
				put(c, -1, d[c])
			}
		}
	}
	ny := int32(g.ny)
	for level := int32(far * far); level > 0; level-- {
		for waiting[level] > 0 {
			c := queue[waiting[level]-1].cell
			waiting[level] = queue[waiting[level]-1].next
			if out.least[c] != level {
				continue
			}
			for _, step := range [8]int32{-ny - 1, -ny, -ny + 1, -1, 1, ny - 1, ny, ny + 1} {
				if n := c + step; n >= 0 && n < int32(len(d)) && d[n] > 0 {
					put(n, c, min(level, d[n]))
				}
			}
		}
	}
	return out
}

// way is the widest way to a fitting: over all cells from which a body that got so far reaches it, of equally good ones the roomiest.
func (w *worker) way(mode *Mode, door Opening, ways widest, goal solid.Bounds, exactly bool) (width, x, y float64) {
	if v := w.fromOutside(door, goal); v > 0 {
		return v, (goal.MinX + goal.MaxX) / 2, (goal.MinY + goal.MaxY) / 2
	}
	g, best, at, d := w.ground(), int32(0), int32(-1), w.floor(mode).Clearance
	margin := roomAt(ways.most) + reached + touching
	x0, x1 := g.rows(goal.MinX-margin, goal.MaxX+margin)
	y0, y1 := g.across(goal.MinY-margin, goal.MaxY+margin)
	for i := x0; i <= x1; i++ {
		gapX := max(0, goal.MinX-g.atX(i), g.atX(i)-goal.MaxX)
		for j := y0; j <= y1; j++ {
			c := int32(i*g.ny + j)
			if least := ways.least[c]; least < best || least == 0 || least == best && (at < 0 || d[c] <= d[at]) {
				continue
			}
			gapY, reach := max(0, goal.MinY-g.atY(j), g.atY(j)-goal.MaxY), roomAt(ways.least[c])+reached
			if gapX <= reach && gapY <= reach && math.Hypot(gapX, gapY) <= reach {
				best, at = ways.least[c], c
			}
		}
	}
	if at < 0 {
		return 0, (goal.MinX + goal.MaxX) / 2, (goal.MinY + goal.MaxY) / 2
	}
	if !exactly {
		for c := at; c >= 0; c = ways.before[c] {
			if d[c] < d[at] {
				at = c
			}
		}
		return 2 * roomAt(best), g.atX(int(at) / g.ny), g.atY(int(at) % g.ny)
	}
	return w.narrowest(mode, ways, at, best)
}

// fromOutside is the width of the door where somebody standing outside reaches the fitting, else 0.
func (w *worker) fromOutside(door Opening, goal solid.Bounds) float64 {
	r := w.in.Room
	x, z := (door.X[0]+door.X[1])/2, r.Floor()+waist
	along, span, away := [2]float64{goal.MinX, goal.MaxX}, door.X, goal.MinY-r.Left(x, z)
	switch door.Through {
	case "right":
		away = r.Right(x, z) - goal.MaxY
	case "rear":
		along, span, away = [2]float64{goal.MinY, goal.MaxY}, door.Y, r.Rear()-goal.MaxX
	}
	if away > reached || min(along[1], span[1])-max(along[0], span[0]) < escapeWidth {
		return 0
	}
	return span[1] - span[0]
}

// nearer orders boxes from the front, the left and the floor.
func nearer(a, b solid.Bounds) int {
	return cmp.Or(cmp.Compare(a.MinX, b.MinX), cmp.Compare(a.MinZ, b.MinZ), cmp.Compare(math.Abs(a.MinY+a.MaxY), math.Abs(b.MinY+b.MaxY)))
}
