package runs

import (
	"tumblehome/build"
	"tumblehome/solve/solid"
)

// Point is a place in the van [mm].
type Point = [3]float64

// Inputs is all that runs needs to know [mm, mm2].
type Inputs struct {
	Room     solid.Region // inside the finished surfaces
	Skin     solid.Region // inside the bare skin
	Nose     float64      // x of the foremost of the vehicle
	Ways     []Way        // sorted by id
	Circuits []Circuit    // circuits, then sources
	Things   []Thing
	Sleepers []Sleeper
	Ribs     []Rib
	Arches   []Arch
	Openings []Opening
	// Laid are the layers of the lining that lie nearer to the room than a place so far behind the finished surface.
	Laid func(surface string, at Point, behind float64) []Layer
}

// Way is a line along which something is led.
type Way struct {
	ID      string
	Corners []build.Point3 // as the builder wrote them
	At      []Point        // where they are; empty if one of them is not known
	Bore    float64        // 0 is not given
}

// Layer is a layer of the lining.
type Layer struct{ Pointer, Name string }

// Thing is a fitting at rest.
type Thing struct {
	ID, Name string
	Solid    solid.Solid
	Box      solid.Bounds
	Hollow   bool // a way may lead through it
	Gas      bool // it holds a gas bottle, or is one
}

// Sleeper is the place over a bed where somebody lies in a mode.
type Sleeper struct {
	On, Name, Mode string // the bed
	Box            solid.Bounds
}

// Rib is a rib of a side or a bow of the roof, on one surface.
type Rib struct {
	ID, On   string
	From, To float64 // of its face along x
	Depth    float64 // from the skin
}

// Arch is a wheel arch.
type Arch struct {
	ID  string
	Box solid.Bounds
}

// Opening is a hole in a surface; the two spans that lie in the surface count.
type Opening struct {
	ID, Name, Through string
	X, Y, Z           [2]float64
	In                string // the opening it lies in
	Door              bool   // one goes through it
}

// Circuit is a cable out and back: of a circuit, or from a source to its battery.
type Circuit struct {
	ID      string
	Source  bool
	Lead    bool // the short cable from what controls or converts a source
	Along   []string
	Section float64  // of one conductor [mm2]; 0 is not given
	Battery bool     // a conductor of the battery: held more closely
	Written *float64 // the route one way that the builder measured
	Start   *End     // the fuse board, the battery, the engine; nil is not known
	Ends    []End    // the loads, or what is led to
	Extra   float64  // known only as a length, such as through the cab
	Unknown []string // ends that have no place
}

// End is a fitting to which a cable leads.
type End struct {
	Fitting, Name string // Fitting is empty for what is in no list, such as the starter battery
	At            Point
}

// Pointer leads to the circuit in the document.
func (c *Circuit) Pointer() string {
	switch {
	case c.Lead && c.Written != nil:
		return "/power/sources/" + c.ID + "/lead"
	case c.Source:
		return "/power/sources/" + c.ID
	}
	return "/power/circuits/" + c.ID
}

// name is what it is called at the beginning of a sentence.
func (c *Circuit) name() string {
	if c.Lead {
		return "The lead of " + c.ID
	}
	return c.ID
}

// fittings are those between which it leads.
func (c *Circuit) fittings() []string {
	var out []string
	if c.Start != nil {
		out = append(out, c.Start.Fitting)
	}
	for _, e := range c.Ends {
		out = append(out, e.Fitting)
	}
	return out
}
