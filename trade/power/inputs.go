package power

// Inputs is all that power needs to know. Powers are in W, charge in Ah, temperatures in °C. Hours run from midnight of standard time.
type Inputs struct {
	Habit  string  // frugal, usual or cosy; "" if nobody said
	Heads  int     // who live in the van, at most
	Litres float64 // of water a head and day; 0 is not said

	Things   []Thing // what uses electricity
	Battery  *Battery
	Second   []Second // banks that the year leaves out
	Sources  []Source // of the battery
	Unknown  []Unknown
	Mains    Mains
	AtHome   string    // what charges it between trips: AtHomeMains, AtHomeSun, AtHomeNothing; "" if nobody said
	Readings []Reading // the builder's own
	Promise  float64   // share of nights that may be flat; 0 is not said
	About    string    // JSON Pointer of the section, or where it would stand

	Journeys     []Journey
	TripsAssumed bool
	Cabin        [12][24]float64 // warmth of the cabin on a usual day of a trip
	Heater       [12][24]float64 // heat that the heater gives, W
	HeaterPower  float64         // its heat at full, W

	Place        string
	PlaceAssumed bool
	Climate      Climate
	Years        int    // of weather to go through
	Seed         uint64 // of weather and of when trips fall

	Shop     []Offer   // batteries and panels that can be bought, for the chart
	Chargers []Charger // from the engine, that can be bought

	// Sky makes the weather; nil is NewSky. A memory may stand behind it.
	Sky func(c Climate, years int, seed uint64) (*Sky, error)
}

// Thing uses electricity, or may.
type Thing struct {
	ID      string
	Name    string // as read
	About   string // JSON Pointer of the fitting, or of the circuit that feeds it
	Row     string // catalogue row; "" for none
	Kind    Kind
	Watts   float64 // while it runs; 0 is not known
	Volts   float64 // 0 is not known
	Amps    float64 // of its circuit, where no watts are known
	Litres  float64 // that a fridge holds
	Heats   bool    // it makes heat of electricity
	Circuit string  // that feeds it; "" for none
}

// Battery is the bank that feeds the van: all that is joined, as one.
type Battery struct {
	ID        string   // of the bank
	About     string   // JSON Pointer of the bank
	Fitting   string   // JSON Pointer of its first battery
	Fittings  []string // of all of them
	Row       string
	Chemistry Chemistry
	Assumed   bool    // the chemistry could not be told from the row
	Rated     float64 // Ah as printed
	Tested    float64 // Ah as a test found; 0 is not tested
	Usable    float64 // share that may be taken; 0 is not said
	Count     int
	Volts     float64 // of the bank, as its battery has it; 0 is 12
	CutOff    bool    // something is said to stop charging in the cold
	Heated    bool    // it warms itself
	Outside   bool    // it stands outside or under the van
}

// What can charge a battery.
const (
	Sun    = "sun"
	Engine = "engine"
	Shore  = "mains"
)

// Source is something that charges the battery.
type Source struct {
	ID           string
	About        string
	Kind         string  // Sun, Engine or Shore
	Fitting      string  // JSON Pointer of what it is; "" where that is several things
	Watts        float64 // of the panels together
	Panels       int
	PanelVolts   float64  // at their best: of one, or of all where they are joined in a row; 0 is 18
	InRow        bool     // joined plus to minus
	Bonded       bool     // glued flat to the roof, without air behind
	Shade        *float64 // share of light lost to shade, if said
	Controller   string   // row; "" for none
	Bare         bool     // panels that are said to be joined to a battery without a controller
	PWM          bool     // the controller holds the panel at the battery's voltage
	Amps         float64  // what the controller or charger can give; 0 is not known
	Relay        bool     // from the engine by a switch alone
	Most         float64  // what the engine may give, as the document says; 0 is not said
	Loop         float64  // resistance from the engine's battery and back, ohm; 0 is not known
	Row, RowKind string   // of the catalogue, where it is one thing
}

// Second is a bank beside the one that is reckoned with.
type Second struct {
	ID, About string
	Sources   []Source
	Battery   *Battery
}

// Unknown is a thing named as a source that is told to be neither panel nor charger.
type Unknown struct {
	About, Fitting string // JSON Pointers of the source and of the thing
	Name           string // as read
}

// Mains is whether the van can be joined to a mains supply.
type Mains struct {
	Inlet, Undecided bool
	Without          bool // it is said that there is none
	About            string
}

// What may charge the battery between trips.
const (
	AtHomeMains   = "mains"
	AtHomeSun     = "sun"
	AtHomeNothing = "nothing"
)

// Reading is what the builder's own meter showed for a day of a trip.
type Reading struct {
	About string
	Month int     // 1 to 12
	Wh    float64 // a day
}

// Journey is one kind of trip.
type Journey struct {
	ID     string
	About  string
	Nights int     // of one
	HookUp float64 // share of nights
	Months []Month
}

// Month is what one kind of trip comes to in a month, and its day.
type Month struct {
	Number int // 1 to 12
	Trips  float64
	Up     int // hour of getting up
	Day    [24]Hour
}

// Hour is who does what.
type Hour struct {
	Asleep, Awake int     // heads in the van
	Driving       float64 // share of the hour at the wheel
	Cooking       float64 // share of the hour
}

// Climate is the weather of a place as its months know it.
type Climate struct {
	Latitude, Longitude float64     // degrees
	Offset              float64     // of the clock from UTC, h
	Mean, Low, High     [12]float64 // °C
	Spread              [12]float64 // standard deviation of daily means, K
	Sun                 [12]float64 // kWh/m2 a day on level ground
}

// Charger is one in the catalogue that charges from the engine.
type Charger struct {
	Row, Name string
	Amps      float64
	Volts     float64 // of the battery that it is for
}

// Offer is a battery or a panel in the catalogue.
type Offer struct {
	Row, Name  string
	Price      float64
	Chemistry  Chemistry // of a battery
	AmpHours   float64   // 0 for a panel
	Usable     float64
	Watts      float64 // 0 for a battery
	PanelVolts float64
}
