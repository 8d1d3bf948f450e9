package cables

import (
	"fmt"

	"tumblehome/trade/finding"
)

// Result is every cable with its fuse, what is lost on the way, and what follows for buying, labelling and testing.
type Result struct {
	Supplies []Supply // one for each bank, in its order
	Cables   []Cable  // trunk of each bank first, then circuits, then sources; numbered in this order
	Bill     []Item   // what to buy for them
	Tests    []Test   // in the order in which they are done
	Mains    Mains
	Assumed  []string // what was taken for want of a word in the document, in plain sentences

	in    Inputs
	nets  map[string]net // solved, by bank
	found []finding.Finding
}

// Supply is a bank as the cables see it.
type Supply struct {
	Bank
	Volts      float64 // at its posts, without load
	Resistance float64 // Ω, inside
	Drive      float64 // V that drive a short when it is full
	Fault      float64 // A into a short at its posts
	Trunk      string  // number of the cable to the fuse board
	AtBoard    float64 // A into a short at the fuse board
	Together   float64 // A out of the battery when all is on
	Collapsed  *Collapsed
}

// Collapsed says that a battery cannot carry what hangs on it: the voltage falls until all goes out.
type Collapsed struct {
	Share float64 // of what is drawn, the most that is carried
	Tips  string  // id of the circuit that tips it
	Asked float64 // what that circuit asks for, in Unit
	Alone float64 // the most it can have beside the others, in Unit
	Unit  string  // W or A
}

// Role is what a cable is for.
type Role string

const (
	Trunk  Role = "trunk"  // battery to fuse board
	Feed   Role = "feed"   // fuse board to loads
	Charge Role = "charge" // a source to the battery or board
	Bond   Role = "bond"   // negative to the body
)

// Cable is one way with its positive and its negative.
type Cable struct {
	Number  string // W1, W2, …
	ID      string // of the circuit or source; "" for a trunk or bond nobody wrote
	About   string // JSON Pointer of the circuit or source, or of the bank for a trunk or bond nobody wrote
	Bank    string
	Role    Role
	Title   string
	From    End    // where current comes from
	To      End    // where it goes
	FedBy   string // number of the cable that feeds it; "" is the battery, or the source itself
	Loads   []Load
	Source  SourceKind // of a charge cable
	Body    bool       // no negative cable: the body is it
	Length  Length     // one way
	Current float64    // when all of it is on
	Volts   float64    // that shares are of

	Section Section
	Rating  Rating
	Fuse    Protection  // at its From; of a charge cable at the source
	FarFuse *Protection // at its To, where that end is a source too
	Ends    string      // of a charge cable between two batteries: which ends are said to have the fuse, "both", "house" or "source"
	Drop    Drop
	Fault   [2]float64 // A into a short at its From, before the fuse, and at its To

	Positive, Negative string  // colours
	Cut                float64 // length of each of its two cores as cut from the reel
	Terminals          []Terminal

	way Way
	own float64 // A of its own loads, without what hangs on its far end
	sum float64 // A of all that hangs on a trunk
	fed string  // id of the circuit that feeds it; "" is the board
}

// End is where a cable ends.
type End struct {
	Fitting string // id; "" where the document has none for it
	Words   string // "house battery", "fuse board", "light strip left"
	Symbol  Symbol // how it is drawn
}

// Symbol is what an end is in a circuit diagram.
type Symbol string

const (
	SymbolBattery   Symbol = "battery"
	SymbolStarter   Symbol = "starter battery"
	SymbolBoard     Symbol = "board" // positive busbar with its fuses
	SymbolLamp      Symbol = "lamp"
	SymbolMotor     Symbol = "motor" // pump, fan
	SymbolFridge    Symbol = "fridge"
	SymbolHeater    Symbol = "heater"
	SymbolSocket    Symbol = "socket"
	SymbolInverter  Symbol = "inverter"
	SymbolPanel     Symbol = "panel"
	SymbolRegulator Symbol = "regulator"
	SymbolConverter Symbol = "converter" // DC to DC
	SymbolCharger   Symbol = "charger"   // mains to DC
	SymbolRelay     Symbol = "relay"
	SymbolBody      Symbol = "body"
	SymbolLoad      Symbol = "load"
)

// Section is the copper of a cable and why it is as thick as that.
type Section struct {
	MM2   float64 // what it is reckoned with: what is written, else what was chosen
	Said  bool
	Need  float64  // the least that passes every rule; 0 where no standard one does
	Rule  Rule     // which rule asked for most
	Steps []Demand // what each rule asks for, in the order of Rules
}

// Rule is why a cable must be as thick as that.
type Rule string

const (
	RuleCurrent    Rule = "current"    // the load
	RuleFuse       Rule = "fuse"       // the fuse that is written must not be more than the cable stands
	RuleDrop       Rule = "drop"       // voltage
	RuleMechanical Rule = "mechanical" // thinner strands break
	RuleShort      Rule = "short"      // it must live through a short until its fuse has gone
)

// Demand is what one rule asks for.
type Demand struct {
	Rule   Rule
	MM2    float64 // 0 where no standard section passes
	Words  string
	Source finding.Source
}

// Rating is what a cable carries for good where it lies.
type Rating struct {
	Table      float64        // A alone at 30 °C, the lower of the two tables
	From       finding.Source // which of the tables that is
	Insulation float64        // what it stands, °C
	Ambient    float64        // factor
	Air        float64        // °C
	Bundle     float64        // factor
	Cores      int            // loaded cores side by side
	Wrapped    float64        // factor of insulation all round
	Amps       float64        // what is left
}

// Protection is the fuse at one end of a cable.
type Protection struct {
	Amps     float64 // what it is reckoned with: what is written, else what was chosen; 0 where there is none
	Said     bool
	None     bool // written that there is none
	Kind     Kind
	KindSaid bool
	Breaking float64 // A that it can break
	Meets    float64 // A into a short just before it
	Least    float64 // smallest rating that carries the load
	Most     float64 // greatest rating that the cable stands
	Colour   string  // of a blade fuse
	Backed   bool    // the main fuse breaks what this one cannot
	End      string  // which end of the cable it is at: "from" or "to"
	Where    string  // "at the fuse board", "within 200 mm of the battery's post"
	About    string
}

// Drop is what is lost on the way, V; shares are of Cable.Volts.
type Drop struct {
	Own    float64 // in its own two cores
	Shared float64 // in those of the cables that feed it, with everything on
	Joints float64 // in fuses and joints on the way, all of them
	Limit  float64 // share of Own + Shared that it may have
	Wanted float64 // share that the builder wants; 0 is not said
	Aim    float64 // share of Own that is aimed for where the program chooses
	At     float64 // V at its far end with everything on
	Alone  float64 // V lost from the battery's posts to its far end, joints too, with only this circuit on
}

// Cables is what is lost in cables, V.
func (d Drop) Cables() float64 { return d.Own + d.Shared }

// Terminal is what is crimped on.
type Terminal struct {
	Words string // "ring M8, 16 mm2", "blue push-on"
	Count int
	At    string // in words: "the fuse board"
	Row   string // of the catalogue; "" has none
}

// Item is a line of the bill.
type Item struct {
	Row    string // of the catalogue; "" has none
	Words  string
	Count  float64
	Unit   string   // "m", "piece"
	Price  float64  // in all; 0 is not known
	Cables []string // numbers that it is for
	Once   bool     // already among the fittings: it is listed, not bought again
}

// Test is one line of the test sheet.
type Test struct {
	Cable  string // number; "" for the whole
	Kind   TestKind
	How    string // what to do, in plain words
	Expect string // what it should show
	Low    float64
	High   float64
	Unit   string // "V", "Ω"; "" where nothing is read off
}

// TestKind is what a test is about; they are done in this order.
type TestKind string

const (
	TestEye        TestKind = "eye"        // look and tug
	TestPolarity   TestKind = "polarity"   // plus is plus
	TestInsulation TestKind = "insulation" // no way from plus to minus or to the body
	TestResistance TestKind = "resistance" // of the two cores, joined at the far end
	TestFirst      TestKind = "first"      // first switching on
	TestVoltage    TestKind = "voltage"    // at the load, under load
	TestPull       TestKind = "pull"       // pull the fuse: only that goes out
	TestWarmth     TestKind = "warmth"     // after half an hour
)

// Label is what is written on both ends of a cable.
func (c Cable) Label() string {
	words := fmt.Sprintf("%s %s, %.4g mm2", c.Number, c.Title, c.Section.MM2)
	if c.Fuse.Amps > 0 {
		words += fmt.Sprintf(", fuse %.4g A", c.Fuse.Amps)
	}
	return words
}
