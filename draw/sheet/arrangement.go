package sheet

import (
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
	flags := d.flags() // before the views, whose figures keep out of the way of their lines
	s = s.With(d.plan(), d.side(), d.cross())
	s = s.With(d.viewTitles()...).With(d.keyed()...)
	if d.onlyWiring() { // there are no notes on it that flags could lead to
		return s
	}
	return s.With(flags...)
}

// onlyWiring says whether it is the sheet of the wiring, which has neither flags nor dimensions.
func (d *drawing) onlyWiring() bool { return d.Show == Wiring && d.View.Size != (draw.Size{}) }

// single is one view alone.
func (d *drawing) single() draw.Scene {
	d.layOne()
	s := draw.Scene{Size: d.size, Title: d.r.Document.Build.Title + ", " + d.title(), Description: d.describe()}
	flags := d.flags()
	switch d.Only {
	case Side:
		s = s.With(d.side())
	case Cross:
		s = s.With(d.cross())
	default:
		s = s.With(d.plan())
	}
	return s.With(flags...)
}
