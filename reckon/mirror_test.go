package reckon_test

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
)

// mirror is a document seen in a mirror: right is left, and a van of a country where the driver sits on the right is one of a country
// where the driver sits on the left.
func mirror(doc *build.Document) {
	if other := map[string]string{"gb": "eu", "eu": "gb"}[doc.Build.Rules]; other != "" {
		doc.Build.Rules = other
	}
	mirrorMasses(doc.Use.Gear)
	mirrorMasses(doc.Removed)
	for _, w := range doc.Vehicle.Weighed {
		mirrorMasses(w.Aboard.Besides)
	}
	for id, s := range doc.Vehicle.Seats {
		s.Y = -s.Y
		doc.Vehicle.Seats[id] = s
	}
	mirrorShell(&doc.Shell)
	mirrorLining(&doc.Lining)
	for id, f := range doc.Fittings {
		doc.Fittings[id] = mirrorFitting(f)
	}
	for _, m := range doc.Modes {
		for who, pose := range m.People {
			pose.Head = side(pose.Head)
			m.People[who] = pose
		}
	}
	for _, run := range doc.Runs {
		for i := range run.Points {
			mirrorRule(&run.Points[i].Y)
			run.Points[i].At = mirrorPoint(run.Points[i].At)
		}
	}
}

// mirrorPointer is where a thing of the document stands in the mirrored one.
func mirrorPointer(p string) string {
	steps := strings.Split(p, "/")
	for i := range steps {
		switch {
		case i > 0 && steps[i-1] == "bays":
			word, number, _ := strings.Cut(steps[i], "-")
			steps[i] = side(word) + "-" + number
		case i == 2 && steps[1] == "lining":
			steps[i] = side(steps[i])
		}
	}
	return strings.Join(steps, "/")
}

// side is the other side where a word is a side.
func side(word string) string {
	switch word {
	case "left":
		return "right"
	case "right":
		return "left"
	}
	return word
}

func sides(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = side(w)
	}
	slices.Sort(out)
	return out
}

func mirrorMasses(all map[string]build.MassAt) {
	for id, m := range all {
		m.Y = minus(m.Y)
		all[id] = m
	}
}

func minus(y *quantity.Length) *quantity.Length {
	if y == nil {
		return nil
	}
	other := -*y
	return &other
}

func mirrorShell(s *build.Shell) {
	if q := s.Quick; q != nil && q.DoorSide != "none" {
		q.DoorSide = side(cmp.Or(q.DoorSide, "right"))
	}
	for id, r := range s.Ribs {
		r.On = sides(r.On)
		s.Ribs[id] = r
	}
	for id, a := range s.Arches {
		a.On = sides(a.On)
		s.Arches[id] = a
	}
	for id, o := range s.Openings {
		o.Through = side(o.Through)
		if o.Y != nil {
			o.Y = &build.Extent{From: -o.Y.To, To: -o.Y.From}
		}
		s.Openings[id] = o
	}
}

func mirrorLining(l *build.Lining) {
	l.Left, l.Right = l.Right, l.Left
	for _, surface := range [][]build.Choice[build.Layer]{l.Sides, l.Left, l.Right} {
		for i := range surface {
			bays := map[string]build.Layer{}
			for bay, instead := range surface[i].Value.Bays {
				word, number, _ := strings.Cut(bay, "-")
				bays[side(word)+"-"+number] = instead
			}
			surface[i].Value.Bays = bays
		}
	}
}

func mirrorFitting(f build.Fitting) build.Fitting {
	if f.At != nil {
		f.At = mirrorPlace(f.At)
	}
	if f.Turn != nil {
		other := -*f.Turn
		f.Turn = &other
	}
	f.Scribe = sides(f.Scribe)
	for id, m := range f.Moves {
		m.Hinge.A, m.Hinge.B = side(m.Hinge.A), side(m.Hinge.B)
		if m.Slide.Axis == "y" {
			m.Slide.Back = !m.Slide.Back
		}
		if m.Swivel != nil {
			m.Swivel = &build.Pivot{X: m.Swivel.X, Y: -m.Swivel.Y}
			m.By = &build.Amount{Form: m.By.Form, Angle: -m.By.Angle}
		}
		if m.Stow != nil {
			m.Stow = mirrorPlace(m.Stow)
		}
		f.Moves[id] = m
	}
	return f
}

func mirrorPlace(p *build.Place) *build.Place {
	out := *p
	mirrorRule(&out.Y)
	for _, rule := range []*build.AxisRule{&out.X, &out.Z} {
		rule.A, rule.B = mirrorPoint(rule.A), mirrorPoint(rule.B)
	}
	return &out
}

// mirrorRule is a rule across the van seen in a mirror: what lay low lies high.
func mirrorRule(r *build.AxisRule) {
	a, b := mirrorPoint(r.A), mirrorPoint(r.B)
	a.Plus, b.Plus = -a.Plus, -b.Plus
	switch r.Form {
	case build.LowAt, build.From:
		*r = build.AxisRule{Form: build.To, A: a}
	case build.To:
		*r = build.AxisRule{Form: build.From, A: a}
	case build.Against, build.Mid:
		r.A = a
	case build.Between:
		r.A, r.B = b, a
	}
}

func mirrorPoint(p build.Point) build.Point {
	p.Face = side(p.Face)
	return p
}
