package lining

import (
	"math"
	"slices"
)

// gauss3 are the three-point nodes and weights of Gauss and Legendre on 0..1
// (Abramowitz and Stegun, table 25.4).
var gauss3 = [3][2]float64{{0.11270166537925831, 5.0 / 18}, {0.5, 8.0 / 18}, {0.88729833462074169, 5.0 / 18}}

// overCuts sums f over a..b, cut at the ascending places where f may jump.
func overCuts(cuts []float64, a, b float64, f func(float64) float64) float64 {
	sum, lo := 0.0, a
	piece := func(hi float64) {
		for _, n := range gauss3 {
			sum += n[1] * (hi - lo) * f(lo+n[0]*(hi-lo))
		}
		lo = hi
	}
	for _, cut := range cuts {
		if cut > lo && cut < b {
			piece(cut)
		}
	}
	if b > lo {
		piece(b)
	}
	return sum
}

// FloorArea is the finished floor between linings and wheel arches, in m2.
func (r *Room) FloorArea() float64 {
	return overCuts(r.lengths, r.front, r.rear, func(x float64) float64 {
		return r.Right(x, r.floor) - r.Left(x, r.floor)
	}) / 1e6
}

// SectionArea is the area of the room cut across at x, in m2.
func (r *Room) SectionArea(x float64) float64 {
	return overCuts(r.heights, r.floor, r.Roof(x, 0), func(z float64) float64 {
		return r.Right(x, z) - r.Left(x, z)
	}) / 1e6
}

// Volume is the volume of the room in m3.
func (r *Room) Volume() float64 {
	return overCuts(r.lengths, r.front, r.rear, r.SectionArea) / 1e3
}

// Middle is half way along the finished room.
func (r *Room) Middle() float64 { return (r.front + r.rear) / 2 }

// Outline is the finished section at x as (y, z): from the left edge of the floor
// over the roof to the right edge.
func (r *Room) Outline(x float64) [][2]float64 {
	left := r.profile(x, r.Left)
	right := r.profile(x, r.Right)
	edge := math.Min(right[len(right)-1][0], -left[len(left)-1][0])
	for i := range 15 { // closer together towards the sides
		y := edge * math.Sin(float64(i-7)/8*math.Pi/2)
		left = append(left, [2]float64{y, r.Roof(x, y)})
	}
	slices.Reverse(right)
	return append(left, right...)
}

// profile is one side of the section at x from the floor up to where the roof
// leaves it. Where the build-up steps there are two points at one height.
func (r *Room) profile(x float64, side func(x, z float64) float64) [][2]float64 {
	line := [][2]float64{{side(x, r.floor), r.floor}}
	ridge := r.Roof(x, 0)
	for _, z := range r.heights {
		if z <= r.floor || z >= ridge {
			continue
		}
		below, above := side(x, math.Nextafter(z, 0)), side(x, math.Nextafter(z, ridge))
		line = append(line, [2]float64{below, z})
		if math.Abs(above-below) > 0.01 {
			line = append(line, [2]float64{above, z})
		}
	}
	return line
}
