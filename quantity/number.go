package quantity

import (
	"math"
	"strconv"
	"strings"
)

const (
	longestNumber = 24   // characters of one number
	largestNumber = 1e12 // in the base unit
	leastNumber   = 1e-9 // in the base unit; nought is allowed as well
)

// takeNumber splits a plain decimal without sign from the front of s.
func takeNumber(s string) (number, rest string) {
	i := digits(s)
	if i > 0 && i+1 < len(s) && s[i] == '.' {
		if n := digits(s[i+1:]); n > 0 {
			i += 1 + n
		}
	}
	return s[:i], s[i:]
}

func digits(s string) int {
	i := 0
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return i
}

// shifted is number times ten to the power of ten, rounded once.
func shifted(number string, ten int) float64 {
	if ten != 0 {
		number += "e" + strconv.Itoa(ten)
	}
	v, _ := strconv.ParseFloat(number, 64) // takeNumber let only digits and a point through
	return v
}

// rounded drops the digits beyond the twelfth: the noise of converting units.
func rounded(v float64) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'e', 11, 64), 64)
	if err != nil {
		return v
	}
	return r
}

// plain is the shortest decimal that reads back as v times ten to the power of
// ten, without an exponent.
func plain(v float64, ten int) string {
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return "0"
	}
	if ten == 0 {
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	sign := ""
	if v < 0 {
		sign, v = "-", -v
	}
	mantissa, exponent, _ := strings.Cut(strconv.FormatFloat(v, 'e', -1, 64), "e")
	e, _ := strconv.Atoi(exponent)
	return sign + placePoint(strings.Replace(mantissa, ".", "", 1), e+ten+1)
}

// placePoint writes 0.digits times ten to the power of point.
func placePoint(digits string, point int) string {
	switch {
	case point <= 0:
		return "0." + strings.Repeat("0", -point) + digits
	case point >= len(digits):
		return digits + strings.Repeat("0", point-len(digits))
	}
	return digits[:point] + "." + digits[point:]
}
