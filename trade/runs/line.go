package runs

import "math"

// Bend is a corner of a way.
type Bend struct {
	Corner int     // its number among the corners, from 0
	Turn   float64 // by how much the way turns there [degree]
	Radius float64 // of the widest bend that its legs have room for [mm]
}

func distance(a, b Point) float64 {
	return math.Sqrt((a[0]-b[0])*(a[0]-b[0]) + (a[1]-b[1])*(a[1]-b[1]) + (a[2]-b[2])*(a[2]-b[2]))
}

// between is the place at a share of the way from one to another.
func between(a, b Point, share float64) Point {
	return Point{a[0] + (b[0]-a[0])*share, a[1] + (b[1]-a[1])*share, a[2] + (b[2]-a[2])*share}
}

// lengths are how far each corner is from the first, along the line.
func lengths(line []Point) []float64 {
	out := make([]float64, len(line))
	for i := 1; i < len(line); i++ {
		out[i] = out[i-1] + distance(line[i-1], line[i])
	}
	return out
}

func length(line []Point) float64 {
	if len(line) == 0 {
		return 0
	}
	return lengths(line)[len(line)-1]
}

// leastTurn is what is no bend yet [degree].
const leastTurn = 1

// bends are the corners at which a line turns. A leg of no length has no direction and is left out.
func bends(line []Point) []Bend {
	var out []Bend
	corners := distinct(line)
	for k := 1; k+1 < len(corners); k++ {
		a, b, c := line[corners[k-1]], line[corners[k]], line[corners[k+1]]
		in, on := distance(a, b), distance(b, c)
		dot := 0.0
		for axis := range a {
			dot += (b[axis] - a[axis]) * (c[axis] - b[axis])
		}
		turn := math.Acos(max(-1, min(1, dot/(in*on))))
		if turn*180/math.Pi < leastTurn {
			continue
		}
		if k > 1 {
			in /= 2
		}
		if k+2 < len(corners) {
			on /= 2
		}
		out = append(out, Bend{Corner: corners[k], Turn: turn * 180 / math.Pi, Radius: min(in, on) / math.Tan(turn/2)})
	}
	return out
}

// distinct are the corners that do not lie on the one before.
func distinct(line []Point) []int {
	var out []int
	for i := range line {
		if len(out) == 0 || distance(line[out[len(out)-1]], line[i]) > 0.5 {
			out = append(out, i)
		}
	}
	return out
}

// nearestOn is the place on a leg nearest to a point, as a share of the leg.
func nearestOn(a, b, p Point) float64 {
	dot, square := 0.0, 0.0
	for axis := range a {
		dot += (p[axis] - a[axis]) * (b[axis] - a[axis])
		square += (b[axis] - a[axis]) * (b[axis] - a[axis])
	}
	if square == 0 {
		return 0
	}
	return max(0, min(1, dot/square))
}
