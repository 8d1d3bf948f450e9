package conduction

// A Point of a section, m.
type Point struct{ X, Y float64 }

// A Field is temperature and stream function over a section, known where mesh lines cross. Point (i, j) is number
// j·len(X)+i, the cell to its upper right number j·(len(X)-1)+i.
type Field struct {
	X, Y        []float64 // mesh lines, m
	Temperature []float64 // at each point, °C; 0 at a point that touches no material
	Stream      []float64 // stream function at each point, W/m: heat flows along its level lines, higher values to its left
	Solid       []bool    // whether each cell is material
}

func (m mesh) mask() []bool {
	solid := make([]bool, len(m.owner))
	for c, k := range m.owner {
		solid[c] = k >= 0
	}
	return solid
}

// At gives the temperature at a point, between mesh lines by bilinear interpolation. It is not ok outside the material.
func (f Field) At(p Point) (temperature float64, ok bool) {
	i, u, inX := within(f.X, p.X)
	j, v, inY := within(f.Y, p.Y)
	if !inX || !inY || !f.solidAt(i, j, u, v) {
		return 0, false
	}
	k := j*len(f.X) + i
	low := f.Temperature[k]*(1-u) + f.Temperature[k+1]*u
	high := f.Temperature[k+len(f.X)]*(1-u) + f.Temperature[k+len(f.X)+1]*u
	return low*(1-v) + high*v, true
}

// solidAt says whether the place (u, v) in cell (i, j) is in material or on its surface. within puts a place on a line
// into the cell before it, so the cells behind are asked too.
func (f Field) solidAt(i, j int, u, v float64) bool {
	for _, at := range [][2]int{{i, j}, {i + on(u), j}, {i, j + on(v)}, {i + on(u), j + on(v)}} {
		if at[0] < len(f.X)-1 && at[1] < len(f.Y)-1 && f.Solid[at[1]*(len(f.X)-1)+at[0]] {
			return true
		}
	}
	return false
}

func on(share float64) int {
	if share == 1 {
		return 1
	}
	return 0
}

// Isotherms gives the lines of one temperature. A line that ends where it begins is closed.
func (f Field) Isotherms(temperature float64) [][]Point {
	return f.level(f.Temperature, temperature)
}

// HeatLines gives lines along which heat flows, so that between neighbours, and in halves beside the outer ones, flows
// the n-th part of the heat that passes between the least and the greatest value of Stream.
func (f Field) HeatLines(n int) [][]Point {
	low, high := f.Stream[0], f.Stream[0]
	for _, v := range f.Stream {
		low, high = min(low, v), max(high, v)
	}
	var lines [][]Point
	for k := range n {
		lines = append(lines, f.level(f.Stream, low+(high-low)*(float64(k)+0.5)/float64(n))...)
	}
	return lines
}
