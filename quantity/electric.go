package quantity

var powers = kind{
	name: "power", says: "a power", bare: true,
	examples: []string{"180", "2 kW"},
	units:    []unit{{name: "W"}, {name: "kW", ten: 3}},
}

// Power is a power; the value is in W.
type Power float64

// ParsePower reads a text such as `180` or `2 kW`; the error is a *Fault.
func ParsePower(text string) (Power, error) {
	v, err := powers.parse(text)
	return Power(v), err
}

// String is the canonical text.
func (q Power) String() string { return powers.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Power) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParsePower reads.
func (q *Power) UnmarshalText(text []byte) error { return powers.read(text, (*float64)(q)) }

// Float is the value in W.
func (q Power) Float() float64 { return float64(q) }

// Grammar says what is read as a Power.
func (Power) Grammar() Grammar { return powers.grammar() }

func (Power) of(v float64) Power               { return Power(v) }
func (Power) parse(text string) (Power, error) { return ParsePower(text) }

var voltages = kind{
	name: "voltage", says: "a voltage", bare: true,
	examples: []string{"12", "230 V"},
	units:    []unit{{name: "V"}},
}

// Voltage is a voltage; the value is in V.
type Voltage float64

// ParseVoltage reads a text such as `12` or `230 V`; the error is a *Fault.
func ParseVoltage(text string) (Voltage, error) {
	v, err := voltages.parse(text)
	return Voltage(v), err
}

// String is the canonical text.
func (q Voltage) String() string { return voltages.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Voltage) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseVoltage reads.
func (q *Voltage) UnmarshalText(text []byte) error { return voltages.read(text, (*float64)(q)) }

// Float is the value in V.
func (q Voltage) Float() float64 { return float64(q) }

// Grammar says what is read as a Voltage.
func (Voltage) Grammar() Grammar { return voltages.grammar() }

func (Voltage) of(v float64) Voltage               { return Voltage(v) }
func (Voltage) parse(text string) (Voltage, error) { return ParseVoltage(text) }

var currents = kind{
	name: "current", says: "a current", bare: true,
	examples: []string{"5", "20 A"},
	units:    []unit{{name: "A"}},
}

// Current is a current; the value is in A.
type Current float64

// ParseCurrent reads a text such as `5` or `20 A`; the error is a *Fault.
func ParseCurrent(text string) (Current, error) {
	v, err := currents.parse(text)
	return Current(v), err
}

// String is the canonical text.
func (q Current) String() string { return currents.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Current) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseCurrent reads.
func (q *Current) UnmarshalText(text []byte) error { return currents.read(text, (*float64)(q)) }

// Float is the value in A.
func (q Current) Float() float64 { return float64(q) }

// Grammar says what is read as a Current.
func (Current) Grammar() Grammar { return currents.grammar() }

func (Current) of(v float64) Current               { return Current(v) }
func (Current) parse(text string) (Current, error) { return ParseCurrent(text) }

var charges = kind{
	name: "charge", says: "a charge", bare: true,
	examples: []string{"100", "100 Ah"},
	units:    []unit{{name: "Ah"}},
}

// Charge is what a battery holds, counted in current and time; the value is in Ah.
type Charge float64

// ParseCharge reads a text such as `100` or `100 Ah`; the error is a *Fault.
func ParseCharge(text string) (Charge, error) {
	v, err := charges.parse(text)
	return Charge(v), err
}

// String is the canonical text.
func (q Charge) String() string { return charges.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Charge) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseCharge reads.
func (q *Charge) UnmarshalText(text []byte) error { return charges.read(text, (*float64)(q)) }

// Float is the value in Ah.
func (q Charge) Float() float64 { return float64(q) }

// Grammar says what is read as a Charge.
func (Charge) Grammar() Grammar { return charges.grammar() }

func (Charge) of(v float64) Charge               { return Charge(v) }
func (Charge) parse(text string) (Charge, error) { return ParseCharge(text) }

var energies = kind{
	name: "energy", says: "an energy", bare: true,
	examples: []string{"620", "1.2 kWh"},
	units:    []unit{{name: "Wh"}, {name: "kWh", ten: 3}},
}

// Energy is an energy; the value is in Wh.
type Energy float64

// ParseEnergy reads a text such as `620` or `1.2 kWh`; the error is a *Fault.
func ParseEnergy(text string) (Energy, error) {
	v, err := energies.parse(text)
	return Energy(v), err
}

// String is the canonical text.
func (q Energy) String() string { return energies.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Energy) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseEnergy reads.
func (q *Energy) UnmarshalText(text []byte) error { return energies.read(text, (*float64)(q)) }

// Float is the value in Wh.
func (q Energy) Float() float64 { return float64(q) }

// Grammar says what is read as a Energy.
func (Energy) Grammar() Grammar { return energies.grammar() }

func (Energy) of(v float64) Energy               { return Energy(v) }
func (Energy) parse(text string) (Energy, error) { return ParseEnergy(text) }
