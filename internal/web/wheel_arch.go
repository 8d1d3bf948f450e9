package web

import (
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/trade/arrangement"
)

// worthCutting is how much farther out a thing must come to stand that it is said what keeps it off the wall [mm].
const worthCutting = 50.0

// keptOff says of what stands against a side of the van that a wheel arch keeps it off the wall, and how much is won by cutting it round the arch.
func (v view) keptOff(f build.Fitting, b arrangement.Box) string {
	side := ""
	if f.At != nil && f.Where == "" && f.In == "" && f.Upon == "" && f.At.Y.Form == build.Against && f.At.Y.A.Of == "" {
		side = f.At.Y.A.Face
	}
	if v.Body == nil || v.Lining.Room == nil || side != "left" && side != "right" || slices.Contains(f.Scribe, side) {
		return ""
	}
	top := 0.0
	for _, arch := range v.Body.Arches() {
		if arch.Side == side && arch.From < b.MaxX && arch.To > b.MinX && arch.Up > b.MinZ {
			top = max(top, arch.Up)
		}
	}
	const lined = 50 // what lies over an arch reaches higher than its steel
	if top += lined; top == lined || top >= b.MaxZ {
		return ""
	}
	won := v.nearest(b, side, top) - v.nearest(b, side, b.MinZ)
	if won < worthCutting {
		return ""
	}
	return "It stands clear of the wheel arch; cut round it, it could stand " + fives(math.Floor(won/5)*5) + " mm farther out."
}

// nearest is how far from the middle a side of the room comes nearest, along a box and from a height up to its top [mm].
func (v view) nearest(b arrangement.Box, side string, from float64) float64 {
	least, room := math.Inf(1), v.Lining.Room
	for x := b.MinX; x <= b.MaxX; x += 20 {
		for z := from; z <= b.MaxZ; z += 20 {
			y := room.Right(x, z)
			if side == "left" {
				y = -room.Left(x, z)
			}
			least = min(least, y)
		}
	}
	return least
}
