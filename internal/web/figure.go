package web

import (
	"strings"

	"tumblehome/internal/words"
	"tumblehome/trade/working"
)

// figureContext says what a figure's value does not: its limit, its spread, what it holds for.
func figureContext(f working.Figure) string {
	var parts []string
	if f.Limit != nil {
		parts = append(parts, limitWords(f))
	}
	if said := words.Spread(f); said != "" {
		parts = append(parts, said)
	}
	if f.Words != "" {
		parts = append(parts, f.Words)
	}
	if said := stateWords(f.State); said != "" {
		parts = append(parts, said)
	}
	return strings.Join(parts, "; ")
}

func limitWords(f working.Figure) string {
	if f.Least {
		return "at least " + words.Amount(*f.Limit, f.Unit)
	}
	return "of " + words.Amount(*f.Limit, f.Unit)
}
