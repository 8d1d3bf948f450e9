package draw

import (
	"fmt"
	"math"
)

// Flaw is something wrong with a drawing as a drawing.
type Flaw struct {
	Kind FlawKind
	Says string
}

// FlawKind is a closed list.
type FlawKind string

// What can be wrong.
const (
	FlawSmall   FlawKind = "small lettering" // below 2.5 mm when printed on A3
	FlawCollide FlawKind = "texts collide"
	FlawOutside FlawKind = "text outside the sheet"
	FlawTwice   FlawKind = "id used twice"
	FlawNumber  FlawKind = "not a number"
)

// Check looks for what a draughtsman would send back. Nothing found gives nil.
func (s Scene) Check() []Flaw {
	c := &checker{scene: s, ids: map[string]bool{}}
	Paint(s.Marks, c)
	c.collisions()
	return c.flaws
}

// checker gathers the texts while the scene is painted.
type checker struct {
	scene Scene
	texts []placedText
	ids   map[string]bool
	flaws []Flaw
}

type placedText struct {
	Lettering
	corners []Point
	bounds  Rect
}

func (c *checker) report(kind FlawKind, format string, args ...any) {
	c.flaws = append(c.flaws, Flaw{kind, fmt.Sprintf(format, args...)})
}

func (c *checker) Open(g Group) {
	if g.ID != "" && c.ids[g.ID] {
		c.report(FlawTwice, "%q", g.ID)
	}
	c.ids[g.ID] = true
}

func (c *checker) Shut(Group) {}

func (c *checker) Shape(s Shape) {
	for _, st := range s.Path.steps {
		if !finite(st.to) || !finite(st.c1) || !finite(st.c2) || math.IsNaN(st.radius) || math.IsInf(st.radius, 0) {
			c.report(FlawNumber, "%s", s)
			return
		}
	}
}

func (c *checker) Letter(l Lettering) {
	if l.line() == "" {
		return
	}
	if !finite(l.At) || math.IsNaN(l.Turn) || !(l.height() > 0) || math.IsInf(l.height(), 0) {
		c.report(FlawNumber, "%s", l)
		return
	}
	if h := l.height() * c.scene.Size.onA3(); h < SizeSmall-1e-9 {
		c.report(FlawSmall, "%s would be %.2f mm high on A3, less than 2.5", l, h)
	}
	t := placedText{Lettering: l, corners: l.Outline()}
	t.bounds = around(t.corners)
	if !t.bounds.Within(c.scene.Size.Rect()) {
		c.report(FlawOutside, "%s", l)
	}
	c.texts = append(c.texts, t)
}

// onA3 is the scale at which the sheet is printed on A3: reduced to fit, never enlarged.
func (s Size) onA3() float64 {
	long, short := math.Max(s.Width, s.Height), math.Min(s.Width, s.Height)
	return math.Min(1, math.Min(A3.Width/long, A3.Height/short))
}

func (c *checker) collisions() {
	for i, a := range c.texts {
		for _, b := range c.texts[:i] {
			if a.bounds.Overlaps(b.bounds) && collide(a.corners, b.corners) {
				c.report(FlawCollide, "%s with %s", b.Lettering, a.Lettering)
			}
		}
	}
}

// collide tells whether two turned rectangles share area: no edge of either separates them
// (separating axis theorem for convex polygons).
func collide(a, b []Point) bool {
	return !parted(a, b) && !parted(b, a)
}

func parted(a, b []Point) bool {
	for i := range 2 { // opposite edges of a rectangle are parallel
		axis := a[i+1].Sub(a[i]).Left()
		a0, a1 := shadow(a, axis)
		b0, b1 := shadow(b, axis)
		if a1 <= b0+1e-9 || b1 <= a0+1e-9 {
			return true
		}
	}
	return false
}

func shadow(points []Point, axis Point) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, p := range points {
		d := p.Dot(axis)
		low, high = math.Min(low, d), math.Max(high, d)
	}
	return low, high
}

func finite(p Point) bool {
	return !math.IsNaN(p.X) && !math.IsInf(p.X, 0) && !math.IsNaN(p.Y) && !math.IsInf(p.Y, 0)
}

// Letters gives the boxes of all lettering in the scene: what further labels may not cover.
func (s Scene) Letters() []Rect {
	c := &checker{scene: s, ids: map[string]bool{}}
	Paint(s.Marks, c)
	out := make([]Rect, len(c.texts))
	for i, t := range c.texts {
		out[i] = t.bounds
	}
	return out
}
