package sheet

import (
	"slices"

	"tumblehome/draw"
	"tumblehome/reckon"
)

// Arrangement draws the van with all that is in it, as it is in one mode: plan above long section, cross-section beside, people to
// scale, measures, and the open notes as flags in the margin.
func Arrangement(r *reckon.Reckoning, v View) draw.Scene {
	if v.Mode == "" {
		v.Mode = "drive"
	}
	d := newDrawing(r, v)
	if v.Only != "" {
		return d.single()
	}
	d.size = v.Size
	frame := d.frame()
	d.lay(frame.field)
	s := draw.Scene{Size: d.size, Title: "The drawing of " + r.Document.Build.Title + ", " + d.title(), Description: d.describe()}
	frame.cells[1].Value = "1 : " + whole(d.scale)
	s = s.With(frame.marks(d)...)
	s = s.With(d.plan(), d.side(), d.cross())
	s = s.With(d.viewTitles()...).With(d.keyed()...)
	return s.With(d.flags()...)
}

// single is one view alone.
func (d *drawing) single() draw.Scene {
	d.layOne()
	s := draw.Scene{Size: d.size, Title: d.r.Document.Build.Title + ", " + d.title(), Description: d.describe()}
	switch d.Only {
	case Side:
		s = s.With(d.side())
	case Cross:
		s = s.With(d.cross())
	default:
		s = s.With(d.plan())
	}
	return s.With(d.flags()...)
}

func sortBy(which []int, key func(int) float64) {
	slices.SortStableFunc(which, func(a, b int) int { return compare(key(a), key(b)) })
}

func sortBy2(which []drawn, key func(drawn) float64) {
	slices.SortStableFunc(which, func(a, b drawn) int { return compare(key(a), key(b)) })
}

func sortLoads(all []load) {
	slices.SortStableFunc(all, func(a, b load) int { return compare(b.kg, a.kg) })
}

func sortStations(all []station) {
	slices.SortStableFunc(all, func(a, b station) int { return compare(a.x, b.x) })
}
