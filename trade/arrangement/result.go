package arrangement

import (
	"slices"
	"strings"

	"tumblehome/solve/solid"
)

// Standing is where one fitting is.
type Standing struct {
	ID        string
	Solid     solid.Solid // empty if it is undecided, off, or has no size
	Box       Box         // about it, unscribed: its faces
	Middle    [3]float64  // of its volume, for its mass
	Where     string      // outside, under or cab; empty is inside the van
	Carrier   string      // the fitting it stands in or upon
	In        bool        // it stands in its carrier, not upon it
	For       string      // the opening it belongs to
	Undecided string      // why it has no place, in words; empty if it has one
	Off       bool        // it is out of the van
	Moved     bool        // not where it rests
	Scribed   []side      // faces cut to the surfaces of the room, from within

	own     Box      // about it before it was turned by less than an eighth of a turn: the faces that its moves go by
	follows *[6]bool // sides of the room along which its scribed faces lie, if something stands in or upon it
	askew   float64  // by how much it then was [radians], counter-clockwise
}

// Placed says whether the fitting has a solid.
func (s *Standing) Placed() bool { return len(s.Solid) > 0 }

// Mode is where everything is in one mode, in the order of Result.Rest.
type Mode struct {
	Name   string
	All    []Standing // not to be changed: a mode in which all rests shares Result.Rest
	Movers []Mover    // what is elsewhere than at rest
}

// Result says where everything is.
type Result struct {
	Rest    []Standing // sorted by id
	Modes   []Mode     // drive, day, night, then the builder's own by name
	Parts   []Part     // lids, doors and drawers, whether a mode opens them or not
	Assumed []string   // what was taken for want of something better, in words

	room  string               // key of the room it was worked out in
	known map[string][]*answer // by fitting
}

// Find is a fitting at rest, or nil.
func (r *Result) Find(id string) *Standing { return find(r.Rest, id) }

// Mode is the mode of this name, or nil.
func (r *Result) Mode(name string) *Mode {
	for i := range r.Modes {
		if r.Modes[i].Name == name {
			return &r.Modes[i]
		}
	}
	return nil
}

// Find is a fitting in the mode, or nil.
func (m *Mode) Find(id string) *Standing { return find(m.All, id) }

func find(all []Standing, id string) *Standing {
	i, ok := slices.BinarySearchFunc(all, id, func(s Standing, id string) int { return strings.Compare(s.ID, id) })
	if !ok {
		return nil
	}
	return &all[i]
}
