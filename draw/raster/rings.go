package raster

import (
	"github.com/tdewolff/canvas"

	"tumblehome/draw"
)

// fillPath prepares a path for filling. Drawings are filled by the even-odd rule, the
// library's raster only by winding: so every ring is turned one way or the other by how many
// others it lies in, after which both rules agree (for rings that do not cross).
func (b *brush) fillPath(p draw.Path) *canvas.Path {
	rings := p.Flatten(0.02)
	out := &canvas.Path{}
	for i, ring := range rings {
		if len(ring) < 3 {
			continue
		}
		deep := 0
		for j, other := range rings {
			if j != i && inside(ring[0], other) {
				deep++
			}
		}
		if (area(ring) > 0) == (deep%2 == 1) {
			ring = reversed(ring)
		}
		for k, q := range ring {
			if k == 0 {
				out.MoveTo(b.place(q))
				continue
			}
			out.LineTo(b.place(q))
		}
		out.Close()
	}
	return out
}

// area is twice the signed area of the ring.
func area(ring []draw.Point) float64 {
	sum := 0.0
	for i, p := range ring {
		sum += p.Cross(ring[(i+1)%len(ring)])
	}
	return sum
}

func reversed(ring []draw.Point) []draw.Point {
	out := make([]draw.Point, len(ring))
	for i, p := range ring {
		out[len(ring)-1-i] = p
	}
	return out
}

// inside tells whether the point lies in the ring: the number of edges to its right is odd.
func inside(p draw.Point, ring []draw.Point) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			in = !in
		}
	}
	return in
}
