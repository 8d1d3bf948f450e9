package quantity

import "strings"

// A Period is what a rate is counted over.
type Period string

const (
	Hourly  Period = "h"
	Daily   Period = "day"
	Nightly Period = "night"
	ATrip   Period = "trip"
	Monthly Period = "month"
	Yearly  Period = "year"
)

var periods = []string{"h", "day", "night", "trip", "month", "year"}

// A Rate is an amount in a period: `2 /month`, `1 h/day`, `2 l/day`. Unit is the
// base unit of what is counted ("h", "l", "kg", "Wh", "Ah", "mm"), empty for a bare count.
type Rate struct {
	Amount float64
	Unit   string
	Per    Period
}

// rated are the kinds a rate may be of, in the order their units are looked for.
var rated = []*kind{&durations, &volumes, &masses, &energies, &charges, &lengths}

var rates = Grammar{
	Name: "rate", Says: "an amount in a period: per h, day, night, trip, month or year",
	Pattern:  `^-?` + numberPattern + `( *(` + ratePattern() + `))? */(` + strings.Join(periods, "|") + `)$`,
	Examples: []string{"2 /month", "1 h/day", "2 l/day"},
}

func ratePattern() string {
	var names []string
	for _, k := range rated {
		names = append(names, k.unitNames()...)
	}
	return strings.Join(names, "|")
}

// ParseRate reads a text such as `2 /month` or `1 h/day`; the error is a *Fault.
func ParseRate(text string) (Rate, error) {
	amount, per, ok := cutLast(text, "/")
	if !ok {
		return Rate{}, rateFault("`"+clip(text)+"` does not say per what", "")
	}
	amount = strings.TrimRight(amount, " ")
	if !contains(periods, per) {
		return Rate{}, rateFault("`"+clip(text)+"` has the unknown period `"+clip(per)+"`", Near(per, periods))
	}
	if v, err := counts.parse(amount); err == nil {
		return Rate{Amount: v, Per: Period(per)}, nil
	}
	for _, k := range rated {
		if v, err := k.parse(amount); err == nil {
			return Rate{Amount: v, Unit: k.units[0].name, Per: Period(per)}, nil
		}
	}
	_, err := counts.parse(amount)
	fault := err.(*Fault)
	return Rate{}, rateFault(fault.Wrong, fault.Near)
}

// counts is the kind of a bare number; its units are those a rate may have, so
// that a slip in one of them is recognised.
var counts = kind{name: "count", says: "a number", bare: true, examples: []string{"2"}}

func rateFault(wrong, near string) *Fault {
	return &Fault{Wrong: wrong, Expected: "a rate", Examples: rates.Examples, Near: near}
}

// String is the canonical text.
func (r Rate) String() string { return plain(r.Amount, 0) + " " + r.Unit + "/" + string(r.Per) }

// MarshalText writes the canonical text.
func (r Rate) MarshalText() ([]byte, error) { return []byte(r.String()), nil }

// UnmarshalText reads what ParseRate reads.
func (r *Rate) UnmarshalText(text []byte) error {
	got, err := ParseRate(string(text))
	if err == nil {
		*r = got
	}
	return err
}

// Grammar says what is read as a Rate.
func (Rate) Grammar() Grammar { return rates }

func cutLast(s, sep string) (before, after string, found bool) {
	if i := strings.LastIndex(s, sep); i >= 0 {
		return s[:i], s[i+len(sep):], true
	}
	return s, "", false
}

func contains(words []string, word string) bool {
	for _, w := range words {
		if w == word {
			return true
		}
	}
	return false
}
