package quantity_test

import (
	"regexp"
	"testing"

	"tumblehome/quantity"
)

// Whatever is read is written in a text that reads back as the same value, and
// fits the pattern of its grammar; so does the text that was read.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{"3350", "7 ft 2 1/2 in", "1,5", "12 ± 3", "35 %", "-40 °F", "2 l/day", "19:00", "2026-03-07", "61.50 EUR", "1e9", "", "±", "5 h 30 min"} {
		f.Add(seed)
	}
	patterns := map[string]*regexp.Regexp{}
	for kind := range parsers {
		patterns[kind] = regexp.MustCompile(sample(kind).Pattern)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for kind, parse := range parsers {
			q, err := parse(s)
			if err != nil {
				continue
			}
			written := q.String()
			again, err := parse(written)
			if err != nil || again != q || again.String() != written {
				t.Errorf("%s %q was written %q and read back as %v, %v", kind, s, written, again, err)
			}
			for _, text := range []string{s, written} {
				if !patterns[kind].MatchString(text) {
					t.Errorf("%s %q does not fit %s", kind, text, patterns[kind])
				}
			}
		}
		if guess, err := quantity.ParseSpread[quantity.Mass](s); err == nil {
			if again, err := quantity.ParseSpread[quantity.Mass](guess.String()); err != nil || guess.Canonical().Form != quantity.Three && again != guess {
				t.Errorf("guess %q was written %q and read back as %v, %v", s, guess.String(), again, err)
			}
		}
	})
}
