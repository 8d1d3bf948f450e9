package draw

import (
	"math"
	"sort"
)

// Hatching is a pattern of fine lines by which a cut material is told.
type Hatching int

// The hatchings.
const (
	HatchRising  Hatching = iota // 45° rising to the right: a cut thing
	HatchFalling                 // 45° falling to the right: its neighbour
	HatchCross                   // both: what may not be used
	HatchZigzag                  // rows of zigzag: insulation
	HatchGrain                   // lying lines: wood along the grain
)

// Hatch fills the inside of a closed path (even-odd, so holes stay free) with a hatching whose
// lines are spacing mm apart. The lines are cut to the outline, so every output shows the same.
func Hatch(area Path, hatching Hatching, spacing float64) Shape {
	rings := area.Flatten(0.05)
	if !(spacing >= 0.2) {
		spacing = 0.2 // closer lines are a grey field and a slow one
	}
	var out Path
	bounds := area.Bounds()
	for _, line := range hatching.lines(bounds, spacing) {
		for i := 1; i < len(line); i++ {
			out.steps = appendInside(out.steps, line[i-1], line[i], rings)
		}
	}
	return Shape{Path: out, Pen: PenHatch}
}

// lines covers the rectangle with the pattern, anchored to the sheet so that the hatchings of
// neighbours line up.
func (h Hatching) lines(r Rect, spacing float64) [][]Point {
	if r.Empty() || r.Width() > 1e4 || r.Height() > 1e4 {
		return nil
	}
	switch h {
	case HatchFalling:
		return slanted(r, spacing, -1)
	case HatchCross:
		return append(slanted(r, spacing, 1), slanted(r, spacing, -1)...)
	case HatchZigzag:
		return zigzags(r, spacing)
	case HatchGrain:
		var out [][]Point
		for y := math.Ceil(r.Min.Y/spacing) * spacing; y < r.Max.Y; y += spacing {
			out = append(out, []Point{{r.Min.X, y}, {r.Max.X, y}})
		}
		return out
	}
	return slanted(r, spacing, 1)
}

// slanted draws the lines x + rise·y = k·spacing·√2 through the rectangle.
func slanted(r Rect, spacing, rise float64) [][]Point {
	var out [][]Point
	step := spacing * math.Sqrt2
	top, bottom := r.Min.Y, r.Max.Y
	lowest := r.Min.X + math.Min(rise*top, rise*bottom)
	highest := r.Max.X + math.Max(rise*top, rise*bottom)
	for k := math.Ceil(lowest / step); k*step < highest; k++ {
		out = append(out, []Point{{k*step - rise*bottom, bottom}, {k*step - rise*top, top}})
	}
	return out
}

// zigzags draws rows of zigzag a spacing apart, each zig and zag together a spacing long and
// six tenths of it high.
func zigzags(r Rect, spacing float64) [][]Point {
	var out [][]Point
	for y := math.Floor(r.Min.Y/spacing) * spacing; y < r.Max.Y; y += spacing {
		line := []Point{}
		for k := math.Floor(r.Min.X / (spacing / 2)); k*spacing/2 < r.Max.X+spacing/2; k++ {
			at := Pt(k*spacing/2, y)
			if math.Mod(k, 2) != 0 {
				at.Y += 0.6 * spacing
			}
			line = append(line, at)
		}
		out = append(out, line)
	}
	return out
}

// appendInside adds those pieces of the line from a to b that lie inside the rings.
func appendInside(steps []step, a, b Point, rings [][]Point) []step {
	cuts := []float64{}
	along := b.Sub(a)
	for _, ring := range rings {
		for i := range ring {
			c, d := ring[i], ring[(i+1)%len(ring)]
			if (along.Cross(c.Sub(a)) > 0) == (along.Cross(d.Sub(a)) > 0) {
				continue // both ends on one side: the half-open rule counts a corner once
			}
			edge := d.Sub(c)
			cuts = append(cuts, c.Sub(a).Cross(edge)/along.Cross(edge))
		}
	}
	sort.Float64s(cuts)
	for i := 0; i+1 < len(cuts); i += 2 {
		from, to := math.Max(cuts[i], 0), math.Min(cuts[i+1], 1)
		if to-from > 1e-6 {
			steps = append(steps, step{kind: moveTo, to: a.Add(along.Mul(from))}, step{kind: lineTo, to: a.Add(along.Mul(to))})
		}
	}
	return steps
}
