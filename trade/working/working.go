package working

import (
	"strings"

	"tumblehome/trade/finding"
)

// Origin says where an input came from; exactly one field is set.
type Origin struct {
	Pointer    string `json:"pointer,omitempty"`    // JSON Pointer into the document
	Row        string `json:"row,omitempty"`        // catalogue row or material
	Figure     string `json:"figure,omitempty"`     // another figure's code
	Assumption string `json:"assumption,omitempty"` // taken for want of something better, and why
	Here       bool   `json:"here,omitempty"`       // worked out on this line from lines above
}

// Line is one line of a working: an input, or a step worked out from lines above it.
type Line struct {
	Symbol string  `json:"symbol,omitempty"` // as in the formula: m, x, L
	Label  string  `json:"label"`            // plain words
	Value  float64 `json:"value"`
	Unit   string  `json:"unit"`
	Sum    string  `json:"sum,omitempty"` // the arithmetic of a step: "84 × 1050 / 3350"
	From   Origin  `json:"from"`
}

// Working shows how a figure came about. Its last line equals the figure.
type Working struct {
	Code    string         `json:"code"`
	Label   string         `json:"label"`
	Formula string         `json:"formula"` // in the symbols of the source
	Source  finding.Source `json:"source"`
	Lines   []Line         `json:"lines"`
	Notes   []string       `json:"notes,omitempty"` // assumptions and range of validity
}

// Last returns the value of the last line, which is the figure.
func (w Working) Last() float64 {
	if len(w.Lines) == 0 {
		return 0
	}
	return w.Lines[len(w.Lines)-1].Value
}

// Of shows how the figure of a code came about, by what stands behind the name of its trade; false where the trade has no such figure.
func Of(code, trade string, figures func() []Figure, show func(short string) Working) (Working, bool) {
	short, ok := strings.CutPrefix(code, trade+".")
	if !ok {
		return Working{}, false
	}
	for _, f := range figures() {
		if f.Code == code {
			w := show(short)
			w.Code, w.Label = code, f.Label
			return w, true
		}
	}
	return Working{}, false
}
