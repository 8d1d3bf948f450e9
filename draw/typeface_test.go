package draw_test

import (
	"testing"

	"tumblehome/draw"
)

func TestLettersThatNoFaceHasAreLeftOut(t *testing.T) {
	for _, tt := range []struct {
		text, known string
		lacks       bool
	}{
		{"Ørsted’s 40 Ω, Привет, αβγ", "Ørsted’s 40 Ω, Привет, αβγ", false},
		{"a \u05de\u05e0 b", "a … b", true},
		{"box \U0001F976\U0001F976", "box …", true},
		{"two\nlines", "two lines", false},
	} {
		if got := draw.Known(tt.text); got != tt.known {
			t.Errorf("%q is set as %q, want %q", tt.text, got, tt.known)
		}
		if draw.Unknown(tt.text) != tt.lacks {
			t.Errorf("%q: unknown is %v", tt.text, draw.Unknown(tt.text))
		}
	}
}
