package web

import (
	"math"

	"tumblehome/trade/fit"
)

// suitsDoes are the things done in a van, as the table of whom it suits says them.
var suitsDoes = map[string]string{
	"lie": "lying on", "sit": "sitting on", "stand": "standing at", "cook": "cooking at", "pass": "passing to",
}

// suitTitle is what is done and where.
func suitTitle(v view, s fit.Suit) string {
	if s.At == "" {
		return map[string]string{"stand": "standing", "pass": "coming in"}[s.Does]
	}
	title := suitsDoes[s.Does] + " " + v.name(s.At)
	if s.Nobody {
		title += " (nobody yet)"
	}
	return title
}

// suitWords say of a cell whether it fits, in a word that goes with its shape.
func suitWords(c fit.Cell) string {
	switch {
	case c.How != "" && c.Fits != "short":
		return c.How
	case c.How != "":
		return fives(max(5, c.Need-c.Room)) + " short: " + c.How
	}
	short := fives(max(5, c.Need-c.Room))
	switch c.Fits {
	case "close":
		return "close: " + short + " short"
	case "short":
		return short + " short"
	}
	return "fits"
}

// fives is a length rounded to what a van is.
func fives(mm float64) string { return count(int(math.Round(mm/5) * 5)) }

// suitMark is the severity whose shape goes with a cell.
func suitMark(c fit.Cell) string {
	return map[string]string{"close": "close", "short": "fault"}[c.Fits]
}

// movesInto is how the mode shown is made up from the one before it: a figure's words, or nothing.
func (v view) movesInto() (figure string, words string) {
	code := "fit.moves." + v.Mode
	for _, f := range v.Figures {
		if f.Code == code && f.Words != "" {
			return code, f.Words
		}
	}
	return "", ""
}
