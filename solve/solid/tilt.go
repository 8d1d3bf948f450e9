package solid

import "math"

// Edge is a level line along x (Along 0) or y (Along 1) that a box turns about. H is its place on the other level axis and Z its height.
// Away (+1 or -1) is the way along that axis from the edge into the box, and Upward (+1 or -1) the way along z that the far end goes
// first: an angle is counted from Away to Upward.
type Edge struct {
	Along        int
	H, Z         float64
	Away, Upward float64
}

// mostSlices is how many slices a tilted box is cut into at most.
const mostSlices = 48

// Tilted is the box turned about a level edge by an angle in radians. By quarter turns it stays one box, exactly. Otherwise it is cut into
// upright slices, each as high as the turned box is in the slice's middle: the turned box's height over the tolerance of them, which keeps the
// faces of a thin box within half the tolerance, but at most 48. It is what the box looks like, not a cover; Tipped covers.
func (b Bounds) Tilted(e Edge, angle, tolerance float64) Solid {
	if b.Empty() {
		return nil
	}
	h0, h1, l0, l1 := b.across(e.Along)
	var quad [4]Point
	for i, c := range [4]Point{{h0, b.MinZ}, {h1, b.MinZ}, {h1, b.MaxZ}, {h0, b.MaxZ}} {
		quad[i] = e.turned(c, angle)
	}
	section := Prism{Outline: quad[:]}
	about := section.Bounds()
	n := slicesOf(about.MaxY-about.MinY, angle, tolerance)
	tilted := make(Solid, 0, n)
	for i := range n {
		from, till := node(about.MinX, about.MaxX, i, n), node(about.MinX, about.MaxX, i+1, n)
		if low, high := section.Across((from + till) / 2); low < high {
			tilted = append(tilted, e.slice(l0, l1, from, till, low, high))
		}
	}
	return tilted
}

// across is the box's extent across an edge and along it.
func (b Bounds) across(along int) (h0, h1, l0, l1 float64) {
	if along == 1 {
		return b.MinX, b.MaxX, b.MinY, b.MaxY
	}
	return b.MinY, b.MaxY, b.MinX, b.MaxX
}

// slicesOf is how many upright slices a tilted box needs.
func slicesOf(height, angle, tolerance float64) int {
	if quarters := angle / (math.Pi / 2); math.Abs(quarters-math.Round(quarters)) < hair {
		return 1
	}
	if !(tolerance*mostSlices > height) {
		return mostSlices
	}
	return max(1, int(math.Ceil(height/tolerance)))
}

// turned is a point of the plane across the edge, turned about it.
func (e Edge) turned(p Point, angle float64) Point {
	if quarters := math.Round(angle / (math.Pi / 2)); math.Abs(angle-quarters*math.Pi/2) < hair {
		angle = quarters * math.Pi / 2
	}
	sin, cos := sinCos(angle)
	u, v := (p.X-e.H)*e.Away, (p.Y-e.Z)*e.Upward
	return Point{e.H + e.Away*(u*cos-v*sin), e.Z + e.Upward*(u*sin+v*cos)}
}

// slice is an upright box: l along the edge, h across it.
func (e Edge) slice(l0, l1, h0, h1, low, high float64) Prism {
	if e.Along == 1 {
		return Box(Bounds{h0, l0, low, h1, l1, high})
	}
	return Box(Bounds{l0, h0, low, l1, h1, high})
}
