package sheet

import (
	"tumblehome/draw"
)

// plan is the view from above.
func (d *drawing) plan() draw.Group {
	all := d.inPlan()
	taken := d.peopleIn(Plan)
	g := d.group(Plan, "plan", d.bodyPlan())
	g.Marks = append(g.Marks, d.openingsPlan()...)
	g = d.pile(g, Plan, all, d.hiddenArches())
	doors := d.doorNames(&taken)
	names, nameless := d.captions(Plan, all, &taken)
	g = g.With(names...).With(doors...).With(d.letters(nameless, taken)...)
	return g.With(d.planMeasures(all)...)
}

// side is the long section.
func (d *drawing) side() draw.Group {
	all := d.inSide()
	taken := d.peopleIn(Side)
	g := d.group(Side, "long section", d.bodySide())
	g.Marks = append(g.Marks, d.openingsSide()...)
	g = d.pile(g, Side, all)
	names, _ := d.captions(Side, all, &taken)
	return g.With(names...).With(d.sideMeasures()...)
}

// cross is the cross-section.
func (d *drawing) cross() draw.Group {
	all := d.inCross()
	taken := d.peopleIn(Cross)
	g := d.pile(d.group(Cross, "cross-section at x "+whole(d.cut), d.bodyCross()), Cross, all)
	names, _ := d.captions(Cross, all, &taken)
	return g.With(names...).With(d.crossMeasures(all)...)
}

// pile lays the things down, then what lies over them, then people, then ghosts.
func (d *drawing) pile(g draw.Group, view string, all []drawn, over ...draw.Mark) draw.Group {
	for _, w := range all {
		if w.depth != before {
			g.Marks = append(g.Marks, d.draw(view, w))
		}
	}
	g = g.With(over...).With(d.persons(view)...)
	for _, w := range all {
		if w.depth == before {
			g.Marks = append(g.Marks, d.draw(view, w))
		}
	}
	return g
}

// hiddenArches are the outlines of the wheel arches over what stands on them.
func (d *drawing) hiddenArches() draw.Group {
	s := sketch{view: d.views[Plan]}
	for _, a := range d.r.Body.Arches() {
		d.archPlan(&s, a, false)
	}
	return s.group("plan-arches", "body", "", nil)
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
