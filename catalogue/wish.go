package catalogue

import (
	"regexp"
	"strings"
	"unicode"

	"tumblehome/quantity"
)

// Wish is a beginner's words taken apart: "galley, about 1 m", "battery 100 Ah", "bunk bed 190 x 70 cm".
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
	text = decimalComma.ReplaceAllString(strings.ToLower(text), "$1.$2") // this is talk, not the document
	text = sizes.ReplaceAllStringFunc(text, func(size string) string {
		w.longest(size)
		return " "
	})
	fields := strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == ';' || unicode.IsSpace(r) })
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

var (
	decimalComma = regexp.MustCompile(`(\d),(\d)`)
	sizes        = regexp.MustCompile(`\d[\d.]*(?:\s*[a-z]{0,2}\s*[x×]\s*\d[\d.]*)+(?:\s*(?:mm|cm|m|in|ft)\b)?`) // 190 x 70 cm
	figures      = regexp.MustCompile(`\d[\d.]*`)
)

// longest takes the longest side of a size like "190 x 70 cm" for the length; a size without a unit, or one that cannot be read, is let go.
func (w *Wish) longest(size string) {
	unit := strings.TrimLeft(size[strings.LastIndexAny(size, "0123456789.")+1:], " ")
	for _, number := range figures.FindAllString(size, -1) {
		if l, err := quantity.ParseLength(number + " " + unit); err == nil && unit != "" {
			w.Long = max(w.Long, l)
		}
	}
}

// WithoutFigures are the words that do not begin with a figure: what is left of a wish whose sizes nobody understands.
func (w Wish) WithoutFigures() []string {
	var out []string
	for _, word := range w.Words {
		if word[0] < '0' || word[0] > '9' {
			out = append(out, word)
		}
	}
	return out
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
