package sheet

import (
	"fmt"
	"math"
	"time"

	"tumblehome/quantity"
)

// five writes a length rounded to 5 mm, as a van is: 1 680.
func five(v float64) string { return whole(math.Round(v/5) * 5) }

// whole writes a number without decimals, thousands parted.
func whole(v float64) string { return quantity.Parted(v) }

// dateWords writes a day out: 30 May 2026.
func dateWords(d quantity.Date) string {
	return fmt.Sprintf("%d %s %d", d.Day, time.Month(d.Month), d.Year)
}
