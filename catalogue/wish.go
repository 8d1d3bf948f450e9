package catalogue

import (
	"strings"

	"tumblehome/quantity"
)

// Wish is a beginner's words taken apart: "galley, about 1 m", "battery 100 Ah".
// An amount that is not named is 0.
type Wish struct {
	Words    []string // small letters, without those that say nothing
	Long     quantity.Length
	Holds    quantity.Volume
	Watts    quantity.Power
	AmpHours quantity.Charge
}

// idle are words that say nothing about the thing.
var idle = map[string]bool{"a": true, "an": true, "the": true, "about": true, "roughly": true, "approx": true, "some": true, "of": true,
	"for": true, "with": true, "and": true, "to": true, "in": true, "on": true, "my": true, "our": true, "small": true, "big": true,
	"long": true, "wide": true, "new": true, "old": true, "i": true, "want": true, "need": true, "two": true, "one": true}

// ReadWish takes a text apart. What it does not understand it keeps as a word.
func ReadWish(text string) Wish {
	var w Wish
	fields := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return r == ' ' || r == ',' || r == ';' || r == '\t' || r == '\n' })
	for i := 0; i < len(fields); i++ {
		f := strings.Trim(fields[i], ".!?\"'()")
		if f == "" || idle[f] {
			continue
		}
		if f[0] >= '0' && f[0] <= '9' {
			if w.amount(f) {
				continue
			}
			if i+1 < len(fields) && w.amount(f+" "+fields[i+1]) {
				i++
				continue
			}
		}
		w.Words = append(w.Words, f)
	}
	return w
}

// amount reads a number with its unit; a bare number is no amount.
func (w *Wish) amount(text string) bool {
	unit := strings.TrimLeft(text, "0123456789. /")
	number := strings.TrimSpace(text[:len(text)-len(unit)])
	switch unit {
	case "mm", "cm", "m", "in", "ft":
		l, err := quantity.ParseLength(number + " " + unit)
		w.Long = l
		return err == nil
	case "l", "litre", "litres", "liter", "liters":
		v, err := quantity.ParseVolume(number)
		w.Holds = v
		return err == nil
	case "w", "watt", "watts":
		p, err := quantity.ParsePower(number)
		w.Watts = p
		return err == nil
	case "ah":
		c, err := quantity.ParseCharge(number)
		w.AmpHours = c
		return err == nil
	}
	return false
}
