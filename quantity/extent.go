package quantity

var lengths = kind{
	name: "length", says: "a length", bare: true,
	examples: []string{"3350", "3.35 m", "7 ft 2 in"},
	units: []unit{
		{name: "mm"}, {name: "cm", ten: 1}, {name: "m", ten: 3},
		{name: "in", factor: 25.4, halves: true}, {name: "ft", factor: 304.8, halves: true, then: "in"},
	},
}

// Length is a length along one axis; the value is in mm.
type Length float64

// ParseLength reads a text such as `3350` or `3.35 m` or `7 ft 2 in`; the error is a *Fault.
func ParseLength(text string) (Length, error) {
	v, err := lengths.parse(text)
	return Length(v), err
}

// String is the canonical text.
func (q Length) String() string { return lengths.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Length) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseLength reads.
func (q *Length) UnmarshalText(text []byte) error { return lengths.read(text, (*float64)(q)) }

// Float is the value in mm.
func (q Length) Float() float64 { return float64(q) }

// Grammar says what is read as a Length.
func (Length) Grammar() Grammar { return lengths.grammar() }

func (Length) of(v float64) Length               { return Length(v) }
func (Length) parse(text string) (Length, error) { return ParseLength(text) }

var areas = kind{
	name: "area", says: "an area with its unit", suffix: " m2",
	examples: []string{"0.02 m2", "40 cm2"},
	units: []unit{
		{name: "m2"}, {name: "cm2", ten: -4}, {name: "mm2", ten: -6}, {name: "in2", factor: 0.00064516},
	},
}

// Area is an area; the text always names its unit; the value is in m2.
type Area float64

// ParseArea reads a text such as `0.02 m2` or `40 cm2`; the error is a *Fault.
func ParseArea(text string) (Area, error) {
	v, err := areas.parse(text)
	return Area(v), err
}

// String is the canonical text.
func (q Area) String() string { return areas.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Area) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseArea reads.
func (q *Area) UnmarshalText(text []byte) error { return areas.read(text, (*float64)(q)) }

// Float is the value in m2.
func (q Area) Float() float64 { return float64(q) }

// Grammar says what is read as a Area.
func (Area) Grammar() Grammar { return areas.grammar() }

func (Area) of(v float64) Area               { return Area(v) }
func (Area) parse(text string) (Area, error) { return ParseArea(text) }

var sections = kind{
	name: "section", says: "a cable section", bare: true, suffix: " mm2",
	examples: []string{"1.5 mm2", "16 mm2"},
	units:    []unit{{name: "mm2"}, {name: "mm²"}}, // as pages and cables write it
}

// Section is the copper area of a cable; what is written always names its unit; the value is in mm2.
type Section float64

// ParseSection reads a text such as `1.5 mm2` or `16 mm2`; the error is a *Fault.
func ParseSection(text string) (Section, error) {
	v, err := sections.parse(text)
	return Section(v), err
}

// String is the canonical text.
func (q Section) String() string { return sections.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Section) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseSection reads.
func (q *Section) UnmarshalText(text []byte) error { return sections.read(text, (*float64)(q)) }

// Float is the value in mm2.
func (q Section) Float() float64 { return float64(q) }

// Grammar says what is read as a Section.
func (Section) Grammar() Grammar { return sections.grammar() }

func (Section) of(v float64) Section               { return Section(v) }
func (Section) parse(text string) (Section, error) { return ParseSection(text) }

var angles = kind{
	name: "angle", says: "an angle", suffix: "°",
	examples: []string{"95°", "30°"},
	units:    []unit{{name: "°"}},
}

// Angle is an angle, written 95°; the value is in degrees.
type Angle float64

// ParseAngle reads a text such as `95°` or `30°`; the error is a *Fault.
func ParseAngle(text string) (Angle, error) {
	v, err := angles.parse(text)
	return Angle(v), err
}

// String is the canonical text.
func (q Angle) String() string { return angles.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Angle) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseAngle reads.
func (q *Angle) UnmarshalText(text []byte) error { return angles.read(text, (*float64)(q)) }

// Float is the value in degrees.
func (q Angle) Float() float64 { return float64(q) }

// Grammar says what is read as a Angle.
func (Angle) Grammar() Grammar { return angles.grammar() }

func (Angle) of(v float64) Angle               { return Angle(v) }
func (Angle) parse(text string) (Angle, error) { return ParseAngle(text) }
