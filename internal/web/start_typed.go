package web

import (
	"net/url"
	"slices"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

// typed is a form while it is being read.
type typed struct {
	url.Values
	wrong map[string]string
}

func (f typed) text(name string) string { return strings.TrimSpace(f.Get(name)) }

// length reads millimetres, or a length with its unit.
func (f typed) length(name string) *quantity.Length {
	if text := f.text(name); twoWays.MatchString(text) {
		wrong, near := whichOf(text)
		f.wrong[name] = strings.ReplaceAll(capital(wrong), "`", "") + "; write " + strings.Join(near, " or ") + "."
		return nil
	}
	return parsed(f, name, quantity.ParseLength)
}

func (f typed) mass(name string) *quantity.Mass { return parsed(f, name, quantity.ParseMass) }

func (f typed) money(name string) *quantity.Money { return parsed(f, name, quantity.ParseMoney) }

func parsed[T any](f typed, name string, parse func(string) (T, error)) *T {
	text := f.text(name)
	if text == "" {
		return nil
	}
	v, err := parse(asWritten(withoutBlanks(text)))
	if err != nil {
		f.wrong[name] = ended(strings.ReplaceAll(capital(err.Error()), "`", ""))
		return nil
	}
	return &v
}

// ended is a sentence with its stop, unless it ends as a question.
func ended(text string) string {
	if strings.HasSuffix(text, "?") {
		return text
	}
	return text + "."
}

// withoutBlanks takes out the blanks by which people part thousands: 1 865 is 1865, while 3 1/2 stays.
func withoutBlanks(text string) string {
	var b strings.Builder
	runes := []rune(text)
	for i, r := range runes {
		if (r == ' ' || r == '\u00a0' || r == '\u202f') && i > 0 && isDigit(runes[i-1]) && threeDigits(runes[i+1:]) {
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

func threeDigits(s []rune) bool {
	return len(s) >= 3 && isDigit(s[0]) && isDigit(s[1]) && isDigit(s[2]) && (len(s) == 3 || !isDigit(s[3]))
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

func (f typed) count(name string) *int {
	text := f.text(name)
	if text == "" {
		return nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > 520 {
		f.wrong[name] = "Write a whole number of weekends, such as 30."
		return nil
	}
	return &n
}

func (f typed) word(name string, allowed ...string) string {
	if text := f.text(name); slices.Contains(allowed, text) {
		return text
	}
	return ""
}
