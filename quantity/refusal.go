package quantity

import (
	"regexp"
	"strings"
)

var (
	commaDecimal = regexp.MustCompile(`^(-?[0-9]+),([0-9]+)`)
	commaGroups  = regexp.MustCompile(`^-?[1-9][0-9]{0,2}(,[0-9]{3})+(\.[0-9]+)?( *(mm|g|kg|W|Wh|N|EUR|GBP|USD))?$`)
	exponent     = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?[eE][+-]?[0-9]+$`)
	bareFraction = regexp.MustCompile(`^-?([0-9]+ +)?[0-9]+/[0-9]+$`)
	grouped      = regexp.MustCompile(`^-?[0-9]{1,3}( [0-9]{3})+$`)
	pointFirst   = regexp.MustCompile(`^-?\.[0-9]`)
)

func (k *kind) fault(wrong, near string) *Fault {
	return &Fault{Wrong: wrong, Expected: k.says, Examples: k.examples, Near: near}
}

// notANumber explains a text that does not begin with a number.
func (k *kind) notANumber(text string) *Fault {
	switch {
	case text == "":
		return k.fault("nothing is written here", "")
	case strings.HasPrefix(text, "+"):
		return k.fault("`"+text+"` begins with a plus, which is left out", text[1:])
	case strings.HasPrefix(text, "−"):
		return k.fault("`"+text+"` has a printer's minus, which is written `-`", "-"+strings.TrimPrefix(text, "−"))
	case pointFirst.MatchString(text):
		return k.fault("`"+text+"` begins with the point", strings.Replace(text, ".", "0.", 1))
	case strings.Trim(text, " ") != text:
		return k.fault("`"+text+"` has a blank before or after it", strings.Trim(text, " "))
	}
	return k.fault("`"+clip(text)+"` is not "+k.says, "")
}

// badUnit explains a number that is followed by something else than a unit
// of this kind; rest is what follows it.
func (k *kind) badUnit(text, rest string) *Fault {
	word, _, _ := strings.Cut(strings.TrimLeft(rest, " "), " ")
	switch {
	case commaGroups.MatchString(text):
		return k.fault(withGroups(text))
	case commaDecimal.MatchString(text):
		return k.fault("`"+text+"` has a comma; the decimal mark is a point", commaDecimal.ReplaceAllString(text, "$1.$2"))
	case exponent.MatchString(text):
		return k.fault("`"+text+"` is written with an exponent; write it out", "")
	case bareFraction.MatchString(text):
		return k.fault("`"+text+"` is a fraction, which only `in` and `ft` may have", "")
	case grouped.MatchString(text):
		return k.fault("`"+text+"` has blanks inside the number", strings.ReplaceAll(text, " ", ""))
	case strings.TrimRight(text, " ") != text:
		return k.fault("`"+text+"` has a blank before or after it", strings.Trim(text, " "))
	}
	return k.fault("`"+clip(text)+"` has the unknown unit `"+clip(word)+"`", Near(word, k.unitNames()))
}

// withGroups explains a comma before three digits of a thing that is small in its unit: it parts thousands rather than decimals.
func withGroups(text string) (wrong, near string) {
	return "`" + clip(text) + "` has a comma; thousands are written without one, and the decimal mark is a point", strings.ReplaceAll(text, ",", "")
}

func (k *kind) unitNames() []string {
	names := make([]string, len(k.units))
	for i, u := range k.units {
		names[i] = u.name
	}
	return names
}

// clip keeps a quoted text short enough for a message.
func clip(s string) string {
	const most = 40
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
