package draw

// View carries millimetres of the van to millimetres of paper: a plan (u rearwards, v to the
// right), a long section (u rearwards, v up) or a cross-section (u to the right, v up).
type View struct {
	Origin Point   // where u = v = 0 lies on the paper
	Scale  float64 // 20 for 1 : 20
	Up     bool    // v points up the paper, not down
}

// At carries a place.
func (v View) At(across, along float64) Point {
	y := v.Length(along)
	if v.Up {
		y = -y
	}
	return Point{v.Origin.X + v.Length(across), v.Origin.Y + y}
}

// Length carries a length in millimetres.
func (v View) Length(l float64) float64 { return l / v.Scale }

// Points carries a list of places.
func (v View) Points(places ...[2]float64) []Point {
	out := make([]Point, len(places))
	for i, p := range places {
		out[i] = v.At(p[0], p[1])
	}
	return out
}

// Box carries the rectangle between two places.
func (v View) Box(across, along, width, depth float64) Rect {
	return around([]Point{v.At(across, along), v.At(across+width, along+depth)})
}

// Back carries a point of the paper to the van.
func (v View) Back(p Point) (across, along float64) {
	d := p.Sub(v.Origin).Mul(v.Scale)
	if v.Up {
		d.Y = -d.Y
	}
	return d.X, d.Y
}
