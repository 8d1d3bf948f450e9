package fit

import "tumblehome/solve/solid"

// Floor is the walkable floor in a mode, on a grid of 25 mm, for a drawing. Cell i, j lies at X + 25·i, Y + 25·j and is number i·NY + j.
type Floor struct {
	Mode      string
	X, Y      float64 // middle of the first cell [mm]
	Cell      float64 // spacing [mm]
	NX, NY    int     // cells along and across the van
	Free      []bool  // nothing stands there between 100 mm above the floor and the height of shoulders
	Clearance []int32 // squared distance to what is not free [cells]; ClearAt tells it in mm
	Headroom  []float64
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

// floor is the walkable floor of a mode, worked out once.
func (w *worker) floor(mode *Mode) *Floor {
	for i := range w.result.Floors {
		if w.result.Floors[i].Mode == mode.Name {
			return &w.result.Floors[i]
		}
	}
	g := w.ground()
	f := Floor{Mode: mode.Name, X: g.x, Y: g.y, Cell: cell, NX: g.nx, NY: g.ny, Free: g.bare(g.walk, w.passed()), Headroom: append([]float64(nil), g.roof...)}
	for i := range mode.Standings {
		if w.inTheWay(i) {
			w.paint(&f, mode.Standings[i].Solid)
		}
	}
	f.Clearance = distances(f.Free, g.nx, g.ny)
	w.result.Floors = append(w.result.Floors, f)
	return &w.result.Floors[len(w.result.Floors)-1]
}

// passed are the openings one walks through: doors, and the way into the cab.
func (w *worker) passed() []Opening {
	var out []Opening
	for _, o := range w.in.Openings {
		if o.Door || o.Through == "front" {
			out = append(out, o)
		}
	}
	return out
}

// inTheWay says whether a fitting takes floor: hard, inside, and not put aside in passing. What stands in another takes none of its own.
func (w *worker) inTheWay(i int) bool {
	f := &w.in.Fittings[i]
	return f.Where == "" && f.For == "" && f.Gives == 0 && !f.Aside && !f.In
}

// paint takes what a solid takes of the floor, and lowers the headroom under what is above shoulders.
func (w *worker) paint(f *Floor, s solid.Solid) {
	g, floor := w.in.Ground, w.in.Room.Floor()
	for _, p := range s {
		if p.High <= floor+bodyFrom {
			continue
		}
		g.cells(p, func(i, j0, j1 int) {
			if p.Low < floor+g.up[i] {
				clear(f.Free[i*g.ny+j0 : i*g.ny+j1+1])
			}
			for c := i*g.ny + j0; c <= i*g.ny+j1; c++ {
				f.Headroom[c] = min(f.Headroom[c], max(0, p.Low-floor))
			}
		})
	}
}

// cells calls for every row of the grid with the cells from j0 to j1 that a prism covers.
func (g *Ground) cells(p solid.Prism, do func(i, j0, j1 int)) {
	b := p.Bounds()
	x0, x1 := g.rows(b.MinX, b.MaxX)
	for i := x0; i <= x1; i++ {
		low, high := p.Across(g.atX(i))
		if j0, j1 := g.across(low, high); j0 <= j1 {
			do(i, j0, j1)
		}
	}
}
