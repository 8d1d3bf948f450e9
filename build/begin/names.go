package begin

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// longestID keeps ids short enough to be read.
const longestID = 38

// ID makes an id of a name: "Anna Löf" is anna-lof. Accents are left off; names without a letter of the Latin alphabet give an empty id.
func ID(name string) string {
	var b strings.Builder
	for _, r := range folded(name) {
		switch {
		case b.Len() >= longestID:
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9' && b.Len() > 0:
			b.WriteRune(r)
		case r == '\'' || r == '’': // O'Neil is oneil
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-") && b.Len() < longestID-2:
			b.WriteByte('-')
		}
	}
	return strings.Trim(b.String(), "-")
}

// folded is a name in small letters without marks.
func folded(name string) string {
	name = unfoldable.Replace(strings.ToLower(name))
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return r
	}, norm.NFD.String(name))
}

// unfoldable are letters that are no letter with a mark.
var unfoldable = strings.NewReplacer("ß", "ss", "ø", "o", "ł", "l", "æ", "ae", "œ", "oe", "đ", "d", "ð", "d", "þ", "th", "ı", "i")
