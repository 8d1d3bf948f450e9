package lining

import (
	"math"
	"slices"
)

// A field is one bay of one surface with its own layers, cut at the heights
// where they change.
type field struct {
	bay    Bay
	hollow float64
	layers []*Layer // resolved for this bay
	bands  []band   // from the floor up; one without heights on roof and floor
}

type band struct {
	to      float64 // upper height
	thick   float64
	courses []Course
}

// newField resolves the layers for a bay and stacks them band by band between
// the heights lo and hi. On a level surface layers have no heights.
func newField(bay Bay, layers []Layer, lo, hi, hollow float64, level bool) *field {
	f := &field{bay: bay, hollow: hollow}
	edges := []float64{hi}
	for _, l := range layers {
		if own, ok := l.Bays[bay.ID]; ok {
			l = own
		}
		if level {
			l.From, l.To = nil, nil
		}
		f.layers = append(f.layers, &l)
		for _, edge := range []float64{limit(l.From, lo), limit(l.To, hi)} {
			if edge > lo && edge < hi && !slices.Contains(edges, edge) {
				edges = append(edges, edge)
			}
		}
	}
	slices.Sort(edges)
	low := lo
	for _, edge := range edges {
		mid := (low + edge) / 2
		var here []*Layer
		for _, l := range f.layers {
			if l.reaches(mid) {
				here = append(here, l)
			}
		}
		courses, thick := buildUp(here, bay.Depth, hollow)
		f.bands = append(f.bands, band{to: edge, thick: thick, courses: courses})
		low = edge
	}
	return f
}

// limit is a height of a layer, or the edge where none is given.
func limit[L ~float64](z *L, edge float64) float64 {
	if z == nil {
		return edge
	}
	return float64(*z)
}

// at is the band at height z; below the first and above the last they go on.
func (f *field) at(z float64) *band {
	last := len(f.bands) - 1
	for i := range last {
		if z < f.bands[i].to {
			return &f.bands[i]
		}
	}
	return &f.bands[last]
}

// thickest is the greatest depth of the field.
func (f *field) thickest() float64 {
	t := 0.0
	for i := range f.bands {
		t = math.Max(t, f.bands[i].thick)
	}
	return t
}

// course finds a layer in the band at height z, for where it lies.
func (f *field) course(l *Layer, z float64) (Course, bool) {
	for _, c := range f.at(z).courses {
		if c.layer == l {
			return c, true
		}
	}
	return Course{}, false
}
