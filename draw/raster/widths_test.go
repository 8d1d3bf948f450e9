package raster_test

import (
	"math"
	"testing"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"tumblehome/draw"
	"tumblehome/draw/fonts"
)

// The table of widths is generated; here it is held against the font files themselves.
func TestTheTableOfWidthsAgreesWithTheFonts(t *testing.T) {
	for _, strong := range []bool{false, true} {
		seen := map[fonts.Face]int{}
		for r := rune(0x20); r < 0x2800; r++ {
			face, got := fonts.For(r, strong)
			f, err := sfnt.Parse(face.File())
			if err != nil {
				t.Fatal(err)
			}
			id, err := f.GlyphIndex(nil, r)
			if err != nil || id == 0 {
				continue
			}
			seen[face]++
			want, err := f.GlyphAdvance(nil, id, fixed.I(1000), font.HintingNone)
			if err != nil {
				t.Fatal(err)
			}
			if math.Abs(got-float64(want)/64000) > 0.0006 {
				t.Errorf("%q in face %d is %g em wide, the font says %g", r, face, got, float64(want)/64000)
			}
		}
		if len(seen) != 2 {
			t.Errorf("strong %v: letters come from faces %v, want two", strong, seen)
		}
	}
}

func TestCapitalsAreAsHighAsTheirSize(t *testing.T) {
	for _, f := range []fonts.Face{fonts.Plain, fonts.Strong} {
		parsed, err := sfnt.Parse(f.File())
		if err != nil {
			t.Fatal(err)
		}
		id, _ := parsed.GlyphIndex(nil, 'H')
		bounds, _, err := parsed.GlyphBounds(nil, id, fixed.I(1000), font.HintingNone)
		if err != nil {
			t.Fatal(err)
		}
		if got := -float64(bounds.Min.Y) / 64000; math.Abs(got-fonts.Capitals) > 0.002 {
			t.Errorf("H is %g em high, want %g", got, fonts.Capitals)
		}
	}
	if em := draw.Text("H", draw.Pt(0, 0), 3.5).Em(); em != 5 {
		t.Errorf("capitals of 3.5 mm need %g mm to the em, want 5", em)
	}
}
