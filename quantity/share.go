package quantity

var shares = kind{
	name: "share", says: "a share with its sign", suffix: " %", ten: 2,
	examples: []string{"35 %", "12.5 %"},
	units:    []unit{{name: "%", ten: -2}},
}

// Share is a part of a whole, kept as 0.35 and written 35 %; the value is in parts of one.
type Share float64

// ParseShare reads a text such as `35 %` or `12.5 %`; the error is a *Fault.
func ParseShare(text string) (Share, error) {
	v, err := shares.parse(text)
	return Share(v), err
}

// String is the canonical text.
func (q Share) String() string { return shares.write(float64(q)) }

// MarshalText writes the canonical text.
func (q Share) MarshalText() ([]byte, error) { return []byte(q.String()), nil }

// UnmarshalText reads what ParseShare reads.
func (q *Share) UnmarshalText(text []byte) error { return shares.read(text, (*float64)(q)) }

// Float is the value in parts of one.
func (q Share) Float() float64 { return float64(q) }

// Grammar says what is read as a Share.
func (Share) Grammar() Grammar { return shares.grammar() }

func (Share) of(v float64) Share               { return Share(v) }
func (Share) parse(text string) (Share, error) { return ParseShare(text) }
