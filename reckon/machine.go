package reckon

import (
	"sync"

	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
)

// remembered is how many results of each stage are kept: enough for the build, a drag in progress and a few things tried.
const remembered = 12

// Machine works stages and remembers their last results. It may be used by several goroutines.
type Machine struct {
	// Years of drawn weather that the year of power goes through; 0 is 200. Fewer are quicker and less sure. It is set before the machine is used.
	Years int

	mu     sync.Mutex
	memory map[string]*shelf
	places *arrangement.Result // the last, from which the next is reached quicker
	fitted *fit.Memory         // likewise
}

// NewMachine returns a machine that remembers nothing yet.
func NewMachine() *Machine { return &Machine{memory: map[string]*shelf{}} }

// shelf holds the last results of one stage, newest last.
type shelf struct {
	keys    []Digest
	results []any
}

func (s *shelf) find(key Digest) (any, bool) {
	for i := len(s.keys) - 1; i >= 0; i-- {
		if s.keys[i] == key {
			return s.results[i], true
		}
	}
	return nil, false
}

func (s *shelf) put(key Digest, result any) {
	if len(s.keys) == remembered {
		s.keys, s.results = s.keys[1:], s.results[1:]
	}
	s.keys, s.results = append(s.keys, key), append(s.results, result)
}

// work runs one stage, or finds what it gave for the same inputs before. A change in how a stage works raises its version.
func work[Inputs, Result any](m *Machine, stage string, version int, do func(Inputs) Result, in Inputs) (Result, Digest) {
	return workBy(m, stage, version, in, func() Result { return do(in) })
}

// workBy is work for a stage whose inputs are known by something smaller: all of them must follow from by.
func workBy[Result any](m *Machine, stage string, version int, by any, do func() Result) (Result, Digest) {
	key := digestOf(stage, version, by)
	m.mu.Lock()
	if m.memory[stage] == nil {
		m.memory[stage] = &shelf{}
	}
	found, ok := m.memory[stage].find(key)
	m.mu.Unlock()
	if ok {
		return found.(Result), key
	}
	result := do()
	m.mu.Lock()
	m.memory[stage].put(key, result)
	m.mu.Unlock()
	return result, key
}

// known is what a stage gave for a key, if that is remembered.
func known[Result any](m *Machine, stage string, key Digest) (result Result, ok bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if s := m.memory[stage]; s != nil {
		if found, there := s.find(key); there {
			return found.(Result), true
		}
	}
	return result, false
}
