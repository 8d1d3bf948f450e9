package sheet

import (
	"fmt"
	"math"
	"strconv"
	"time"

	"tumblehome/quantity"
)

// thin is the narrow blank that parts thousands.
const thin = "\u202f"

// five writes a length rounded to 5 mm, as a van is: 1 680.
func five(v float64) string { return whole(math.Round(v/5) * 5) }

// whole writes a number without decimals, thousands parted.
func whole(v float64) string {
	text := strconv.FormatFloat(math.Abs(math.Round(v)), 'f', 0, 64)
	for i := len(text) - 3; i > 0; i -= 3 {
		text = text[:i] + thin + text[i:]
	}
	if math.Round(v) < 0 {
		return "−" + text
	}
	return text
}

// dateWords writes a day out: 30 May 2026.
func dateWords(d quantity.Date) string {
	return fmt.Sprintf("%d %s %d", d.Day, time.Month(d.Month), d.Year)
}
