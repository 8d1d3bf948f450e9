package draw_test

import (
	"image/color"
	"math"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sample"
)

// luminance is the relative luminance of WCAG 2.2 (definition in its glossary).
func luminance(c color.RGBA) float64 {
	channel := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*channel(c.R) + 0.7152*channel(c.G) + 0.0722*channel(c.B)
}

func contrast(a, b color.RGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

func TestContrastIsMeasuredAsTheStandardDoes(t *testing.T) {
	black, white := color.RGBA{A: 255}, color.RGBA{255, 255, 255, 255}
	if got := contrast(black, white); math.Abs(got-21) > 1e-9 {
		t.Errorf("black on white %g, want 21 (WCAG 2.2, contrast ratio)", got)
	}
	// 0x767676 is the well-known lightest grey that passes on white (from memory).
	if got := contrast(color.RGBA{0x76, 0x76, 0x76, 255}, white); got < 4.5 || got > 4.6 {
		t.Errorf("grey 767676 on white %g, want just above 4.5", got)
	}
}

func TestEveryInkCanBeReadOnEveryGroundItIsUsedOn(t *testing.T) {
	grounds := []draw.Token{draw.TokenSheet, draw.TokenPaper, draw.TokenTone}
	for theme, name := range map[draw.Theme]string{draw.Light: "light", draw.Dark: "dark", draw.Print: "print"} {
		for _, ink := range append([]draw.Ink{draw.InkPlain}, draw.Inks[:]...) {
			on := grounds
			switch ink {
			case draw.InkFlag:
				on = []draw.Token{draw.TokenDanger, draw.TokenLead, draw.TokenClose, draw.TokenNote, draw.TokenWater, draw.TokenGood}
			case draw.InkPlain:
				on = append(on, draw.TokenDesk, draw.TokenDeep, draw.TokenWash, draw.TokenLeadWash, draw.TokenGoodWash)
			case draw.InkQuiet, draw.InkLead:
				on = append(on, draw.TokenDesk)
			}
			for _, ground := range on {
				if got := contrast(theme.Colour(ink.Token()), theme.Colour(ground)); got < 4.5 {
					t.Errorf("%s: %s on %s has contrast %.2f, less than 4.5 (WCAG 2.2, 1.4.3)", name, ink.Token(), ground, got)
				}
			}
		}
	}
}

func TestTheStylesheetKnowsEveryClassADrawingUses(t *testing.T) {
	css := draw.Stylesheet()
	for _, word := range strings.FieldsFunc(svg(t, sample.Sheet(), draw.SVGOptions{}), func(r rune) bool { return r == '"' || r == ' ' }) {
		if (strings.HasPrefix(word, "pen-") || strings.HasPrefix(word, "fill-") || strings.HasPrefix(word, "ink-")) && !strings.Contains(css, "."+word+" {") {
			t.Errorf("no rule for .%s", word)
		}
	}
	for _, token := range draw.Tokens {
		if strings.Count(css, "--"+string(token)+":") != 4 {
			t.Errorf("--%s should be set for light, dark (twice) and print", token)
		}
	}
}
