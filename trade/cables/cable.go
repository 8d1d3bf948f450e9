package cables

import "fmt"

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
	Starved *Collapsed // not even alone can it be fed: it is left out of all else, and nothing is known of its losses
	Fault   [2]float64 // A into a short at its From, before the fuse, and at its To

	Positive, Negative string  // colours
	Cut                float64 // length of each of its two cores as cut from the reel
	Terminals          []Terminal

	way Way
	own float64 // A of its own loads, without what hangs on its far end
	sum float64 // A of all that hangs on a trunk
	fed string  // id of the circuit that feeds it; "" is the board
}

// Label is what is written on both ends of a cable.
func (c Cable) Label() string {
	words := fmt.Sprintf("%s %s, %s mm2", c.Number, c.Title, digits(c.Section.MM2, 4))
	if c.Fuse.Amps > 0 {
		words += fmt.Sprintf(", fuse %s A", digits(c.Fuse.Amps, 4))
	}
	return words
}
