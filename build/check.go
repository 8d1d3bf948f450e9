package build

import (
	"math"

	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
)

// The checks here belong to one item each; reading calls them once all of the
// item's keys were read well.

// check holds a fitting to one origin, one frame, and one word on its size.
func (f *Fitting) check() *quantity.Fault {
	if f.Make != "" && f.Buy != "" {
		return &quantity.Fault{Wrong: "it can not be both made and bought", Expected: "make or buy"}
	}
	frames := 0
	for _, frame := range []string{f.Where, f.In, f.Upon, f.For} {
		if frame != "" {
			frames++
		}
	}
	if frames > 1 {
		return &quantity.Fault{Wrong: "it stands in more than one frame", Expected: "one of where, in, upon and for"}
	}
	if f.OnDoor != "" && f.Where != "outside" {
		return &quantity.Fault{Wrong: "it hangs on a door outside, and is not said to be outside", Expected: "where: outside"}
	}
	if fault := f.placed(); fault != nil {
		return fault
	}
	if fault := f.squareBetweenFaces(); fault != nil {
		return fault
	}
	return f.sizedOnce()
}

// squareBetweenFaces refuses to turn aslant what reaches from face to face: how long it would then be nothing says.
func (f *Fitting) squareBetweenFaces() *quantity.Fault {
	if f.Turn == nil || f.At == nil || f.At.Undecided || math.Mod(f.Turn.Float(), 90) == 0 {
		return nil
	}
	for _, rule := range []AxisRule{f.At.X, f.At.Y} {
		if rule.Form == Between {
			return &quantity.Fault{
				Wrong:    "it reaches from face to face (`" + rule.String() + "`) and is turned by " + f.Turn.String(),
				Expected: "one face that it stands against and a size, or a turn of 90, 180 or 270°", Examples: []string{"x: front + 900, size: {x: 600}"},
			}
		}
	}
	return nil
}

// placed holds a place to both level axes, where nothing else gives them.
func (f *Fitting) placed() *quantity.Fault {
	if f.At == nil || f.At.Undecided || f.For != "" {
		return nil
	}
	if s, made := settings.Get(f.Make); made && s.Carried == settings.Roof {
		return nil // it may fill the roof
	}
	for _, a := range []struct {
		axis, says, example string
		rule                AxisRule
	}{{"x", "along the van", "x: 1200", f.At.X}, {"y", "across it", "y: right", f.At.Y}} {
		if a.rule.Form == LeftOut {
			return &quantity.Fault{Wrong: "its place does not say `" + a.axis + "`", Expected: "where it stands " + a.says, Examples: []string{a.example}}
		}
	}
	return nil
}

// sizedOnce refuses a size on an axis whose rule already gives it.
func (f *Fitting) sizedOnce() *quantity.Fault {
	if f.At == nil || f.Size == nil {
		return nil
	}
	for _, a := range []struct {
		axis string
		rule AxisRule
		size *quantity.Length
	}{{"x", f.At.X, f.Size.X}, {"y", f.At.Y, f.Size.Y}, {"z", f.At.Z, f.Size.Z}} {
		if a.rule.Form == Between && a.size != nil {
			return &quantity.Fault{Wrong: "`" + a.rule.String() + "` already gives its size along " + a.axis, Expected: "no size." + a.axis}
		}
	}
	return nil
}

// check holds a move to one way of moving, and how far to that way.
func (m *Move) check() *quantity.Fault {
	ways := 0
	for _, given := range []bool{m.Slide != Direction{}, m.Hinge != Edge{}, m.Swivel != nil, m.Stow != nil, m.Off != nil} {
		if given {
			ways++
		}
	}
	turns := m.Hinge != Edge{} || m.Swivel != nil
	switch {
	case ways != 1:
		return &quantity.Fault{Wrong: "a move is of exactly one kind", Expected: "one of slide, hinge, swivel, stow and off"}
	case m.Slide != Direction{} && (m.By == nil || m.By.Form != Slid):
		return &quantity.Fault{Wrong: "it slides, but not by how far", Expected: "by: a length"}
	case turns && (m.By == nil || m.By.Form != Swung):
		return &quantity.Fault{Wrong: "it turns, but not by how much", Expected: "by: an angle"}
	case turns && m.By.Angle == 0:
		return &quantity.Fault{Wrong: "`" + m.By.String() + "` turns it nowhere", Expected: "more or less than nought"}
	case (m.Stow != nil || m.Off != nil) && m.By != nil:
		return &quantity.Fault{Wrong: "it goes nowhere by an amount", Expected: "no `by`"}
	}
	return nil
}

// check holds a person to one thing at a time.
func (p *Pose) check() *quantity.Fault {
	given := 0
	for _, what := range []string{p.Lies, p.Sits, p.Stands, p.Cooks} {
		if what != "" {
			given++
		}
	}
	if given != 1 {
		return &quantity.Fault{Wrong: "a person does exactly one thing", Expected: "one of lies, sits, stands and cooks"}
	}
	return nil
}

// check holds the heights of a layer to an extent of the van's own.
func (l *Layer) check() *quantity.Fault {
	if l.Z != nil && l.Z.Form != Between {
		return &quantity.Fault{Wrong: "`" + l.Z.String() + "` does not say from where to where", Expected: "two heights", Examples: []string{"floor..1000", "1000..roof"}}
	}
	return nil
}

// check holds a span of days to their order.
func (d *DateSpan) check() *quantity.Fault {
	if d.From != nil && d.To != nil && d.To.Before(*d.From) {
		return &quantity.Fault{Wrong: "it ends before it begins", Expected: "from, then to"}
	}
	return nil
}

// check holds the shell to one way of having been measured.
func (s *Shell) check() *quantity.Fault {
	if s.Quick != nil && s.Offsets != nil {
		return &quantity.Fault{Wrong: "the body is measured in two ways", Expected: "quick or offsets"}
	}
	return nil
}

// check holds a table of offsets to a reading at each of its heights.
func (o *Offsets) check() *quantity.Fault {
	for i := 1; i < len(o.Heights); i++ {
		if o.Heights[i] <= o.Heights[i-1] {
			return &quantity.Fault{Wrong: "the heights do not rise", Expected: "heights from the floor up"}
		}
	}
	for _, id := range SortedKeys(o.Stations) {
		if n := len(o.Stations[id].Half); n != len(o.Heights) {
			return &quantity.Fault{Wrong: "station " + id + " has another number of half widths than there are heights", Expected: "one for each height"}
		}
	}
	return nil
}

// check holds what a monitor showed to a charge or an energy in a day.
func (m *Metered) check() *quantity.Fault {
	electric := m.Took.Unit == "Ah" || m.Took.Unit == "Wh"
	if electric && m.Took.Amount > 0 && (m.Took.Per == quantity.Daily || m.Took.Per == quantity.Nightly || m.Took.Per == quantity.Hourly) {
		return nil
	}
	return &quantity.Fault{Wrong: "`" + m.Took.String() + "` is nothing that a monitor counts in a day", Expected: "more than nought, per day or h", Examples: []string{"45 Ah/day", "560 Wh/day"}}
}
