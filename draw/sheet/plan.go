package sheet

import (
	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// plan is the view from above.
func (d *drawing) plan() draw.Group {
	v := d.views[Plan]
	all := d.inPlan()
	g := d.group(Plan, "plan", d.bodyPlan())
	g.Marks = append(g.Marks, d.openingsPlan()...)
	for _, w := range all {
		if w.depth != before {
			g.Marks = append(g.Marks, d.draw(Plan, w))
		}
	}
	s := sketch{view: v}
	for _, a := range d.r.Body.Arches() {
		d.archPlan(&s, a, false)
	}
	g.Marks = append(g.Marks, s.group("plan-arches", "body", "", nil))
	g.Marks = append(g.Marks, d.persons(Plan)...)
	for _, w := range all {
		if w.depth == before {
			g.Marks = append(g.Marks, d.draw(Plan, w))
		}
	}
	g.Marks = append(g.Marks, d.captions(Plan, all)...)
	return g.With(d.planMeasures(all)...)
}

// side is the long section.
func (d *drawing) side() draw.Group {
	all := d.inSide()
	g := d.group(Side, "long section", d.bodySide())
	g.Marks = append(g.Marks, d.openingsSide()...)
	for _, w := range all {
		if w.depth != before {
			g.Marks = append(g.Marks, d.draw(Side, w))
		}
	}
	g.Marks = append(g.Marks, d.persons(Side)...)
	for _, w := range all {
		if w.depth == before {
			g.Marks = append(g.Marks, d.draw(Side, w))
		}
	}
	g.Marks = append(g.Marks, d.captions(Side, all)...)
	return g.With(d.sideMeasures()...)
}

// cross is the cross-section.
func (d *drawing) cross() draw.Group {
	all := d.inCross()
	g := d.group(Cross, "cross-section at x "+whole(d.cut), d.bodyCross())
	for _, w := range all {
		g.Marks = append(g.Marks, d.draw(Cross, w))
	}
	g.Marks = append(g.Marks, d.persons(Cross)...)
	g.Marks = append(g.Marks, d.captions(Cross, all)...)
	return g.With(d.crossMeasures(all)...)
}

// persons are the people of the mode in a view.
func (d *drawing) persons(view string) []draw.Mark {
	var out []draw.Mark
	for i := range d.people {
		w := &d.people[i]
		if view == Cross && !w.meets(d.cut) {
			continue
		}
		s := sketch{view: d.views[view]}
		w.draw(&s, view)
		out = append(out, s.group(view+"-person-"+w.id, "person", w.id+" "+w.does, nil))
	}
	return out
}

// meets says whether a person can be seen in a cut across: cut through, or within arm's reach ahead of it.
func (w *person) meets(x float64) bool {
	body, _ := w.form(Plan)
	b := around([][]place{body})
	return b[0] < x && b[1] > x-700
}

var _ = shell.Left
