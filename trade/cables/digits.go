package cables

import (
	"fmt"
	"math"

	"tumblehome/quantity"
)

// digits writes a number with so many digits that count, and a larger one whole: 2 000, never 2e+03.
func digits(v float64, n int) string {
	if math.Abs(v) >= math.Pow10(n)-0.5 {
		return quantity.Parted(v)
	}
	return fmt.Sprintf("%.*g", n, v)
}
