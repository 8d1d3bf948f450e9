package reckon_test

import (
	"tumblehome/build"
	"tumblehome/quantity"
)

// shift moves the datum rearwards and so makes every x of the document less by as much. What counts from a host, from a face or from the
// front axle stays.
func shift(doc *build.Document, by quantity.Length) {
	doc.Vehicle.Datum += by
	masses := func(all map[string]build.MassAt) {
		for id, m := range all {
			m.X = less(m.X, by)
			all[id] = m
		}
	}
	masses(doc.Use.Gear)
	masses(doc.Removed)
	for _, w := range doc.Vehicle.Weighed {
		masses(w.Aboard.Besides)
	}
	for id, s := range doc.Vehicle.Seats {
		s.X -= by
		doc.Vehicle.Seats[id] = s
	}
	if doc.Vehicle.Tank != nil {
		doc.Vehicle.Tank.X -= by
	}
	shiftShell(&doc.Shell, by)
	for id, f := range doc.Fittings {
		doc.Fittings[id] = shiftFitting(f, by)
	}
	for _, run := range doc.Runs {
		for i := range run.Points {
			shiftRule(&run.Points[i].X, by)
		}
	}
}

func shiftShell(s *build.Shell, by quantity.Length) {
	for id, station := range s.Offsets.Stations {
		station.X -= by
		s.Offsets.Stations[id] = station
	}
	for id, r := range s.Ribs {
		r.X -= by
		s.Ribs[id] = r
	}
	for id, a := range s.Arches {
		a.X = build.Extent{From: a.X.From - by, To: a.X.To - by}
		s.Arches[id] = a
	}
	for id, o := range s.Openings {
		if o.X != nil {
			o.X = &build.Extent{From: o.X.From - by, To: o.X.To - by}
		}
		s.Openings[id] = o
	}
}

// shiftFitting moves what stands in the van's own frame; a move to elsewhere is in the frame of the fitting.
func shiftFitting(f build.Fitting, by quantity.Length) build.Fitting {
	if f.In != "" || f.Upon != "" {
		return f
	}
	if f.At != nil {
		at := *f.At
		shiftRule(&at.X, by)
		f.At = &at
	}
	for id, m := range f.Moves {
		if m.Stow != nil {
			to := *m.Stow
			shiftRule(&to.X, by)
			m.Stow = &to
			f.Moves[id] = m
		}
	}
	return f
}

// shiftRule moves the points of a rule that are bare lengths.
func shiftRule(r *build.AxisRule, by quantity.Length) {
	if r.Form == build.LeftOut {
		return
	}
	if r.A.Face == "" {
		r.A.Plus -= by
	}
	if r.Form == build.Between && r.B.Face == "" {
		r.B.Plus -= by
	}
}

func less(x *quantity.Length, by quantity.Length) *quantity.Length {
	if x == nil {
		return nil
	}
	moved := *x - by
	return &moved
}
