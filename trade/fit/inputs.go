package fit

import (
	"encoding/json"
	"strings"

	"tumblehome/solve/solid"
)

// Inputs is what fit is judged from.
type Inputs struct {
	Room      solid.Region // inside of the finished surfaces
	Partition bool         // there is a wall at the front; without one things may reach into the cab
	Error     float64      // how well the body was read, plus or minus [mm]; 0 counts as 1
	Fittings  []Fitting
	Modes     []Mode
	Parts     []Part   // lids, doors and drawers
	People    []Person // sorted by id
	Openings  []Opening
	Height    float64 // of the bare vehicle above the ground [mm]; 0 is not known
	OuterRoof float64 // z of the highest place of its outer roof

	Ground *Ground // the room's own part of the walkable floor, made once for a room; nil is made here
	Ribs   []Rib   // where nothing may be cut

	Arches []Arch
	Seats  []Seat // the vehicle's own, with belts

	Van       solid.Bounds // about the whole vehicle, road to roof; empty is not known
	Underside float64      // z of the underside of its floor
	Wheels    []Wheel      // and axles
	// Before is the memory of an earlier result, to save work; it is used only if RoomKey, the digest of the room, is the same and
	// not empty.
	Before  *Memory
	RoomKey string

	// Nudge is the merge patch that moves a fitting by so much and keeps the builder's words; Lengthen the one that makes it
	// longer along x (axis 0) or y (1). Either may be nil: then nothing is proposed.
	Nudge    func(fitting string, dx, dy, dz float64) (json.RawMessage, bool)
	Lengthen func(fitting string, axis int, by float64) (json.RawMessage, bool)
	// Stretch is the merge patch that moves the two faces of a fitting on an axis outwards by so much each; it may be nil as well.
	Stretch func(fitting string, axis int, low, high float64) (json.RawMessage, bool)
	// Slide is the merge patch that has a fitting slide out by so much less; it may be nil as well.
	Slide func(fitting string, less float64) (json.RawMessage, bool)
	// Turn is a fitting turned by a quarter, with all it carries and the heads of who lies on it, and moved by so much; it may be nil as well.
	Turn func(fitting string, dx, dy float64) (Turned, bool)
}

// Turned is a van in which a fitting was turned: the merge patch that does it, and where everything stands then, in the order of Inputs.
type Turned struct {
	Patch json.RawMessage
	Modes []Mode
	Parts []Part
}

// Rib is a rib of a side or a bow of the roof.
type Rib struct {
	ID   string
	On   string     // left, right, roof
	Face [2]float64 // from x to x [mm]
}

// Fitting is what fit needs to know of one, whatever the mode.
type Fitting struct {
	ID      string
	Name    string  // plain name; the id stands in
	Carrier string  // the fitting it stands in or upon
	In      bool    // in it, not upon it
	Where   string  // outside, under, cab; empty is inside
	For     string  // the opening it belongs to
	Gives   float64 // share of its least dimension by which it may be pressed: 0 hard, 1 a curtain
	Rests   bool    // people sit or lie on it
	Aside   bool    // it is put aside in passing, or trodden on: a light step
	Make    string  // what kind of thing is made; empty for what is bought or found
	Board   float64 // thickness of a made thing's board [mm]
	Mass    float64 // with what it holds when full [kg]
	Held    string  // how it is held while driving, by the builder's word; empty is not said
	Belted  bool    // a seat with belts
	Flame   bool    // it cooks in the van over an open flame
	Burns   bool    // it is made of what scorches: not of metal or tiles
	Lid     bool    // a roof vent whose lid comes up to open
	OnDoors bool    // it is made to hang on the rear doors and swings with them
	OnDoor  string  // the opening whose door it hangs on and swings with
	Today   bool    // it is in the van today
	Later   bool    // only its place is kept
}

// Mode is where everything is in one mode. Standings are in the order of Inputs.Fittings; a solid in them may be put in place of an equal one
// that is remembered.
type Mode struct {
	Name      string
	Standings []Standing
	Poses     []Pose
	Open      []string // ids of openings that stand open
	Movers    []Mover  // what is elsewhere than at rest
}

// Mover is a fitting that a mode has elsewhere than at rest.
type Mover struct {
	Fitting  int    // in Inputs.Fittings
	Position string // what the position is called
	ByHand   bool   // lifted and carried: it has no path
	Path     solid.Solid
}

// Part is a lid, a door or the drawers of a fitting.
type Part struct {
	Fitting int
	Kind    string // lid, door, flap, drawer
	Ways    int    // in how many ways it may be hung
	Move    string // id of the fitting's own move; empty if the setting-out brings it
	Still   bool   // its move goes no way at all
	Inward  bool   // its move turns it into its own fitting
	Key     any    // comparable: parts of one fitting with equal keys are the same
	// Swept is what it passes through when opened by a share of its travel, hung in one way; Opened is where it is then.
	Swept, Opened func(way int, share float64) solid.Solid
}

// Standing is where a fitting is in a mode.
type Standing struct {
	Solid   solid.Solid // empty if it is nowhere
	Box     solid.Bounds
	Moved   bool         // not where it rests
	Scribed []solid.Side // faces cut to the room from within: while it rests, these may stand out by what is credibly cut off
	Aside   *Standing    // where it is once it is put out of one's way, for a table that folds or is light enough to lift; nil if it stays where it is
}

// passed is where a fitting is while somebody passes.
func (s *Standing) passed() *Standing {
	if s.Aside != nil {
		return s.Aside
	}
	return s
}

// reach is the box about where a fitting is and where it is put aside.
func (s *Standing) reach() solid.Bounds {
	if s.Aside == nil || len(s.Aside.Solid) == 0 {
		return s.Box
	}
	return s.Box.Join(s.Aside.Box)
}

// Person is one who lives aboard.
type Person struct {
	ID      string
	Name    string  // what they are called; the id stands in
	Stature float64 // [mm]
	GrowsTo float64 // stature in some years [mm]; 0 is not said
	Years   int     // how many
}

// Pose is what a person does in a mode.
type Pose struct {
	Person string
	Does   string // lies, sits, stands, cooks
	At     string // fitting
	Head   string // front, rear, left, right
}

// Opening is a door, window or hatch.
type Opening struct {
	ID        string
	Name      string // what it is called; the id stands in
	About     string // JSON Pointer of what says so; empty is its own place in the document
	Through   string
	X, Y, Z   [2]float64 // extents; the axis it goes through is not used
	Door      bool
	TwoLeaves bool   // a door of two
	WayOut    bool   // opens from inside without tools
	Made      bool   // it is there today: cut, or a door of the van itself
	In        string // the opening it lies in
}

func (p Person) name() string {
	if p.Name != "" {
		return p.Name
	}
	return p.ID
}

// called is an opening as one speaks of it: the rear doors, the side door, the cab.
func (o Opening) called() string {
	name := o.Name
	if name == "" {
		name = strings.ReplaceAll(o.ID, "-", " ")
	}
	switch {
	case o.Door && o.Name == "":
		return "the " + name + " door"
	case o.Door:
		return "the " + strings.TrimPrefix(name, "the ")
	case o.Through == "front" && o.Name == "":
		return "the cab"
	case o.Through == "front":
		return "the cab (" + name + ")"
	}
	return "the opening " + name
}

func (o Opening) pointer() string {
	if o.About != "" {
		return o.About
	}
	return pointer("shell/openings", o.ID)
}
