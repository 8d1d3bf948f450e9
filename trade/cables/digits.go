package cables

import (
	"math"
	"strconv"
)

// digits writes a number with no more than so many digits that count, never with a power of ten: 2000, not 2e+03.
func digits(v float64, n int) string {
	if v == 0 {
		return "0"
	}
	after := n - 1 - int(math.Floor(math.Log10(math.Abs(v))))
	if after >= 0 {
		v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'f', after, 64), 64)
	} else {
		step := math.Pow(10, float64(-after))
		v = math.Round(v/step) * step
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
