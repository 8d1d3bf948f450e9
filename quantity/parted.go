package quantity

import (
	"math"
	"strconv"
)

// Parted writes a number without decimals as words have it: its thousands parted by a narrow blank, with a true minus.
func Parted(v float64) string {
	text := strconv.FormatFloat(math.Abs(math.Round(v)), 'f', 0, 64)
	for i := len(text) - 3; i > 0; i -= 3 {
		text = text[:i] + "\u202f" + text[i:]
	}
	if math.Round(v) < 0 {
		return "−" + text
	}
	return text
}
