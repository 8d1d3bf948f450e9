package label

import (
	"math"

	"tumblehome/draw"
)

// rings are the distances from the place to the box, in millimetres, that are tried.
var rings = [...]float64{1.5, 3, 5, 7.5, 10, 13, 16, 20, 24, 29, 35, 42, 50, 60}

const directions = 16

// gatherCandidates lists for each label the positions that obstacles and bounds allow: those
// asked for, then on and around its place.
func (t *table) gatherCandidates() {
	t.candidates = make([][]draw.Rect, len(t.Labels))
	for i, l := range t.Labels {
		try := func(centre draw.Point) {
			if b := l.at(centre); t.allowed(b) {
				t.candidates[i] = append(t.candidates[i], b)
			}
		}
		for _, c := range l.Tries {
			try(c)
		}
		if l.Reach == 0 {
			try(l.Place)
		}
		for _, d := range rings {
			for k := range directions {
				try(l.around(math.Max(d, l.Reach), float64(k)/directions))
			}
		}
	}
}

// around is the centre of the box that lies at a distance from the place in a direction given
// as a share of a turn, starting to the right.
func (l Label) around(distance, share float64) draw.Point {
	s, c := math.Sincos(2 * math.Pi * share)
	// The box is pushed out until its nearest side is at the distance.
	return draw.Pt(l.Place.X+c*distance+side(c)*l.Width/2, l.Place.Y+s*distance+side(s)*l.Height/2)
}

// side rounds towards -1, 0 and 1, so that boxes to the right hang on their left edge, boxes
// above on their lower one, and those between on a corner.
func side(v float64) float64 {
	return clamp(v*1.6, -1, 1)
}

// allowed tells whether a box lies within the bounds and clear of the obstacles.
func (t *table) allowed(b draw.Rect) bool {
	if !b.Within(t.Bounds) {
		return false
	}
	wide := b.Inset(-t.Gap)
	for _, o := range t.Obstacles {
		if wide.Overlaps(o) {
			return false
		}
	}
	return true
}

// free tells whether a box is allowed and clear of all placed labels but one.
func (t *table) free(b draw.Rect, but int) bool {
	wide := b.Inset(-t.Gap)
	for j, other := range t.boxes {
		if j != but && t.placed[j] && wide.Overlaps(other) {
			return false
		}
	}
	return true
}

// corners lists the positions where a box touches what is there: if there is any room for it
// at all, there is room at one of these (slide a free box left and up until it touches).
func (t *table) corners(i int) []draw.Rect {
	l, eps := t.Labels[i], 1e-9
	xs, ys := []float64{t.Bounds.Min.X}, []float64{t.Bounds.Min.Y}
	note := func(o draw.Rect) {
		xs, ys = append(xs, o.Max.X+t.Gap+eps), append(ys, o.Max.Y+t.Gap+eps)
	}
	for _, o := range t.Obstacles {
		note(o)
	}
	for j, b := range t.boxes {
		if j != i && t.placed[j] {
			note(b)
		}
	}
	var out []draw.Rect
	for _, x := range xs {
		for _, y := range ys {
			if b := draw.Box(x, y, l.Width, l.Height); t.allowed(b) && t.free(b, i) {
				out = append(out, b)
			}
		}
	}
	return out
}
