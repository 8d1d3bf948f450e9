package warmth

import "tumblehome/solve/conduction"

// Inputs is all that warmth needs to know. Lengths are in mm, areas in m2, temperatures in °C.
type Inputs struct {
	Skin   float64 // thickness of the sheet
	Fields []Field
	Glass  []Glass
	Cab    Cab
	Volume float64 // of the room, m3
	Plan   float64 // of its floor, m2
	Top    float64 // height of its roof above the bare floor
	BedTop float64 // the highest mattress above the bare floor; 0 is not known

	Vents    []Vent
	AirSaid  bool   // the document says which openings stay open
	AirAbout string // JSON Pointer of what says so, or of what should

	Sleepers  []Sleeper
	Habit     Habit // the zero value is the usual one
	Heater    *Heater
	Burners   []Burner
	Keep      *float64 // temperature kept at night; nil is not said
	KeepAbout string   // who says so
	Wet       float64  // water in the clothes that come in wet of an evening, kg
	WetAbout  string
	Furniture float64 // mass of what is built in, kg
	Fridge    float64 // power that fridges take while they run, W

	Place        string // of the weather, as read
	PlaceAssumed bool
	PlaceAbout   string // JSON Pointer of what names the place, or of what should
	Months       [12]Month
	TripsAssumed bool

	// Solve works out a section; nil is conduction.Solve. A memory may stand behind it.
	Solve func(conduction.Section, conduction.Accuracy) (conduction.Result, error)
}

// Surfaces as they are told apart.
const (
	Floor = "floor"
	Sides = "sides"
	Roof  = "roof"
	Doors = "doors"
	Front = "front" // a lined partition
)

// groups in the order in which they are listed.
var groups = [...]string{Floor, Sides, Roof, Doors, Front}

// Field is a part of a surface with one build-up.
type Field struct {
	Group   string
	Bay     string // as the document names it
	About   string // JSON Pointer of what is laid here, or of what would be
	Flow    conduction.Direction
	Area    float64 // m2, ribs included
	Width   float64 // between the middles of the ribs; 0 for none
	Ribs    []Rib
	Courses []Course // from the steel inwards
	Valleys float64  // depth of the pressings in the steel
}

// Rib is a rib that stands in a field or at its end.
type Rib struct {
	Depth, Flange float64
	Halves        float64 // how much of it counts here: 1 where it is at the end, 2 within; more for the frame of a door
}

// Course is one layer of a build-up: where it lies between ribs and on them, as depths from the steel.
type Course struct {
	Pointer      string
	Of           Material
	InBay, OnRib [2]float64
	Share        float64   // of the surface it covers; the rest is air
	Next         Thicker   // how there could be more of it
	Between      *Material // battens it lies between
	BetweenShare float64   // how much of the surface is battens
	Filled       bool      // it fills the hollows of the ribs too
}

// Thicker is how there can be more of a layer: the next of its kind, or else the same once more. The zero value is that there can not.
type Thicker struct {
	By  float64 // mm
	Lay string  // what to lay instead
}

// Material is how a thing passes heat and vapour.
type Material struct {
	ID       string
	Name     string
	Conducts float64 // W/(m·K)
	Vapour   float64 // resistance as a multiple of still air
	Density  float64 // kg/m3
	Capacity float64 // J/(kg·K)
	Assumed  bool    // the catalogue does not know; that of similar things
}

// Glass is a window or the glass of a door.
type Glass struct {
	About  string
	Area   float64 // m2
	Double bool    // two panes of acrylic
	Blind  bool    // a blind hangs before it at night
}

// Cab is what lies before the room.
type Cab struct {
	Opening   float64 // m2 of the way into it, or of all the front
	Partition bool    // fields of the group front close it
	Curtain   bool    // a curtain does
}

// Vent is an opening through which air passes at night.
type Vent struct {
	ID    string
	About string
	Free  float64 // m2 open at night
	Share float64 // how far that is open
	Z     float64 // of its middle
	Roof  bool
	Fixed bool // it can not be closed
}

// Sleeper is somebody who spends the night.
type Sleeper struct {
	ID   string
	Mass float64 // kg
}

// Habit is when people go to bed and get up, whole hours of the clock, and how warm they keep the van where nobody said it for a trip.
type Habit struct {
	ToBed, Up     int
	Keep, Sitting float64 // °C asleep and while they are up
}

// usually is how most live in a van: 18 to 21 °C up and 14 to 18 under covers are comfort (from memory).
var usually = Habit{ToBed: 22, Up: 7, Keep: 14, Sitting: 18}

// Heater is what warms the van.
type Heater struct {
	About string
	Row   string
	Power float64 // W
	Flued bool    // it takes its air from outside and gives its fumes there
}

// Burner is a flame in the van without a flue.
type Burner struct {
	About  string
	Power  float64 // W
	Spirit bool    // it burns spirit; else gas
	Inside bool    // it is used in the van
}

// Month is the weather of one month and how much of it is spent in the van.
type Month struct {
	Usual, Cold Day
	Mean        float64 // °C
	Nights      float64 // in the van
}

// Day is the outside air hour by hour from midnight, in °C, and its vapour pressure in Pa.
type Day struct {
	Outside [24]float64
	Vapour  float64
}
