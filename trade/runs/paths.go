package runs

// Path is one of the usual lines along which cables are led from one end of a van to the other: practice, no source.
type Path struct {
	ID, Words string
	side      string
	high      height
}

type height int

const (
	low  height = iota // at the foot of the side
	belt               // half-way up the side
	edge               // along the roof, near its edge
)

// Paths are those on offer, in the order in which they are offered.
var Paths = []Path{
	{"floor-left", "along the floor, left", left, low}, {"floor-right", "along the floor, right", right, low},
	{"belt-left", "half-way up the left side", left, belt}, {"belt-right", "half-way up the right side", right, belt},
	{"roof-left", "along the edge of the roof, left", left, edge}, {"roof-right", "along the edge of the roof, right", right, edge},
}

// Manner is what a way is made of: a conduit of this bore, or none, and how far behind the finished surface it wants to lie [mm].
type Manner struct {
	ID, Words string
	Bore      float64
	behind    float64
	Remark    string // written with the way, where no bore says what it is
}

// Manners are those on offer. The bores are sizes of corrugated conduit as it is sold (common sizes, from memory).
var Manners = []Manner{
	{"conduit-13", "conduit, 13 mm inside, behind the lining", 13, 10, ""},
	{"conduit-17", "conduit, 17 mm inside, behind the lining", 17, 12, ""},
	{"conduit-22", "conduit, 22 mm inside, behind the lining", 22, 15, ""},
	{"conduit-29", "conduit, 29 mm inside, behind the lining", 29, 18, ""},
	{"conduit-37", "conduit, 37 mm inside, behind the lining", 37, 22, ""},
	{"loose", "loose in the lining, no conduit", 0, 10, "Loose in the lining, no conduit."},
	{"clipped", "clipped to the finished surface, in sight", 0, 0, "Clipped to the finished surface."},
}

// Where the usual lines lie [mm]: practice, no source.
const (
	footHigh   = 60  // above the finished floor
	beltHigh   = 900 // above the load floor
	overArch   = 60  // above and beside a wheel arch
	atSide     = 300 // how far from a side what stands there still is at that side
	offLevel   = 150 // how far above or below the line a thing needs no leg of its own
	edgeShare  = 0.7 // of the half-width at the top of the side: where the roof's edge is taken to be
	underRidge = 200 // below the middle of the roof: the top of the side
	offRear    = 60  // short of the rear doors
	lookAlong  = 100 // how far apart the lining's thickness is looked at
)
