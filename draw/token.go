package draw

import "image/color"

// Token names a colour by what it is for. The same tokens are the CSS variables of the pages
// (--sheet, --ink …), so that drawings and pages cannot drift apart.
type Token string

// The colours of the drawing office and the paint shop. Red lead is the one accent, kept for
// what needs attention.
const (
	TokenSheet    Token = "sheet"     // tracing film
	TokenDesk     Token = "desk"      // what the sheet lies on
	TokenPaper    Token = "paper"     // the lighter ground inside a body
	TokenInk      Token = "ink"       // graphite; chalk in the dark
	TokenQuiet    Token = "ink-2"     // thinner graphite, second lettering
	TokenHairline Token = "hairline"  // ruled lines that must not speak
	TokenTone     Token = "tone"      // a wash of grey: things that are there
	TokenDeep     Token = "tone-2"    // a second wash: wheel arches, cut wood
	TokenLead     Token = "lead"      // red-lead primer: attention, faults
	TokenClose    Token = "close"     // close to a limit
	TokenGood     Token = "good"      // well within
	TokenWater    Token = "water"     // water, glass, people
	TokenWash     Token = "water-2"   // a wash of water: cushions, tanks
	TokenDanger   Token = "danger"    // danger to life
	TokenNote     Token = "note"      // worth knowing
	TokenFlagInk  Token = "flag-ink"  // figures on a flag
	TokenLeadWash Token = "lead-wash" // a breath of red lead: swept space, foul
	TokenGoodWash Token = "good-wash" // a breath of green: floor to walk on
)

// Tokens lists every token in the order of the stylesheet.
var Tokens = [...]Token{
	TokenSheet, TokenDesk, TokenPaper, TokenInk, TokenQuiet, TokenHairline, TokenTone, TokenDeep,
	TokenLead, TokenClose, TokenGood, TokenWater, TokenWash, TokenDanger, TokenNote, TokenFlagInk, TokenLeadWash, TokenGoodWash,
}

// Theme is a choice of colours.
type Theme int

// The themes: graphite on tracing film, chalk on slate, and graphite on white paper, which
// spares the printer's ink.
const (
	Light Theme = iota
	Dark
	Print
)

// Colour gives the token's colour in a theme; an unknown token is ink.
func (t Theme) Colour(token Token) color.RGBA {
	rgb, ok := tokenColour(t, token)
	if !ok {
		rgb, _ = tokenColour(t, TokenInk)
	}
	return color.RGBA{uint8(rgb >> 16), uint8(rgb >> 8), uint8(rgb), 255}
}

func tokenColour(t Theme, token Token) (rgb uint32, known bool) {
	for _, row := range colours {
		if row.token == token {
			switch {
			case t == Dark:
				return row.dark, true
			case t == Print && (token == TokenSheet || token == TokenDesk || token == TokenPaper):
				return 0xffffff, true
			}
			return row.light, true
		}
	}
	return 0, false
}

// colours is the only place where a colour is written down. Lettering colours hold 4.5:1
// against every ground they are written on (WCAG 2.2, 1.4.3); a test measures them.
var colours = [...]struct {
	token       Token
	light, dark uint32
}{
	{TokenSheet, 0xf2f4ef, 0x23292c},
	{TokenDesk, 0xd9dfd8, 0x191d1f},
	{TokenPaper, 0xfbfcf9, 0x2a3134},
	{TokenInk, 0x262b2f, 0xedefe8},
	{TokenQuiet, 0x5b636a, 0xb3bcb8},
	{TokenHairline, 0xb9c2b9, 0x4d585a},
	{TokenTone, 0xe2e7df, 0x343d40},
	{TokenDeep, 0xcfd6cc, 0x414b4e},
	{TokenLead, 0xb0351a, 0xf48a6c},
	{TokenClose, 0x865d00, 0xe3b54e},
	{TokenGood, 0x2f6b52, 0x86cba9},
	{TokenWater, 0x2b6b8b, 0x8cc5e0},
	{TokenWash, 0xd8e5e9, 0x2c434d},
	{TokenDanger, 0xa3161f, 0xff9a94},
	{TokenNote, 0x5b636a, 0xb3bcb8},
	{TokenFlagInk, 0xffffff, 0x191d1f},
	{TokenLeadWash, 0xf3ddd4, 0x4a312b},
	{TokenGoodWash, 0xcfe6d6, 0x25453a},
}
