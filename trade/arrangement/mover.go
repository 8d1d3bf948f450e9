package arrangement

import "tumblehome/solve/solid"

// Mover is a fitting that a mode has elsewhere than at rest, and the space it passes through on its way there.
type Mover struct {
	Fitting  int    // in Result.Rest and Mode.All
	Position string // the position it takes
	ByHand   bool   // it is lifted and carried: taken out, or stowed elsewhere
	Path     solid.Solid
}

// Mover of a fitting in the mode, or nil if it stays where it rests.
func (m *Mode) Mover(fitting int) *Mover {
	for i := range m.Movers {
		if m.Movers[i].Fitting == fitting {
			return &m.Movers[i]
		}
	}
	return nil
}

// mover is the way of fitting i from rest. What it carries rides along from where that rests; parts that only reach out take nothing along.
func (w *worker) mover(i int, position string, c change) Mover {
	m := Mover{Fitting: i, Position: position, ByHand: c.off || c.stow != nil, Path: c.through}
	if m.ByHand || len(c.steps) == 0 {
		return m
	}
	for j := range w.rest {
		if j == i || w.carriedBy(j, i) {
			m.Path = append(m.Path, pathOf(w.rest[j].Solid, c.steps)...)
		}
	}
	return m
}

// pathOf is what a solid passes through in several steps.
func pathOf(s solid.Solid, steps []motion) solid.Solid {
	var path solid.Solid
	if len(s) == 0 {
		return nil
	}
	for _, step := range steps {
		path = append(path, step.swept(s)...)
		s = step.apply(s)
	}
	return path
}

// carriedBy says whether fitting i carries j, directly or through others.
func (w *worker) carriedBy(j, i int) bool {
	for range len(w.rest) {
		switch j = w.carrier[j]; j {
		case i:
			return true
		case -1:
			return false
		}
	}
	return false
}
