package shell

import "tumblehome/quantity"

// Surfaces of the bare body, as the document names them.
const (
	Floor = "floor"
	Left  = "left"
	Right = "right"
	Roof  = "roof"
	Front = "front"
	Rear  = "rear"
)

// Inputs is all that was read off the van. With a Table the Quick readings are
// not used; with neither, a typical body stands in.
type Inputs struct {
	Table     *Table
	Quick     *Quick
	Pressings quantity.Length // depth of the valleys in the load floor
	Ribs      []Rib
	Arches    []Arch
	Openings  []Opening
}

// Table is the table of offsets.
type Table struct {
	Heights  []quantity.Length
	Stations []Station       // in any order
	Error    quantity.Length // a reading is good to plus or minus this; 0 is not known
}

// Station is one cut across the body.
type Station struct {
	ID    string
	X     quantity.Length
	Half  []quantity.Length // at the heights of the table
	Crown quantity.Length
}

// Quick are the six readings of the first hour on a generic body. Those left
// out are taken from the body.
type Quick struct {
	Body          string // length and height: short, mid or long, then low, mid or high: "mid-high"
	Length        *quantity.Length
	Knee          *quantity.Length // width between the skins, 400 above the floor
	BetweenArches *quantity.Length
	Height        *quantity.Length // floor to skin of the roof in the middle
	DoorWidth     *quantity.Length // clear, of the side door
	DoorHeight    *quantity.Length
	DoorSide      string // left, right, none; empty is right
}

// Rib is a rib of the sides or a bow of the roof.
type Rib struct {
	ID     string
	X      quantity.Length // of its middle
	On     []string        // left, right, roof
	Depth  quantity.Length // from the skin inwards
	Flange quantity.Length // width of its face; 0 is not known, 50 is taken
}

// Arch is a wheel arch.
type Arch struct {
	ID         string
	On         []string // left, right
	From, To   quantity.Length
	Inward, Up quantity.Length
}

// Span is an extent along one axis.
type Span struct{ From, To quantity.Length }

// Opening is a door, window, vent or fan. Of X, Y, Z the two that lie in its
// surface count.
type Opening struct {
	ID       string
	Through  string
	X, Y, Z  *Span
	Door     string // kind of door; empty for what is no door
	Glazed   quantity.Area
	FreeArea quantity.Area
	WayOut   bool
	Made     bool   // it is in the van today; doors always are
	In       string // the opening it lies in
}
