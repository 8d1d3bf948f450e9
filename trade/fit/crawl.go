package fit

import (
	"slices"

	"tumblehome/solve/solid"
)

const (
	crawlUnder = 500 // over a bed, a seat or the floor, to crawl along it [mm]: the clearance over a bunk
	crawlWide  = 375 // square that one who crawls or goes sideways needs [mm]: a large man's depth in clothes, in whole cells
	kneltOn    = 500 // over the floor, a table that one may crawl over at most: a high seat; common practice, no source [mm]
	beside     = 300 // from a bed or seat to where one gets out of it [mm]
)

// passable says which cells one passes on foot or crawling: over the floor, or over beds and seats, with 500 above it, in a square of 375
// all of which is so. Without is left out what is not there today, if so asked. Only the rows that things in the rows i0 to i1 bear upon are
// looked at anew; the others are as they were.
func (w *worker) passable(mode *Mode, today bool, was *crossing, i0, i1 int) []bool {
	const half = crawlWide / cell / 2
	g := w.ground()
	first, last := max(0, i0-half), min(g.nx-1, i1+half) // where squares hold a cell of those rows
	i0, i1 = max(0, first-half), min(g.nx-1, last+half)  // which such squares hold
	open := w.roomy(mode, today, i0, i1)
	some := whole(open[i0*g.ny:(i1+1)*g.ny], i1+1-i0, g.ny, crawlWide/cell)
	if was == nil {
		return some
	}
	pass := slices.Clone(was.pass)
	copy(pass[first*g.ny:(last+1)*g.ny], some[(first-i0)*g.ny:])
	return pass
}

// roomy are the cells of some rows with 500 free above the floor, a bed or a seat, and those of the steps outside.
func (w *worker) roomy(mode *Mode, today bool, i0, i1 int) []bool {
	g := w.ground()
	open := make([]bool, g.nx*g.ny)
	w.layer(mode, today, open, w.in.Room.Floor(), g.all(i0, i1), -1)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if w.bears(i, s) && !(today && !w.in.Fittings[i].Today) {
			w.layer(mode, today, open, s.Box.MaxZ, g.under(s.Box, i0, i1), i)
		}
	}
	for _, o := range w.in.Openings {
		if o.WayOut && (o.Through != "roof" && o.Through != "floor") {
			g.open(open, o)
		}
	}
	return open
}

// bears says whether one may crawl over a fitting as it stands: a bed, a seat, or a table let down as low as those.
func (w *worker) bears(i int, s *Standing) bool {
	f := &w.in.Fittings[i]
	low := f.Make == "table" && s.Box.MaxZ <= w.in.Room.Floor()+kneltOn
	return (f.Rests || low) && !f.In && !f.isOutside() && len(s.Solid) > 0
}

// patch is a rectangle of cells.
type patch struct{ x0, x1, y0, y1 int }

// all are the cells of the room in some rows, under those of them that a box covers.
func (g *Ground) all(i0, i1 int) patch {
	return patch{max(doorstep, i0), min(g.nx-1-doorstep, i1), 0, g.ny - 1}
}

func (g *Ground) under(b solid.Bounds, i0, i1 int) patch {
	x0, x1 := g.rows(b.MinX, b.MaxX)
	y0, y1 := g.across(b.MinY, b.MaxY)
	all := g.all(i0, i1)
	return patch{max(all.x0, x0), min(all.x1, x1), y0, y1}
}

// open opens the cells of an opening and its step that lie out of the room.
func (g *Ground) open(open []bool, o Opening) {
	x0, x1, y0, y1 := g.step(o)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			if !g.within(i, j) {
				open[i*g.ny+j] = true
			}
		}
	}
}

// within says whether a cell lies between the sides of the room.
func (g *Ground) within(i, j int) bool {
	y := g.atY(j)
	return g.inside(i) && y > g.crawl[i].from && y < g.crawl[i].to
}

// layer opens the cells of one surface, the floor or the top of a fitting, that have 500 free above them.
func (w *worker) layer(mode *Mode, today bool, open []bool, z float64, at patch, on int) {
	if at.x0 > at.x1 || at.y0 > at.y1 {
		return
	}
	g, floor := w.ground(), w.in.Room.Floor()
	free := make([]bool, (at.x1+1-at.x0)*g.ny)
	for i := at.x0; i <= at.x1; i++ {
		for j := at.y0; j <= at.y1; j++ {
			free[(i-at.x0)*g.ny+j] = g.roof[i*g.ny+j] >= z-floor+crawlUnder
		}
	}
	low := z + touching
	if on < 0 {
		low = z + bodyFrom
	}
	from, to := g.atX(at.x0)-cell/2, g.atX(at.x1)+cell/2
	for k := range mode.Standings {
		s := mode.Standings[k].passed()
		if s.Box.MaxZ <= low || s.Box.MinZ >= z+crawlUnder || s.Box.MaxX < from || s.Box.MinX > to ||
			k == on || !w.hard(k) || today && !w.in.Fittings[k].Today || len(s.Solid) == 0 {
			continue
		}
		for _, p := range s.Solid {
			if p.High > low && p.Low < z+crawlUnder {
				g.cells(p, at.x0, at.x1, func(i, j0, j1 int) { clear(free[(i-at.x0)*g.ny+j0 : (i-at.x0)*g.ny+j1+1]) })
			}
		}
	}
	for i := at.x0; i <= at.x1; i++ {
		for j := at.y0; j <= at.y1; j++ {
			open[i*g.ny+j] = open[i*g.ny+j] || free[(i-at.x0)*g.ny+j]
		}
	}
}

// hard says whether a fitting bars the way of one who crawls: what is soft is pressed, a step put aside.
func (w *worker) hard(i int) bool {
	f := &w.in.Fittings[i]
	return !f.isOutside() && f.For == "" && f.Gives == 0 && !f.Aside && !f.In
}

// whole keeps the cells about which a square of so many cells is open; beyond the grid all is. A run of open cells as long as the side has its
// middle half a side back; first so along each row, then over the rows.
func whole(open []bool, nx, ny, side int) []bool {
	half := side / 2
	long := 2*half + 1
	out, rows, run := make([]bool, len(open)), make([]bool, len(open)), make([]int, ny)
	for i := range nx {
		for j, n := 0, half; j < ny+half; j++ {
			if n++; j < ny && !open[i*ny+j] {
				n = 0
			}
			if j >= half {
				rows[i*ny+j-half] = n >= long
			}
		}
	}
	for j := range run {
		run[j] = half
	}
	for i := range nx + half {
		for j := range run {
			if run[j]++; i < nx && !rows[i*ny+j] {
				run[j] = 0
			}
			if i >= half {
				out[(i-half)*ny+j] = run[j] >= long
			}
		}
	}
	return out
}
