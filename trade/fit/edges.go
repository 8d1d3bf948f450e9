package fit

import (
	"cmp"
	"math"

	"tumblehome/solve/solid"
)

// edge is a straight piece of what bounds the free floor.
type edge struct{ a, b solid.Point }

// edges are what bounds the floor of a mode near a place, exactly: outlines of fittings, sides, and posts of doors.
func (w *worker) edges(mode *Mode, x, y, within float64) []edge {
	out, near := w.near[:0], around(x, y, within)
	floor, up := w.in.Room.Floor(), w.ground().up[w.row(x)]
	for i := range mode.Standings {
		s := mode.Standings[i].passed()
		if !s.Box.Meets(near) || len(s.Solid) == 0 || !w.inTheWay(i) {
			continue
		}
		for _, p := range s.Solid {
			if p.High > floor+bodyFrom && p.Low < floor+up && p.Bounds().Meets(near) {
				for k, v := range p.Outline {
					out = append(out, edge{v, p.Outline[(k+1)%len(p.Outline)]})
				}
			}
		}
	}
	w.near = w.walls(out, x-within, x+within)
	return w.near
}

// around is the space within some distance of a place, at any height.
func around(x, y, within float64) solid.Bounds {
	return solid.Bounds{MinX: x - within, MaxX: x + within, MinY: y - within, MaxY: y + within, MinZ: math.Inf(-1), MaxZ: math.Inf(1)}
}

// row of the grid at x.
func (w *worker) row(x float64) int {
	g := w.ground()
	return min(max(int(math.Round((x-g.x)/cell)), 0), g.nx-1)
}

// walls appends the sides and the ends of the room between two places, open where one passes.
func (w *worker) walls(out []edge, from, to float64) []edge {
	g, r := w.ground(), w.in.Room
	i0, i1 := g.rows(from, to)
	if i0, i1 = max(i0, doorstep), min(i1, g.nx-1-doorstep); i0 < i1 {
		s := w.sides()
		out = append(out, s.edges[s.from[i0]:s.from[i1]]...)
	}
	for _, o := range w.passed() {
		out = w.posts(out, o)
	}
	for _, end := range [2]struct {
		x       float64
		through string
	}{{r.Front(), "front"}, {r.Rear(), "rear"}} {
		if end.x > from && end.x < to {
			out = append(out, w.endWall(end.x, end.through)...)
		}
	}
	return out
}

// sides are the sides of the room short of doors, row by row of the grid: from says where the edges of each row begin.
type sides struct {
	edges []edge
	from  []int
}

// sides are found once for a room and its doors.
func (w *worker) sides() *sides {
	if w.now.sides = cmp.Or(w.now.sides, w.was.sides); w.now.sides != nil {
		return w.now.sides
	}
	g, s := w.ground(), &sides{}
	s.from = make([]int, g.nx)
	for i := range g.nx - 1 {
		if i >= doorstep && i < g.nx-1-doorstep {
			s.edges = w.wall(s.edges, "left", i, g.walk[i].from, g.walk[i+1].from)
			s.edges = w.wall(s.edges, "right", i, g.walk[i].to, g.walk[i+1].to)
		}
		s.from[i+1] = len(s.edges)
	}
	w.now.sides = s
	return s
}

// posts appends the two jambs of a door in a side, from the finished surface outwards.
func (w *worker) posts(out []edge, o Opening) []edge {
	if o.Through != "left" && o.Through != "right" {
		return out
	}
	for _, x := range o.X {
		y := w.ground().walk[w.row(x)].from
		beyond := y - doorstep*cell
		if o.Through == "right" {
			y = w.ground().walk[w.row(x)].to
			beyond = y + doorstep*cell
		}
		out = append(out, edge{solid.Point{X: x, Y: y}, solid.Point{X: x, Y: beyond}})
	}
	return out
}

// endWall is the front or the rear of the room on both sides of the opening one passes there.
func (w *worker) endWall(x float64, through string) []edge {
	from, to := math.Inf(1), math.Inf(-1)
	for _, o := range w.passed() {
		if o.Through == through {
			from, to = min(from, o.Y[0]), max(to, o.Y[1])
		}
	}
	side := w.ground().walk[w.row(x)]
	if from >= to {
		return []edge{{solid.Point{X: x, Y: side.from}, solid.Point{X: x, Y: side.to}}}
	}
	return []edge{{solid.Point{X: x, Y: side.from}, solid.Point{X: x, Y: from}}, {solid.Point{X: x, Y: to}, solid.Point{X: x, Y: side.to}}}
}

// wall appends a side from one row of the grid to the next, short of a door.
func (w *worker) wall(out []edge, through string, i int, y0, y1 float64) []edge {
	x0, x1 := w.ground().atX(i), w.ground().atX(i+1)
	for _, o := range w.in.Openings {
		if !o.Door || o.Through != through || x1 <= o.X[0] || x0 >= o.X[1] {
			continue
		}
		switch {
		case x0 < o.X[0]:
			x1 = o.X[0]
		case x1 > o.X[1]:
			x0 = o.X[1]
		default:
			return out
		}
	}
	return append(out, edge{solid.Point{X: x0, Y: y0}, solid.Point{X: x1, Y: y1}})
}

// distance of a place from an edge, and the nearest point of it.
func (e edge) distance(x, y float64) (d, px, py float64) {
	dx, dy := e.b.X-e.a.X, e.b.Y-e.a.Y
	t := 0.0
	if l := dx*dx + dy*dy; l > 0 {
		t = min(1, max(0, ((x-e.a.X)*dx+(y-e.a.Y)*dy)/l))
	}
	px, py = e.a.X+t*dx, e.a.Y+t*dy
	return math.Sqrt((x-px)*(x-px) + (y-py)*(y-py)), px, py
}
