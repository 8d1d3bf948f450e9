package catalogue

import (
	"strconv"
	"strings"

	"tumblehome/quantity"
)

// Coverage is what one unit of a row, or one litre of it, is enough for:
// `2.98 m2`, `3.7 m`, `200 pieces`, `12 m2/l`.
type Coverage struct {
	Amount   float64
	Of       string // m2, m, l, pieces
	PerLitre bool
}

var coverages = quantity.Grammar{
	Name:     "coverage",
	Says:     "what one of it, or one litre, is enough for",
	Pattern:  `^[0-9]+(\.[0-9]+)? *(m2|m|l|pieces)(/l)?$`,
	Examples: []string{"2.98 m2", "12 m2/l", "200 pieces"},
}

// ParseCoverage reads a text such as `2.98 m2` or `12 m2/l`; the error is a *quantity.Fault.
func ParseCoverage(text string) (Coverage, error) {
	end := 0
	for end < len(text) && (text[end] == '.' || text[end] >= '0' && text[end] <= '9') {
		end++
	}
	number := text[:end]
	unit, perLitre := strings.CutSuffix(strings.TrimLeft(text[end:], " "), "/l")
	v, err := strconv.ParseFloat(number, 64)
	plain := number != "" && number[0] != '.' && number[end-1] != '.'
	known := unit == "m2" || unit == "m" || unit == "l" || unit == "pieces"
	if err != nil || !plain || !known || v > 1e6 {
		return Coverage{}, &quantity.Fault{Wrong: "`" + short(text) + "` is not a coverage", Expected: coverages.Says, Examples: coverages.Examples}
	}
	return Coverage{Amount: v, Of: unit, PerLitre: perLitre}, nil
}

// short keeps a quoted text short enough for a message.
func short(text string) string {
	if r := []rune(text); len(r) > 40 {
		return string(r[:40]) + "…"
	}
	return text
}

// String is the canonical text.
func (c Coverage) String() string {
	out := strconv.FormatFloat(c.Amount, 'f', -1, 64) + " " + c.Of
	if c.PerLitre {
		out += "/l"
	}
	return out
}

// MarshalText writes the canonical text.
func (c Coverage) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// UnmarshalText reads what ParseCoverage reads.
func (c *Coverage) UnmarshalText(text []byte) error {
	got, err := ParseCoverage(string(text))
	if err == nil {
		*c = got
	}
	return err
}

// Grammar says what is read as a Coverage.
func (Coverage) Grammar() quantity.Grammar { return coverages }
