package reckon

import (
	"tumblehome/build"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
)

// Common practice, no source.
const (
	lifted = 10   // what one lifts out of one's way without a thought weighs less [kg]
	small  = 1000 // and has no longer side [mm]
	trod   = 400  // a step so high at most is trodden on [mm]
)

// isPassed says whether a step or a ladder is put aside, or trodden on, by who passes.
func (w *stages) isPassed(s *arrangement.Standing, mass float64) bool {
	made := w.things[s.ID].Make
	return made == "ladder" && mass < lifted || made == "step" && (mass < lifted || s.Box.MaxZ-s.Box.MinZ <= trod)
}

// putAside is where a table set up in a mode is put by who must pass: where it is while driving, else where another mode has it; one that is
// light and small is lifted out of the way altogether. Nil if nothing moves it, or if it would have to be lifted and is too heavy: then it bars
// the way like anything else.
func (w *stages) putAside(mode *arrangement.Mode, i int, mass float64) *fit.Standing {
	s := &mode.All[i]
	if w.things[s.ID].Make != "table" || !s.Placed() {
		return nil
	}
	for m := range w.places.Modes {
		other := &w.places.Modes[m]
		to := &other.All[i]
		if to.Box == s.Box && to.Off == s.Off || to.Undecided != "" {
			if other.Name == "drive" {
				return nil // it is put away as it is
			}
			continue
		}
		b := s.Box
		light := mass < lifted && max(b.MaxX-b.MinX, b.MaxY-b.MinY, b.MaxZ-b.MinZ) <= small
		switch {
		case light && !w.hinged(s.ID):
			return &fit.Standing{Moved: true}
		case light || !byHand(mode, i) && !byHand(other, i):
			return &fit.Standing{Solid: to.Solid, Box: to.Box, Moved: to.Moved}
		}
	}
	return nil
}

// hinged says whether a thing folds where it is.
func (w *stages) hinged(id string) bool {
	for _, m := range w.things[id].Moves {
		if m.Hinge != (build.Edge{}) {
			return true
		}
	}
	return false
}

// byHand says whether a mode has a fitting where it must be lifted to.
func byHand(mode *arrangement.Mode, i int) bool {
	m := mode.Mover(i)
	return m != nil && m.ByHand
}
