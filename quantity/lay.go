package quantity

import "strings"

// A Basis is what a catalogue mass is counted by.
type Basis string

const (
	Each        Basis = ""
	Metre       Basis = "m"
	SquareMetre Basis = "m2"
)

// A Lay is a mass by the piece, by the metre or by the square metre: `0.2`,
// `0.4 kg/m`, `2.9 kg/m2`. Amount is in kg.
type Lay struct {
	Amount float64
	Per    Basis
}

var lays = Grammar{
	Name: "lay", Says: "a mass: of the piece in kg, of a metre, or of a square metre", Number: true,
	Pattern:  "^(" + masses.pattern() + "|" + perLengths.pattern() + "|" + perAreas.pattern() + ")$",
	Examples: []string{"0.2", "0.4 kg/m", "2.9 kg/m2"},
}

// ParseLay reads a text such as `0.2`, `0.4 kg/m` or `2.9 kg/m2`; the error is a *Fault.
func ParseLay(text string) (Lay, error) {
	kind, basis := &masses, Each
	switch {
	case strings.HasSuffix(text, "/m2"):
		kind, basis = &perAreas, SquareMetre
	case strings.Contains(text, "/"):
		kind, basis = &perLengths, Metre
	}
	v, err := kind.parse(text)
	if err != nil {
		f := err.(*Fault)
		return Lay{}, &Fault{Wrong: f.Wrong, Expected: "a mass", Examples: lays.Examples, Near: f.Near}
	}
	return Lay{Amount: v, Per: basis}, nil
}

// String is the canonical text.
func (l Lay) String() string {
	switch l.Per {
	case Metre:
		return perLengths.write(l.Amount)
	case SquareMetre:
		return perAreas.write(l.Amount)
	}
	return masses.write(l.Amount)
}

// MarshalText writes the canonical text.
func (l Lay) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// UnmarshalText reads what ParseLay reads.
func (l *Lay) UnmarshalText(text []byte) error {
	got, err := ParseLay(string(text))
	if err == nil {
		*l = got
	}
	return err
}

// Grammar says what is read as a Lay.
func (Lay) Grammar() Grammar { return lays }
