package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// bound is an edge beside a way, and the fitting it is of; -1 is the van itself.
type bound struct {
	edge
	of int
}

// tightest measures the cells of a way from edge to edge, as far as gaps narrower than Roomy go, and keeps the narrowest. Where the way only cuts a corner it is not narrow: that
// counts if nothing else does.
func (w *worker) tightest(r *Route, t *trodden, cells []int32) {
	g := w.ground()
	r.Width = math.Inf(1)
	for _, c := range cells {
		p, free := g.place(c), roomAt(t.clear[c])
		gap := straddled(w.bounds(t, p, max(free+4*cell, Roomy-free)), p, free, 2)
		if pair := len(gap.of) == 2; pair == r.paired && gap.wide >= r.Width || r.paired && !pair {
			continue
		}
		r.paired = len(gap.of) == 2
		r.Width, r.X, r.Y, r.Between = gap.wide, p.X, p.Y, nil
		for _, i := range gap.of {
			if i >= 0 {
				r.Between = with(r.Between, w.in.Fittings[i].ID)
			}
		}
		r.Doorway = len(r.Between) == 0 && !g.within(int(c)/g.ny, int(c)%g.ny)
	}
	if math.IsInf(r.Width, 1) {
		r.Width = 0
	}
	r.Width = math.Round(r.Width*100) / 100
}

// straddle is a gap: how wide it is, of what its edges are, and their nearest points. Of one edge alone it is twice what is free about the place.
type straddle struct {
	wide float64
	of   []int
	at   [2]solid.Point
}

// straddled is the gap between the nearest edge beside a place and the nearest on its other side.
// It is at least so many times as wide as the nearest edge is off: twice, if the place lies within it and not before it.
func straddled(all []bound, p solid.Point, free, times float64) straddle {
	near, off := -1, math.Inf(1)
	for k, e := range all {
		if d, _, _ := e.distance(p.X, p.Y); d < off {
			near, off = k, d
		}
	}
	if near < 0 {
		return straddle{wide: 2 * free}
	}
	_, x, y := all[near].distance(p.X, p.Y)
	gap := straddle{wide: math.Inf(1), of: []int{all[near].of}}
	for _, e := range all {
		d, u, v := e.distance(p.X, p.Y)
		if (x-p.X)*(u-p.X)+(y-p.Y)*(v-p.Y) >= -0.5*d*off { // within 60 degrees of straight across
			continue
		}
		a, b := all[near].between(e.edge)
		if wide := math.Hypot(a.X-b.X, a.Y-b.Y); wide < gap.wide && wide >= times*off-touching {
			gap = straddle{wide, []int{all[near].of, e.of}, [2]solid.Point{a, b}}
		}
	}
	if math.IsInf(gap.wide, 1) {
		gap.wide = 2 * free
	}
	return gap
}

// boundsOf are the edges of a prism.
func boundsOf(q solid.Prism, of int) []bound {
	out := make([]bound, len(q.Outline))
	for k, v := range q.Outline {
		out[k] = bound{edge{v, q.Outline[(k+1)%len(q.Outline)]}, of}
	}
	return out
}

// bounds are the edges near a place that one who crawls there does not pass: fittings that stand higher than what one crawls on, and the van.
func (w *worker) bounds(t *trodden, p solid.Point, within float64) []bound {
	mode := t.mode
	near, on := around(p.X, p.Y, within), w.treads(t, p)
	low := w.in.Room.Floor() + bodyFrom
	if on >= 0 {
		low = mode.Standings[on].Box.MaxZ + touching
	}
	var out []bound
	for i := range mode.Standings {
		s := mode.Standings[i].passed()
		if i == on || len(s.Solid) == 0 || !w.hard(i) || w.in.Fittings[i].Rests || w.bears(i, s) || !s.Box.Meets(near) {
			continue
		}
		for _, q := range s.Solid {
			if q.High > low && q.Low < low+crawlUnder && q.Bounds().Meets(near) {
				out = append(out, boundsOf(q, i)...)
			}
		}
	}
	for _, e := range w.hull(p.X-within, p.X+within) {
		out = append(out, bound{e, -1})
	}
	return out
}

// treads is what one goes on at a place: the floor (-1) where it is wide enough for the way, or the lowest bed or seat with room to crawl over it.
func (w *worker) treads(t *trodden, p solid.Point) int {
	mode, on, at := t.mode, -1, math.Inf(1)
	g := w.ground()
	c := w.row(p.X)*g.ny + min(max(int(math.Round((p.Y-g.y)/cell)), 0), g.ny-1)
	if 2*roomAt(t.floor[c])+cell >= t.wants {
		return on
	}
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if w.bears(i, s) && within(s.Box, p) && s.Box.MaxZ < at && w.crawls(mode, p, s.Box.MaxZ+touching, i) {
			on, at = i, s.Box.MaxZ
		}
	}
	return on
}

// crawls says whether nothing hard but what one crawls on stands over a place from some height to where one who crawls ends.
func (w *worker) crawls(mode *Mode, p solid.Point, low float64, on int) bool {
	for i := range mode.Standings {
		s := mode.Standings[i].passed()
		if i == on || !w.hard(i) || len(s.Solid) == 0 || s.Box.MaxZ <= low || s.Box.MinZ >= low+crawlUnder || !within(s.Box, p) {
			continue
		}
		for _, q := range s.Solid {
			if q.High > low && q.Low < low+crawlUnder && within(q.Bounds(), p) {
				return false
			}
		}
	}
	return true
}

// within says whether a place lies within a box, seen from above.
func within(b solid.Bounds, p solid.Point) bool {
	return p.X > b.MinX && p.X < b.MaxX && p.Y > b.MinY && p.Y < b.MaxY
}

// hull are the sides of the room where they are widest, open at doors, and its ends.
func (w *worker) hull(from, to float64) []edge {
	g, r := w.ground(), w.in.Room
	var out []edge
	i0, i1 := g.rows(from, to)
	for i := max(i0, doorstep); i < min(i1, g.nx-1-doorstep); i++ {
		out = w.wall(out, "left", i, g.crawl[i].from, g.crawl[i+1].from)
		out = w.wall(out, "right", i, g.crawl[i].to, g.crawl[i+1].to)
	}
	for _, o := range w.in.Openings {
		if o.Door {
			out = w.posts(out, o)
		}
	}
	if r.Front() > from && r.Front() < to {
		out = append(out, w.endWall(r.Front(), "front")...)
	}
	if r.Rear() > from && r.Rear() < to {
		out = append(out, w.endWall(r.Rear(), "rear")...)
	}
	return out
}
