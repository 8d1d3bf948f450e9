package build

import (
	"regexp"

	"tumblehome/quantity"
)

// A Move is one way in which a fitting or a part of it moves. Exactly one of
// Slide, Hinge, Swivel, Stow and Off is given; By belongs to the first three.
type Move struct {
	Slide  Direction       `doc:"slide" says:"slides along an axis, by a length"`
	Hinge  Edge            `doc:"hinge" says:"turns about the edge where two faces meet, by an angle"`
	Swivel *Pivot          `doc:"swivel" says:"turns about an upright pin, by an angle"`
	By     *Amount         `doc:"by" says:"how far it goes"`
	Stow   *Place          `doc:"stow" says:"stands elsewhere"`
	Off    *quantity.YesNo `doc:"off" says:"is out of the van"`
}

// A Pivot is where an upright pin stands, from the middle of the fitting.
type Pivot struct {
	X quantity.Length `doc:"x,need" range:"-8000..8000" says:"rearwards from its middle"`
	Y quantity.Length `doc:"y,need" range:"-3000..3000" says:"to the right of its middle"`
}

// A Direction is an axis and which way along it: `x`, `-y`.
type Direction struct {
	Axis string // x, y, z; empty is none
	Back bool   // forwards, to the left or down
}

var (
	directionText    = regexp.MustCompile(`^([-+]?)([xyz])$`)
	directionGrammar = quantity.Grammar{
		Name: "direction", Says: "an axis with or without a minus",
		Pattern: directionText.String(), Examples: []string{"x", "-y"},
	}
)

// UnmarshalText reads `x`, `+x` or `-x`; the error is a *quantity.Fault.
func (d *Direction) UnmarshalText(text []byte) error {
	m := directionText.FindSubmatch(text)
	if m == nil {
		return &quantity.Fault{Wrong: "`" + string(text) + "` is no direction", Expected: "an axis", Examples: []string{"x", "-y"}}
	}
	*d = Direction{Axis: string(m[2]), Back: string(m[1]) == "-"}
	return nil
}

// String is the canonical text.
func (d Direction) String() string {
	if d.Back {
		return "-" + d.Axis
	}
	return d.Axis
}

// MarshalText writes the canonical text.
func (d Direction) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// Grammar says what is read as a Direction.
func (Direction) Grammar() quantity.Grammar { return directionGrammar }

// An Edge is where two faces of a fitting meet: `right top`.
type Edge struct{ A, B string }

var (
	edgeText    = regexp.MustCompile(`^(front|rear|left|right|top|bottom) +(front|rear|left|right|top|bottom)$`)
	edgeGrammar = quantity.Grammar{
		Name: "edge", Says: "the two faces that meet there",
		Pattern: edgeText.String(), Examples: []string{"right top", "front left"},
	}
)

// UnmarshalText reads `right top`; the error is a *quantity.Fault.
func (e *Edge) UnmarshalText(text []byte) error {
	m := edgeText.FindSubmatch(text)
	if m == nil || axisOf[string(m[1])] == axisOf[string(m[2])] {
		return &quantity.Fault{Wrong: "`" + string(text) + "` is no edge", Expected: "two faces that meet", Examples: edgeGrammar.Examples}
	}
	*e = Edge{string(m[1]), string(m[2])}
	return nil
}

// String is the canonical text.
func (e Edge) String() string { return e.A + " " + e.B }

// MarshalText writes the canonical text.
func (e Edge) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// Grammar says what is read as an Edge.
func (Edge) Grammar() quantity.Grammar { return edgeGrammar }

// An AmountForm is what an Amount is counted in.
type AmountForm int

const (
	Full  AmountForm = iota // all the way
	Slid                    // a length
	Swung                   // an angle
)

// An Amount is how far a move goes.
type Amount struct {
	Form   AmountForm
	Length quantity.Length // of Slid
	Angle  quantity.Angle  // of Swung
}

var amountGrammar = quantity.Grammar{
	Name: "amount", Says: "full, a length or an angle", Number: true,
	Pattern: "^(full|" + lengthPattern + `|-?[0-9]+(\.[0-9]+)? *°)$`, Examples: []string{"full", "600", "95°"},
}

// UnmarshalText reads `full`, a length or an angle; the error is a *quantity.Fault.
func (a *Amount) UnmarshalText(text []byte) error {
	if string(text) == "full" {
		*a = Amount{}
		return nil
	}
	if angle, err := quantity.ParseAngle(string(text)); err == nil {
		*a = Amount{Form: Swung, Angle: angle}
		return nil
	}
	length, err := quantity.ParseLength(string(text))
	if err != nil {
		return &quantity.Fault{Wrong: err.(*quantity.Fault).Wrong, Expected: amountGrammar.Says, Examples: amountGrammar.Examples, Near: err.(*quantity.Fault).Near}
	}
	*a = Amount{Form: Slid, Length: length}
	return nil
}

// No move of a van goes farther than this: beyond it a number was mistyped.
const (
	farthestSlid  quantity.Length = 3000
	farthestSwung quantity.Angle  = 360
)

// tooFar refuses what goes farther than any move of a van.
func (a Amount) tooFar() *quantity.Fault {
	switch {
	case a.Length < -farthestSlid || a.Length > farthestSlid:
		return &quantity.Fault{Wrong: "`" + a.String() + "` is too far to slide", Expected: "at most " + farthestSlid.String()}
	case a.Angle < -farthestSwung || a.Angle > farthestSwung:
		return &quantity.Fault{Wrong: "`" + a.String() + "` is more than a full turn", Expected: "at most " + farthestSwung.String()}
	}
	return nil
}

// String is the canonical text.
func (a Amount) String() string {
	switch a.Form {
	case Slid:
		return a.Length.String()
	case Swung:
		return a.Angle.String()
	}
	return "full"
}

// MarshalText writes the canonical text.
func (a Amount) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// Grammar says what is read as an Amount.
func (Amount) Grammar() quantity.Grammar { return amountGrammar }
