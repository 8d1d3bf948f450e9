package weight

import (
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// Inputs is all that weight needs to know. Ids are those of the document; places are in document coordinates.
type Inputs struct {
	Wheelbase quantity.Length
	Datum     quantity.Length // x = 0 lies this far behind the front axle
	Track     quantity.Length // between the wheels of an axle; 0 if nobody measured it
	Body      Body
	Plate     Plate
	Licence   quantity.Mass // greatest plated mass of the usual driving licence; 0 if there is none to mind
	RoofLimit quantity.Mass // most that the roof may carry; 0 if not known
	Today     quantity.Date // the zero date if not known

	Lines     []takeoff.Line // all that will be in the van when it is finished, tanks empty
	OnRoof    []string       // JSON Pointers of the fittings that lie on the roof
	Weighings []Weighing
	FuelTank  *FuelTank
	Seats     []Seat // those alike in x in the order in which they are taken
	People    []Person
	Tanks     []Tank
	Gear      []takeoff.Line // what is taken along, pointers /use/gear/…
	Cases     []Case
	Front     *Tyre
	Rear      *Tyre
	Movable   []Movable
}

// Body is the overall size of the bare vehicle; 0 where not known.
type Body struct{ Length, Width, Height quantity.Length }

// Plate is what the maker's plate allows; nil where it cannot be read.
type Plate struct{ Gross, Front, Rear, Train *quantity.Mass }

// Weighing is one visit to a weighbridge.
type Weighing struct {
	ID          string
	Date        quantity.Date
	Front, Rear quantity.Mass   // as read
	Step        *quantity.Mass  // of the scale; nil: 20 kg
	Times       int             // how often each axle was read; 0 means once
	Fuel        *quantity.Share // nil: nobody wrote it down
	People      []string        // who sat in it
	Aboard      []takeoff.Line  // linings, fittings, things since removed and anything else, with the masses they have in the van
}

// FuelTank is the vehicle's own tank.
type FuelTank struct {
	Holds quantity.Volume
	X     quantity.Length
	Fuel  string // diesel or petrol
}

// Seat is the middle of whoever sits there.
type Seat struct {
	ID   string
	X, Y quantity.Length
}

// Person is somebody who may be aboard.
type Person struct {
	ID        string
	Mass, Dev float64 // mean and standard deviation [kg]
}

// Tank is a fitting that can be filled. Its own mass is among the Lines.
type Tank struct {
	ID      string
	Holds   quantity.Volume
	Density float64    // of what it holds [kg/l]; 0 means water
	At      [3]float64 // middle of what it holds [mm]
	Waste   bool       // filled only from other tanks
}

// Case is one way of being on the road.
type Case struct {
	ID      string
	Title   string // "" takes the id
	People  []string
	Fuel    *quantity.Share           // nil: 90 %
	Fill    map[string]quantity.Share // by tank; those not named are empty
	Gear    bool
	Without []string // ids or dotted paths of gear and fittings left at home
	assumed bool     // the document states no case
}

// Tyre describes the two tyres of one axle.
type Tyre struct {
	LoadIndex int
	Carries   quantity.Mass // what one tyre of that index may carry; 0 if the table has none
	Made      quantity.Date // the zero date if not known
}

// Movable is a fitting that could stand elsewhere lengthwise.
type Movable struct {
	ID          string
	Name        string          // what it is called; the id stands in
	Low         quantity.Length // its forward face now, as a bare x of its place would give it
	Least, Most quantity.Length // how far forward and rearward that face could go
}
