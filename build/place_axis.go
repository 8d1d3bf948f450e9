package build

import (
	"strings"

	"tumblehome/quantity"
)

// An AxisForm is how a rule ties a fitting on one axis.
type AxisForm int

const (
	LeftOut AxisForm = iota // no rule
	LowAt                   // a length: its low face lies there
	Against                 // a face: it stands against it, or that far from it
	From                    // its low face lies at the point
	To                      // its high face lies at the point
	Mid                     // its middle lies at the point
	Between                 // both faces: the size on this axis is left out
)

// An AxisRule ties a fitting on one axis. B is only of use for Between.
type AxisRule struct {
	Form AxisForm
	A, B Point
}

var axisForms = map[string]AxisForm{"from": From, "to": To, "mid": Mid}

// ParseAxisRule reads `40`, `right - 30`, `from galley.front`, `to rear`,
// `mid 0` or `front..galley.front`; the error is a *quantity.Fault.
func ParseAxisRule(text string) (AxisRule, error) {
	rule, fault := parseAxisRule(text)
	if fault != nil {
		return AxisRule{}, fault
	}
	return rule, nil
}

func parseAxisRule(text string) (rule AxisRule, fault *quantity.Fault) {
	if low, high, ok := strings.Cut(text, ".."); ok {
		rule.Form = Between
		if rule.A, fault = parsePoint(strings.TrimRight(low, " ")); fault == nil {
			rule.B, fault = parsePoint(strings.TrimLeft(high, " "))
		}
		if fault == nil && rule.A.Face == "" && rule.B.Face == "" && rule.A.Plus >= rule.B.Plus {
			fault = axisFault("`"+text+"` does not run from less to more", "")
		}
		return rule, fault
	}
	word, rest, _ := strings.Cut(text, " ")
	if form, ok := axisForms[word]; ok {
		rule.Form = form
		rule.A, fault = parsePoint(strings.TrimLeft(rest, " "))
		return rule, fault
	}
	rule.Form = LowAt
	if rule.A, fault = parsePoint(text); rule.A.Face != "" {
		rule.Form = Against
	}
	return rule, fault
}

func axisFault(wrong, near string) *quantity.Fault {
	return &quantity.Fault{Wrong: wrong, Expected: axisGrammar.Says, Examples: axisGrammar.Examples, Near: near}
}

// String is the canonical text, empty for no rule.
func (a AxisRule) String() string {
	switch a.Form {
	case LeftOut:
		return ""
	case From:
		return "from " + a.A.String()
	case To:
		return "to " + a.A.String()
	case Mid:
		return "mid " + a.A.String()
	case Between:
		return a.A.String() + ".." + a.B.String()
	}
	return a.A.String()
}

// MarshalText writes the canonical text.
func (a AxisRule) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// UnmarshalText reads what ParseAxisRule reads.
func (a *AxisRule) UnmarshalText(text []byte) error {
	rule, err := ParseAxisRule(string(text))
	if err == nil {
		*a = rule
	}
	return err
}

// Points are the points the rule names.
func (a AxisRule) Points() []Point {
	switch a.Form {
	case LeftOut:
		return nil
	case Between:
		return []Point{a.A, a.B}
	}
	return []Point{a.A}
}

// sizePattern is a length without its minus, lengthPattern one with it.
var (
	sizePattern   = strings.TrimSuffix(strings.TrimPrefix(quantity.Length(0).Grammar().Pattern, "^-?"), "$")
	lengthPattern = "-?" + sizePattern
	pointPattern  = "(" + facePattern + "( *[-+] *" + sizePattern + ")?|" + lengthPattern + ")"
)

var axisGrammar = quantity.Grammar{
	Name: "axis", Number: true,
	Says:     "a length, a face with or without a length, or a rule with from, to, mid or ..",
	Pattern:  "^((from|to|mid) +)?" + pointPattern + "$|^" + pointPattern + ` *\.\. *` + pointPattern + "$",
	Examples: []string{"right - 30", "from galley.front", "front..rear"},
}

// Grammar says what is read as an AxisRule.
func (AxisRule) Grammar() quantity.Grammar { return axisGrammar }

// ends are the least and the most length the rule names, be it from a face.
func (a AxisRule) ends() (low, high float64) {
	for i, p := range a.Points() {
		if i == 0 {
			low, high = p.Plus.Float(), p.Plus.Float()
		}
		low, high = min(low, p.Plus.Float()), max(high, p.Plus.Float())
	}
	return low, high
}

// axisOf tells along which axis each face lies.
var axisOf = map[string]string{
	"front": "x", "rear": "x", "left": "y", "right": "y", "floor": "z", "roof": "z", "top": "z", "bottom": "z",
}

// facesOn are the words for the faces of one axis.
var facesOn = map[string]string{"x": "front or rear", "y": "left or right", "z": "floor, roof, top or bottom"}

// misplaced is a face of the rule that does not lie on the axis, or empty.
func (a AxisRule) misplaced(axis string) string {
	for _, p := range a.Points() {
		if p.Face != "" && axisOf[p.Face] != axis {
			return p.Face
		}
	}
	return ""
}
