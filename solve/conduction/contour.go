package conduction

import "slices"

// Level lines by marching squares: in each solid cell the line joins the sides on whose two ends the values lie on
// different sides of the level. A side is named by the number of its first point, twice, plus one when it runs along y.

// A joint is a side that the line crosses, and the sides it goes on to: one in each cell of the side.
type joint struct {
	at   Point
	next []int
}

// level gives the lines on which values, known at the points, equal the level.
func (f Field) level(values []float64, level float64) [][]Point {
	joints := map[int]*joint{}
	var order []int
	link := func(a, b int) {
		for _, side := range []int{a, b} {
			if joints[side] == nil {
				joints[side] = &joint{at: f.crossing(values, level, side)}
				order = append(order, side)
			}
		}
		joints[a].next = append(joints[a].next, b)
		joints[b].next = append(joints[b].next, a)
	}
	for c, solid := range f.Solid {
		if solid {
			f.cut(values, level, c, link)
		}
	}
	var lines [][]Point
	for _, open := range []bool{true, false} {
		for _, side := range order {
			if open == (len(joints[side].next) == 1) && len(joints[side].next) > 0 {
				lines = append(lines, walk(joints, side))
			}
		}
	}
	return lines
}

// cut links the sides of one cell that the line joins. At a saddle the mean of the corners tells which.
func (f Field) cut(values []float64, level float64, c int, link func(a, b int)) {
	nx := len(f.X)
	p := c/(nx-1)*nx + c%(nx-1)
	corners := [4]int{p, p + 1, p + nx + 1, p + nx}
	sides := [4]int{2 * p, 2*(p+1) + 1, 2 * (p + nx), 2*p + 1} // below, right, above, left
	var crossed []int
	var mean float64
	for k, a := range corners {
		mean += values[a] / 4
		if (values[a] >= level) != (values[corners[(k+1)%4]] >= level) {
			crossed = append(crossed, sides[k])
		}
	}
	switch {
	case len(crossed) == 2:
		link(crossed[0], crossed[1])
	case len(crossed) == 4 && (mean >= level) == (values[corners[0]] >= level):
		link(crossed[0], crossed[1])
		link(crossed[2], crossed[3])
	case len(crossed) == 4:
		link(crossed[3], crossed[0])
		link(crossed[1], crossed[2])
	}
}

// crossing is where the level lies on a side.
func (f Field) crossing(values []float64, level float64, side int) Point {
	p, nx := side/2, len(f.X)
	a := Point{f.X[p%nx], f.Y[p/nx]}
	if side%2 == 0 {
		u := (level - values[p]) / (values[p+1] - values[p])
		return Point{a.X + u*(f.X[p%nx+1]-a.X), a.Y}
	}
	u := (level - values[p]) / (values[p+nx] - values[p])
	return Point{a.X, a.Y + u*(f.Y[p/nx+1]-a.Y)}
}

// walk follows a line from a side to its other end and takes it out of the joints.
func walk(joints map[int]*joint, side int) []Point {
	line := []Point{joints[side].at}
	for len(joints[side].next) > 0 {
		next := joints[side].next[0]
		joints[side].next = joints[side].next[1:]
		back := slices.Index(joints[next].next, side)
		joints[next].next = slices.Delete(joints[next].next, back, back+1)
		side = next
		line = append(line, joints[side].at)
	}
	return line
}
