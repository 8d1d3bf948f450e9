package fit

import (
	"math"

	"tumblehome/solve/solid"
)

// cell is the spacing of the grid on which the floor is looked at [mm].
const cell = 25

// doorstep is how many cells the grid reaches out of the room on every side, so that a way can begin outside a door.
const doorstep = 8

// Ground is the room's own part of the walkable floor: where its sides and its roof are over a grid. It does not change while fittings are
// moved; make it once for a room.
type Ground struct {
	x, y   float64   // middle of the first cell
	nx, ny int       // cells along and across; cell i, j is number i·ny + j
	roof   []float64 // of each cell: the roof above the finished floor [mm], 0 outside the room
	up     []float64 // of each row along x: how high above the floor a body is wide
	walk   []gap     // of each row: between the sides, for a body between knee and shoulder
	crawl  []gap     // the same where the sides are widest, for one who crawls over a bed

	lowRoof float64 // the lowest that the roof comes over the middle of the van
	safe    safeBox // a box well inside the room
}

// gap is from y to y.
type gap struct{ from, to float64 }

// waist is how high above the floor the sides of a van are about widest [mm]: common practice, no source.
const waist = 600

// mostLong and mostWide are the greatest room that is looked at [mm]; a document may write anything.
const mostLong, mostWide = 9000, 3200

// NewGround looks at a room once.
func NewGround(r solid.Region) *Ground {
	g := &Ground{x: r.Front() + (0.5-doorstep)*cell, lowRoof: lowRoof(r)}
	g.safe = safeIn(r, g.lowRoof)
	rows := int(math.Round(min(mostLong, max(cell, r.Rear()-r.Front())) / cell))
	g.nx = rows + 2*doorstep
	g.up, g.walk, g.crawl = make([]float64, g.nx), make([]gap, g.nx), make([]gap, g.nx)
	wide := 0.0
	for i := range g.nx {
		x := min(max(g.atX(i), r.Front()), r.Rear())
		g.up[i] = min(bodyTo, 0.75*(r.Roof(x, 0)-r.Floor()))
		g.walk[i] = between(r, x, bodyFrom, (bodyFrom+g.up[i])/2, g.up[i])
		g.crawl[i] = between(r, x, waist)
		wide = max(wide, -g.crawl[i].from, g.crawl[i].to)
	}
	half := int(math.Ceil(min(mostWide/2, wide)/cell)) + doorstep
	g.ny, g.y = 2*half, (0.5-float64(half))*cell
	g.roof = make([]float64, g.nx*g.ny)
	for i := doorstep; i < doorstep+rows; i++ {
		for j := range g.ny {
			if y := g.atY(j); y > g.crawl[i].from && y < g.crawl[i].to {
				g.roof[i*g.ny+j] = max(0, r.Roof(min(g.atX(i), r.Rear()), y)-r.Floor())
			}
		}
	}
	return g
}

// between is what the sides leave at x at the narrowest of some heights above the floor.
func between(r solid.Region, x float64, heights ...float64) gap {
	g := gap{math.Inf(-1), math.Inf(1)}
	for _, z := range heights {
		g.from, g.to = max(g.from, r.Left(x, r.Floor()+z)), min(g.to, r.Right(x, r.Floor()+z))
	}
	return g
}

func (g *Ground) atX(i int) float64 { return g.x + float64(i)*cell }
func (g *Ground) atY(j int) float64 { return g.y + float64(j)*cell }

// rows are the cells whose middles lie between two places along the van, held to the grid; across the same for y.
func (g *Ground) rows(from, to float64) (int, int) {
	return max(0, int(math.Ceil((from-g.x)/cell))), min(g.nx-1, int(math.Floor((to-g.x)/cell)))
}

func (g *Ground) across(from, to float64) (int, int) {
	return max(0, int(math.Ceil((from-g.y)/cell))), min(g.ny-1, int(math.Floor((to-g.y)/cell)))
}

// inside says whether a row of cells lies in the room and not before or behind it.
func (g *Ground) inside(i int) bool { return i >= doorstep && i < g.nx-doorstep }

// bare is the floor without fittings: free between the sides and out through the openings one passes.
func (g *Ground) bare(sides []gap, doors []Opening) []bool {
	free := make([]bool, g.nx*g.ny)
	for i := doorstep; i < g.nx-doorstep; i++ {
		g.fill(free, i, sides[i].from, sides[i].to)
	}
	for _, o := range doors {
		x0, x1, y0, y1 := g.step(o)
		for i := x0; i <= x1; i++ {
			for j := y0; j <= y1; j++ {
				free[i*g.ny+j] = true
			}
		}
	}
	return free
}

func (g *Ground) fill(free []bool, i int, from, to float64) {
	j0, j1 := g.across(from, to)
	for j := j0; j <= j1; j++ {
		free[i*g.ny+j] = true
	}
}

// step are the cells of a door and of the step before it: from the finished surface out to the edge of the grid.
func (g *Ground) step(o Opening) (x0, x1, y0, y1 int) {
	x0, x1 = g.rows(o.X[0], o.X[1])
	y0, y1 = g.across(o.Y[0], o.Y[1])
	switch o.Through {
	case "left", "right":
		x0, x1 = max(x0, doorstep), min(x1, g.nx-1-doorstep)
		if x0 > x1 {
			return 1, 0, 1, 0
		}
		if o.Through == "left" {
			_, y1 = g.across(0, (g.walk[x0].from+g.walk[x1].from)/2+100)
			return x0, x1, 0, y1
		}
		y0, _ = g.across((g.walk[x0].to+g.walk[x1].to)/2-100, 0)
		return x0, x1, y0, g.ny - 1
	case "front":
		return 0, doorstep - 1, y0, y1
	case "rear":
		return g.nx - doorstep, g.nx - 1, y0, y1
	}
	return x0, x1, y0, y1
}
