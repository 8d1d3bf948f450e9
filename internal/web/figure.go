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

// codesUnder are the codes of all figures that begin so, in order.
func (s *state) codesUnder(beginning string) []string {
	var out []string
	for _, f := range s.Figures {
		if startsWith(f.Code, beginning) {
			out = append(out, f.Code)
		}
	}
	return out
}
