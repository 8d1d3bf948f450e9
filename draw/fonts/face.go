package fonts

import (
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

//go:generate go run make_widths.go

// Capitals is the height of the capitals of our face in ems, XHeight that of a small x, Descent
// how far letters hang below the line (its OS/2 and hhea tables).
const (
	Capitals = 0.7
	XHeight  = 0.506
	Descent  = 0.2
)

// Face is one of the four font files that lettering is set in.
type Face int

// The plain weight, the strong one, and for letters that ours does not have (Greek, Cyrillic,
// some signs) the Go fonts of Bigelow & Holmes, which are part of the Go project (BSD).
const (
	Plain Face = iota
	Strong
	SparePlain
	SpareStrong
)

// Faces is how many there are.
const Faces = 4

// File is the TrueType file of the face.
func (f Face) File() []byte {
	return [Faces][]byte{Regular, SemiBold, goregular.TTF, gobold.TTF}[f]
}

// IsStrong reports whether the face is of the strong weight.
func (f Face) IsStrong() bool { return f == Strong || f == SpareStrong }

// stretch is a row of neighbouring letters with their widths in thousandths of an em.
type stretch struct {
	first  rune
	widths []uint16
}

// missing is the width of the empty box that stands for a letter nobody has, in ems.
const missing = 0.5

// For picks the face that has the letter, and gives its width in ems. A letter that none has
// is given to our own face, which shows an empty box.
func For(r rune, strong bool) (Face, float64) {
	own := Plain
	if strong {
		own = Strong
	}
	for _, f := range [2]Face{own, own + SparePlain} {
		if w, ok := f.width(r); ok {
			return f, w
		}
	}
	return own, missing
}

// Has tells whether a letter is in our face or in the spare one.
func Has(r rune) bool {
	_, own := Plain.width(r)
	_, spare := SparePlain.width(r)
	return own || spare
}

func (f Face) width(r rune) (float64, bool) {
	for _, s := range [Faces][]stretch{regularWidths, semiBoldWidths, spareRegularWidths, spareBoldWidths}[f] {
		if r < s.first {
			return 0, false
		}
		if i := int(r - s.first); i < len(s.widths) {
			return float64(s.widths[i]) / 1000, true
		}
	}
	return 0, false
}
