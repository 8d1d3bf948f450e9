package words

import (
	"math"
	"strconv"
	"strings"
)

// thin is the narrow blank that parts thousands and stands before a unit.
const thin = "\u202f"

// step is what figures of a unit are rounded to for reading, and shown decimals.
type step struct {
	by       float64
	decimals int
}

var steps = map[string]step{
	"mm": {5, 0}, "kg": {5, 0}, "GBP": {5, 0}, "EUR": {5, 0}, "USD": {5, 0},
	"m2": {0.1, 1}, "m3": {0.1, 1}, "m": {0.1, 1}, "l": {1, 0}, "%": {1, 0}, "h": {1, 0}, "1": {1, 0}, "°": {1, 0},
	"°C": {1, 0}, "kWh/m2": {0.1, 1},
	"W/K": {1, 0}, "W/m2K": {0.1, 1}, "ppm": {100, 0}, "g": {10, 0}, "g/m2": {10, 0}, "kWh": {0.1, 1}, "cm2": {5, 0},
	"Wh": {10, 0}, "Ah": {5, 0}, "A": {1, 0}, "W": {5, 0}, "d": {0.5, 1},
}

// shorted is a current that flows only into a short; no battery is known better than to a hundred amperes there.
const shorted = 1000

// severalDays are no longer told to the half day.
const severalDays = 4

var signs = map[string]string{
	"GBP": "£", "EUR": "€", "USD": "$",
}

var spelled = map[string]string{
	"m2": "m²", "m3": "m³", "1": "", "mm2": "mm²", "kWh/m2": "kWh/m²", "W/m2K": "W/m²K", "g/m2": "g/m²", "cm2": "cm²", "d": "days",
}

// Round rounds a value to what a van is.
func Round(value float64, unit string) float64 {
	s, ok := steps[unit]
	if !ok {
		return value
	}
	switch {
	case unit == "A" && math.Abs(value) >= shorted:
		s.by = 100
	case unit == "d" && math.Abs(value) >= severalDays:
		s.by = 1
	}
	return math.Round(value/s.by)*s.by + 0 // + 0 turns -0 into 0
}

// Amount writes a value rounded to what a van is, with its unit: "1 358 kg", "£4 250".
func Amount(value float64, unit string) string {
	rounded, decimals := Round(value, unit), steps[unit].decimals
	if unit == "d" && rounded == math.Trunc(rounded) { // half days have a decimal, whole ones none
		decimals = 0
	}
	return withUnit(plain(rounded, decimals), unit)
}

// near is how close to its limit, as a part of it, a value is written finer.
const near = 0.015

// Near writes a value beside its limit: rounded, but finer close to it, where rounding could hide on which side of the limit it
// stands.
func Near(value, limit float64, unit string) string {
	rounded := Round(value, unit)
	sameSide := (value > limit) == (rounded > limit) && (value < limit) == (rounded < limit)
	if sameSide && math.Abs(value-limit) > near*math.Abs(limit) {
		return Amount(value, unit)
	}
	return Fine(value, unit)
}

// Fine writes a value one step finer than Amount does, for differences and for values close to a limit.
func Fine(value float64, unit string) string {
	decimals := steps[unit].decimals
	if steps[unit].by <= 1 && unit != "1" { // a count is whole however close one looks
		decimals++
	}
	return withUnit(plain(value, decimals), unit)
}

// Signed writes a change: "+12 kg", "−12 kg", "no change".
func Signed(value float64, unit string) string {
	text := Fine(math.Abs(value), unit)
	switch {
	case text == Fine(0, unit):
		return "no change"
	case value < 0:
		return "−" + text
	}
	return "+" + text
}

func withUnit(number, unit string) string {
	if sign, ok := signs[unit]; ok {
		if strings.HasPrefix(number, "−") {
			return "−" + sign + strings.TrimPrefix(number, "−")
		}
		return sign + number
	}
	name, ok := spelled[unit]
	if !ok {
		name = unit
	}
	if unit == "d" && number == "1" {
		name = "day"
	}
	if name == "" {
		return number
	}
	return number + thin + name
}

// plain writes a number with parted thousands and a true minus.
func plain(value float64, decimals int) string {
	text := strconv.FormatFloat(math.Abs(value), 'f', decimals, 64)
	whole, rest, _ := strings.Cut(text, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + thin + whole[i:]
	}
	if rest != "" {
		whole += "." + rest
	}
	if value < 0 && strings.ContainsAny(text, "123456789") {
		return "−" + whole
	}
	return whole
}
