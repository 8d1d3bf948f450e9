package draw

// Fill names what covers an area. An empty fill covers nothing.
type Fill string

// The fills of a drawing; each is the colour of the token of the same name.
const (
	NoFill       Fill = ""
	FillSheet    Fill = Fill(TokenSheet)
	FillPaper    Fill = Fill(TokenPaper)
	FillTone     Fill = Fill(TokenTone)
	FillDeep     Fill = Fill(TokenDeep)
	FillInk      Fill = Fill(TokenInk)
	FillQuiet    Fill = Fill(TokenQuiet)
	FillHairline Fill = Fill(TokenHairline)
	FillWater    Fill = Fill(TokenWater)
	FillWash     Fill = Fill(TokenWash)
	FillGood     Fill = Fill(TokenGood)
	FillLead     Fill = Fill(TokenLead)
	FillLeadWash Fill = Fill(TokenLeadWash)
	FillGoodWash Fill = Fill(TokenGoodWash)
	FillDanger   Fill = Fill(TokenDanger)
	FillClose    Fill = Fill(TokenClose)
	FillNote     Fill = Fill(TokenNote)
)

// Fills lists every fill in the order of the stylesheet.
var Fills = [...]Fill{
	FillSheet, FillPaper, FillTone, FillDeep, FillInk, FillQuiet, FillHairline, FillWater, FillWash,
	FillGood, FillLead, FillLeadWash, FillGoodWash, FillDanger, FillClose, FillNote,
}

// Token is the colour the fill lays down.
func (f Fill) Token() Token { return Token(f) }

// Ink names the colour of lettering. The empty ink is plain ink.
type Ink string

// The inks of lettering.
const (
	InkPlain  Ink = ""
	InkQuiet  Ink = Ink(TokenQuiet)
	InkLead   Ink = Ink(TokenLead)
	InkWater  Ink = Ink(TokenWater)
	InkGood   Ink = Ink(TokenGood)
	InkClose  Ink = Ink(TokenClose)
	InkDanger Ink = Ink(TokenDanger)
	InkFlag   Ink = Ink(TokenFlagInk) // figures on a flag
)

// Inks lists every ink that is not the plain one, in the order of the stylesheet.
var Inks = [...]Ink{InkQuiet, InkLead, InkWater, InkGood, InkClose, InkDanger, InkFlag}

// Token is the colour of the ink.
func (i Ink) Token() Token {
	if i == InkPlain {
		return TokenInk
	}
	return Token(i)
}
