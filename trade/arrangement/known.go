package arrangement

import (
	"tumblehome/build"
	"tumblehome/solve/solid"
)

// question is all that the place and the solid of a fitting depend on, apart from the surfaces of the room.
type question struct {
	size    [3]float64
	turn    float64
	rules   rules
	scribed [6]bool
	faces   [6]float64
	curved  [6]bool
	origin  [3]float64
	outward bool
	hang    bool
	others  [6]float64 // where the faces of others lie that the rules name
}

// answer is where a fitting then stands.
type answer struct {
	to    question
	box   Box
	solid solid.Solid

	middle [3]float64 // of the solid

	follows *[6]bool // sides of the room along which its scribed faces lie; nil where nothing stands in or upon it
}

func (s *standing) question() question {
	q := question{
		size: s.size, turn: s.turn, rules: s.rules, scribed: s.scribed, faces: s.frame.faces, curved: s.frame.curved,
		origin: s.frame.origin, outward: s.frame.outward, hang: s.frame.hang,
	}
	for axis, r := range s.rules {
		for i, p := range [2]build.Point{r.A, r.B} {
			if p.Of != "" {
				b, _ := s.others(p.Of)
				q.others[2*axis+i] = faceOf(b, sideOf[p.Face])
			}
		}
	}
	return q
}

// answer works out where a fitting stands, or remembers it from the result before. One that is stowed elsewhere is asked about twice.
func (w *worker) answer(id string, s *standing, scribed []side) *answer {
	q := s.question()
	for _, before := range w.before[id] {
		if before.to == q {
			return w.remember(id, w.withFollowed(id, before, scribed))
		}
	}
	a := &answer{to: q}
	s.place()
	a.box = s.prism().Bounds()
	if !a.box.Empty() {
		a.solid = scribe(s.prism(), s.frame, scribed, s.clear())
	}
	if len(a.solid) > 0 {
		a.middle[0], a.middle[1], a.middle[2] = a.solid.Middle()
	}
	return w.remember(id, w.withFollowed(id, a, scribed))
}

// withFollowed is an answer that says which sides a thing follows, if something stands in or upon it. An answer of before is left as it was.
func (w *worker) withFollowed(id string, a *answer, scribed []side) *answer {
	if !w.hosts[id] || a.follows != nil || len(scribed) == 0 {
		return a
	}
	with := *a
	with.follows = followed(a.box, scribed, w.in.Room)
	return &with
}

func (w *worker) remember(id string, a *answer) *answer {
	w.known[id] = append(w.known[id], a)
	return a
}
