package fit

import "tumblehome/solve/solid"

const (
	exitSquare = 450 // side of the free square a person leaves by [mm]
	exitDepth  = 300 // how far into the van an opening must be clear [mm]
	exitCell   = 50  // of the grid it is looked for on [mm]
)

// exitAt is an opening in a mode, as it will be or with only what is in the van today.
type exitAt struct {
	crawlAt
	opening string
}

// standsBefore is which fitting takes most of an opening, -1 for none, and whether too little is left.
type standsBefore struct {
	by   int
	shut bool
}

// standsBefore is blocked, remembered.
func (w *worker) standsBefore(mode *Mode, o Opening, today bool) standsBefore {
	return recall(w, w.was.exit, w.now.exit, mode, exitAt{crawlAt{mode.Name, today}, o.ID}, all, func() (standsBefore, solid.Bounds) {
		zone, _, _ := w.zone(o)
		reach := zone.Join(w.outsideOf(o))
		if by := w.barsOutside(mode, o, today); by >= 0 {
			return standsBefore{by, true}, reach
		}
		by, shut := w.blocked(mode, o, today)
		return standsBefore{by, shut}, reach
	})
}

// blocked says whether no square large enough is left free in front of an opening, and which fitting takes most of it; today counts only
// what is in the van today.
func (w *worker) blocked(mode *Mode, o Opening, today bool) (by int, blocked bool) {
	zone, along, up := w.zone(o)
	n, m := int((along[1]-along[0])/exitCell), int((up[1]-up[0])/exitCell)
	if n < exitSquare/exitCell || m < exitSquare/exitCell {
		return -1, false // smaller than a way out anyhow: nothing stands in it that matters
	}
	taken := make([]bool, n*m)
	by, most := -1, 0
	for i := range mode.Standings {
		s, f := mode.Standings[i].passed(), w.in.Fittings[i]
		if len(s.Solid) == 0 || f.Gives > 0 || f.Aside || f.For != "" || f.isOutside() || today && !f.Today || !s.Box.Meets(zone) {
			continue
		}
		if cells := o.shadow(s.Solid, zone, along, up, n, taken); cells > most {
			by, most = i, cells
		}
	}
	return by, greatestSquare(taken, n) < exitSquare/exitCell
}

// zone is the space in front of an opening, and the extents of the opening in its own plane.
func (w *worker) zone(o Opening) (zone solid.Bounds, along, up [2]float64) {
	r := w.in.Room
	zone = solid.Bounds{MinX: o.X[0], MaxX: o.X[1], MinY: o.Y[0], MaxY: o.Y[1], MinZ: o.Z[0], MaxZ: o.Z[1]}
	x := (o.X[0] + o.X[1]) / 2
	switch o.Through {
	case "left":
		zone.MinY = r.Left(x, o.Z[0])
		zone.MaxY = zone.MinY + exitDepth
		return zone, o.X, o.Z
	case "right":
		zone.MaxY = r.Right(x, o.Z[0])
		zone.MinY = zone.MaxY - exitDepth
		return zone, o.X, o.Z
	case "front":
		zone.MinX, zone.MaxX = r.Front()-exitDepth, r.Front() // in the cab; the room before it is a matter of getting there
		return zone, o.Y, o.Z
	case "rear":
		zone.MinX, zone.MaxX = r.Rear()-exitDepth, r.Rear()
		return zone, o.Y, o.Z
	case "floor":
		zone.MinZ, zone.MaxZ = r.Floor(), r.Floor()+exitDepth
		return zone, o.X, o.Y
	}
	zone.MaxZ = r.Roof(x, (o.Y[0]+o.Y[1])/2)
	zone.MinZ = zone.MaxZ - exitDepth
	return zone, o.X, o.Y
}

// shadow marks the cells of the opening that a solid covers and counts them.
func (o Opening) shadow(s solid.Solid, zone solid.Bounds, along, up [2]float64, n int, taken []bool) (cells int) {
	for _, p := range s {
		b := p.Bounds()
		if !b.Meets(zone) {
			continue
		}
		u0, u1, v0, v1 := b.MinX, b.MaxX, b.MinZ, b.MaxZ
		switch o.Through {
		case "front", "rear":
			u0, u1 = b.MinY, b.MaxY
		case "floor", "roof":
			v0, v1 = b.MinY, b.MaxY
		}
		u0, u1 = aCell(u0, u1)
		v0, v1 = aCell(v0, v1)
		for row := 0; row < len(taken); row += n {
			if v := up[0] + (float64(row/n)+0.5)*exitCell; v <= v0 || v >= v1 {
				continue
			}
			for k := range n {
				if u := along[0] + (float64(k)+0.5)*exitCell; u > u0 && u < u1 {
					taken[row+k] = true
					cells++
				}
			}
		}
	}
	return cells
}

// aCell widens what is thinner than a cell, a flap or a shelf, so that it does not slip between the middles of cells.
func aCell(from, to float64) (float64, float64) {
	if thin := exitCell - (to - from); thin > 0 {
		return from - thin/2 - touching, to + thin/2 + touching
	}
	return from, to
}

// greatestSquare is the side, in cells, of the greatest square of a grid n wide that has no cell taken: each cell's square is one
// more than the least of its three neighbours before it.
func greatestSquare(taken []bool, n int) int {
	side, best := make([]int, len(taken)), 0
	for c := range taken {
		if taken[c] {
			continue
		}
		side[c] = 1
		if c%n > 0 && c >= n {
			side[c] = 1 + min(side[c-1], side[c-n], side[c-n-1])
		}
		best = max(best, side[c])
	}
	return best
}
