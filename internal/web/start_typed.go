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
	return parsed(f, name, quantity.ParseLength)
}

func (f typed) mass(name string) *quantity.Mass { return parsed(f, name, quantity.ParseMass) }

func (f typed) money(name string) *quantity.Money { return parsed(f, name, quantity.ParseMoney) }

func parsed[T any](f typed, name string, parse func(string) (T, error)) *T {
	text := f.text(name)
	if text == "" {
		return nil
	}
	v, err := parse(withoutBlanks(text))
	if err != nil {
		f.wrong[name] = capital(ended(err.Error()))
		return nil
	}
	return &v
}

// ended closes a sentence with a full stop, unless it is a question already.
func ended(sentence string) string {
	if strings.HasSuffix(sentence, "?") {
		return sentence
	}
	return sentence + "."
}

// withoutBlanks takes out the blanks by which people part thousands: 1 865 is 1865.
func withoutBlanks(text string) string {
	var b strings.Builder
	runes := []rune(text)
	for i, r := range runes {
		if (r == ' ' || r == '\u00a0' || r == '\u202f') && i > 0 && i+1 < len(runes) && isDigit(runes[i-1]) && isDigit(runes[i+1]) {
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
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
