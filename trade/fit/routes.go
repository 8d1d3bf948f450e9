package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// A Route is one way out of a bed or a seat in a mode: on foot, or crawling over the floor, beds and seats, from the middle of where one lies or
// sits to the opening. Of all ways it is the shortest on which a body 450 wide passes; where there is none, on which the widest does that does.
type Route struct {
	Mode, From, Out string
	OutCalled       string // the opening as one speaks of it: the rear doors
	Lies            bool
	First           string   // which end leaves the bed first: feet, head, side; empty for a seat
	Aside           []string // tables put away first, over whose place it leads
	Over            []string // beds and seats crawled over on the way, in their order
	Past            []string // what one passes closely, in its order
	Length          float64  // [mm]
	Width           float64  // at the narrowest place, from edge to edge [mm]; a cell out where only one thing bounds it
	X, Y            float64  // there
	Between         []string // the fittings on both sides there, each once; the van itself is left out
	Doorway         bool     // the narrowest place is the opening itself
	Line            []solid.Point
	paired          bool // the narrowest place lies between two edges
}

// Roomy is so wide that nobody asks where a way out is narrowest [mm].
const Roomy = 800

const passedClosely = 350 // from the line of a way to what one passes: common practice, no source [mm]

// Routes are the ways out of every bed and seat of every mode but while driving, for a page that asks for them: they follow from the result.
func (r *Result) Routes() []Route {
	if r.Memory == nil {
		return nil
	}
	in := r.Memory.in
	in.Before = r.Memory
	w := newWorker(in)
	var out []Route
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		if mode.Name == "drive" {
			continue
		}
		places := w.places(mode)
		if len(places) == 0 {
			continue
		}
		w.count(mode, places, w.shut(mode, false), false)
		open := w.roomy(mode, false, 0, w.ground().nx-1)
		trod := trodden{mode: mode, pass: w.crossing(mode, false), clear: distances(open, w.ground().nx, w.ground().ny), floor: w.overFloor(mode)}
		for _, p := range places {
			for _, o := range w.in.Openings {
				if slices.Contains(p.ways, o.ID) {
					out = append(out, w.route(&trod, p, o))
				}
			}
		}
	}
	return out
}

// trodden is where one gets about in a mode, with the clearance about every cell.
type trodden struct {
	mode  *Mode
	pass  *crossing
	clear []int32
	floor []int32 // the clearance of the floor alone, whatever hangs or stands over it
	wants float64 // how wide a body the way is for
}

func (w *worker) route(t *trodden, p place, o Opening) Route {
	r := Route{Mode: t.mode.Name, From: w.in.Fittings[p.at].ID, Out: o.ID, OutCalled: o.called(), Lies: p.lies}
	from, goals := w.startOf(t, p.at, o)
	if from < 0 {
		return r
	}
	var cells []int32
	for want := float64(escapeWidth); cells == nil && want > 0; want -= cell {
		t.wants = want
		cells = w.ground().shortest(from, goals, func(c int32) bool {
			return t.pass.part[c] != 0 && (2*roomAt(t.clear[c])+cell >= want || want <= crawlWide)
		})
		if want <= crawlWide {
			break
		}
	}
	r.Line = w.ground().pulled(cells, t, from)
	for k := 1; k < len(r.Line); k++ {
		r.Length += math.Hypot(r.Line[k].X-r.Line[k-1].X, r.Line[k].Y-r.Line[k-1].Y)
	}
	if p.lies {
		r.First = w.leaves(t.mode, p.at, r.Line)
	}
	w.passes(&r, t, p.at)
	w.tightest(&r, t, cells)
	return r
}

// overFloor is the clearance of the floor and the steps outside for one who goes under what hangs at least 500 over it.
func (w *worker) overFloor(mode *Mode) []int32 {
	g := w.ground()
	open := make([]bool, g.nx*g.ny)
	w.layer(mode, false, open, w.in.Room.Floor(), g.all(0, g.nx-1), -1)
	for _, o := range w.in.Openings {
		if o.WayOut {
			g.open(open, o)
		}
	}
	return distances(open, g.nx, g.ny)
}

// startOf is the passable cell nearest the middle of a bed or seat from which one comes to an opening, and the cells of its step.
func (w *worker) startOf(t *trodden, at int, o Opening) (from int32, goals []bool) {
	g, b, parts := w.ground(), t.mode.Standings[at].Box, map[int32]bool{}
	goals = make([]bool, len(t.clear))
	x0, x1, y0, y1 := g.step(o)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			if c := int32(i*g.ny + j); t.pass.part[c] != 0 {
				goals[c], parts[t.pass.part[c]] = true, true
			}
		}
	}
	from, best := -1, math.Inf(1)
	off := func(c int32) float64 {
		return math.Hypot(g.atX(int(c)/g.ny)-(b.MinX+b.MaxX)/2, g.atY(int(c)%g.ny)-(b.MinY+b.MaxY)/2)
	}
	nearer := func(c int32) bool { return parts[t.pass.part[c]] && off(c) < best }
	w.eachBeside(t.mode, at, false, nearer, func(c int32) { from, best = c, off(c) })
	return from, goals
}

// leaves says with what one leaves a bed first: the feet, the head, or over its side.
func (w *worker) leaves(mode *Mode, bed int, line []solid.Point) string {
	box := mode.Standings[bed].Box
	out := slices.IndexFunc(line, func(p solid.Point) bool { return p.X < box.MinX || p.X > box.MaxX || p.Y < box.MinY || p.Y > box.MaxY })
	if out < 0 {
		return ""
	}
	for _, pose := range mode.Poses {
		b, ok := w.berth(mode, pose)
		if !ok || b.bed != bed {
			continue
		}
		before, p := solid.Point{X: (box.MinX + box.MaxX) / 2, Y: (box.MinY + box.MaxY) / 2}, line[out]
		if out > 0 {
			before = line[out-1]
		}
		dx, dy := p.X-before.X, p.Y-before.Y
		along, across := over(box.MinX, box.MaxX, before.X, dx), over(box.MinY, box.MaxY, before.Y, dy)
		head, foot := b.head(box)
		way := dx
		if b.axis == 1 {
			along, across, way = across, along, dy
		}
		switch {
		case across < along:
			return "side"
		case (foot-head)*way > 0:
			return "feet"
		}
		return "head"
	}
	return ""
}

// over is the share of a step after which a line from a place leaves an extent.
func over(from, to, at, step float64) float64 {
	switch {
	case step > 0:
		return (to - at) / step
	case step < 0:
		return (from - at) / step
	}
	return math.Inf(1)
}

// passes gathers what is put away for a way, what it leads over, and what hard and large things it leads closely past, in the order of the way.
func (w *worker) passes(r *Route, t *trodden, from int) {
	mode := t.mode
	bed := mode.Standings[from].Box
	for _, p := range stepped(r.Line) {
		if on := w.treads(t, p); on >= 0 && on != from && !w.carries(on, from) && !w.carries(from, on) {
			if b := mode.Standings[on].Box; b.MinX >= bed.MaxX || b.MaxX <= bed.MinX || b.MinY >= bed.MaxY || b.MaxY <= bed.MinY { // not the bunk above
				r.Over = with(r.Over, w.in.Fittings[on].ID)
			}
		}
		for i := range mode.Standings {
			if s := &mode.Standings[i]; s.Aside != nil && within(s.Box.Grown(crawlWide/2), p) {
				r.Aside = with(r.Aside, w.in.Fittings[i].ID)
			}
			s, waist := mode.Standings[i].passed(), w.in.Room.Floor()+climbed
			if len(s.Solid) == 0 || !w.hard(i) || w.in.Fittings[i].Rests || s.Box.MaxZ <= waist || s.Box.MinZ >= waist || w.carries(i, from) {
				continue
			}
			if math.Hypot(max(0, s.Box.MinX-p.X, p.X-s.Box.MaxX), max(0, s.Box.MinY-p.Y, p.Y-s.Box.MaxY)) < passedClosely {
				r.Past = with(r.Past, w.in.Fittings[i].ID)
			}
		}
	}
}

// stepped are places along a line, 50 mm apart.
func stepped(line []solid.Point) []solid.Point {
	var out []solid.Point
	for k := 1; k < len(line); k++ {
		a, b := line[k-1], line[k]
		long := math.Hypot(b.X-a.X, b.Y-a.Y)
		for _, at := range spread(0, long, 50) {
			out = append(out, solid.Point{X: a.X + (b.X-a.X)*at/max(1, long), Y: a.Y + (b.Y-a.Y)*at/max(1, long)})
		}
	}
	return out
}

// with adds an id once.
func with(ids []string, id string) []string {
	if slices.Contains(ids, id) {
		return ids
	}
	return append(ids, id)
}
