package quantity

import (
	"strconv"
	"strings"
)

const plusMinus = "±"

// ParseSpread reads `12`, `12 ± 3` and `12 ± 25 %`. The forms with three values
// and with `exactly` are maps, which the document reads with SpreadOf.
func ParseSpread[Q Measure[Q]](text string) (Spread[Q], error) {
	var q Q
	before, after, even := strings.Cut(text, plusMinus)
	if !even {
		likely, err := q.parse(text)
		if err != nil {
			return Spread[Q]{}, wider(err)
		}
		return About(likely), nil
	}
	likely, err := q.parse(strings.TrimRight(before, " "))
	if err != nil {
		return Spread[Q]{}, wider(err)
	}
	half, err := parseHalf(likely, strings.TrimLeft(after, " "))
	if err != nil {
		return Spread[Q]{}, wider(err)
	}
	if half.Float() < 0 {
		return Spread[Q]{}, wider(&Fault{Wrong: "`" + text + "` has a minus after the ±", Expected: q.Grammar().Says})
	}
	return Around(likely, half), nil
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

// wider adds the spread forms to the examples of a fault.
func wider(err error) error {
	fault, ok := err.(*Fault)
	if !ok {
		return err
	}
	f := *fault
	f.Expected += " or a guess"
	f.Examples = append(f.Examples[:min(1, len(f.Examples)):1], "12 ± 3", "12 ± 25 %", "{likely: 12, low: 9, high: 20}")
	return &f
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
