package draw

import (
	"math"
	"strings"
)

// Path is a drawn line: one or more runs of straight lines, circular arcs and cubic curves,
// each open or closed. A path is built once and then only read.
type Path struct{ steps []step }

type stepKind byte

const (
	moveTo  stepKind = 'M'
	lineTo  stepKind = 'L'
	arcTo   stepKind = 'A'
	curveTo stepKind = 'C'
	closeUp stepKind = 'Z'
)

// step is one command of the path. Arcs keep their radius and turning so that they stay arcs
// in the file; curves keep their two control points.
type step struct {
	kind       stepKind
	to         Point
	c1, c2     Point   // control points of a curve
	radius     float64 // of an arc
	large      bool    // the arc sweeps more than half a turn
	rightabout bool    // the arc turns clockwise on the paper
}

// Line is a straight line between two points.
func Line(a, b Point) Path { return Polyline(a, b) }

// Polyline is an open run of straight lines.
func Polyline(points ...Point) Path {
	var p Path
	for i, q := range points {
		kind := lineTo
		if i == 0 {
			kind = moveTo
		}
		p.steps = append(p.steps, step{kind: kind, to: q})
	}
	return p
}

// Polygon is a closed run of straight lines.
func Polygon(points ...Point) Path {
	p := Polyline(points...)
	if len(points) > 0 {
		p.steps = append(p.steps, step{kind: closeUp, to: points[0]})
	}
	return p
}

// Rectangle is the outline of a rectangle.
func Rectangle(r Rect) Path { return Polygon(r.Corners()...) }

// Rounded is the outline of a rectangle with corners rounded to the radius (mm), no more than
// half the shorter side.
func Rounded(r Rect, radius float64) Path {
	radius = math.Min(radius, math.Min(r.Width(), r.Height())/2)
	if !(radius > 0) {
		return Rectangle(r)
	}
	l, t, e, b := r.Min.X, r.Min.Y, r.Max.X, r.Max.Y
	return From(Pt(l+radius, t)).
		To(Pt(e-radius, t)).Arc(radius, true, Pt(e, t+radius)).
		To(Pt(e, b-radius)).Arc(radius, true, Pt(e-radius, b)).
		To(Pt(l+radius, b)).Arc(radius, true, Pt(l, b-radius)).
		To(Pt(l, t+radius)).Arc(radius, true, Pt(l+radius, t)).Close()
}

// Circle is a whole circle.
func Circle(centre Point, radius float64) Path {
	a, b := Pt(centre.X-radius, centre.Y), Pt(centre.X+radius, centre.Y)
	return From(a).Arc(radius, true, b).Arc(radius, true, a).Close()
}

// ArcOf is part of a circle from one angle to another, both in degrees clockwise from the
// direction of x as seen on the paper. A sweep of a full turn or more gives the circle.
func ArcOf(centre Point, radius, from, to float64) Path {
	if math.Abs(to-from) >= 360 {
		return Circle(centre, radius)
	}
	at := func(a float64) Point { return Pt(centre.X+radius, centre.Y).Turn(centre, a) }
	p := From(at(from))
	return p.append(step{kind: arcTo, to: at(to), radius: radius, large: math.Abs(to-from) > 180, rightabout: to > from})
}

// From starts a path at a point.
func From(start Point) Path { return Path{}.append(step{kind: moveTo, to: start}) }

// To goes on with a straight line.
func (p Path) To(q Point) Path { return p.append(step{kind: lineTo, to: q}) }

// Arc goes on with the smaller arc of the given radius (mm), clockwise on the paper or not.
func (p Path) Arc(radius float64, clockwise bool, to Point) Path {
	return p.append(step{kind: arcTo, to: to, radius: radius, rightabout: clockwise})
}

// Curve goes on with a cubic curve through its two control points.
func (p Path) Curve(c1, c2, to Point) Path {
	return p.append(step{kind: curveTo, to: to, c1: c1, c2: c2})
}

// Close draws the run back to where it began.
func (p Path) Close() Path {
	for i := len(p.steps) - 1; i >= 0; i-- {
		if p.steps[i].kind == moveTo {
			return p.append(step{kind: closeUp, to: p.steps[i].to})
		}
	}
	return p
}

// And puts the runs of another path behind those of this one: an outline and its holes.
func (p Path) And(q Path) Path { return p.append(q.steps...) }

// Empty reports whether there is nothing to draw.
func (p Path) Empty() bool { return len(p.steps) == 0 }

// append copies, so that two paths grown from the same beginning never share ink.
func (p Path) append(s ...step) Path {
	steps := make([]step, len(p.steps), len(p.steps)+len(s))
	copy(steps, p.steps)
	return Path{append(steps, s...)}
}

// String is the path in the notation of SVG path data, rounded to a hundredth of a
// millimetre.
func (p Path) String() string {
	var b strings.Builder
	b.Write(p.appendData(nil))
	return b.String()
}

func (p Path) appendData(b []byte) []byte {
	for i, s := range p.steps {
		if i > 0 && s.kind != closeUp {
			b = append(b, ' ')
		}
		b = append(b, byte(s.kind))
		switch s.kind {
		case closeUp:
			continue
		case arcTo:
			b = appendNumbers(b, s.radius, s.radius)
			b = append(b, " 0 "...)
			b = append(b, flagDigit(s.large), ' ', flagDigit(s.rightabout), ' ')
		case curveTo:
			b = append(appendNumbers(b, s.c1.X, s.c1.Y, s.c2.X, s.c2.Y), ' ')
		}
		b = appendNumbers(b, s.to.X, s.to.Y)
	}
	return b
}

func flagDigit(set bool) byte {
	if set {
		return '1'
	}
	return '0'
}
