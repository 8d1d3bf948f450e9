package quantity

import (
	"strconv"
	"strings"
)

const plusMinus = "±"

// ParseSpread reads `12`, `12 ± 3` and `12 ± 25 %`. The forms of three values
// and of one exact value are maps, which a document reads key by key.
func ParseSpread[Q Measure[Q]](text string) (Spread[Q], error) {
	before, after, even := strings.Cut(text, plusMinus)
	if !even {
		var q Q
		likely, err := q.parse(text)
		return About(likely), wider[Q](err)
	}
	s, err := parseEven[Q](strings.TrimRight(before, " "), strings.TrimLeft(after, " "))
	if err == nil && s.High.Float() < s.Low.Float() {
		err = &Fault{Wrong: "`" + clip(text) + "` has a minus after the ±"}
	}
	return s, wider[Q](err)
}

func parseEven[Q Measure[Q]](before, after string) (s Spread[Q], err error) {
	var q Q
	likely, err := q.parse(before)
	if err != nil {
		return s, err
	}
	half, err := parseHalf(likely, after)
	return Around(likely, half), err
}

// parseHalf reads what stands after the ±: a quantity or a share of likely.
// A share of a share is meant in points: 50 % ± 5 % is 45 % to 55 %.
func parseHalf[Q Measure[Q]](likely Q, text string) (half Q, err error) {
	if _, isShare := any(likely).(Share); isShare || !strings.HasSuffix(text, "%") {
		return half.parse(text)
	}
	share, err := ParseShare(text)
	if err != nil {
		return half, err
	}
	return likely.of(rounded(share.Float() * abs(likely.Float()))), nil
}

// wider makes a fault speak of the guesses that would do as well.
func wider[Q Measure[Q]](err error) error {
	fault, ok := err.(*Fault)
	if !ok {
		return err
	}
	var q Q
	_, plain := q.parse("")
	usual := plain.(*Fault)
	one := usual.Examples[0]
	if sample, err := q.parse(one); err == nil {
		low, high := q.of(rounded(0.8*sample.Float())), q.of(rounded(1.5*sample.Float()))
		usual.Examples = []string{one, one + " ± 25 %", "{likely: " + one + ", low: " + low.String() + ", high: " + high.String() + "}"}
	}
	return &Fault{Wrong: fault.Wrong, Expected: usual.Expected + " or a guess", Examples: usual.Examples, Near: fault.Near}
}

// String is `12`, `12 ± 3`, or for what has no text form the likely value. An
// even guess of which no half width gives both ends exactly is not even: see Canonical.
func (s Spread[Q]) String() string {
	if half, ok := s.half(); s.Form == Even && ok {
		return s.Likely.String() + " " + plusMinus + " " + half.String()
	}
	return s.Likely.String()
}

// Canonical is s in the form that can be written: an even guess whose ends are
// not the same way off becomes one of three values.
func (s Spread[Q]) Canonical() Spread[Q] {
	if _, ok := s.half(); s.Form == Even && !ok {
		s.Form = Three
	}
	if s.Form == Bare || s.Form == Exact {
		s.Low, s.High = s.Likely, s.Likely
	}
	return s
}

// MarshalText writes String.
func (s Spread[Q]) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// UnmarshalText reads what ParseSpread reads.
func (s *Spread[Q]) UnmarshalText(text []byte) error {
	got, err := ParseSpread[Q](string(text))
	if err == nil {
		*s = got
	}
	return err
}

// Parts are the canonical texts of a guess and of its values, for those who
// write the forms that are maps.
func (s Spread[Q]) Parts() (form Form, text, likely, low, high string) {
	s = s.Canonical()
	return s.Form, s.String(), s.Likely.String(), s.Low.String(), s.High.String()
}

// half is the shortest half width that Around would make s from.
func (s Spread[Q]) half() (half Q, ok bool) {
	off := s.High.Float() - s.Likely.Float()
	for digits := 1; digits <= 17; digits++ {
		v, err := strconv.ParseFloat(strconv.FormatFloat(off, 'e', digits-1, 64), 64)
		if err != nil {
			return half, false
		}
		half = half.of(v)
		if again := Around(s.Likely, half); again.Low == s.Low && again.High == s.High {
			return half, v >= 0
		}
	}
	return half, false
}

func abs(v float64) float64 {
	if v < 0 {
		return -v
	}
	return v
}
