package web

import (
	"math"
	"strconv"

	"tumblehome/internal/words"
	"tumblehome/trade/working"
)

// headline is one figure of the strip.
type headline struct {
	Code, Label, Value, Context string
	Word                        string  // "over", "close to the limit"; "" when all is well
	Severity                    string  // danger … note, or good
	Share                       float64 // of its limit; negative when it has none
}

// shortLabels are names that fit the strip.
var shortLabels = map[string]string{
	"shell.headroom": "Middle headroom", "weight.total": "On the road", "weight.rear-axle": "Rear axle", "weight.front-axle": "Front axle",
	"weight.margin.least": "To spare", "cost.forecast": "Cost", "cost.paid": "Paid", "cost.to-come": "Still to buy",
}

// stripFigures fill the strip from left to right; one that is not worked out leaves its place to the next.
var stripFigures = []string{
	"shell.headroom", "weight.total", "weight.rear-axle", "weight.front-axle", "weight.margin.least", "cost.forecast", "cost.to-come",
}

func headlines(s *state) []headline {
	var out []headline
	for _, code := range stripFigures {
		if f, ok := s.Figure(code); ok {
			out = append(out, headlineOf(f))
		}
	}
	return out
}

const closeShare = 0.95 // of a limit, from which a figure is close to it; common practice

func headlineOf(f working.Figure) headline {
	h := headline{Code: f.Code, Label: f.Label, Value: words.Figure(f), Context: f.Words, Severity: "good", Share: -1}
	if short, ok := shortLabels[f.Code]; ok {
		h.Label = short
	}
	if spread := words.Spread(f); spread != "" && h.Context == "" {
		h.Context = spread
	}
	if f.Code == "weight.margin.least" && f.Value < 0 {
		h.Word, h.Severity = "too much", "fault"
	}
	if f.Limit == nil || *f.Limit <= 0 {
		return h
	}
	h.Share = f.Value / *f.Limit
	h.Context = map[bool]string{false: "of ", true: "at least "}[f.Least] + words.Amount(*f.Limit, f.Unit)
	h.Word, h.Severity = verdict(f)
	return h
}

// verdict says in a word how a figure stands to its limit.
func verdict(f working.Figure) (word, severity string) {
	share := f.Value / *f.Limit
	if f.Unit == "°C" { // half of 20 °C is no half: it is the difference that one feels
		return degreesVerdict(f)
	}
	if f.Least {
		share = *f.Limit / math.Max(f.Value, 1e-9)
	}
	switch {
	case share > 1 && f.Least:
		return "too little", "fault"
	case share > 1:
		return "too much", "fault"
	case share >= closeShare:
		return "close", "close"
	}
	return "", "good"
}

// felt is a difference that sleepers feel, in K; a thermostat swings by less.
const felt = 0.5

func degreesVerdict(f working.Figure) (word, severity string) {
	switch over := f.Value - *f.Limit; {
	case f.Least && over < -felt:
		return "too little", "fault"
	case !f.Least && over > felt:
		return "too much", "fault"
	}
	return "", "good"
}

// barWidth is a share as the width of a bar that is 100 long.
func barWidth(share float64) string {
	return strconv.FormatFloat(100*math.Max(0, math.Min(share, 1)), 'f', 1, 64)
}
