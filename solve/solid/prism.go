package solid

import "math"

// Point is a point of the x,y plane.
type Point struct{ X, Y float64 }

// Prism is an upright convex prism. Outline is convex and counter-clockwise seen from +z.
type Prism struct {
	Outline   []Point
	Low, High float64
}

// Bounds is the box about a body, along the axes.
type Bounds struct{ MinX, MinY, MinZ, MaxX, MaxY, MaxZ float64 }

// Nothing is the bounds of no body; any Join with it gives the other.
var Nothing = Bounds{math.Inf(1), math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1), math.Inf(-1)}

// Box is the prism that fills the bounds.
func Box(b Bounds) Prism {
	return Prism{
		Outline: []Point{{b.MinX, b.MinY}, {b.MaxX, b.MinY}, {b.MaxX, b.MaxY}, {b.MinX, b.MaxY}},
		Low:     b.MinZ, High: b.MaxZ,
	}
}

// Join is the least box about both.
func (b Bounds) Join(c Bounds) Bounds {
	return Bounds{
		min(b.MinX, c.MinX), min(b.MinY, c.MinY), min(b.MinZ, c.MinZ),
		max(b.MaxX, c.MaxX), max(b.MaxY, c.MaxY), max(b.MaxZ, c.MaxZ),
	}
}

// Meets says whether two boxes share more than a face.
func (b Bounds) Meets(c Bounds) bool {
	return b.MinX < c.MaxX && c.MinX < b.MaxX &&
		b.MinY < c.MaxY && c.MinY < b.MaxY &&
		b.MinZ < c.MaxZ && c.MinZ < b.MaxZ
}

// Moved is the box elsewhere.
func (b Bounds) Moved(dx, dy, dz float64) Bounds {
	return Bounds{b.MinX + dx, b.MinY + dy, b.MinZ + dz, b.MaxX + dx, b.MaxY + dy, b.MaxZ + dz}
}

// Grown is the box with so much more on every side.
func (b Bounds) Grown(by float64) Bounds {
	return Bounds{b.MinX - by, b.MinY - by, b.MinZ - by, b.MaxX + by, b.MaxY + by, b.MaxZ + by}
}

// Empty says whether the box has no inside.
func (b Bounds) Empty() bool { return !(b.MinX < b.MaxX && b.MinY < b.MaxY && b.MinZ < b.MaxZ) }

// Bounds is the box about the prism.
func (p Prism) Bounds() Bounds {
	b := Nothing
	for _, v := range p.Outline {
		b.MinX, b.MaxX = min(b.MinX, v.X), max(b.MaxX, v.X)
		b.MinY, b.MaxY = min(b.MinY, v.Y), max(b.MaxY, v.Y)
	}
	b.MinZ, b.MaxZ = p.Low, p.High
	return b
}

// Moved is the prism elsewhere.
func (p Prism) Moved(dx, dy, dz float64) Prism {
	outline := make([]Point, len(p.Outline))
	for i, v := range p.Outline {
		outline[i] = Point{v.X + dx, v.Y + dy}
	}
	return Prism{outline, p.Low + dz, p.High + dz}
}

// Turned is the prism turned counter-clockwise seen from +z, by an angle in radians about an upright axis. Quarter turns are exact.
func (p Prism) Turned(about Point, angle float64) Prism {
	sin, cos := sinCos(angle)
	outline := make([]Point, len(p.Outline))
	for i, v := range p.Outline {
		dx, dy := v.X-about.X, v.Y-about.Y
		outline[i] = Point{about.X + cos*dx - sin*dy, about.Y + sin*dx + cos*dy}
	}
	return Prism{outline, p.Low, p.High}
}

// sinCos is math.Sincos with exact quarter turns, so that a box turned by a right angle is still a box along the axes.
func sinCos(angle float64) (sin, cos float64) {
	quarters := angle / (math.Pi / 2)
	if whole := math.Round(quarters); math.Abs(quarters-whole) < 1e-12 {
		switch int64(math.Mod(math.Mod(whole, 4)+4, 4)) {
		case 0:
			return 0, 1
		case 1:
			return 1, 0
		case 2:
			return 0, -1
		default:
			return -1, 0
		}
	}
	return math.Sincos(angle)
}

// IsConvex says whether the outline has at least three points, turns left everywhere and goes round once.
func (p Prism) IsConvex() bool {
	n := len(p.Outline)
	if n < 3 || !(area(p.Outline) > 0) {
		return false
	}
	round := 0.0
	for i := range n {
		a, b, c := p.Outline[i], p.Outline[(i+1)%n], p.Outline[(i+2)%n]
		ux, uy, vx, vy := b.X-a.X, b.Y-a.Y, c.X-b.X, c.Y-b.Y
		cross := ux*vy - uy*vx
		if cross < -1e-9*(math.Hypot(ux, uy)*math.Hypot(vx, vy)) {
			return false
		}
		round += math.Atan2(cross, ux*vx+uy*vy)
	}
	return math.Abs(round-2*math.Pi) < 1e-6
}

// Area of the outline.
func (p Prism) Area() float64 { return area(p.Outline) }

// Volume of the prism; 0 if its high face is not above its low.
func (p Prism) Volume() float64 { return max(0, p.Area()) * max(0, p.High-p.Low) }

// area is the shoelace sum about the first point, which keeps its digits far from the origin.
func area(outline []Point) float64 {
	sum := 0.0
	for i := 1; i+1 < len(outline); i++ {
		o, a, b := outline[0], outline[i], outline[i+1]
		sum += (a.X-o.X)*(b.Y-o.Y) - (a.Y-o.Y)*(b.X-o.X)
	}
	return sum / 2
}

// Middle is the centre of volume.
func (p Prism) Middle() (x, y, z float64) {
	var sum, sx, sy float64
	for i := 1; i+1 < len(p.Outline); i++ {
		o, a, b := p.Outline[0], p.Outline[i], p.Outline[i+1]
		w := (a.X-o.X)*(b.Y-o.Y) - (a.Y-o.Y)*(b.X-o.X)
		sum += w
		sx += w * (a.X + b.X - 2*o.X) / 3
		sy += w * (a.Y + b.Y - 2*o.Y) / 3
	}
	z = (p.Low + p.High) / 2
	if sum == 0 {
		b := p.Bounds()
		return (b.MinX + b.MaxX) / 2, (b.MinY + b.MaxY) / 2, z
	}
	return p.Outline[0].X + sx/sum, p.Outline[0].Y + sy/sum, z
}
