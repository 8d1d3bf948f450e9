package cables

// Inputs is all that cables needs to know. Lengths are in mm, cross-sections in mm2, currents in A, voltages in V, shares 0..1.
type Inputs struct {
	Banks    []Bank    // by id
	Circuits []Circuit // by id
	Sources  []Source  // by id
	Mains    Mains
	Unfed    []Load         // things that draw current and are in no circuit
	Rows     map[string]Row // catalogue rows that the bill may name, by id
	Rules    string         // gb, eu or us
	Counted  []string       // fittings that stand for cables, fuses and terminals in mass and money
}

// Bank is the batteries that belong together.
type Bank struct {
	ID         string
	About      string // JSON Pointer
	Batteries  []Battery
	MainFuse   Fuse
	FaultSaid  float64 // current into a short as its label has it; 0 is not said
	Isolator   *Part   // what disconnects it
	Shunt      *Part
	Busbar     *Part
	FuseBoard  *Part
	Bond       float64 // cross-section of the bond from negative to the body; 0 is not said
	BondLength Length
	Number     int // of the main cable where no circuit is it; 0 is not said
	BondNumber int // 0 is not said
}

// Battery is one battery of a bank.
type Battery struct {
	ID        string
	Name      string
	Row       string
	About     string
	Chemistry Chemistry
	AmpHours  float64
	Volts     float64 // 0 is not known: 12
}

// Chemistry is what a battery is made of.
type Chemistry string

const (
	Flooded Chemistry = "flooded"
	AGM     Chemistry = "agm"
	Gel     Chemistry = "gel"
	Lithium Chemistry = "lithium" // iron phosphate
	Unknown Chemistry = ""        // reckoned as flooded lead
)

// Part is something between battery and circuits.
type Part struct {
	ID    string
	Name  string
	About string
	Row   string
	Amps  float64 // what it is made for; 0 is not known
	Price float64 // 0 is not known
}

// Fuse is a fuse as the builder wrote it.
type Fuse struct {
	Said     bool    // anything is written
	None     bool    // written that there is none
	Amps     float64 // 0 is not said
	Kind     Kind    // Unsaid
	Breaking float64 // current that it can break; 0 is not said
	Away     float64 // how far from what feeds it; negative is not said
	About    string  // JSON Pointer of the fuse, or of what should have one
}

// Known says how a length is known, best first.
type Known string

const (
	Measured Known = "measured" // written in the document
	Laid     Known = "laid"     // along the ways it takes
	Straight Known = "straight" // along x, y and z between the two places, a fifth added
	Assumed  Known = "assumed"  // usual for such a cable
)

// Length is one way along the route of a cable.
type Length struct {
	MM    float64
	Known Known
	About string // JSON Pointer of what says so; "" where nothing does
}

// Way is a cable as the builder wrote it.
type Way struct {
	ID         string
	About      string // JSON Pointer of the circuit or source
	Title      string
	Length     Length
	Branches   float64 // to further loads besides, one way
	Section    float64 // 0 is not said
	Fuse       Fuse
	Insulation float64  // what it stands, °C; 0 is not said
	Runs       []string // ways it takes
	Bundled    int      // loaded cores side by side, its own two counted; 0 is not said: those that share a way
	Surrounded bool     // in thermal insulation for more than half a metre
	Hot        bool     // beside an engine, an exhaust, or under a dark roof
	Body       bool     // the body of the van is its negative
	Colour     string   // of its positive; "" is red
	Number     int      // on its ends; 0 is not said
}

// Circuit is a cable and what it feeds.
type Circuit struct {
	Way
	From    string  // a bank or another circuit
	Loads   []Load  // none: it feeds the fuse board
	Current float64 // when all of it is on; 0 is not said: that of its loads
	Wanted  float64 // greatest loss the builder wants; 0 is not said
}

// Load is a thing that draws current.
type Load struct {
	ID    string
	Name  string
	About string
	Row   string
	Kind  Appliance
	Watts float64 // while running; 0 is not known
	Amps  float64 // that a charger is made to give; 0 is not known
	Volts float64 // that it is made for; 0 is not known
	Place string  // where it is, in words: "in the galley"
}

// Appliance is what sort of load it is.
type Appliance string

const (
	Fridge   Appliance = "fridge"
	Pump     Appliance = "pump"
	Fan      Appliance = "fan"
	Heater   Appliance = "heater"
	Light    Appliance = "light"
	Socket   Appliance = "socket"
	Inverter Appliance = "inverter"
	Store    Appliance = "battery"
	Other    Appliance = "other"
)

// Source is where charge comes from, and its cable.
type Source struct {
	Way
	Is         []Load // panels, chargers
	By         Part   // what controls it; without an id nobody says
	Plain      bool   // what controls it passes the panels' current on as it is (PWM)
	To         string // the bank
	Lead       Way    // from what controls or converts it to the board; its About is where it would be written
	Kind       SourceKind
	Starter    float64 // V of the vehicle's own battery; 0 is not said: as the bank
	Most       float64 // greatest current in its own cable; 0 is not known
	Volts      float64 // that it works at, all panels of a row together; 0 is not known
	InRow      bool    // its panels are joined plus to minus
	String     Fuse    // in the plus cable of each of several panels; its About is where it stands or would
	StringMost float64 // what a panel's label allows of it; 0 is not said
	Both       string  // which ends have the fuse: "both", "house", "source"; "" is not said
}

// SourceKind is what sort of source it is.
type SourceKind string

const (
	Engine SourceKind = "engine" // through a charger that converts
	Split  SourceKind = "split"  // through a relay: starter and house battery are joined
	Sun    SourceKind = "sun"
	Shore  SourceKind = "shore" // a charger fed by the mains
)

// Mains is what is planned at mains voltage: one block, a licensed electrician's.
type Mains struct {
	State string // "", "none", "undecided", "planned"
	About string
	Parts []Part
	By    string
	Runs  []string // ways that its cables take
}

// Row is what the catalogue says of something that the bill may name.
type Row struct {
	Name  string
	Price float64 // of one, or of a metre; 0 is not known
	Unit  string
}
