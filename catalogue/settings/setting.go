package settings

import (
	"sort"

	"tumblehome/quantity"
)

// A Setting is one kind of made thing.
type Setting struct {
	ID      string        // the word after make:
	Name    string        // plain name
	X, Y, Z Range         // usual size: along the side, into the room, up
	Board   string        // material it is usually made of
	Panels  Panels        // how much board is in it
	Iron    quantity.Mass // hinges, runners, legs, screws [kg]
	Carried Carrier       // what carries it
	Used    []Use         // what people do at it
	Moves   []Move        // the moves it brings
	Words   []string      // other words for it
}

// A Range is a usual measure and the least and most that are usual [mm].
type Range struct{ Low, Likely, High quantity.Length }

// Panels counts the panels in an envelope, as shares where some are cut away.
type Panels struct {
	Flat   float64 // level: length times depth
	Along  float64 // upright along the length: fronts and backs
	Across float64 // upright across it: ends and divisions
}

// Carrier says what carries a fitting.
type Carrier string

// What carries a fitting.
const (
	Floor   Carrier = "floor"
	Side    Carrier = "side"
	Roof    Carrier = "roof"
	Upon    Carrier = "upon" // another fitting
	Opening Carrier = "opening"
)

// Use is what a person does at a fitting.
type Use string

// What people do at a fitting.
const (
	Sits   Use = "sits"
	Lies   Use = "lies"
	Stands Use = "stands"
	Cooks  Use = "cooks"
)

// A Move is how a part of it moves. Faces are named as for a fitting that
// stands with its back to a side: front, back, top, bottom; the arrangement
// puts the real face for the back. Exactly one of Slide and Hinge is given.
type Move struct {
	ID     string
	Slide  string  // out (away from the back), up or down
	Travel float64 // how far it slides, as a share of the depth (height for up and down)
	Hinge  string  // the edge where two faces meet: back top
	Turn   float64 // how far it turns [degree]
}

// Get is the setting of this id.
func Get(id string) (Setting, bool) {
	i, ok := index[id]
	if !ok {
		return Setting{}, false
	}
	return all[i], true
}

// IDs are the ids of all settings, sorted.
func IDs() []string {
	ids := make([]string, 0, len(all))
	for _, s := range all {
		ids = append(ids, s.ID)
	}
	sort.Strings(ids)
	return ids
}

// All are the settings in the order of the table: what most vans have first.
func All() []Setting { return append([]Setting(nil), all...) }

// Does says whether a person may do this at it.
func (s Setting) Does(u Use) bool {
	for _, have := range s.Used {
		if have == u {
			return true
		}
	}
	return false
}

var index = indexed()

func indexed() map[string]int {
	m := make(map[string]int, len(all))
	for i, s := range all {
		m[s.ID] = i
	}
	return m
}
