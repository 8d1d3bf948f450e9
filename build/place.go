package build

import (
	"strings"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// A Place is where a fitting stands: one rule for each axis, any of them left
// out, or not decided yet.
type Place struct {
	X         AxisRule `doc:"x" range:"-20000..20000" says:"along the van: front to rear"`
	Y         AxisRule `doc:"y" range:"-20000..20000" says:"across: left to right"`
	Z         AxisRule `doc:"z" range:"-20000..20000" says:"up; left out, it stands on the floor"`
	Undecided bool     // `undecided`: no place yet
}

func (p *Place) readOther(n *tree.Node) *quantity.Fault {
	if n.Kind == tree.Scalar && n.Text == undecided {
		p.Undecided = true
		return nil
	}
	return &quantity.Fault{Wrong: shown(n) + " is no place", Expected: "{x, y, z} or undecided"}
}

func (p *Place) writeOther() *tree.Node {
	if p.Undecided {
		return tree.Plain(undecided)
	}
	return nil
}

func (p *Place) otherForm() other {
	return other{Name: "undecided-place", Says: "no place yet", Schema: schemaOf{"const": undecided}}
}

// A Point3 is a corner of a run: a rule without size on each axis, or the middle
// of a fitting's face.
type Point3 struct {
	X  AxisRule `doc:"x,need" range:"-20000..20000" says:"along the van"`
	Y  AxisRule `doc:"y,need" range:"-20000..20000" says:"across"`
	Z  AxisRule `doc:"z,need" range:"-20000..20000" says:"up"`
	At Point    // the face, where X, Y and Z are left out
}

func (p *Point3) readOther(n *tree.Node) *quantity.Fault {
	wrong := &quantity.Fault{Wrong: shown(n) + " is no point", Expected: "{x, y, z} or a fitting's face", Examples: []string{"battery.top"}}
	if n.Kind != tree.Scalar {
		return wrong
	}
	at, fault := parsePoint(n.Text)
	if fault == nil && (at.Of == "" || at.Plus != 0) {
		fault = wrong
	}
	p.At = at
	return fault
}

// Points is the face, if it is one.
func (p Point3) Points() []Point {
	if p.At.Of == "" {
		return nil
	}
	return []Point{p.At}
}

func (p *Point3) writeOther() *tree.Node {
	if p.At.Of != "" {
		return tree.Plain(p.At.String())
	}
	return nil
}

func (p *Point3) otherForm() other {
	return other{Name: "face", Says: "the middle of a fitting's face", Schema: schemaOf{
		"type": "string", "pattern": "^" + idPattern + `\.(front|rear|left|right|top|bottom)$`, "examples": []string{"battery.top", "galley.rear"},
	}}
}

// An Extent runs along one axis from less to more.
type Extent struct{ From, To quantity.Length }

var extentGrammar = quantity.Grammar{
	Name: "extent", Says: "from and to",
	Pattern: "^" + lengthPattern + ` *\.\. *` + lengthPattern + "$", Examples: []string{"150..1300", "-760..760"},
}

// ParseExtent reads `150..1300`; the error is a *quantity.Fault.
func ParseExtent(text string) (Extent, error) {
	wrong := func(says, near string) error {
		return &quantity.Fault{Wrong: says, Expected: "from and to", Examples: extentGrammar.Examples, Near: near}
	}
	low, high, ok := strings.Cut(text, "..")
	if !ok {
		return Extent{}, wrong("`"+text+"` does not say from where to where", "")
	}
	from, err := quantity.ParseLength(strings.TrimRight(low, " "))
	if err != nil {
		return Extent{}, wrong(err.(*quantity.Fault).Wrong, "")
	}
	to, err := quantity.ParseLength(strings.TrimLeft(high, " "))
	if err != nil {
		return Extent{}, wrong(err.(*quantity.Fault).Wrong, "")
	}
	if from >= to {
		return Extent{}, wrong("`"+text+"` does not run from less to more", Extent{to, from}.String())
	}
	return Extent{from, to}, nil
}

// String is the canonical text.
func (e Extent) String() string { return e.From.String() + ".." + e.To.String() }

// MarshalText writes the canonical text.
func (e Extent) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// UnmarshalText reads what ParseExtent reads.
func (e *Extent) UnmarshalText(text []byte) error {
	got, err := ParseExtent(string(text))
	if err == nil {
		*e = got
	}
	return err
}

// Grammar says what is read as an Extent.
func (Extent) Grammar() quantity.Grammar { return extentGrammar }

// Length is how long it is.
func (e Extent) Length() quantity.Length { return e.To - e.From }

// ends are the least and the most of what it reaches.
func (e Extent) ends() (low, high float64) { return e.From.Float(), e.To.Float() }

// Mid is its middle.
func (e Extent) Mid() quantity.Length { return (e.From + e.To) / 2 }
