package lining

import "tumblehome/quantity"

// Surfaces that are lined.
const (
	Floor = "floor"
	Left  = "left"
	Right = "right"
	Roof  = "roof"
	Doors = "doors"
	Front = "front"
)

// surfaces in the order in which lines are listed.
var surfaces = [...]string{Floor, Left, Right, Roof, Doors, Front}

// Body is the bare van, in mm and m2.
type Body interface {
	Start() float64 // x of the front
	End() float64   // x of the rear
	Floor() float64 // z of the crests of the floor
	Eaves() float64 // z where the sides end and the roof begins
	// Readings are the places along x, and the heights, at which it was read.
	Readings() (along, up []float64)
	// Half is the half-breadth to the skin, HalfInside to a lining depth thick, measured
	// square to the skin; up to the eaves.
	Half(x, z float64) float64
	HalfInside(x, z, depth float64) float64
	// RoofInside is the height of a lining depth thick under the roof.
	RoofInside(x, y, depth float64) float64
	// Net is the area of a part of left, right, roof, floor or front, less
	// openings and arches, and its centre. lo and hi are heights, on roof and floor y.
	Net(surface string, x0, x1, lo, hi float64) (m2 float64, centre [3]float64)
}

// Inputs is the bare van and what is laid on it.
type Inputs struct {
	Body      Body
	Bays      []Bay // of left, right and roof, from the front; floor and front are one bay each and need not be named
	Arches    []Arch
	Doors     []Door
	Pressings quantity.Length    // depth of the valleys in the floor
	Layers    map[string][]Layer // by surface, from the steel inwards
	Assumed   bool               // the body is a typical one, not measured
}

// Bay is a part of a surface between two ribs.
type Bay struct {
	ID       string
	Surface  string
	From, To float64 // along x
	Depth    float64 // of its deepest rib
	Steel    float64 // how much of its length lies on the ribs' faces
}

// Arch is a wheel arch as a box against one side.
type Arch struct {
	ID       string
	Side     string // left or right
	From, To float64
	Face     float64 // |y| of its bare inner face
	Up       float64 // z of its bare top
	Area     float64 // m2 of it that shows
	Centre   [3]float64
}

// Door is a door of the load space.
type Door struct {
	ID       string
	Surface  string  // left, right, front or rear
	From, To float64 // along x on a side, along y in front or rear
	Low, Up  float64
	Net      float64 // m2, less glass
	Centre   [3]float64
}

// Kind is how a material behaves in a build-up.
type Kind string

const (
	Patch  Kind = "patch"  // stuck to the steel: sound deadening
	Fill   Kind = "fill"   // insulation
	Batten Kind = "batten" // strips of wood
	Board  Kind = "board"  // panels and slats
	Cover  Kind = "cover"  // carpet, linoleum, cloth, foil
)

// Material is what is laid.
type Material struct {
	ID        string
	Name      string // plain; the id stands in
	Kind      Kind
	Thick     quantity.Length    // 0 is not known
	Wide      quantity.Length    // of a batten
	PerArea   quantity.PerArea   // laid flat
	PerLength quantity.PerLength // of a batten
	Spread    quantity.Share     // of the mass: one standard deviation
}

// Meets says how insulation meets the ribs.
type Meets string

const (
	Free    Meets = "free" // also when nothing is said
	Bridged Meets = "bridged"
	Filled  Meets = "filled"
)

// Layer is one material on one surface.
type Layer struct {
	Pointer  string // JSON Pointer of the layer
	Of       Material
	Thick    quantity.Length  // 0 is the material's
	Cover    quantity.Share   // share of the surface; 0 is all of it
	Times    int              // 0 is once
	From, To *quantity.Length // heights on sides, doors, front; nil is the edge of the surface
	Between  *Battens
	Ribs     Meets
	Bays     map[string]Layer // what is laid instead in named bays
	Weighed  *quantity.Mass   // all of the layer, battens too
	Fitted   bool
}

// Battens are strips at an even spacing, with the layer between them.
type Battens struct {
	Of    Material
	Every quantity.Length // middle to middle
}

func (m Material) name() string {
	if m.Name != "" {
		return m.Name
	}
	return m.ID
}
