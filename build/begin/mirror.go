package begin

import (
	"maps"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
)

// mirror turns a document's fittings and poses over, right to left. Rules, moves and heads are turned as words, so that what
// stood against the right side stands against the left, and what was called the left bench is called the right one.
func mirror(doc *build.Document) {
	for id, f := range doc.Fittings {
		doc.Fittings[id] = Mirrored(f)
	}
	for id, m := range doc.Modes {
		for who, pose := range m.People {
			pose.Head = otherSide(pose.Head)
			m.People[who] = pose
		}
		doc.Modes[id] = m
	}
	doc.Vehicle.Seats = mirrorSeats(doc.Vehicle.Seats)
}

// mirrorSeats leaves driver and passenger where they are: these follow the steering wheel, not the side door. Where two are named after their
// sides, the names go with the sides.
func mirrorSeats(seats map[string]build.Seat) map[string]build.Seat {
	out := make(map[string]build.Seat, len(seats))
	for id, s := range seats {
		if id != "driver" && id != "passenger" {
			s.Y = -s.Y
		}
		if other := otherSides(id, "-"); hasSeat(seats, other) {
			id = other
		}
		out[id] = s
	}
	return out
}

func hasSeat(seats map[string]build.Seat, id string) bool {
	_, there := seats[id]
	return there
}

// Mirrored is a fitting turned over, right to left: where it stands, which of its faces are cut to the lining, how it is turned and moves, and what
// side its name says. The fitting given is left as it is.
func Mirrored(f build.Fitting) build.Fitting {
	f.Called = otherSides(f.Called, " ")
	f.Scribe, f.Moves = slices.Clone(f.Scribe), maps.Clone(f.Moves)
	if f.At != nil {
		at := *f.At
		at.Y = mirrorRule(at.Y)
		f.At = &at
	}
	for i, face := range f.Scribe {
		f.Scribe[i] = otherSide(face)
	}
	if f.Turn != nil {
		turn := -*f.Turn
		f.Turn = &turn
	}
	for id, m := range f.Moves {
		f.Moves[id] = mirrorMove(m)
	}
	return f
}

func mirrorMove(m build.Move) build.Move {
	if m.Slide.Axis == "y" {
		m.Slide.Back = !m.Slide.Back
	}
	m.Hinge.A, m.Hinge.B = otherSide(m.Hinge.A), otherSide(m.Hinge.B)
	if m.Stow != nil {
		stow := *m.Stow
		stow.Y = mirrorRule(stow.Y)
		m.Stow = &stow
	}
	return m
}

// mirrorRule turns a rule across the van over: what was the low face is then the high one.
func mirrorRule(r build.AxisRule) build.AxisRule {
	r.A, r.B = mirrorPoint(r.A), mirrorPoint(r.B)
	switch r.Form {
	case build.LowAt, build.From:
		r.Form = build.To
	case build.To:
		r.Form = build.From
	case build.Between:
		r.A, r.B = r.B, r.A
	}
	return r
}

func mirrorPoint(p build.Point) build.Point {
	p.Face = otherSide(p.Face)
	p.Plus = negated(p.Plus)
	return p
}

// negated keeps nought from becoming minus nought.
func negated(l quantity.Length) quantity.Length {
	if l == 0 {
		return 0
	}
	return -l
}

func otherSide(face string) string {
	switch face {
	case "left":
		return "right"
	case "right":
		return "left"
	}
	return face
}

// otherSides names the other side wherever a name says one.
func otherSides(name, between string) string {
	words := strings.Split(name, between)
	for i, word := range words {
		words[i] = otherSide(word)
	}
	return strings.Join(words, between)
}
