package fit

import (
	"tumblehome/solve/solid"
)

const (
	crawlUnder = 500 // over a bed, a seat or the floor, to crawl along it [mm]: the clearance over a bunk
	crawlWide  = 375 // square that one who crawls or goes sideways needs [mm]: a large man's depth in clothes, in whole cells
	beside     = 300 // from a bed or seat to where one gets out of it [mm]
)

// passable says which cells one passes on foot or crawling: over the floor, or over beds and seats, with 500 above it, in a square of 375
// all of which is so. Without is left out what is not there today, if so asked.
func (w *worker) passable(mode *Mode, today bool) []bool {
	return whole(w.roomy(mode, today), w.ground().nx, w.ground().ny, crawlWide/cell)
}

// roomy are the cells with 500 free above the floor, a bed or a seat, and those of the steps outside.
func (w *worker) roomy(mode *Mode, today bool) []bool {
	g := w.ground()
	open := make([]bool, g.nx*g.ny)
	w.layer(mode, today, open, w.in.Room.Floor(), solid.Bounds{}, -1)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if f := &w.in.Fittings[i]; f.Rests && !f.In && !f.isOutside() && len(s.Solid) > 0 && !(today && !f.Today) {
			w.layer(mode, today, open, s.Box.MaxZ, s.Box, i)
		}
	}
	for _, o := range w.in.Openings {
		if o.WayOut && (o.Through != "roof" && o.Through != "floor") {
			x0, x1, y0, y1 := g.step(o)
			for i := x0; i <= x1; i++ {
				for j := y0; j <= y1; j++ {
					if !g.within(i, j) {
						open[i*g.ny+j] = true
					}
				}
			}
		}
	}
	return open
}

// within says whether a cell lies between the sides of the room.
func (g *Ground) within(i, j int) bool {
	y := g.atY(j)
	return g.inside(i) && y > g.crawl[i].from && y < g.crawl[i].to
}

// layer opens the cells of one surface, the floor or the top of a fitting, that have 500 free above them.
func (w *worker) layer(mode *Mode, today bool, open []bool, z float64, over solid.Bounds, on int) {
	g, floor := w.in.Ground, w.in.Room.Floor()
	x0, x1, y0, y1 := doorstep, g.nx-1-doorstep, 0, g.ny-1
	if on >= 0 {
		x0, x1 = g.rows(over.MinX, over.MaxX)
		y0, y1 = g.across(over.MinY, over.MaxY)
		x0, x1 = max(x0, doorstep), min(x1, g.nx-1-doorstep)
	}
	if x0 > x1 || y0 > y1 {
		return
	}
	free := make([]bool, g.nx*g.ny)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			c := i*g.ny + j
			free[c] = g.roof[c] >= z-floor+crawlUnder
		}
	}
	low := z + touching
	if on < 0 {
		low = z + bodyFrom
	}
	for k := range mode.Standings {
		s := &mode.Standings[k]
		if s.Box.MaxZ <= low || s.Box.MinZ >= z+crawlUnder || on >= 0 && (s.Box.MaxX < over.MinX || s.Box.MinX > over.MaxX) ||
			k == on || !w.hard(k) || today && !w.in.Fittings[k].Today || len(s.Solid) == 0 {
			continue
		}
		for _, p := range s.Solid {
			if p.High > low && p.Low < z+crawlUnder {
				g.cells(p, x0, x1, func(i, j0, j1 int) { clear(free[i*g.ny+j0 : i*g.ny+j1+1]) })
			}
		}
	}
	for i := x0; i <= x1; i++ {
		for c := i*g.ny + y0; c <= i*g.ny+y1; c++ {
			open[c] = open[c] || free[c]
		}
	}
}

// hard says whether a fitting bars the way of one who crawls: what is soft is pressed, a table or a step put aside.
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
