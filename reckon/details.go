package reckon

import (
	"sync"

	"tumblehome/solve/conduction"
)

// mostDetails is how many sections are kept: a van has five to ten, their fields take some 100 kB each.
const mostDetails = 256

// details keeps the sections that were solved, for all machines of the program. A section's result follows from the section alone, so it is the
// same whoever asks; the ribs of a van stay as they are while everything else is changed.
var details = &solved{known: map[Digest]conduction.Result{}}

// solved remembers sections by their content, the oldest forgotten first.
type solved struct {
	mu    sync.Mutex
	known map[Digest]conduction.Result
	order []Digest
}

// solve is conduction.Solve with a memory. What fails is not kept.
func (s *solved) solve(section conduction.Section, want conduction.Accuracy) (conduction.Result, error) {
	key := digestOf("detail", 1, struct {
		conduction.Section
		conduction.Accuracy
	}{section, want})
	s.mu.Lock()
	result, ok := s.known[key]
	s.mu.Unlock()
	if ok {
		return result, nil
	}
	result, err := conduction.Solve(section, want)
	if err != nil {
		return result, err
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if _, there := s.known[key]; !there {
		if len(s.order) == mostDetails {
			delete(s.known, s.order[0])
			s.order = s.order[1:]
		}
		s.known[key], s.order = result, append(s.order, key)
	}
	return result, nil
}
