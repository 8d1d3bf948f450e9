package label

import (
	"math"

	"tumblehome/draw"
)

// Label is a box that belongs to a place.
type Label struct {
	Place         draw.Point
	Width, Height float64
	Tries         []draw.Point // centres to try first, best first; none is fine
	FromCentre    bool         // its leader starts at the centre of the box (flags), not at its edge
	Reach         float64      // the least distance from the place to the box; 0 lets it sit on its place
}

// Problem is what is to be placed where.
type Problem struct {
	Labels    []Label
	Bounds    draw.Rect
	Obstacles []draw.Rect     // what no box may cover
	Lines     [][2]draw.Point // what boxes had better not cover
	Gap       float64         // between boxes, and around obstacles
}

// Placed is where a label went.
type Placed struct {
	Box    draw.Rect
	Leader []draw.Point // from the box to the place; empty when the box lies on it
	Fits   bool         // false when there was no room: the box then overlaps something
}

// Place finds a position for every label, in the order given.
func Place(p Problem) []Placed {
	n := len(p.Labels)
	t := &table{Problem: p, boxes: make([]draw.Rect, n), leaders: make([][]draw.Point, n), placed: make([]bool, n)}
	t.gatherCandidates()
	t.greedy()
	t.improve()
	if !t.complete() {
		t.repack()
		t.improve()
	}
	return t.result()
}

// table is the state of the work: where each label lies now.
type table struct {
	Problem
	candidates [][]draw.Rect
	boxes      []draw.Rect
	leaders    [][]draw.Point
	placed     []bool
}

func (t *table) complete() bool {
	for _, ok := range t.placed {
		if !ok {
			return false
		}
	}
	return true
}

func (t *table) result() []Placed {
	out := make([]Placed, len(t.Labels))
	for i, l := range t.Labels {
		if !t.placed[i] {
			t.boxes[i] = l.last(t.Bounds)
		}
		out[i] = Placed{Box: t.boxes[i], Leader: l.leader(t.boxes[i]), Fits: t.placed[i]}
	}
	return out
}

// last is where a label is put when there is no room: on its place, within the bounds.
func (l Label) last(bounds draw.Rect) draw.Rect {
	b := l.at(l.Place)
	dx := math.Max(0, bounds.Min.X-b.Min.X) - math.Max(0, b.Max.X-bounds.Max.X)
	dy := math.Max(0, bounds.Min.Y-b.Min.Y) - math.Max(0, b.Max.Y-bounds.Max.Y)
	return b.Move(draw.Pt(dx, dy))
}

// at is the box about a centre.
func (l Label) at(centre draw.Point) draw.Rect {
	return draw.Box(centre.X-l.Width/2, centre.Y-l.Height/2, l.Width, l.Height)
}

// leader is the line from the box to the place.
func (l Label) leader(box draw.Rect) []draw.Point {
	if box.Holds(l.Place) {
		return nil
	}
	from := nearest(box, l.Place)
	if l.FromCentre {
		from = box.Centre()
	}
	return []draw.Point{from, l.Place}
}

// nearest is the point of the rectangle nearest to p.
func nearest(r draw.Rect, p draw.Point) draw.Point {
	return draw.Pt(clamp(p.X, r.Min.X, r.Max.X), clamp(p.Y, r.Min.Y, r.Max.Y))
}

func clamp(v, low, high float64) float64 { return math.Max(low, math.Min(high, v)) }
