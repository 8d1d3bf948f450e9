package quantity

var masses = kind{
	name: "mass", says: "a mass", bare: true,
	examples: []string{"13", "850 g", "26 lb"},
	units:    []unit{{name: "kg"}, {name: "g", ten: -3}, {name: "lb", factor: 0.45359237}},
}

// Mass is a mass; the value is in kg.
type Mass float64

// ParseMass reads a text such as `13` or `850 g` or `26 lb`; the error is a *Fault.
func ParseMass(text string) (Mass, error) {
	v, err := masses.parse(text)
	return Mass(v), err
}

// String is the canonical text.
func (q Mass) String() string { return masses.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Mass) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseMass reads.
func (q *Mass) UnmarshalText(text []byte) error { return masses.read(text, (*float64)(q)) }

// Float is the value in kg.
func (q Mass) Float() float64 { return float64(q) }

// Grammar says what is read as a Mass.
func (Mass) Grammar() Grammar { return masses.grammar() }

func (Mass) of(v float64) Mass               { return Mass(v) }
func (Mass) parse(text string) (Mass, error) { return ParseMass(text) }

var volumes = kind{
	name: "volume", says: "a volume", bare: true,
	examples: []string{"20", "500 ml", "5 gal-uk"},
	units: []unit{
		{name: "l"}, {name: "ml", ten: -3}, {name: "m3", ten: 3},
		{name: "gal-uk", factor: 4.54609}, {name: "gal-us", factor: 3.785411784},
	},
}

// Volume is a volume; the value is in litres.
type Volume float64

// ParseVolume reads a text such as `20` or `500 ml` or `5 gal-uk`; the error is a *Fault.
func ParseVolume(text string) (Volume, error) {
	v, err := volumes.parse(text)
	return Volume(v), err
}

// String is the canonical text.
func (q Volume) String() string { return volumes.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Volume) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseVolume reads.
func (q *Volume) UnmarshalText(text []byte) error { return volumes.read(text, (*float64)(q)) }

// Float is the value in litres.
func (q Volume) Float() float64 { return float64(q) }

// Grammar says what is read as a Volume.
func (Volume) Grammar() Grammar { return volumes.grammar() }

func (Volume) of(v float64) Volume               { return Volume(v) }
func (Volume) parse(text string) (Volume, error) { return ParseVolume(text) }

var densities = kind{
	name: "density", says: "a density", bare: true,
	examples: []string{"450", "450 kg/m3"},
	units:    []unit{{name: "kg/m3"}},
}

// Density is a density; the value is in kg/m3.
type Density float64

// ParseDensity reads a text such as `450` or `450 kg/m3`; the error is a *Fault.
func ParseDensity(text string) (Density, error) {
	v, err := densities.parse(text)
	return Density(v), err
}

// String is the canonical text.
func (q Density) String() string { return densities.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Density) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseDensity reads.
func (q *Density) UnmarshalText(text []byte) error { return densities.read(text, (*float64)(q)) }

// Float is the value in kg/m3.
func (q Density) Float() float64 { return float64(q) }

// Grammar says what is read as a Density.
func (Density) Grammar() Grammar { return densities.grammar() }

func (Density) of(v float64) Density               { return Density(v) }
func (Density) parse(text string) (Density, error) { return ParseDensity(text) }

var temperatures = kind{
	name: "temperature", says: "a temperature", bare: true,
	examples: []string{"14", "14 °C", "57 °F"},
	units:    []unit{{name: "°C"}, {name: "°F", factor: 5.0 / 9, offset: -32}},
}

// Temperature is a temperature; the value is in °C.
type Temperature float64

// ParseTemperature reads a text such as `14` or `14 °C` or `57 °F`; the error is a *Fault.
func ParseTemperature(text string) (Temperature, error) {
	v, err := temperatures.parse(text)
	return Temperature(v), err
}

// String is the canonical text.
func (q Temperature) String() string { return temperatures.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Temperature) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseTemperature reads.
func (q *Temperature) UnmarshalText(text []byte) error { return temperatures.read(text, (*float64)(q)) }

// Float is the value in °C.
func (q Temperature) Float() float64 { return float64(q) }

// Grammar says what is read as a Temperature.
func (Temperature) Grammar() Grammar { return temperatures.grammar() }

func (Temperature) of(v float64) Temperature               { return Temperature(v) }
func (Temperature) parse(text string) (Temperature, error) { return ParseTemperature(text) }

var perAreas = kind{
	name: "mass-per-area", says: "a mass per square metre", suffix: " kg/m2",
	examples: []string{"2.9 kg/m2", "900 g/m2"},
	units:    []unit{{name: "kg/m2"}, {name: "g/m2", ten: -3}},
}

// PerArea is the mass of a square metre of something laid; the value is in kg/m2.
type PerArea float64

// ParsePerArea reads a text such as `2.9 kg/m2` or `900 g/m2`; the error is a *Fault.
func ParsePerArea(text string) (PerArea, error) {
	v, err := perAreas.parse(text)
	return PerArea(v), err
}

// String is the canonical text.
func (q PerArea) String() string { return perAreas.write(float64(q)) }

// MarshalText writes the canonical text.
func (q PerArea) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParsePerArea reads.
func (q *PerArea) UnmarshalText(text []byte) error { return perAreas.read(text, (*float64)(q)) }

// Float is the value in kg/m2.
func (q PerArea) Float() float64 { return float64(q) }

// Grammar says what is read as a PerArea.
func (PerArea) Grammar() Grammar { return perAreas.grammar() }

func (PerArea) of(v float64) PerArea               { return PerArea(v) }
func (PerArea) parse(text string) (PerArea, error) { return ParsePerArea(text) }

var perLengths = kind{
	name: "mass-per-length", says: "a mass per metre", suffix: " kg/m",
	examples: []string{"0.4 kg/m", "120 g/m"},
	units:    []unit{{name: "kg/m"}, {name: "g/m", ten: -3}},
}

// PerLength is the mass of a metre of something; the value is in kg/m.
type PerLength float64

// ParsePerLength reads a text such as `0.4 kg/m` or `120 g/m`; the error is a *Fault.
func ParsePerLength(text string) (PerLength, error) {
	v, err := perLengths.parse(text)
	return PerLength(v), err
}

// String is the canonical text.
func (q PerLength) String() string { return perLengths.write(float64(q)) }

// MarshalText writes the canonical text.
func (q PerLength) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParsePerLength reads.
func (q *PerLength) UnmarshalText(text []byte) error { return perLengths.read(text, (*float64)(q)) }

// Float is the value in kg/m.
func (q PerLength) Float() float64 { return float64(q) }

// Grammar says what is read as a PerLength.
func (PerLength) Grammar() Grammar { return perLengths.grammar() }

func (PerLength) of(v float64) PerLength               { return PerLength(v) }
func (PerLength) parse(text string) (PerLength, error) { return ParsePerLength(text) }
