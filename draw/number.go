package draw

import (
	"math"
	"strconv"
)

// appendNumber writes a length rounded to a hundredth of a millimetre, without needless
// noughts and without a negative nought. What is no number at all is written as 0, so that a
// file stays readable; Check reports it.
func appendNumber(b []byte, v float64) []byte {
	r := math.Round(v * 100)
	if math.IsNaN(r) || math.IsInf(r, 0) || r == 0 {
		return append(b, '0')
	}
	if math.Abs(r) >= 1e15 {
		return strconv.AppendFloat(b, v, 'f', 0, 64)
	}
	n := int64(r)
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	b = strconv.AppendInt(b, n/100, 10)
	cents := n % 100
	if cents == 0 {
		return b
	}
	b = append(b, '.', byte('0'+cents/10))
	if cents%10 != 0 {
		b = append(b, byte('0'+cents%10))
	}
	return b
}

// appendNumbers writes several numbers with a blank between.
func appendNumbers(b []byte, values ...float64) []byte {
	for i, v := range values {
		if i > 0 {
			b = append(b, ' ')
		}
		b = appendNumber(b, v)
	}
	return b
}

func number(v float64) string { return string(appendNumber(nil, v)) }
