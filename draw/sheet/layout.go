package sheet

import (
	"math"

	"tumblehome/draw"
)

// scales are those of rulers and of common practice, largest first.
var scales = [...]float64{10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200}

// Room kept about the views, in millimetres of the paper.
const (
	aboveViews  = 8.0  // rulers
	belowPlan   = 17.0 // two rows of dimensions
	belowCross  = 15.0 // the same
	besideFlags = 11.0 // a column of flags
	besideSide  = 9.0  // an upright dimension
)

// lay chooses the scale and places the views in the field: plan above long section, the cross-section beside it.
func (d *drawing) lay(field draw.Rect) {
	d.field = field
	s := d.space
	long, wide := s.MaxX-s.MinX, s.MaxY-s.MinY
	over, under := s.MaxZ, math.Max(-s.MinZ, wheelShown)
	freeX, freeY := 0.0, 0.0
	for _, d.scale = range scales {
		acrossNeed := 2*besideFlags + long/d.scale + besideSide + wide/d.scale + 3
		alongNeed := aboveViews + wide/d.scale + belowPlan + over/d.scale + math.Max(belowCross, under/d.scale)
		freeX, freeY = field.Width()-acrossNeed, field.Height()-alongNeed
		if freeX >= 0 && freeY >= 0 {
			break
		}
	}
	left := field.Min.X + besideFlags + freeX*0.25
	top := field.Min.Y + aboveViews + freeY*0.4
	floor := top + wide/d.scale + belowPlan + over/d.scale + freeY*0.3
	d.views[Plan] = draw.View{Origin: draw.Pt(left-s.MinX/d.scale, top+s.MaxY/d.scale), Scale: d.scale, Up: true}
	d.views[Side] = draw.View{Origin: draw.Pt(left-s.MinX/d.scale, floor), Scale: d.scale, Up: true}
	right := field.Max.X - 3 - freeX*0.3
	d.views[Cross] = draw.View{Origin: draw.Pt(right-s.MaxY/d.scale, floor), Scale: d.scale, Up: true}
}

// layOne makes a sheet for a single view, as wide as a phone and as high as it must be.
func (d *drawing) layOne() {
	s := d.space
	const air = 3.0
	across := [2]float64{s.MinX, s.MaxX}
	along := [2]float64{-s.MaxZ, math.Max(-s.MinZ, wheelShown)}
	switch d.Only {
	case Plan:
		along = [2]float64{-s.MaxY, -s.MinY}
	case Cross:
		across = [2]float64{s.MinY, s.MaxY}
	}
	room := Phone - 2*air - 2*besideSide
	for _, d.scale = range scales {
		if (across[1]-across[0])/d.scale <= room {
			break
		}
	}
	wide, high := (across[1]-across[0])/d.scale, (along[1]-along[0])/d.scale
	left := (Phone - wide) / 2
	top := air + aboveViews + 2
	d.size = draw.Size{Width: Phone, Height: math.Ceil(top + high + belowPlan + air)}
	d.field = d.size.Rect().Inset(air)
	d.views[d.Only] = draw.View{Origin: draw.Pt(left-across[0]/d.scale, top-along[0]/d.scale), Scale: d.scale, Up: true}
}
