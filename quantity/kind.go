package quantity

import (
	"math"
	"strings"
)

// A unit is one way of counting a kind of quantity.
type unit struct {
	name   string
	ten    int     // base units = number times ten to the power of ten …
	factor float64 // … times factor, where factor is not nought
	offset float64 // added before the factor (degrees Fahrenheit only)
	then   string  // the smaller unit that may follow: ft then in, h then min
	halves bool    // fractions such as 3 1/2 may stand before it
}

// A kind is all there is to know about reading and writing one quantity.
type kind struct {
	name     string // "length"
	says     string // "a length"
	bare     bool   // a bare number is in the base unit
	suffix   string // what is written after the number
	ten      int    // written number = value times ten to the power of ten
	units    []unit
	examples []string
}

// read is parse for UnmarshalText.
func (k *kind) read(text []byte, v *float64) error {
	got, err := k.parse(string(text))
	if err == nil {
		*v = got
	}
	return err
}

// write is the canonical text of a value in the base unit.
func (k *kind) write(v float64) string { return plain(v, k.ten) + k.suffix }

// parse reads a text and gives the value in the base unit.
func (k *kind) parse(text string) (float64, error) {
	body, sign := text, 1.0
	if strings.HasPrefix(text, "-") {
		body, sign = text[1:], -1
	}
	v, rest, u := k.part(body)
	switch {
	case rest == body:
		return 0, k.notANumber(text)
	case u == nil && rest == "" && k.bare:
		return k.within(text, sign*v)
	case u == nil && rest == "":
		return 0, k.fault("`"+text+"` has no unit", text+k.suffix)
	case u == nil:
		return 0, k.badUnit(text, rest)
	case rest != "":
		more, fault := k.smaller(text, rest, u)
		if fault != nil {
			return 0, fault
		}
		v = rounded(v + more)
	case u.offset != 0:
		return k.within(text, rounded((sign*v+u.offset)*u.factor))
	}
	return k.within(text, sign*v)
}

// smaller reads the second part of `7 ft 2 in`.
func (k *kind) smaller(text, rest string, first *unit) (float64, *Fault) {
	body := strings.TrimLeft(rest, " ")
	more, left, u := k.part(body)
	switch {
	case first.then == "" || left == body:
		return 0, k.badUnit(text, first.name+rest)
	case u == nil && left == "":
		return 0, k.fault("`"+text+"` ends without a unit", text+" "+first.then)
	case u == nil || u.name != first.then || left != "":
		return 0, k.fault("`"+clip(text)+"` is not "+k.says, "")
	}
	return more, nil
}

// part reads one number and its unit from the front of s. Without a unit the
// number is taken in the base unit and u is nil; rest == s means no number.
// A unit with an offset leaves its number as it stands.
func (k *kind) part(s string) (v float64, rest string, u *unit) {
	whole, after := takeNumber(s)
	if whole == "" || len(whole) > longestNumber {
		return 0, s, nil
	}
	fraction, afterFraction := takeFraction(whole, after)
	unitText := strings.TrimLeft(afterFraction, " ")
	if u = k.unitAt(unitText); u == nil {
		return shifted(whole, -k.ten), after, nil
	}
	rest = unitText[len(u.name):]
	switch {
	case afterFraction != after && (!u.halves || fraction == 0):
		return 0, s, nil
	case afterFraction != after:
		return rounded(fraction * u.factor), rest, u
	case u.offset != 0:
		return shifted(whole, 0), rest, u
	case u.factor != 0:
		return rounded(shifted(whole, 0) * u.factor), rest, u
	}
	return shifted(whole, u.ten), rest, u
}

// takeFraction reads `1/2` or `3 1/2`, of which whole was already taken.
// Where no fraction stands, rest is after; one that makes no sense is nought.
func takeFraction(whole, after string) (v float64, rest string) {
	if strings.Contains(whole, ".") {
		return 0, after
	}
	top, slash := whole, after
	if blank := strings.TrimLeft(after, " "); blank != after {
		n := digits(blank)
		top, slash = blank[:n], blank[n:]
	}
	if top == "" || !strings.HasPrefix(slash, "/") {
		return 0, after
	}
	n := digits(slash[1:])
	bottom, rest := slash[1:1+n], slash[1+n:]
	if n == 0 || n > 4 || len(top) > 4 || shifted(bottom, 0) == 0 {
		return 0, rest
	}
	v = shifted(top, 0) / shifted(bottom, 0)
	if len(slash) != len(after) {
		v += shifted(whole, 0)
	}
	return v, rest
}

// unitAt finds the longest unit that s begins with and that ends there.
func (k *kind) unitAt(s string) *unit {
	var found *unit
	for i := range k.units {
		u := &k.units[i]
		if !strings.HasPrefix(s, u.name) || found != nil && len(found.name) >= len(u.name) {
			continue
		}
		next := s[len(u.name):]
		if next == "" || next[0] == ' ' || u.then != "" && digits(next) > 0 {
			found = u
		}
	}
	return found
}

func (k *kind) within(text string, v float64) (float64, error) {
	size := math.Abs(v)
	switch {
	case v == 0:
		return 0, nil // never minus nought
	case size > largestNumber:
		return 0, k.fault("`"+text+"` is far too large", "")
	case size < leastNumber:
		return 0, k.fault("`"+text+"` is far too small", "")
	}
	return v, nil
}
