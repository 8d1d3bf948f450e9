package offsets

import "math"

// A Point of an outline: A along the first axis of the cut (y of a section, x of a
// plan), B along the second (z of a section, y of a plan).
type Point struct{ A, B float64 }

// section is the body cut across at one x.
type section struct {
	z         []float64
	column    [][4]float64 // half-breadth as a cubic of each height interval
	b, camber float64      // half-breadth at the top row and what the roof rises over it
	round     *round
}

func (s *Surface) section(x float64) section {
	i, u := locate(s.x, x)
	rows := len(s.z) - 1
	c := section{z: s.z, column: make([][4]float64, rows), round: &s.round}
	for j := range rows {
		c.column[j] = s.patches[i*rows+j].column(u)
	}
	last := c.column[rows-1]
	c.b = last[0] + last[1] + last[2] + last[3]
	c.camber = s.crown.At(x) - s.TopRow()
	return c
}

// Section returns the right half of the cut at x as a line from the edge of
// the base up the side and over to the crown, with steps points to each
// height interval and as many again, at least 8, for the roof. A is y, B is z.
func (s *Surface) Section(x float64, steps int) []Point {
	steps = max(steps, 1)
	c := s.section(x)
	var line []Point
	for j, k := range c.column {
		for i := range steps {
			v := float64(i) / float64(steps)
			line = append(line, Point{value(k, v), c.z[j] + v*(c.z[j+1]-c.z[j])})
		}
	}
	top := c.z[len(c.z)-1]
	roof := max(steps, 8)
	for i := range roof + 1 {
		t := math.Sqrt(1 - float64(i)/float64(roof)) // closer together at the shoulder
		line = append(line, Point{c.b * t, top + c.camber*(1-c.round.at(t))})
	}
	return line
}

// Plan returns the right half of the cut at height z as a line from the
// start to the end, with steps points to each interval of stations. A is x,
// B is y.
func (s *Surface) Plan(z float64, steps int) []Point {
	steps = max(steps, 1)
	var line []Point
	for i := range len(s.x) - 1 {
		for k := range steps {
			x := s.x[i] + float64(k)/float64(steps)*(s.x[i+1]-s.x[i])
			line = append(line, Point{x, s.Half(x, z)})
		}
	}
	return append(line, Point{s.End(), s.Half(s.End(), z)})
}

// SectionArea returns the area of the whole cut at x, both sides, from the
// base to the crown.
func (s *Surface) SectionArea(x float64) float64 {
	c := s.section(x)
	area := c.b * c.camber * c.round.area()
	for j, k := range c.column {
		area += (c.z[j+1] - c.z[j]) * (k[0] + k[1]/2 + k[2]/3 + k[3]/4)
	}
	return 2 * area
}

// Girth returns the length of the line around the cut at x, from the edge of
// the base on one side over the crown to the other.
func (s *Surface) Girth(x float64) float64 {
	c := s.section(x)
	length := 0.0
	for j, k := range c.column {
		h := c.z[j+1] - c.z[j]
		length += gauss(0, 1, func(v float64) float64 { return math.Hypot(h, k[1]+v*(2*k[2]+v*3*k[3])) })
	}
	for i := range len(roofPanels) - 1 {
		length += gauss(roofPanels[i], roofPanels[i+1], func(t float64) float64 {
			return math.Hypot(c.b, c.camber*c.round.slope(t))
		})
	}
	return 2 * length
}

// roofPanels divide the breadth of the roof for integration, finer towards
// the shoulder.
var roofPanels = [...]float64{0, 0.5, 0.75, 0.88, 0.96, 1}

// Volume returns the volume between x0 and x1, both sides, from the base to
// the surface. It is exact for this surface: the area of a section is a
// polynomial of degree six between stations.
func (s *Surface) Volume(x0, x1 float64) float64 {
	volume := 0.0
	for i := range len(s.x) - 1 {
		volume += gauss(max(x0, s.x[i]), min(x1, s.x[i+1]), s.SectionArea)
	}
	return volume
}

func value(c [4]float64, v float64) float64 { return c[0] + v*(c[1]+v*(c[2]+v*c[3])) }

// Nodes and weights of Gauss and Legendre on 0..1 (Abramowitz and Stegun,
// table 25.4, moved from -1..1): five points are exact to degree nine, three to five.
var (
	five = [5][2]float64{
		{0.04691007703066800, 0.11846344252809454}, {0.23076534494715845, 0.23931433524968324},
		{0.5, 0.28444444444444444},
		{0.76923465505284155, 0.23931433524968324}, {0.95308992296933200, 0.11846344252809454},
	}
	three = [3][2]float64{{0.11270166537925831, 5.0 / 18}, {0.5, 8.0 / 18}, {0.88729833462074169, 5.0 / 18}}
)

// gauss returns the integral of f from a to b, zero where b is not beyond a.
func gauss(a, b float64, f func(float64) float64) float64 {
	if !(b > a) {
		return 0
	}
	sum := 0.0
	for _, n := range five {
		sum += n[1] * f(a+n[0]*(b-a))
	}
	return sum * (b - a)
}
