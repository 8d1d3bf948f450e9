package draw_test

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"tumblehome/draw"
)

// nasty is text that would end an attribute, a tag or a file if it were not escaped.
const nasty = `<script>alert("x")</script>&'"` + "\x00\x1b\ufffe]]>\xff"

func hostile(text string) draw.Scene {
	return draw.Scene{Size: draw.A4, Title: text, Description: text, Marks: []draw.Mark{
		draw.Group{ID: text, Class: text, Digest: text, Title: text, Href: "#" + text,
			Data: map[string]string{"name": text, text: "left out"},
			Marks: []draw.Mark{
				draw.Text(text, draw.Pt(10, 10), 2.5),
				draw.Shape{Path: draw.Line(draw.Pt(0, 0), draw.Pt(1, 1)), Pen: draw.Pen(text), Fill: draw.Fill(text)},
			}},
		draw.Group{Href: "javascript:" + text},
	}}
}

// elements reads an SVG and counts its elements; it fails on anything that is no XML.
func elements(t testing.TB, svg string) map[string]int {
	t.Helper()
	seen := map[string]int{}
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return seen
		}
		if err != nil {
			t.Fatalf("not XML: %v\n%s", err, svg)
		}
		e, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		seen[e.Name.Local]++
		for _, a := range e.Attr {
			if a.Name.Local == "style" || strings.HasPrefix(a.Name.Local, "on") {
				t.Errorf("attribute %s is against the content policy", a.Name.Local)
			}
			if a.Name.Local == "href" && !strings.HasPrefix(a.Value, "#") && !strings.HasPrefix(a.Value, "/") {
				t.Errorf("link leads outside: %q", a.Value)
			}
		}
	}
}

func svg(t testing.TB, s draw.Scene, o draw.SVGOptions) string {
	t.Helper()
	var b strings.Builder
	if err := s.SVG(&b, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestTextFromTheDocumentCannotBreakOutOfTheDrawing(t *testing.T) {
	got := elements(t, svg(t, hostile(nasty), draw.SVGOptions{ID: nasty, Class: nasty}))
	want := map[string]int{"svg": 1, "a": 1, "g": 1, "title": 2, "desc": 1, "text": 1, "path": 1}
	for name, n := range got {
		if want[name] != n {
			t.Errorf("%d elements %q, want %d", n, name, want[name])
		}
	}
}

func TestOnlyADrawingWithoutLinksIsAPicture(t *testing.T) {
	for href, want := range map[string]string{"": "img", "#note-1": "group", "javascript:alert(1)": "img"} {
		s := draw.Scene{Size: draw.A4, Marks: []draw.Mark{draw.Group{Marks: []draw.Mark{draw.Group{Href: href}}}}}
		if got := svg(t, s, draw.SVGOptions{}); !strings.Contains(got, `role="`+want+`"`) {
			t.Errorf("with link %q the role should be %s:\n%s", href, want, got)
		}
	}
}

func FuzzHostileText(f *testing.F) {
	for _, s := range []string{nasty, "", "]]>", "</svg>", "a\u2028b", "\xed\xa0\x80"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got := elements(t, svg(t, hostile(text), draw.SVGOptions{Standalone: true}))
		if got["script"] > 0 || got["svg"] != 1 || got["text"] != 1 {
			t.Errorf("%q gives elements %v", text, got)
		}
	})
}

func TestADrawingInAPageCarriesNoStyle(t *testing.T) {
	s := draw.Scene{Size: draw.A3, Title: "plan", Marks: []draw.Mark{draw.Stroke(draw.PenCut, draw.Circle(draw.Pt(10, 10), 4))}}
	got := svg(t, s, draw.SVGOptions{ID: "plan"})
	for _, forbidden := range []string{"style", "#", "<?xml"} {
		if strings.Contains(got, forbidden) {
			t.Errorf("page drawing contains %q:\n%s", forbidden, got)
		}
	}
	for _, wanted := range []string{`role="img"`, `aria-label="plan"`, `<title>plan</title>`, `id="plan"`, `class="pen-cut"`, `viewBox="0 0 420 297"`} {
		if !strings.Contains(got, wanted) {
			t.Errorf("page drawing lacks %s:\n%s", wanted, got)
		}
	}
}
