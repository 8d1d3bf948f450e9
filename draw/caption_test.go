package draw_test

import (
	"testing"

	"tumblehome/draw"
)

func TestACaptionSaysAsMuchAsTheBoxHolds(t *testing.T) {
	for _, c := range []struct {
		name          string
		width, height float64
		want          []string
	}{
		{"both lines in a large box", 60, 27, []string{"left bench", "toilet · spare water"}},
		{"the name alone in a low one", 60, 7, []string{"left bench"}},
		{"the name alone in a short one", 20, 27, []string{"left bench"}},
		{"the name turned in a narrow one", 7, 27, []string{"left bench"}},
		{"nothing in a tiny one", 7, 7, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			box := draw.Box(100, 100, c.width, c.height)
			marks := draw.Caption(box, "left bench", "toilet · spare water")
			var got []string
			for _, m := range marks {
				l := m.(draw.Lettering)
				got = append(got, l.Text)
				if !l.Bounds().Within(box) {
					t.Errorf("%s leaves the box", l)
				}
				if turned := l.Turn != 0; turned != (c.width < 10) {
					t.Errorf("%s: turned %v", l, turned)
				}
			}
			if len(got) != len(c.want) || len(got) > 0 && got[0] != c.want[0] {
				t.Errorf("got %q, want %q", got, c.want)
			}
			if flaws := sheet(marks...).Check(); flaws != nil {
				t.Error(flaws)
			}
		})
	}
}
