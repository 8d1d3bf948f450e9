package cables

import "fmt"

// Role is what a cable is for.
type Role string

const (
	Trunk  Role = "trunk"  // battery to fuse board
	Feed   Role = "feed"   // fuse board to loads
	Charge Role = "charge" // a source to what controls or converts it; a charger on the mains to the board
	Lead   Role = "lead"   // what controls or converts a source to the board; a relay to the battery
	Bond   Role = "bond"   // negative to the body
)

// Cable is one way with its positive and its negative.
type Cable struct {
	Number  string // W1, W2, …
	ID      string // of the circuit or source; "" for a trunk or bond nobody wrote
	About   string // JSON Pointer of the circuit, source or lead; of the source for a lead, of the bank for a trunk or bond nobody wrote
	Bank    string
	Role    Role
	Title   string
	From    End    // where current comes from
	To      End    // where it goes
	FedBy   string // number of the cable that feeds it; "" is the battery, or the source itself
	Loads   []Load
	Source  SourceKind // of a charge cable or lead
	Body    bool       // no negative cable: the body is it
	Length  Length     // one way
	Current float64    // when all of it is on
	Volts   float64    // that shares are of

	Section Section
	Rating  Rating
	Fuse    Protection // at its From; where only its To is fed by a battery, there
	Ends    string     // of a line between two batteries: which ends are said to have the fuse, "both", "house" or "source"
	Drop    Drop
	Starved *Collapsed // not even alone can it be fed: it is left out of all else, and nothing is known of its losses
	Fault   [2]float64 // A into a short at its From and at its To; at the end with the fuse before it

	Positive, Negative string  // colours
	Cut                float64 // length of each of its two cores as cut from the reel, with the branches to all loads
	Terminals          []Terminal

	way  Way
	said int     // number that is written; 0 where none is
	own  float64 // A of its own loads, without what hangs on its far end
	sum  float64 // A of all that hangs on a trunk
	told float64 // A that are written for a trunk; 0 where none are
	also Fuse    // what the circuit of a trunk says of the main fuse
	from float64 // blocks of 12 V of the starter battery that a line leads from
	row  bool    // the panels that it leads from are joined plus to minus
	fed  string  // id of the circuit that feeds it; "" is the board
}

// charges says whether it leads from a source: it is reckoned by itself, outside the network of what is fed.
func (c *Cable) charges() bool { return c.Role == Charge || c.Role == Lead }

// Weakest is the current into a short at the end far from the fuse [A].
func (c *Cable) Weakest() float64 {
	if c.Fuse.End == "to" {
		return c.Fault[0]
	}
	return c.Fault[1]
}

// Label is what is written on both ends of a cable.
func (c Cable) Label() string {
	words := fmt.Sprintf("%s %s, %s mm²", c.Number, c.Title, digits(c.Section.MM2, 4))
	if c.Fuse.Amps > 0 {
		words += fmt.Sprintf(", fuse %s A", digits(c.Fuse.Amps, 4))
	}
	return words
}
