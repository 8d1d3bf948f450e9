package arrangement

import (
	"math"

	"tumblehome/solve/solid"
)

// Spacings of the surfaces in a kit [mm]; prediction needs no more, the real answer follows. Where a side steps, as at the ends and the top of a
// wheel arch, they lie closer: what is cut to the lining goes by where the side is farthest out.
const (
	kitHeights = 100
	kitAlong   = 125
	kitStep    = 20 // more than this between two neighbours is a step
	kitClosest = 8
)

// kitSurfaces are the sides of the room at heights from the floor to the roof over its middle.
func kitSurfaces(r Room) []KitSurface {
	var heights []float64
	top := r.Roof((r.Front()+r.Rear())/2, 0)
	for z := r.Floor(); z < top; z += kitHeights {
		heights = append(heights, z)
	}
	stations := make([]float64, solid.Every(r.Rear()-r.Front(), kitAlong)+1)
	for i := range stations {
		stations[i] = r.Front() + (r.Rear()-r.Front())*float64(i)/float64(len(stations)-1)
	}
	stations = closer(stations, func(a, b float64) bool {
		return steps(heights, func(z float64) bool { return stepsFrom(r, a, z, b, z) })
	})
	heights = closer(heights, func(a, b float64) bool {
		return steps(stations, func(x float64) bool { return stepsFrom(r, x, a, x, b) })
	})
	var surfaces []KitSurface
	for _, z := range heights {
		surfaces = append(surfaces, kitSurface(r, stations, z))
	}
	return surfaces
}

// closer puts places between neighbours as long as there is a step between them.
func closer(places []float64, step func(a, b float64) bool) (out []float64) {
	for i, b := range places {
		if i > 0 {
			out = append(out, between(places[i-1], b, step)...)
		}
		out = append(out, b)
	}
	return out
}

func between(a, b float64, step func(a, b float64) bool) []float64 {
	if b-a <= kitClosest || !step(a, b) {
		return nil
	}
	middle := (a + b) / 2
	return append(append(between(a, middle, step), middle), between(middle, b, step)...)
}

// steps says whether there is a step at one of some places.
func steps(places []float64, at func(float64) bool) bool {
	for _, p := range places {
		if at(p) {
			return true
		}
	}
	return false
}

// stepsFrom says whether a side is much farther out at one place than at another.
func stepsFrom(r Room, x, z, toX, toZ float64) bool {
	return math.Abs(r.Left(x, z)-r.Left(toX, toZ)) > kitStep || math.Abs(r.Right(x, z)-r.Right(toX, toZ)) > kitStep
}

// kitSurface is the room at a height, counter-clockwise: along the left side rearwards, back along the right.
func kitSurface(r Room, stations []float64, z float64) KitSurface {
	s := KitSurface{Height: tenth(z), Outline: make([][2]float64, 2*len(stations))}
	for i, x := range stations {
		s.Outline[i] = [2]float64{tenth(x), tenth(r.Left(x, z))}
		s.Outline[len(s.Outline)-1-i] = [2]float64{tenth(x), tenth(r.Right(x, z))}
	}
	return s
}
