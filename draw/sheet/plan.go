package sheet

import (
	"slices"

	"tumblehome/draw"
)

// plan is the view from above.
func (d *drawing) plan() draw.Group {
	all := d.inPlan()
	taken := d.peopleIn(Plan)
	g := d.group(Plan, "plan", d.bodyPlan())
	g.Marks = append(g.Marks, d.openingsPlan()...)
	g = d.pile(g.With(d.underPlan()...), Plan, all, d.hiddenArches())
	doors := d.doorNames(&taken)
	over := d.overPlan(&taken)
	names, nameless := d.captions(Plan, all, &taken)
	strays := d.strays(taken)
	letters := d.letters(nameless, taken)
	if d.Show == Wiring { // names interrupt the cables, and are not run through by them
		g, over = g.With(over...), nil
	}
	return g.With(names...).With(doors...).With(letters...).With(over...).With(strays...).With(d.planMeasures(all)...)
}

// side is the long section.
func (d *drawing) side() draw.Group {
	all := d.inSide()
	taken := d.peopleIn(Side)
	g := d.group(Side, "long section", d.bodySide())
	g.Marks = append(g.Marks, d.openingsSide()...)
	g = d.pile(g, Side, all)
	over := d.overSide(&taken)
	names, _ := d.captions(Side, all, &taken)
	if d.Show == Wiring {
		g, over = g.With(over...), nil
	}
	return g.With(names...).With(over...).With(d.sideMeasures()...)
}

// cross is the cross-section.
func (d *drawing) cross() draw.Group {
	all := d.inCross()
	taken := d.peopleIn(Cross)
	g := d.pile(d.group(Cross, "cross-section at x "+whole(d.cut), d.bodyCross()), Cross, all)
	names, _ := d.captions(Cross, all, &taken)
	return g.With(names...).With(d.crossMeasures(all)...)
}

// pile lays down the things, each person over what they lie on or sit at, then what lies over them all, then ghosts.
func (d *drawing) pile(g draw.Group, view string, all []drawn, over ...draw.Mark) draw.Group {
	people := d.persons(view)
	for _, w := range all {
		for len(people) > 0 && people[0].layer.compare(w.layer) < 0 {
			g.Marks, people = append(g.Marks, d.figure(view, people[0].person)), people[1:]
		}
		if w.depth == before && over != nil {
			g, over = g.With(over...), nil
		}
		g.Marks = append(g.Marks, d.draw(view, w))
	}
	for _, p := range people {
		g.Marks = append(g.Marks, d.figure(view, p.person))
	}
	return g.With(over...)
}

// hiddenArches are the outlines of the wheel arches over what stands on them.
func (d *drawing) hiddenArches() draw.Group {
	s := sketch{view: d.views[Plan]}
	for _, a := range d.r.Body.Arches() {
		d.archPlan(&s, a, false)
	}
	return s.group("plan-arches", "body", "", nil)
}

// placed is a person in the pile of a view.
type placed struct {
	person *person
	layer  layer
}

// persons are the people of the mode that a view shows, in the order of the pile.
func (d *drawing) persons(view string) []placed {
	var out []placed
	for i := range d.people {
		w := &d.people[i]
		if view == Cross && !w.meets(d.cut) {
			continue
		}
		b := around(w.parts(Plan))
		key := map[string]float64{Plan: w.at[2] + 0.5, Side: -b[2], Cross: b[1]}[view]
		if view == Plan && w.does == "stands" {
			key = w.at[2] + w.stature
		}
		out = append(out, placed{w, layer{0, key, 0}})
	}
	slices.SortStableFunc(out, func(a, b placed) int { return a.layer.compare(b.layer) })
	return out
}

// figure is a person as a group.
func (d *drawing) figure(view string, w *person) draw.Group {
	s := sketch{view: d.views[view]}
	w.draw(&s, view)
	return s.group(view+"-person-"+w.id, "person", w.id+" "+w.does, nil)
}

// meets says whether a person can be seen in a cut across: cut through, or within arm's reach ahead of it.
func (w *person) meets(x float64) bool {
	b := around(w.parts(Plan))
	return b[0] < x && b[1] > x-700
}
