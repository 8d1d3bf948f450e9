package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// looked is how many places of a way are measured exactly at most.
const looked = 40

// narrowest follows a way back to its door and measures its narrow places exactly, from edge to edge. What is narrow otherwise than between
// two things, as a corner out of which one just reaches a seat, is measured about the middle of its cell.
func (w *worker) narrowest(mode *Mode, ways widest, at, least int32) (width, x, y float64) {
	g, d := w.ground(), w.floor(mode).Clearance
	within := math.Sqrt(float64(least)) + 1.5
	var places []int32
	for c := at; c >= 0; c = ways.before[c] {
		if math.Sqrt(float64(d[c])) <= within && g.ridge(d, c) {
			places = append(places, c)
		}
	}
	slices.SortStableFunc(places, func(a, b int32) int { return int(d[a] - d[b]) })
	width = math.Inf(1)
	for k, every := 0, (len(places)+looked-1)/looked; k < len(places) && 2*roomAt(d[places[k]])-cell < width; k += every { // none after it is narrower
		px, py := g.atX(int(places[k])/g.ny), g.atY(int(places[k])%g.ny)
		if v := w.gapOnce(mode, places[k], px, py, roomAt(d[places[k]])+4*cell); v < width {
			width, x, y = v, px, py
		}
	}
	if math.IsInf(width, 1) {
		x, y = g.atX(int(at)/g.ny), g.atY(int(at)%g.ny)
		width = 2 * roomAt(least)
	}
	return math.Round(width*100) / 100, x, y
}

// ridge says whether the clearance falls on both sides of a cell in some direction: it does between two things and not along one.
func (g *Ground) ridge(d []int32, c int32) bool {
	i, j := int(c)/g.ny, int(c)%g.ny
	if i < 2 || j < 2 || i >= g.nx-2 || j >= g.ny-2 {
		return false
	}
	for _, step := range [4]int32{int32(g.ny), 1, int32(g.ny) + 1, int32(g.ny) - 1} {
		if d[c-2*step] < d[c] && d[c+2*step] < d[c] {
			return true
		}
	}
	return false
}

// sided is an edge with its distance from a place.
type sided struct {
	edge
	d, x, y float64 // nearest point, from the place
}

// gapSpot is a cell of the floor in a mode, and how far the things about it are off at most.
type gapSpot struct {
	mode   string
	cell   int32
	within float64
}

// gapOnce is gapAt, measured once for a cell: many ways lead over the same narrow places.
func (w *worker) gapOnce(mode *Mode, c int32, x, y, within float64) float64 {
	return recall(w, w.was.gaps, w.now.gaps, mode, gapSpot{mode.Name, c, within}, w.inTheWay, func() (float64, solid.Bounds) {
		return w.gapAt(mode, x, y, within), around(x, y, within)
	})
}

// gapAt is the distance between two things whose gap has its middle near a place; infinite if the place lies in no such gap. Within is
// how far the things of that gap are off at most.
func (w *worker) gapAt(mode *Mode, x, y, within float64) float64 {
	edges := w.off[:0]
	for _, e := range w.edges(mode, x, y, within) {
		s := sided{edge: e}
		if s.d, s.x, s.y = e.distance(x, y); s.d <= within {
			s.x, s.y = s.x-x, s.y-y
			edges = append(edges, s)
		}
	}
	w.off = edges
	order := w.order[:0]
	for i := range edges {
		order = append(order, ranked{edges[i].d, i})
	}
	w.order = order
	rank(order)
	gap := math.Inf(1)
	for i, o := range order {
		e := &edges[o.at]
		if e.d > order[0].by+cell {
			break
		}
		for _, p := range order[i+1:] {
			f := &edges[p.at]
			if e.d+f.d > gap+4*cell {
				break
			}
			if e.x*f.x+e.y*f.y >= 0 {
				continue
			}
			a, b := e.between(f.edge)
			off := math.Hypot((a.X+b.X)/2-x, (a.Y+b.Y)/2-y)
			if v := math.Hypot(a.X-b.X, a.Y-b.Y); v < gap && off <= 2*cell && (a.X-x)*(b.X-x)+(a.Y-y)*(b.Y-y) < 0 {
				gap = v
			}
		}
	}
	return gap
}

// between are the two nearest points of two edges that do not cross: an end of one and a point of the other.
func (e edge) between(f edge) (on, off solid.Point) {
	best := math.Inf(1)
	try := func(p solid.Point, o edge, swap bool) {
		d, x, y := o.distance(p.X, p.Y)
		if d < best {
			best, on, off = d, p, solid.Point{X: x, Y: y}
			if swap {
				on, off = off, on
			}
		}
	}
	try(e.a, f, false)
	try(e.b, f, false)
	try(f.a, e, true)
	try(f.b, e, true)
	return on, off
}
