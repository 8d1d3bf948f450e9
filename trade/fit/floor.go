package fit

import (
	"maps"
	"math"
	"slices"

	"tumblehome/solve/solid"
)

// Floor is the walkable floor in a mode, on a grid of 25 mm, for a drawing. Cell i, j lies at X + 25·i, Y + 25·j and is number i·NY + j.
type Floor struct {
	Mode      string
	X, Y      float64     // middle of the first cell [mm]
	Cell      float64     // spacing [mm]
	NX, NY    int         // cells along and across the van
	Free      []bool      // nothing stands there between 100 mm above the floor and the height of shoulders
	Clearance []int32     // squared distance to what is not free [cells]; ClearAt tells it in mm
	Headroom  [][]float64 // from the floor to what is overhead [mm], by row along the van, then across
}

// ClearAt is the radius of the round body that has room about the middle of a cell [mm], 0 where the cell is not free.
func (f *Floor) ClearAt(c int) float64 { return roomAt(f.Clearance[c]) }

// ground is the room's part of the floor, made once.
func (w *worker) ground() *Ground {
	if w.in.Ground == nil {
		w.in.Ground = NewGround(w.in.Room)
	}
	return w.in.Ground
}

// laid is a floor with the widest ways over it from the doors that were asked for.
type laid struct {
	Floor
	ways map[string]widest
	bare []bool // what is free of it without fittings
}

// floor is the walkable floor of a mode, worked out once. Of one remembered only the rows are painted anew in which something changed.
func (w *worker) floor(mode *Mode) *laid {
	if f := w.now.floors[mode.Name]; f != nil {
		return f
	}
	f := w.was.floors[mode.Name]
	i0, i1 := w.stale(mode, f)
	if f == nil || i0 <= i1 {
		f = w.lay(mode, f, i0, i1)
	} else {
		f = &laid{f.Floor, maps.Clone(f.ways), f.bare}
	}
	w.now.floors[mode.Name] = f
	w.result.Floors = append(w.result.Floors, f.Floor)
	return f
}

// stale are the rows in which a remembered floor is no longer right; all if there is none, and the first past the last if it is right.
func (w *worker) stale(mode *Mode, f *laid) (i0, i1 int) {
	if f == nil {
		return 0, w.ground().nx - 1
	}
	return w.rowsChanged(mode, w.inTheWay)
}

// rowsChanged are the rows of the floor over which things that count stand or stood that changed in a mode; the first past the last if none did.
func (w *worker) rowsChanged(mode *Mode, counts func(int) bool) (i0, i1 int) {
	g := w.ground()
	i0, i1 = g.nx, -1
	for _, c := range w.changes[mode.Name] {
		for _, b := range [2]solid.Bounds{c.was, c.is} {
			if from, to := g.rows(b.MinX-cell, b.MaxX+cell); counts(c.fitting) && from <= to {
				i0, i1 = min(i0, from), max(i1, to)
			}
		}
	}
	return i0, i1
}

// lay paints some rows of a floor; the others are as they were.
func (w *worker) lay(mode *Mode, was *laid, i0, i1 int) *laid {
	g := w.ground()
	f := &laid{Floor: Floor{Mode: mode.Name, X: g.x, Y: g.y, Cell: cell, NX: g.nx, NY: g.ny}, ways: map[string]widest{}}
	if was == nil {
		f.bare = g.bare(g.walk, w.passed())
		f.Free, f.Headroom = slices.Clone(f.bare), make([][]float64, g.nx)
	} else {
		f.bare, f.Free, f.Headroom = was.bare, slices.Clone(was.Free), slices.Clone(was.Headroom)
		copy(f.Free[i0*g.ny:(i1+1)*g.ny], f.bare[i0*g.ny:])
	}
	for i, roof := i0, slices.Clone(g.roof[i0*g.ny:(i1+1)*g.ny]); i <= i1; i++ {
		f.Headroom[i], roof = roof[:g.ny], roof[g.ny:]
	}
	for i := range mode.Standings {
		if w.inTheWay(i) {
			w.paint(&f.Floor, mode.Standings[i].passed().Solid, i0, i1)
		}
	}
	if was != nil && slices.Equal(f.Free, was.Free) {
		f.Clearance, f.ways = was.Clearance, maps.Clone(was.ways)
		return f
	}
	f.Clearance = distances(f.Free, g.nx, g.ny)
	return f
}

// waysOver are the widest ways over a floor from a door, worked out once.
func (w *worker) waysOver(f *laid, door Opening) widest {
	ways, known := f.ways[door.ID]
	if !known {
		ways = w.ground().widestFrom(f.Clearance, door)
		f.ways[door.ID] = ways
	}
	return ways
}

// passed are the openings one walks through, looked for once: doors, and the way into the cab.
func (w *worker) passed() []Opening {
	if w.doors == nil {
		w.doors = []Opening{}
		for _, o := range w.in.Openings {
			if o.Door || o.Through == "front" {
				w.doors = append(w.doors, o)
			}
		}
	}
	return w.doors
}

// inTheWay says whether a fitting takes floor: hard, inside, and not put aside in passing. What stands in another takes none of its own.
func (w *worker) inTheWay(i int) bool {
	f := &w.in.Fittings[i]
	return f.Where == "" && f.For == "" && f.Gives == 0 && !f.Aside && !f.In
}

// paint takes what a solid takes of some rows of the floor, and lowers the headroom under what is above shoulders.
func (w *worker) paint(f *Floor, s solid.Solid, i0, i1 int) {
	g, floor := w.in.Ground, w.in.Room.Floor()
	for _, p := range s {
		if p.High <= floor+bodyFrom {
			continue
		}
		g.cells(p, i0, i1, func(i, j0, j1 int) {
			if p.Low < floor+g.up[i] {
				clear(f.Free[i*g.ny+j0 : i*g.ny+j1+1])
			}
			for j := j0; j <= j1; j++ {
				f.Headroom[i][j] = min(f.Headroom[i][j], max(0, p.Low-floor))
			}
		})
	}
}

// cells calls for every row of the grid from i0 to i1 with the cells from j0 to j1 that a prism covers. What is thinner than a cell takes the nearest.
func (g *Ground) cells(p solid.Prism, i0, i1 int, do func(i, j0, j1 int)) {
	b := p.Bounds()
	x0, x1 := g.rows(b.MinX, b.MaxX)
	if x0 > x1 {
		x0, x1 = nearest(b.MinX-g.x, b.MaxX-g.x, g.nx)
	}
	for i := max(x0, i0); i <= min(x1, i1); i++ {
		low, high := p.Across(min(max(g.atX(i), b.MinX), b.MaxX))
		j0, j1 := g.across(low, high)
		if j0 > j1 && b.MaxY-b.MinY < cell {
			j0, j1 = nearest(low-g.y, high-g.y, g.ny)
		}
		if j0 <= j1 {
			do(i, j0, j1)
		}
	}
}

// nearest is the one cell of n that lies nearest to something thin, from first to last; none if it is not over the grid, or is nothing.
func nearest(low, high float64, n int) (from, to int) {
	at := int(math.Round((low + high) / 2 / cell))
	if !(low < high) || at < 0 || at >= n {
		return 0, -1
	}
	return at, at
}
