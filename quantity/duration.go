package quantity

var durations = kind{
	name: "duration", says: "a time span", bare: true,
	examples: []string{"6", "6 h", "5 h 30 min"},
	units: []unit{
		{name: "h", then: "min"}, {name: "min", factor: 1.0 / 60},
		{name: "d", factor: 24}, {name: "weeks", factor: 168},
	},
}

// Duration is a time span; a day is 24 hours; the value is in hours.
type Duration float64

// ParseDuration reads a text such as `6` or `6 h` or `5 h 30 min`; the error is a *Fault.
func ParseDuration(text string) (Duration, error) {
	v, err := durations.parse(text)
	return Duration(v), err
}

// String is the canonical text.
func (q Duration) String() string { return durations.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Duration) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseDuration reads.
func (q *Duration) UnmarshalText(text []byte) error { return durations.read(text, (*float64)(q)) }

// Float is the value in hours.
func (q Duration) Float() float64 { return float64(q) }

// Grammar says what is read as a Duration.
func (Duration) Grammar() Grammar { return durations.grammar() }

func (Duration) of(v float64) Duration               { return Duration(v) }
func (Duration) parse(text string) (Duration, error) { return ParseDuration(text) }
